package engine

import "lowspot/rules"

// resting gives a figure that the plan itself rests on. One that can't be worked out, or is left out or switched off, is a problem, and what rests
// on it is not planned: by a number that only looks right somebody would buy.
func (w *work) resting(name string, facts rules.Facts) (float64, bool) {
	value, result := w.book.quantity(name, facts)
	switch {
	case result.State == rules.Known:
		return value, true
	case result.State == rules.Faulty:
		why := ""
		if result.Fault != nil {
			why = ": " + result.Fault.Message
		}
		w.failFigure(name, "The rulebook's figure “"+name+"” can't be worked out"+why)
	case len(result.Missing) == 1 && result.Missing[0] == name:
		w.failFigure(name, "The rulebook's figure “"+name+"” is switched off, and the plan rests on it.")
	}
	return value, false
}

func (w *work) failFigure(name, message string) {
	field := "rulebook/" + name
	for _, told := range w.problems {
		if told.Field == field {
			return
		}
	}
	w.fail(Problem{Code: "rule", Field: field, Message: message, Remedy: "Open it in the rulebook and put it right, or return to the shipped rule."})
}

// brokenFigure tells that a figure that the plan rests on has failed.
func (w *work) brokenFigure(name string) bool {
	for _, told := range w.problems {
		if told.Field == "rulebook/"+name {
			return true
		}
	}
	return false
}
