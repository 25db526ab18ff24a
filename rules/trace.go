package rules

import (
	"sort"

	"github.com/expr-lang/expr/vm"

	"lowspot/engine/quantity"
)

// Trace shows how a figure or a check comes out on some facts: every sub-expression with its value, and whether it was reached. The figures that
// it uses follow, each once. An unknown or broken rule has no trace.
func (c *Compiled) Trace(name string, f Facts, s quantity.System) []Step {
	t := &tracing{run: c.newRun(f), system: s, done: map[string]bool{name: true}}
	for i := range c.checks {
		if k := &c.checks[i]; k.rule.Name == name {
			t.expression(name, "applies", k.applies)
			t.expression(name, "holds", k.holds)
		}
	}
	for i := range c.figures {
		if one := &c.figures[i]; one.rule.Name == name {
			t.expression(name, "value", one.value)
		}
	}
	for len(t.figures) > 0 {
		slot := t.figures[0]
		t.figures = t.figures[1:]
		one := &c.figures[c.names.list[slot].figure]
		t.expression(one.rule.Name, "value", one.value)
	}
	return t.steps
}

type tracing struct {
	run     *run
	system  quantity.System
	steps   []Step
	figures []int // slots of figures to show yet
	done    map[string]bool
}

func (t *tracing) expression(of, field string, e *expression) {
	c, _ := t.run.compiled.code(e)
	if c == nil {
		return
	}
	program := c.trace()
	if program == nil {
		return
	}
	f := t.watch(c, program)
	var steps []Step
	for id := range c.nodes {
		if n := &c.nodes[id]; !n.literal && !n.shape.list {
			steps = append(steps, t.step(of, field, c, id, f))
		}
	}
	sort.SliceStable(steps, func(i, j int) bool {
		a, b := steps[i], steps[j]
		return a.From < b.From || a.From == b.From && a.To > b.To
	})
	t.steps = append(t.steps, steps...)
}

func (t *tracing) watch(c *code, program *vm.Program) *frame {
	seen := make([]sighting, len(c.nodes))
	return &frame{code: c, seen: seen, missing: t.run.execute(c, program, seen).stop}
}

func (t *tracing) step(of, field string, c *code, id int, f *frame) Step {
	n := &c.nodes[id]
	text := []rune(c.source.whole)
	at := func(i int) int { return wide(text[:min(max(i+c.source.start, 0), len(text))]) }
	out := Step{Field: field, Of: of, From: at(n.at.from), To: at(n.at.to), Depth: n.depth, Text: c.text(id), Reached: f.seen[id].reached}
	if n.slot >= 0 {
		t.named(&out, n.slot, f.missing == id)
	}
	if value := f.seen[id].value; out.Reached && value != nil {
		out.Value = show(value, n.shape, t.system)
	}
	out.Missing = out.Missing || out.Reached && f.seen[id].value == nil
	return out
}

// named adds to a step what its word or figure is and where it comes from.
func (t *tracing) named(out *Step, slot int, missing bool) {
	n := &t.run.compiled.names.list[slot]
	out.Name = n.name
	if missing {
		out.Reached, out.Missing = true, true
	}
	if given, is := t.run.facts[n.name]; is {
		out.Given = &given
		return
	}
	if n.figure < 0 || !out.Reached {
		return
	}
	a := t.run.answer(slot)
	out.Given = &Given{Value: valueOf(a.value, n.shape.kind), From: FromRulebook}
	if !t.done[n.name] {
		t.done[n.name] = true
		t.figures = append(t.figures, slot)
	}
}
