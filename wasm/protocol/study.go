package protocol

import (
	"reflect"

	"lowspot/engine"
	"lowspot/engine/floor"
)

// study is asked for on its own, after the plan: it takes longer than a keystroke may.
func study(b *Bridge, p PlanJob) (*engine.Study, error) {
	return engine.MakeStudy(&p.Job, b.rulebook(p.Book)), nil
}

// SpotOfRoom is a spot of a room to look at, metres in plan.
type SpotOfRoom struct {
	PlanJob
	Room string      `json:"room"`
	At   floor.Point `json:"at"`
}

func spot(b *Bridge, s SpotOfRoom) (engine.SpotPlan, error) {
	return b.ground(s.PlanJob).Spot(s.Room, s.At), nil
}

// LineOfRoom is a line to cut a room along, metres in plan.
type LineOfRoom struct {
	PlanJob
	Room string      `json:"room"`
	From floor.Point `json:"from"`
	To   floor.Point `json:"to"`
}

func section(b *Bridge, l LineOfRoom) (engine.SectionPlan, error) {
	return b.ground(l.PlanJob).Section(l.Room, l.From, l.To), nil
}

// lookedAt is the ground that is being looked into, with the job that it belongs to.
type lookedAt struct {
	PlanJob
	ground *engine.Ground
}

// ground works a job out to be looked into, or takes it from the last time: a finger on the map asks many times a second.
func (b *Bridge) ground(p PlanJob) *engine.Ground {
	if b.looked.ground == nil || !reflect.DeepEqual(b.looked.PlanJob, p) {
		b.looked = lookedAt{p, engine.GroundOf(&p.Job, b.rulebook(p.Book))}
	}
	return b.looked.ground
}
