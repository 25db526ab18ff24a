package rules

// Running the examples.

import (
	"lowspot/engine/quantity"
)

// Examples runs every rule's examples, switched off or not, in the book's order: figures first, then checks.
func (c *Compiled) Examples() []ExampleResult {
	c.examples()
	var results []ExampleResult
	for i := range c.figures {
		for n := range c.figures[i].examples {
			results = append(results, c.runFigure(&c.figures[i], n))
		}
	}
	for i := range c.checks {
		k := &c.checks[i]
		for n, e := range k.examples {
			out := ExampleResult{Rule: k.rule.Name, Number: n, Text: e.text, Wanted: e.wanted, Error: e.err}
			if e.err == nil {
				got := c.newRun(e.given).judge(k, quantity.Metric)
				out.Got, out.Passed = string(got.State), got.State == e.state
			}
			results = append(results, out)
		}
	}
	return results
}

func (c *Compiled) runFigure(f *figure, n int) ExampleResult {
	e := f.examples[n]
	out := ExampleResult{Rule: f.rule.Name, Number: n, Text: e.text, Wanted: e.wanted, Error: e.err}
	if e.err != nil {
		return out
	}
	on := *c.figure(c.names.list[f.slot].figure)
	rule := *f.rule
	rule.Off = ""
	on.rule = &rule
	got := c.newRun(e.given).figure(&on)
	out.Got, out.Passed = string(got.state), got.state == e.state
	if got.state == Known {
		of := c.shape(f.slot)
		out.Got = show(got.value, of, quantity.Metric)
		out.Passed = e.state == Known && sameValue(valueOf(got.value, of.kind), e.value)
	}
	return out
}

// sameValue compares with what a person wrote down, who rounds: a millionth is let pass.
func sameValue(a, b Value) bool {
	if a.Kind == Quantity && b.Kind == Quantity {
		difference := a.Number - b.Number
		size := 1e-6 * max(a.Number, -a.Number)
		return equal(a.Number, b.Number) || difference <= size && -difference <= size
	}
	return a.Text == b.Text && a.Truth == b.Truth
}
