package rules

// Sentences with values put in: "The pour is {depth.least} at its thinnest." A brace itself is written twice.

import (
	"strings"

	"lowspot/engine/quantity"
)

type template struct {
	parts []templatePart
	told  []*Error // of its braces
}

// templatePart is text, or an expression that is put in.
type templatePart struct {
	text string
	put  *expression
}

// What stands where a value can't be put in.
const (
	notKnown   = "(not known)"
	notWorkOut = "(can't be worked out)"
)

// newTemplate reads a sentence.
func newTemplate(r *Rule, field, text string) *template {
	t := &template{}
	if len(text) > LimitField {
		return t // told already
	}
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
				t.told = append(t.told, s.fail(span{-1, 0}, CodeSyntax, "This brace is not closed.", "Close it with } after the expression; write {{ for a brace itself."))
				return t
			}
			if len(t.parts) == 2*limitPieces {
				t.told = append(t.told, s.fail(span{}, CodeLimit, "More than "+count(limitPieces, "value")+" are put in here.", "Shorten the sentence."))
				return t
			}
			t.parts = append(t.parts, templatePart{text: string(plain)}, templatePart{put: &expression{source: s}})
			plain = nil
			i = end
		case c == '\n':
			plain = append(plain, ' ')
		default:
			plain = append(plain, c)
		}
	}
	t.parts = append(t.parts, templatePart{text: string(plain)})
	return t
}

// fill puts the values in.
func (t *template) fill(r *run, s quantity.System) string {
	var w strings.Builder
	for _, p := range t.parts {
		if p.put == nil {
			w.WriteString(p.text)
			continue
		}
		switch out := r.work(p.put); out.state {
		case Known:
			w.WriteString(show(out.value, p.put.code.shape, s))
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
