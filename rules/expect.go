package rules

// Telling where a value is not of the kind, dimension or options that belong there.

// expect tells where a value is not of the kind or dimension that belongs there.
func (l *lowering) expect(got lowered, wanted shape, where string) bool {
	s := got.shape
	switch {
	case s.bad() || wanted.bad():
		return true
	case wanted.kind == Choice && s.kind == Text && s.literals != nil || wanted.kind == Choice && s.kind == Choice:
		return l.options(got, wanted)
	case s.kind == wanted.kind && s.dim == wanted.dim && s.list == wanted.list:
		return true
	case s.bare && wanted.kind == Quantity:
		l.bareNumber(got, wanted)
	case s.kind == Quantity && wanted.kind == Quantity:
		l.fail(got.id, CodeDimension, "“"+l.text(got.id)+"” is "+s.words()+"; "+wanted.words()+" belongs "+where+".", "")
	default:
		remedy := ""
		if wanted.kind == Truth {
			remedy = "Compare it with something, or use a word that is answered by yes or no."
		}
		l.fail(got.id, CodeKind, "“"+l.text(got.id)+"” is "+s.words()+"; "+wanted.words()+" belongs "+where+".", remedy)
	}
	return false
}

// options tells where a text or a choice can be an option that the wanted choice doesn't have.
func (l *lowering) options(got lowered, wanted shape) bool {
	for _, text := range append(append([]string{}, got.shape.literals...), got.shape.choices...) {
		if !contains(wanted.choices, text) {
			l.unknownChoice(got, text, wanted.choices)
			return false
		}
	}
	return true
}

func (l *lowering) unknownChoice(got lowered, text string, choices []string) {
	remedy := "Use one of: " + orList(choices, `"`) + "."
	if near := nearest(text, choices); near != "" {
		remedy = `Did you mean "` + near + `"? ` + remedy
	}
	at := l.code.nodes[got.id].at
	for _, n := range l.code.nodes[got.id:] {
		if n.literal && len(n.shape.literals) == 1 && n.shape.literals[0] == text {
			at = n.at
		}
	}
	l.failAt(at, CodeChoice, "“"+text+"” is not one of the options.", remedy)
}

func (l *lowering) bareNumber(got lowered, wanted shape) {
	remedy := "Give it a unit."
	if example := unitExample(wanted.dim, l.text(got.id)); example != "" {
		remedy = "Give it a unit: " + example + "."
	}
	l.fail(got.id, CodeDimension, "“"+l.text(got.id)+"” is a bare number where "+wanted.words()+" belongs.", remedy)
}
