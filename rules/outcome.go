package rules

import "lowspot/engine/quantity"

// Figure works one figure out. An unknown name is faulty.
func (c *Compiled) Figure(name string, f Facts) Result {
	slot, known := c.names.slots[name]
	if !known || c.names.list[slot].figure < 0 {
		return Result{Name: name, State: Faulty, Fault: &Error{Code: CodeUnknown, Message: "No figure is called “" + name + "”.", Remedy: "It may have been renamed."}}
	}
	r := c.newRun(f)
	defer r.end()
	return r.result(slot)
}

// Figures works out every figure of a scope that applies there, in the book's order. One that doesn't is still worked out where another rule reads it.
func (c *Compiled) Figures(scope string, f Facts) []Result {
	r := c.newRun(f)
	defer r.end()
	results := make([]Result, 0, len(c.figures))
	for _, one := range c.figures {
		if one.rule.For == scope && !r.idle(one.applies) {
			results = append(results, r.result(one.slot))
		}
	}
	return results
}

// idle tells whether a condition is known not to hold.
func (r *run) idle(applies *expression) bool {
	if applies == nil {
		return false
	}
	w := r.work(applies)
	return w.state == Known && w.value != true
}

func (r *run) result(slot int) Result {
	n, a := &r.compiled.names.list[slot], r.answer(slot)
	return Result{Name: n.name, Words: r.compiled.figures[n.figure].rule.Words, State: a.state, Value: valueOf(a.value, n.shape.kind), Given: a.given, Missing: a.missing, Fault: a.fault}
}

func valueOf(value any, kind Kind) Value {
	v := Value{Kind: kind}
	switch x := value.(type) {
	case float64:
		v.Number = x
	case bool:
		v.Truth = x
	case string:
		v.Text = x
	}
	return v
}

// Show writes a word's or figure's value for people, in a system of units.
func (c *Compiled) Show(name string, v Value, s quantity.System) string {
	slot, known := c.names.slots[name]
	if !known {
		return v.Text
	}
	of := c.shape(slot)
	switch of.kind {
	case Quantity:
		return show(v.Number, of, s)
	case Truth:
		return show(v.Truth, of, s)
	}
	return v.Text
}

// Checks works out every check of a scope on one set of facts, in the book's order. Sentences show quantities in the system of units.
func (c *Compiled) Checks(scope string, f Facts, s quantity.System) []Outcome {
	r := c.newRun(f)
	defer r.end()
	outcomes := make([]Outcome, 0, len(c.checks))
	for i := range c.checks {
		k := &c.checks[i]
		if k.rule.For != scope {
			continue
		}
		if k.rule.Off != "" {
			out := k.outcome()
			out.State, out.Off = Off, k.rule.Off
			outcomes = append(outcomes, out)
			continue
		}
		outcomes = append(outcomes, r.judge(k, s))
	}
	return outcomes
}

func (k *check) outcome() Outcome {
	return Outcome{Rule: k.rule.Name, Theme: k.rule.Theme, Weight: k.rule.Weight, Words: k.rule.Words, Source: k.rule.Source}
}

// judge works a check out, whether it is switched off or not.
func (r *run) judge(k *check, s quantity.System) Outcome {
	out := k.outcome()
	if k.broken != nil {
		out.State, out.Fault = Faulty, k.broken
		return out
	}
	if k.applies != nil {
		if w := r.work(k.applies); w.state != Known {
			return out.undecided(k, w.answer)
		} else if w.value == false {
			out.State = Idle
			return out
		}
	}
	w := r.work(k.holds)
	if w.state != Known {
		return out.undecided(k, w.answer)
	}
	holds := w.value == true
	margin := k.holds.code.margin.measure(w.frame.compared)
	out.State, out.Caution = Kept, k.rule.Caution
	if !holds {
		out.State = Broken
		out.Says, out.Remedy = k.says.fill(r, s), k.remedy.fill(r, s)
	}
	if margin.fits(holds) {
		margin.Text = show(margin.Value, shape{kind: Quantity, dim: margin.Dimension, percent: margin.percent}, s)
		out.Margin = margin
	}
	return out
}

// undecided is the outcome of a check that could not be worked out.
func (out Outcome) undecided(k *check, a answer) Outcome {
	out.State, out.Missing, out.Fault = a.state, a.missing, a.fault
	out.Asks, out.Caution = k.rule.Asks, k.rule.Caution
	return out
}
