package protocol

import "lowspot/engine"

func pourDay(b *Bridge, p PlanJob) (*engine.PourDay, error) {
	return engine.MakePour(&p.Job, b.rulebook(p.Book)), nil
}

// PourNow is a pour under way, of a room or a part of it, at a moment, RFC 3339.
type PourNow struct {
	PlanJob
	Room string `json:"room"`
	Part string `json:"part"`
	Now  string `json:"now"`
}

func pourReplan(b *Bridge, p PourNow) (*engine.PourRest, error) {
	return engine.ReplanPour(&p.Job, b.rulebook(p.Book), p.Room, p.Part, p.Now)
}

// PourHolds is a job whose holds go into a calendar, and the moment of writing, RFC 3339.
type PourHolds struct {
	PlanJob
	Stamp string `json:"stamp"`
}

// CalendarFile is an iCalendar file's text.
type CalendarFile struct {
	Text string `json:"text"`
}

func pourCalendar(b *Bridge, p PourHolds) (CalendarFile, error) {
	text, err := engine.MakeCalendar(&p.Job, b.rulebook(p.Book), p.Stamp)
	return CalendarFile{Text: text}, err
}
