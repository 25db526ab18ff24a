package engine

import (
	"time"

	"lowspot/engine/pour"
)

// ReplanPour works out the rest of a pour under way from the job's record and the moment (RFC 3339), with the crew that the job names.
func ReplanPour(job *Job, book *Rulebook, room string, now string) (*PourRest, error) {
	p := newPourWork(job, book)
	record := job.recordOf(room)
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
		if r.room == nil || r.plan.ID != room {
			continue
		}
		if why := p.cannotPour(r); why != "" {
			return nil, Problem{Code: "pour", Field: "rooms", Message: why, Remedy: "Undo the last change of the job."}
		}
		return p.rest(r, taps, at.Sub(began).Seconds())
	}
	return nil, Problem{Code: "missing", Field: "rooms", Given: room, Message: "There is no such room any more.", Remedy: "Undo the last change of the job."}
}

func (p *pourWork) rest(r *roomWork, taps []pour.Actual, now float64) (*PourRest, error) {
	work, err := p.order(r, p.pourRoom(r))
	if err != nil {
		return nil, p.refusal(err)
	}
	timeline, err := pour.Replan(work.loads, p.demand.Most, p.demand.Pace, taps, now)
	if err != nil {
		return nil, p.refusal(err)
	}
	return &PourRest{Now: now, Clock: p.clockPlan(timeline)}, nil
}

// recordOf is the record of a room's pour, nil before it began.
func (j *Job) recordOf(room string) *PourRecord {
	for i := range j.Record {
		if j.Record[i].Room == room {
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
		}{{b.Started, &actual.Started}, {b.Carried, &actual.Carried}, {b.Poured, &actual.Poured}, {b.Done, &actual.Done}} {
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

// MakeCalendar writes the holds of a job's run sheet as an iCalendar file; stamp is the moment of writing, 2006-01-02T15:04:05Z.
func MakeCalendar(job *Job, book *Rulebook, stamp string) (string, error) {
	sheet := MakePour(job, book).Sheet
	if sheet.Why != "" {
		return "", Problem{Code: "pour", Field: "start", Message: sheet.Why, Remedy: "Complete the job, and save the calendar then."}
	}
	if sheet.Relative {
		return "", Problem{Code: "pour", Field: "start", Message: "A calendar needs a day: the job has no start yet.", Remedy: "Choose when the work begins."}
	}
	text, err := pour.Calendar(sheet.Entries, job.ID, stamp)
	if err != nil {
		return "", (&pourWork{}).refusal(err)
	}
	return text, nil
}
