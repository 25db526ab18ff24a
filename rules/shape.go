package rules

import "lowspot/engine/quantity"

// shape is what is known of a sub-expression's value before it is run.
type shape struct {
	kind     Kind // empty: an error inside it has been told already
	dim      quantity.Dimension
	choices  []string // of a choice
	literals []string // the texts that a text can be, where all of them stand in the rule
	bare     bool     // a number written out, with no unit
	percent  bool     // a number that people read as a percentage
	list     bool     // a list of such values
}

var (
	unknownShape = shape{}
	truthShape   = shape{kind: Truth}
)

func quantityShape(d quantity.Dimension) shape { return shape{kind: Quantity, dim: d} }

func (t Type) shape() shape { return shape{kind: t.Kind, dim: t.Dimension, choices: t.Choices} }

func (s shape) bad() bool { return s.kind == "" }

func (s shape) isNumber() bool { return s.kind == Quantity && s.dim == quantity.Number && !s.list }

func (s shape) isPoint() bool { return s.kind == Quantity && s.dim.Point }

// plain is the shape of something worked out: it is no longer a number written out.
func (s shape) plain() shape {
	s.bare = false
	return s
}

// words names the shape for an error: "a length", "a bare number", "yes or no".
func (s shape) words() string {
	if s.list {
		one := s
		one.list = false
		return "a list (each " + one.words() + ")"
	}
	switch s.kind {
	case Quantity:
		if s.bare {
			return "a bare number"
		}
		if s.dim == quantity.Number {
			return "a number"
		}
		return withArticle(s.dim.Name())
	case Choice:
		return "a choice"
	case Truth:
		return "yes or no"
	}
	return "a text"
}

func withArticle(noun string) string {
	for _, vowel := range "aeio" {
		if len(noun) > 0 && rune(noun[0]) == vowel {
			return "an " + noun
		}
	}
	return "a " + noun
}

// unify is the shape of a value that may be either; ok is false where no word could hold both.
func unify(a, b shape) (shape, bool) {
	switch {
	case a.bad():
		return b, true
	case b.bad():
		return a, true
	case a.list != b.list:
		return a, false
	case a.kind == Quantity && b.kind == Quantity:
		a.bare, a.percent = a.bare && b.bare, a.percent || b.percent
		return a, a.dim == b.dim
	case a.kind == Text && b.kind == Choice:
		return unify(b, a)
	case a.kind == Choice && b.kind == Text:
		return a, b.literals != nil
	case a.kind == Text && b.kind == Text:
		if a.literals == nil || b.literals == nil {
			a.literals = nil
		} else {
			a.literals = append(append([]string{}, a.literals...), b.literals...)
		}
		return a, true
	case a.kind == Choice && b.kind == Choice:
		a.choices = append(append([]string{}, a.choices...), b.choices...)
		return a, true
	}
	return a, a.kind == b.kind
}

// strange returns a text of b that is no option of the choice a, or "".
func strange(a, b shape) string {
	if a.kind != Choice {
		a, b = b, a
	}
	if a.kind != Choice {
		return ""
	}
	for _, text := range b.literals {
		if !contains(a.choices, text) {
			return text
		}
	}
	return ""
}
