package rules

// Compiling a book: every rule is checked on its own, so that one bad rule never takes the others with it.

import (
	"sort"
	"strings"

	"lowspot/engine/quantity"
)

// limitChain is how many figures may hang on one another; each costs stack when it is worked out.
const limitChain = 64

// Compiled is a book ready to be worked out, on any number of facts. It is not changed by that.
type Compiled struct {
	names   *names
	figures []figure
	checks  []check
}

type figure struct {
	rule     *Rule
	slot     int
	code     *code  // nil when broken
	broken   *Error // why it can't be worked out
	examples []example
}

type check struct {
	rule     *Rule
	applies  *code // nil: always
	holds    *code
	says     *template
	remedy   *template
	broken   *Error
	examples []example
}

// Compile checks a book against a vocabulary. With errors the rules that are right still work; the others come out faulty.
func Compile(b *Book, v Vocabulary) (*Compiled, []*Error) {
	c := &compiling{Compiled: &Compiled{names: nameWords(v)}, seen: map[string]bool{}}
	if len(b.Rules) > LimitRules {
		c.errors = append(c.errors, &Error{Code: CodeLimit, Message: "The rulebook has more than " + count(LimitRules, "rule") + "; those after are left out.", Remedy: "Split the book."})
	}
	rules := make([]Rule, min(len(b.Rules), LimitRules))
	copy(rules, b.Rules)
	for i := range rules {
		c.header(&rules[i])
	}
	for i := range c.figures {
		c.compileFigure(&c.figures[i])
	}
	c.findCircles()
	for i := range rules {
		if rules[i].Check {
			c.compileCheck(&rules[i])
		}
	}
	c.readExamples()
	sort.SliceStable(c.errors, func(i, j int) bool {
		a, b := c.errors[i], c.errors[j]
		return a.Line < b.Line || a.Line == b.Line && a.Column < b.Column
	})
	if len(c.errors) > limitErrors {
		c.errors = c.errors[:limitErrors]
	}
	return c.Compiled, c.errors
}

type compiling struct {
	*Compiled
	seen   map[string]bool
	errors []*Error
}

// fail tells an error of a whole field.
func (c *compiling) fail(r *Rule, field, code, message, remedy string) *Error {
	e := &Error{Code: code, Rule: r.Name, Field: field, Message: message, Remedy: remedy}
	r.locate(e, field, nil)
	c.errors = append(c.errors, e)
	return e
}

// header checks what stands around a rule's expressions and makes the figures known by name.
func (c *compiling) header(r *Rule) {
	if r.For == "" {
		r.For = "job"
	}
	if !contains(scopeNames(), r.For) {
		c.fail(r, "for", CodeScope, "No scope is called “"+r.For+"”.", "Use "+orList(scopeNames(), "")+".")
		r.For = "job"
	}
	for _, key := range r.keys() {
		for n, text := range r.texts(key) {
			if len(text) > LimitField {
				c.fail(r, label(key, n), CodeLimit, "This field is longer than "+bytesText(LimitField)+".", "Shorten it.")
			}
		}
	}
	if c.name(r); !r.Check {
		f := figure{rule: r, slot: len(c.names.list)}
		s := c.figureShape(r)
		if s.bad() {
			f.broken = c.errors[len(c.errors)-1]
		}
		if !c.names.taken(r.Name) {
			c.names.add(named{name: r.Name, scope: r.For, shape: s, figure: len(c.figures)})
			c.figures = append(c.figures, f)
		}
	}
}

// name checks a rule's name.
func (c *compiling) name(r *Rule) {
	switch {
	case !wellNamed(r.Name, r.Check) && r.Check:
		c.fail(r, "", CodeFormat, "“"+r.Name+"” is no name for a check.", "Use small letters, digits and hyphens, beginning with a letter: thin-over-wood.")
	case !wellNamed(r.Name, r.Check):
		c.fail(r, "", CodeFormat, "“"+r.Name+"” is no name for a figure.", "Use small letters, digits and underscores, beginning with a letter: least_depth.")
	case c.seen[r.Name] || c.names.taken(r.Name) || !r.Check && contains(reserved, r.Name):
		c.fail(r, "", CodeFormat, "The name “"+r.Name+"” is taken.", "Give this "+r.sort()+" another name.")
	}
	c.seen[r.Name] = true
}

var reserved = []string{"in", "or", "and", "not", "let", "if", "else", "true", "false", "nil", "matches", "contains", "startsWith", "endsWith"}

func wellNamed(name string, check bool) bool {
	joint := byte('_')
	if check {
		joint = '-'
	}
	for i := 0; i < len(name); i++ {
		letter := name[i] >= 'a' && name[i] <= 'z'
		if !letter && (i == 0 || name[i] != joint && (name[i] < '0' || name[i] > '9')) {
			return false
		}
	}
	return name != "" && len(name) <= LimitName
}

// figureShape is the kind of value that a figure says it has.
func (c *compiling) figureShape(r *Rule) shape {
	switch r.Kind {
	case "", Quantity:
		d, known := quantity.DimensionNamed(r.Dimension)
		if !known {
			remedy := "Write “dimension: length” or another; or “kind: truth”, “kind: choice” with “choices:”, “kind: text”."
			if near := nearest(r.Dimension, dimensionNames); near != "" && r.Dimension != "" {
				remedy = "Did you mean “" + near + "”? " + remedy
			}
			message := "No dimension is called “" + r.Dimension + "”."
			if r.Dimension == "" {
				message = "This figure has no dimension."
			}
			c.fail(r, "dimension", CodeDimension, message, remedy)
			return unknownShape
		}
		return quantityShape(d)
	case Truth, Text:
		return shape{kind: r.Kind}
	case Choice:
		if len(r.Choices) > 0 {
			return shape{kind: Choice, choices: r.Choices}
		}
		c.fail(r, "choices", CodeChoice, "This figure is a choice, but no options are listed.", "Write “choices: a, b, c”.")
		return unknownShape
	}
	c.fail(r, "kind", CodeKind, "No kind of value is called “"+string(r.Kind)+"”.", "Use quantity, truth, choice or text.")
	return unknownShape
}

var dimensionNames = []string{"number", "length", "area", "volume", "mass", "time", "temperature", "temperature difference", "money", "speed",
	"force", "pressure", "density", "flow", "evaporation rate", "mass per area", "coverage", "yield", "area per mass"}

// expression compiles one field's expression; broken is why it can't be used.
func (c *compiling) expression(r *Rule, field, text string, wanted shape) (*code, *Error) {
	out, errors := compileExpression(c.names, r.For, source{rule: r, field: field, whole: text, text: text}, wanted)
	c.errors = append(c.errors, errors...)
	if out == nil && len(errors) == 0 {
		errors = []*Error{{Code: CodeUnknown, Rule: r.Name, Field: field, Message: "This uses a figure that has an error of its own.", Remedy: "Put that one right first."}}
	}
	if out == nil {
		return nil, errors[0]
	}
	return out, nil
}

func (c *compiling) compileFigure(f *figure) {
	if f.broken != nil {
		return
	}
	if strings.TrimSpace(f.rule.Value) == "" {
		f.broken = c.fail(f.rule, "value", CodeFormat, "This figure has no value.", "Write “value:” with an expression.")
		return
	}
	f.code, f.broken = c.expression(f.rule, "value", f.rule.Value, c.names.list[f.slot].shape)
	if f.code != nil && f.code.shape.percent {
		c.names.list[f.slot].shape.percent = true
	}
}

// findCircles breaks the figures that need each other, and names the circle.
func (c *compiling) findCircles() {
	depths := make([]int, len(c.figures)) // 0 not visited, -1 being visited
	var path []int
	var visit func(i int) int
	visit = func(i int) int {
		f := &c.figures[i]
		switch {
		case depths[i] > 0:
			return depths[i]
		case depths[i] < 0:
			c.circle(path, i)
			return 1
		}
		depths[i] = -1
		path = append(path, i)
		deepest := 0
		for _, used := range c.uses(f) {
			deepest = max(deepest, visit(used))
		}
		path = path[:len(path)-1]
		depths[i] = deepest + 1
		if depths[i] > limitChain && f.broken == nil {
			f.broken = c.fail(f.rule, "value", CodeLimit, "More than "+count(limitChain, "figure")+" hang on one another here.", "Put some of them together.")
			f.code = nil
		}
		return depths[i]
	}
	for i := range c.figures {
		visit(i)
	}
}

func (c *compiling) circle(path []int, back int) {
	var turn []string
	for start, i := range path {
		if i == back {
			for _, j := range path[start:] {
				turn = append(turn, c.figures[j].rule.Name)
			}
		}
	}
	turn = append(turn, c.figures[back].rule.Name)
	f := &c.figures[back]
	broken := c.fail(f.rule, "value", CodeCircle, "These figures go in a circle: "+strings.Join(turn, " → ")+".", "Give one of them a value that does not need the others.")
	for _, i := range path {
		if contains(turn, c.figures[i].rule.Name) {
			c.figures[i].broken, c.figures[i].code = broken, nil
		}
	}
}

// uses are the figures that a figure's value reads, in the order of their slots.
func (c *Compiled) uses(f *figure) []int {
	if f.code == nil {
		return nil
	}
	var used []int
	for slot := range c.names.list {
		if _, reads := f.code.reads[slot]; reads && c.names.list[slot].figure >= 0 {
			used = append(used, c.names.list[slot].figure)
		}
	}
	return used
}

func (c *compiling) compileCheck(r *Rule) {
	out := check{rule: r}
	note := func(e *Error) {
		if out.broken == nil {
			out.broken = e
		}
	}
	if r.Weight != Stop && r.Weight != Fix && r.Weight != Watch {
		note(c.fail(r, "weight", CodeFormat, "A check's weight is stop, fix or watch; this says “"+r.Weight+"”.", "Write “weight: stop” where nobody should pour before it is put right."))
	}
	if strings.TrimSpace(r.Holds) == "" {
		note(c.fail(r, "holds", CodeFormat, "This check has no condition.", "Write “holds:” with an expression."))
	} else {
		var broken *Error
		out.holds, broken = c.expression(r, "holds", r.Holds, truthShape)
		note(broken)
	}
	if strings.TrimSpace(r.Applies) != "" {
		var broken *Error
		out.applies, broken = c.expression(r, "applies", r.Applies, truthShape)
		note(broken)
	}
	if strings.TrimSpace(r.Says) == "" {
		note(c.fail(r, "says", CodeFormat, "This check says nothing.", "Write “says:” with a sentence; {depth.least} puts a value in."))
	}
	var errors []*Error
	out.says, errors = compileTemplate(c.names, r, "says", r.Says)
	c.errors = append(c.errors, errors...)
	out.remedy, errors = compileTemplate(c.names, r, "remedy", r.Remedy)
	c.errors = append(c.errors, errors...)
	c.checks = append(c.checks, out)
}

// Needs are the words that a figure or a check reads, itself or through figures, in the order of the vocabulary.
func (c *Compiled) Needs(name string) []string {
	reached := map[int]bool{}
	for i := range c.figures {
		if c.figures[i].rule.Name == name {
			c.reach(c.figures[i].code, reached)
		}
	}
	for i := range c.checks {
		if c.checks[i].rule.Name == name {
			c.reach(c.checks[i].applies, reached)
			c.reach(c.checks[i].holds, reached)
		}
	}
	var words []string
	for slot, n := range c.names.list {
		if reached[slot] && n.figure < 0 {
			words = append(words, n.name)
		}
	}
	return words
}

func (c *Compiled) reach(from *code, reached map[int]bool) {
	if from == nil {
		return
	}
	for slot := range from.reads {
		if !reached[slot] {
			reached[slot] = true
			if i := c.names.list[slot].figure; i >= 0 {
				c.reach(c.figures[i].code, reached)
			}
		}
	}
}
