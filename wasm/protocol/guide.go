package protocol

import "lowspot/engine"

func guide(b *Bridge, p PlanJob) (*engine.Guide, error) {
	return engine.MakeGuide(&p.Job, b.rulebook(p.Book)), nil
}

func fieldSheet(b *Bridge, p PlanJob) (*engine.FieldSheet, error) {
	return engine.MakeFieldSheet(&p.Job, b.rulebook(p.Book)), nil
}
