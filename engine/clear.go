package engine

// What would clear a broken check: for each thing that the check hangs on and that a person may change, the nearest value that makes it hold, found
// by working the job out again, with what else that changes. Nothing is taken from the rule's own text: a plan is tried, as a person would.

import (
	"strings"

	"lowspot/rules"
)

// Remedy is one change that clears a check.
type Remedy struct {
	Label  string     `json:"label"` // what is changed
	From   string     `json:"from"`  // as it stands; empty: not said
	To     string     `json:"to"`
	Sort   string     `json:"sort"` // decided, measured or sheet
	Sets   []FieldSet `json:"sets"` // what to write into the job
	Effect Effect     `json:"effect"`
}

// The sorts of what may be changed.
const (
	SortDecided  = "decided"  // the person's to choose: the plane, the crew, the finish
	SortMeasured = "measured" // how things are: it has to be so before it is entered
	SortSheet    = "sheet"    // what the product's bag says: another product would have to say it
)

// FieldSet is one field of the job with what to write there.
type FieldSet struct {
	Field string `json:"field"` // path in the job document
	To    string `json:"to"`
}

// Clearing is what would clear one finding.
type Clearing struct {
	Remedies []Remedy `json:"remedies"`
	Tried    []string `json:"tried"` // what was tried and clears it at no value that makes sense
	Left     []string `json:"left"`  // what was not tried, because the job is large
}

// Clear finds what would clear a check on a subject; with a shop it tells what each remedy does to the bill. False where the plan has no such finding.
func Clear(job *Job, book *Rulebook, shop *Shop, rule string, subject Subject) (Clearing, bool) {
	c := &clearing{job: job, book: book, rule: rule, subject: subject}
	c.before = workOut(job, book)
	found := c.before.find(rule, subject)
	if found == nil {
		return Clearing{}, false
	}
	out := Clearing{Remedies: []Remedy{}, Tried: []string{}, Left: []string{}}
	if found.State != rules.Broken {
		return out, true
	}
	c.runs = runsFor(job)
	for _, l := range c.levers() {
		remedies, done := c.pull(l)
		switch {
		case len(remedies) > 0:
			out.Remedies = append(out.Remedies, remedies...)
		case done:
			out.Tried = append(out.Tried, l.label)
		default:
			out.Left = append(out.Left, l.label)
		}
	}
	sortRemedies(out.Remedies)
	c.price(out.Remedies, shop)
	return out, true
}

type clearing struct {
	job     *Job
	book    *Rulebook
	rule    string
	subject Subject
	before  *work
	runs    int // plans that may yet be tried
}

// runsFor is how many plans may be tried: a large survey takes longer for each.
func runsFor(job *Job) int {
	readings := 0
	for _, room := range job.Rooms {
		readings += len(room.Readings.Rows)
	}
	runs := 120_000 / (readings + 150)
	if runs < 24 {
		return 24
	}
	return runs
}

// with is the job with some fields changed; false where one can't be set.
func (c *clearing) with(sets []FieldSet) (*Job, bool) {
	changed := c.job
	for _, s := range sets {
		var ok bool
		if changed, ok = changed.with(s); !ok {
			return nil, false
		}
	}
	return changed, true
}

// try works the job out with some fields changed; nil when the runs are used up or a field can't be read so.
func (c *clearing) try(sets []FieldSet) *work {
	if c.runs <= 0 {
		return nil
	}
	c.runs--
	changed, ok := c.with(sets)
	if !ok {
		return nil
	}
	after := workFrom(c.before, changed)
	for _, p := range after.problems {
		for _, s := range sets {
			if p.Field == s.Field || strings.HasPrefix(s.Field, p.Field+"/") {
				return nil
			}
		}
	}
	return after
}

// holds tells whether the check is cleared, and not merely left unanswered or without a pour.
func (c *clearing) holds(after *work) bool {
	if after == nil || after.totals.Bags == 0 && c.before.totals.Bags > 0 {
		return false
	}
	found := after.find(c.rule, c.subject)
	return found != nil && (found.State == rules.Kept || found.State == rules.Idle)
}

// remedy is the change made of some sets, if it clears the check.
func (c *clearing) remedy(l lever, to string, sets []FieldSet) (Remedy, bool) {
	after := c.try(sets)
	if !c.holds(after) {
		return Remedy{}, false
	}
	return Remedy{Label: l.label, From: l.from, To: to, Sort: l.sort, Sets: sets, Effect: effectOf(c.before, after)}, true
}
