package protocol

import (
	"lowspot/engine"
	"lowspot/engine/pour"
)

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

// CalendarOf is what goes into a calendar file: the events of a job, in the page's words, and the moment of writing, RFC 3339.
type CalendarOf struct {
	Job    string       `json:"job"`
	Stamp  string       `json:"stamp"`
	Events []pour.Event `json:"events"`
}

func writeCalendar(_ *Bridge, c CalendarOf) (FileText, error) {
	text, err := pour.Calendar(c.Events, c.Job, c.Stamp)
	return FileText{Text: text}, err
}
