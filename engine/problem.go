package engine

import (
	"errors"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// Problem is something in the job that can't be read or worked out, for the person who must act: where, what was given, what would work.
// The rest of the plan is still worked out where it doesn't depend on it.
type Problem struct {
	Code    string       `json:"code"`
	Field   string       `json:"field"` // path in the job document: "rooms/0/outline/length"
	Given   string       `json:"given,omitempty"`
	Message string       `json:"message"`
	Remedy  string       `json:"remedy"`
	At      *floor.Point `json:"at,omitempty"` // the spot in plan, where there is one
}

func (p Problem) Error() string { return p.Field + ": " + p.Message + " " + p.Remedy }

// reader reads a job's fields and collects what it can't read, so that one bad field hides no other.
type reader struct{ problems []Problem }

func (r *reader) fail(p Problem) {
	switch {
	case len(r.problems) < mostProblems:
		r.problems = append(r.problems, p)
	case len(r.problems) == mostProblems:
		r.problems = append(r.problems, Problem{Code: "too-many", Field: p.Field, Message: "More than 1,000 things in this job can't be used; the rest are not listed.", Remedy: "Put the first ones right."})
	}
}

// quantity reads a field that must be there.
func (r *reader) quantity(field, typed string, d quantity.Dimension) (float64, bool) {
	return r.quantityIn(field, typed, d, "")
}

// quantityIn reads a field whose bare numbers take a unit, as a field book's column does.
func (r *reader) quantityIn(field, typed string, d quantity.Dimension, bareUnit string) (float64, bool) {
	value, err := quantity.ReadIn(typed, d, bareUnit)
	if err != nil {
		r.failReading(field, typed, err)
		return 0, false
	}
	return value, true
}

// span reads a length that must be above zero, or at least zero where zero is allowed.
func (r *reader) span(field, typed string, zero bool) (float64, bool) {
	value, ok := r.quantity(field, typed, quantity.Length)
	if !ok {
		return 0, false
	}
	if value < 0 || (value == 0 && !zero) {
		r.fail(Problem{Code: "not-positive", Field: field, Given: typed, Message: "This length must be more than zero.", Remedy: "Give it as measured, for example 2.4 m or 7' 10\"."})
		return 0, false
	}
	return value, true
}

func (r *reader) failReading(field, typed string, err error) {
	var bad *quantity.Error
	if errors.As(err, &bad) {
		r.fail(Problem{Code: bad.Code, Field: field, Given: typed, Message: bad.Message, Remedy: bad.Remedy})
		return
	}
	r.fail(Problem{Code: "unreadable", Field: field, Given: typed, Message: err.Error(), Remedy: "Give a number with its unit."})
}

// failShape reports an outline that can't be, with the spot where it goes wrong.
func (r *reader) failShape(field string, err error) {
	var bad *floor.Error
	if errors.As(err, &bad) {
		at := bad.At
		r.fail(Problem{Code: bad.Code, Field: field, Message: bad.Message, Remedy: bad.Remedy, At: &at})
		return
	}
	r.fail(Problem{Code: "shape", Field: field, Message: err.Error(), Remedy: "Measure the walls again and enter them in order."})
}
