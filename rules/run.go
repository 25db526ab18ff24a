package rules

// Running compiled expressions on one set of facts. A run works every figure out at most once.

import (
	"math"
	"strings"

	"github.com/expr-lang/expr/vm"
)

// run is one set of facts with what has been worked out from it.
type run struct {
	compiled *Compiled
	facts    Facts
	answers  []answer
	known    []int    // the slots of the answers that there are
	levels   []*level // one for each depth of figures in figures, used again and again
	depth    int
}

// answer is what a name comes to.
type answer struct {
	state   State // empty: not looked up yet
	value   any   // float64, string or bool
	missing []string
	fault   *Error
	given   bool // by the facts
}

// frame is one expression being run.
type frame struct {
	run      *run
	code     *code
	seen     []sighting // only when traced
	compared []comparison
	missing  int // the node that found no value, or -1
	fault    *Error
}

type sighting struct {
	reached bool
	value   any
}

type comparison struct {
	reached bool
	a, b    float64
}

// newRun begins a run; end it when its answers are no longer wanted, so that the next one has its room.
func (c *Compiled) newRun(f Facts) *run {
	r, is := c.runs.Get().(*run)
	if !is {
		r = &run{compiled: c, answers: make([]answer, len(c.names.list))}
	}
	r.facts = f
	return r
}

func (r *run) end() {
	for _, slot := range r.known {
		r.answers[slot] = answer{}
	}
	r.known, r.facts = r.known[:0], nil
	r.compiled.runs.Put(r)
}

// answer finds what a name comes to: given, worked out, or missing.
func (r *run) answer(slot int) *answer {
	a := &r.answers[slot]
	if a.state != "" {
		return a
	}
	r.known = append(r.known, slot)
	n := &r.compiled.names.list[slot]
	if given, is := r.facts[n.name]; is {
		*a = take(n, given.Value)
	} else if n.figure >= 0 {
		a.state = Faulty // guards against a circle that slipped through
		*a = r.figure(r.compiled.figure(n.figure))
	} else {
		*a = answer{state: Unanswered, missing: []string{n.name}}
	}
	return a
}

// take checks a given value against what the name may be.
func take(n *named, v Value) answer {
	a := answer{state: Known, given: true}
	problem := "is not of its kind"
	switch {
	case n.shape.kind == Quantity && v.Kind == Quantity:
		if !math.IsNaN(v.Number) && !math.IsInf(v.Number, 0) {
			a.value = v.Number
			return a
		}
		problem = "is not a number that can be counted on"
	case n.shape.kind == Truth && v.Kind == Truth:
		a.value = v.Truth
		return a
	case n.shape.kind == Choice && (v.Kind == Choice || v.Kind == Text):
		if contains(n.shape.choices, v.Text) {
			a.value = v.Text
			return a
		}
		problem = "is “" + v.Text + "”, which is not one of its options"
	case n.shape.kind == Text && (v.Kind == Choice || v.Kind == Text):
		a.value = v.Text
		return a
	}
	return answer{state: Faulty, given: true, fault: &Error{Code: CodeFault, Field: n.name, Message: "The value of “" + n.name + "” " + problem + ".", Remedy: "Enter it again."}}
}

// figure works a figure out.
func (r *run) figure(f *figure) answer {
	switch {
	case f.rule.Off != "":
		return answer{state: Unanswered, missing: []string{f.rule.Name}}
	case f.broken != nil:
		return answer{state: Faulty, fault: f.broken}
	}
	return r.work(f.value).answer
}

// worked is how one expression came out. The frame is that of its level: it holds until the next expression is run.
type worked struct {
	answer
	frame *frame
	stop  int // the node that found no value, or -1
}

// work runs an expression; one that can't be used is faulty.
func (r *run) work(e *expression) worked {
	c, broken := r.compiled.code(e)
	if c == nil {
		return worked{answer: answer{state: Faulty, fault: broken}}
	}
	return r.execute(c, c.program, nil)
}

// execute runs a program of an expression.
func (r *run) execute(c *code, program *vm.Program, seen []sighting) worked {
	f, machine := r.enter(c.limits)
	f.code, f.seen, f.missing, f.fault = c, seen, -1, nil
	value, err := machine.Run(program, f)
	r.depth--
	out := worked{answer{state: Known, value: value}, f, f.missing}
	switch {
	case f.fault != nil:
		out.answer = answer{state: Faulty, fault: f.fault}
	case f.missing >= 0:
		out.answer = answer{state: Unanswered, missing: r.wanted(c, out.stop)}
	case err != nil && strings.Contains(err.Error(), "memory budget exceeded"):
		f.fail(0, "goes through more than a rule may", "Shorten its lists, or take a loop out.")
		out.answer = answer{state: Faulty, fault: f.fault}
	case err != nil || !countable(value):
		f.fail(0, "comes to a number that is too large or undefined", "Look at what it is made of; the values put in may be far out of range.")
		out.answer = answer{state: Faulty, fault: f.fault}
	}
	return out
}

func countable(value any) bool {
	n, is := value.(float64)
	return value != nil && (!is || !math.IsNaN(n) && !math.IsInf(n, 0))
}

// level is what running one expression takes.
type level struct {
	machine vm.VM
	frame   frame
}

// enter goes one level deeper and clears as many comparisons as the expression has.
func (r *run) enter(comparisons int) (*frame, *vm.VM) {
	if r.depth == len(r.levels) {
		r.levels = append(r.levels, &level{machine: vm.VM{MemoryBudget: limitMemory}, frame: frame{run: r}})
	}
	l := r.levels[r.depth]
	r.depth++
	if cap(l.frame.compared) < comparisons {
		l.frame.compared = make([]comparison, comparisons)
	}
	l.frame.compared = l.frame.compared[:comparisons]
	clear(l.frame.compared)
	return &l.frame, &l.machine
}

// wanted are the words missing where a name found no value: its own and those read together with it.
func (r *run) wanted(c *code, id int) []string {
	var missing []string
	for _, slot := range c.groups[c.nodes[id].group] {
		if a := r.answer(slot); a.state == Unanswered {
			missing = union(missing, a.missing)
		}
	}
	return missing
}

func union(list, more []string) []string {
	for _, item := range more {
		if !contains(list, item) {
			list = append(list, item)
		}
	}
	return list
}
