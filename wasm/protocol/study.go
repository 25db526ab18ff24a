package protocol

import "lowspot/engine"

// study is asked for on its own, after the plan: it takes longer than a keystroke may.
func study(b *Bridge, p PlanJob) (*engine.Study, error) {
	return engine.MakeStudy(&p.Job, b.rulebook(p.Book)), nil
}
