package rules

// What stands around a rule's expressions: its name, scope, kind and dimension.

import (
	"lowspot/engine/quantity"
)

// heading is a book whose rules are being made known.
type heading struct {
	*Compiled
	seen map[string]bool
}

// header checks what stands around a rule's expressions and makes the figures known by name.
func (c *heading) header(r *Rule) {
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
		s := c.figureShape(r)
		f := figure{rule: r, slot: len(c.names.list), value: newExpression(r, "value", r.Value, s), applies: newExpression(r, "applies", r.Applies, truthShape)}
		switch {
		case s.bad():
			f.broken = c.told[len(c.told)-1]
		case f.value == nil:
			f.broken = c.fail(r, "value", CodeFormat, "This figure has no value.", "Write “value:” with an expression.")
		}
		if !c.names.taken(r.Name) {
			c.names.add(named{name: r.Name, scope: r.For, shape: s, figure: len(c.figures)})
			c.figures = append(c.figures, f)
		}
	}
}

// fail tells an error of a whole field.
func (c *heading) fail(r *Rule, field, code, message, remedy string) *Error {
	e := r.failField(field, code, message, remedy)
	c.told = append(c.told, e)
	return e
}

// name checks a rule's name.
func (c *heading) name(r *Rule) {
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
func (c *heading) figureShape(r *Rule) shape {
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
