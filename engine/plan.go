package engine

import (
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/rules"
)

// MakePlan works a job out. It is a pure function: the same job and rulebook give the same plan, to the byte, native and in WebAssembly.
// What can't be read is listed as a problem; all that doesn't hang on it is still worked out.
func MakePlan(job *Job, book *Rulebook) *Plan { return workOut(job, book).plan() }

// workOut does all the work of a plan.
func workOut(job *Job, book *Rulebook) *work {
	w := &work{job: job, book: book, amounts: amounts{job.Units}}
	return w.run()
}

// workFrom works a changed job out. Where the change leaves a room's readings and walls alone it takes the surface from before, and it draws nothing.
func workFrom(before *work, job *Job) *work {
	w := &work{job: job, book: before.book, amounts: amounts{job.Units}, before: before}
	return w.run()
}

func (w *work) run() *work {
	job := w.job
	if w.units != quantity.US {
		w.units = quantity.Metric
	}
	w.readJob()
	for i := range job.Rooms {
		if i == mostRooms {
			w.fail(Problem{Code: "too-many", Field: "rooms", Message: "A job has 200 rooms at most; the rest are left out.", Remedy: "Split the job."})
			break
		}
		w.rooms = append(w.rooms, w.workRoom(&job.Rooms[i], "rooms/"+strconv.Itoa(i)))
	}
	w.total()
	w.judge()
	return w
}

// work is a plan in the making.
type work struct {
	reader
	amounts
	job      *Job
	book     *Rulebook
	facts    rules.Facts // of the job
	rooms    []*roomWork
	totals   Totals
	findings []Finding
	before   *work // nil, or what this one differs from in some answers
}

// readJob reads what is said of the whole job and of its products.
func (w *work) readJob() {
	w.facts = rules.Facts{}
	w.readAnswers(w.job.Answers, ScopeJob, "answers", rules.FromTyped, w.facts)
	for _, kind := range SheetKinds {
		if sheet, given := w.job.Sheets[kind]; given {
			w.readAnswers(sheet.Values, ScopeJob, "sheets/"+kind+"/values", rules.FromSheet, w.facts)
		}
	}
	w.proveAir()
}

func (w *work) plan() *Plan {
	plan := &Plan{Units: string(w.units), Problems: w.problems, Totals: w.totals, Findings: w.findings, Questions: w.questions(), Rooms: []RoomPlan{}, Holds: holding(ScopeJob, w.facts)}
	if plan.Problems == nil {
		plan.Problems = []Problem{}
	}
	for _, room := range w.rooms {
		plan.Rooms = append(plan.Rooms, room.plan)
	}
	return plan
}

// within makes a copy of facts to add a narrower scope's to.
func within(facts rules.Facts) rules.Facts {
	copied := make(rules.Facts, len(facts)+16)
	for name, given := range facts {
		copied[name] = given
	}
	return copied
}
