package engine

import (
	"cmp"
	"slices"
	"time"

	"lowspot/engine/pour"
)

// ReplanPour works out the rest of a room's pour under way, or of one part of it, from the job's record and the moment (RFC 3339), with the crew that the job names.
func ReplanPour(job *Job, book *Rulebook, room, part, now string) (*PourRest, error) {
	p := newPourWork(job, book)
	record := job.recordOf(room, part)
	if record == nil {
		return nil, Problem{Code: "missing", Field: "record", Message: "This pour has not begun.", Remedy: "Tap start when the first water is measured."}
	}
	began, err := moment("record/started", record.Started)
	if err != nil {
		return nil, err
	}
	at, err := moment("now", now)
	if err != nil {
		return nil, err
	}
	taps, err := record.taps(began)
	if err != nil {
		return nil, err
	}
	for _, r := range p.rooms {
		if r.site == nil || r.plan.ID != room {
			continue
		}
		if why := p.cannotPour(r); why != "" {
			return nil, Problem{Code: "pour", Field: "rooms", Message: why, Remedy: "Undo the last change of the job."}
		}
		for _, work := range p.pours(r) {
			if work.id() == part {
				return p.rest(work, taps, at.Sub(began).Seconds())
			}
		}
	}
	return nil, Problem{Code: "missing", Field: "rooms", Given: room + " " + part, Message: "There is no such pour any more.", Remedy: "Undo the last change of the job."}
}

func (p *pourWork) rest(work poured, taps []pour.Actual, now float64) (*PourRest, error) {
	if work.fault != nil {
		return nil, p.refusal(work.fault)
	}
	timeline, err := pour.Replan(work.loads, p.demand.Most, p.pace(&work), taps, now)
	if err != nil {
		return nil, p.refusal(err)
	}
	happened := make([]pour.Actual, len(work.loads))
	for _, tap := range taps {
		happened[tap.Batch-1] = tap
	}
	rest := &PourRest{Now: now, Clock: p.clockPlan(timeline), Batches: make([]BatchNow, len(work.loads)), Edges: []OpenEdge{}}
	for i, load := range work.loads {
		rest.Batches[i] = p.batchNow(load, happened[i], timeline)
		rest.Edges = append(rest.Edges, p.openEdges(load, happened)...)
	}
	slices.SortStableFunc(rest.Edges, func(a, b OpenEdge) int { return cmp.Compare(a.Closes, b.Closes) })
	return rest, nil
}

// batchNow takes what was tapped, and for the rest what the new timeline plans. A batch poured without a tap at its start counts from its pour.
func (p *pourWork) batchNow(load pour.Load, tap pour.Actual, t pour.Timeline) BatchNow {
	pace := p.demand.Pace
	b := BatchNow{Number: load.Batch, State: BatchToCome}
	for _, task := range t.Tasks {
		if task.Batch != load.Batch {
			continue
		}
		switch task.Kind {
		case pour.TaskWater:
			b.Starts = task.Start
		case pour.TaskPour:
			b.Pours = task.End
		case pour.TaskAgitate:
			b.Done = task.End
		}
	}
	for _, happened := range []struct {
		at    *float64
		state string
		into  *float64
	}{{tap.Started, BatchBegun, &b.Starts}, {tap.Poured, BatchPoured, &b.Pours}, {tap.Done, BatchDone, &b.Done}} {
		if happened.at != nil {
			b.State, *happened.into = happened.state, *happened.at
		}
	}
	if tap.Skipped && b.State != BatchPoured && b.State != BatchDone {
		b.State = BatchSkipped
	}
	b.Ready = b.Starts + pace.Water + float64(load.Bags)*pace.Powder + pace.Mix + pace.Rest
	b.FlowTo = b.Starts + pace.Water + pace.Flow
	return b
}

// openEdges are a poured batch's edges towards floor that is still to be poured.
func (p *pourWork) openEdges(load pour.Load, happened []pour.Actual) []OpenEdge {
	edges := []OpenEdge{}
	poured := cmp.Or(happened[load.Batch-1].Poured, happened[load.Batch-1].Done)
	if poured == nil {
		return edges
	}
	for _, n := range load.Neighbours {
		if other := happened[n.Batch-1]; other.Poured == nil && other.Done == nil && !other.Skipped {
			edges = append(edges, OpenEdge{From: load.Batch, To: n.Batch, Closes: *poured + p.demand.Pace.WetEdge})
		}
	}
	return edges
}

// recordOf is the record of a room's pour or of one part of it, nil before it began.
func (j *Job) recordOf(room, part string) *PourRecord {
	for i := range j.Record {
		if j.Record[i].Room == room && j.Record[i].Part == part {
			return &j.Record[i]
		}
	}
	return nil
}

// taps are the record's moments as seconds since the pour began.
func (r *PourRecord) taps(began time.Time) ([]pour.Actual, error) {
	list := []pour.Actual{}
	for _, b := range r.Batches {
		actual := pour.Actual{Batch: b.Batch, Skipped: b.Skipped}
		for _, tap := range []struct {
			text string
			into **float64
		}{{b.Started, &actual.Started}, {b.Poured, &actual.Poured}, {b.Done, &actual.Done}} {
			if tap.text == "" {
				continue
			}
			at, err := moment("record/batches", tap.text)
			if err != nil {
				return nil, err
			}
			seconds := at.Sub(began).Seconds()
			*tap.into = &seconds
		}
		list = append(list, actual)
	}
	return list, nil
}

func moment(field, text string) (time.Time, error) {
	at, err := time.Parse(time.RFC3339, text)
	if err != nil {
		return at, Problem{Code: "moment", Field: field, Given: text, Message: "This moment can't be read.", Remedy: "It is written as 2026-05-02T08:00:00Z."}
	}
	return at, nil
}
