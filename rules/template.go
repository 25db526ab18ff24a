package rules

// Sentences with values put in: "The pour is {depth.least} at its thinnest." A brace itself is written twice.

import (
	"strings"

	"lowspot/engine/quantity"
)

type template struct{ parts []templatePart }

// templatePart is text, or an expression where code is set.
type templatePart struct {
	text string
	code *code
}

// What stands where a value can't be put in.
const (
	notKnown   = "(not known)"
	notWorkOut = "(can't be worked out)"
)

// compileTemplate reads a sentence and compiles the expressions in it.
func compileTemplate(n *names, r *Rule, field, text string) (*template, []*Error) {
	t := &template{}
	if len(text) > LimitField {
		return t, nil // told already
	}
	var errors []*Error
	whole := []rune(text)
	var plain []rune
	for i := 0; i < len(whole); i++ {
		c := whole[i]
		doubled := i+1 < len(whole) && whole[i+1] == c
		switch {
		case (c == '{' || c == '}') && doubled:
			plain = append(plain, c)
			i++
		case c == '{':
			end := i + 1
			for end < len(whole) && whole[end] != '}' {
				end++
			}
			s := source{rule: r, field: field, whole: text, text: string(whole[i+1 : end]), start: i + 1}
			if end == len(whole) {
				return t, append(errors, s.fail(span{-1, 0}, CodeSyntax, "This brace is not closed.", "Close it with } after the expression; write {{ for a brace itself."))
			}
			if len(t.parts) == 2*limitPieces {
				return t, append(errors, s.fail(span{}, CodeLimit, "More than "+count(limitPieces, "value")+" are put in here.", "Shorten the sentence."))
			}
			code, failed := compileExpression(n, r.For, s)
			errors = append(errors, failed...)
			t.parts = append(t.parts, templatePart{text: string(plain)}, templatePart{code: code, text: notWorkOut})
			plain = nil
			i = end
		case c == '\n':
			plain = append(plain, ' ')
		default:
			plain = append(plain, c)
		}
	}
	t.parts = append(t.parts, templatePart{text: string(plain)})
	return t, errors
}

// fill puts the values in.
func (t *template) fill(r *run, s quantity.System) string {
	var w strings.Builder
	for _, p := range t.parts {
		if p.code == nil {
			w.WriteString(p.text)
			continue
		}
		switch out := r.work(p.code); out.state {
		case Known:
			w.WriteString(show(out.value, p.code.shape, s))
		case Unanswered:
			w.WriteString(notKnown)
		default:
			w.WriteString(notWorkOut)
		}
	}
	return w.String()
}

// show writes a value for people.
func show(value any, of shape, s quantity.System) string {
	switch v := value.(type) {
	case float64:
		if of.percent && of.dim == quantity.Number {
			return quantity.WriteIn(v, "%")
		}
		return quantity.Write(v, of.dim, s)
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case string:
		return v
	}
	return notKnown
}
