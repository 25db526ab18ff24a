package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lowspot/engine/quantity"
)

// traced writes a trace as an indented table: text, value, where a name's value comes from.
func tracedText(steps []Step) string {
	var w strings.Builder
	for _, s := range steps {
		w.WriteString(s.Of + " " + s.Field + ": " + strings.Repeat("  ", s.Depth) + s.Text)
		switch {
		case !s.Reached:
			w.WriteString(" | not reached")
		case s.Missing:
			w.WriteString(" | missing")
		default:
			w.WriteString(" | " + s.Value)
		}
		if s.Given != nil {
			w.WriteString(" | " + s.Given.From)
		}
		w.WriteString("\n")
	}
	return w.String()
}

const tracedBook = `
figure least
  for: deck
  dimension: length
  value: deck.wood ? (sheet.least_depth_wood ?? mm(10)) : (sheet.least_depth ?? mm(3))

check thin
  weight: stop
  for: deck
  applies: deck.wood && !(deck.kind in ["concrete"])
  holds: (depth.least - mm(1)) * 2 >= least || deck.sound
  says: No.
`

func TestATraceShowsEveryStepAndWhatWasNotReached(t *testing.T) {
	c := compiled(t, tracedBook)
	facts := given(t, words(), "deck.wood = yes, deck.kind = osb, depth.least = 6 mm")
	assert.Equal(t, strings.TrimLeft(`
thin applies: deck.wood && !(deck.kind in ["concrete"]) | yes
thin applies:   deck.wood | yes | typed
thin applies:   !(deck.kind in ["concrete"]) | yes
thin applies:     deck.kind in ["concrete"] | no
thin applies:       deck.kind | osb | typed
thin holds: (depth.least - mm(1)) * 2 >= least || deck.sound | yes
thin holds:   (depth.least - mm(1)) * 2 >= least | yes
thin holds:     (depth.least - mm(1)) * 2 | 10 mm
thin holds:       depth.least - mm(1) | 5 mm
thin holds:         depth.least | 6 mm | typed
thin holds:         mm(1) | 1 mm
thin holds:     least | 10 mm | rulebook
thin holds:   deck.sound | not reached
least value: deck.wood ? (sheet.least_depth_wood ?? mm(10)) : (sheet.least_depth ?? mm(3)) | 10 mm
least value:   deck.wood | yes | typed
least value:   sheet.least_depth_wood ?? mm(10) | 10 mm
least value:     sheet.least_depth_wood | missing
least value:     mm(10) | 10 mm
least value:   sheet.least_depth ?? mm(3) | not reached
least value:     sheet.least_depth | not reached
least value:     mm(3) | not reached
`, "\n"), tracedText(c.Trace("thin", facts, quantity.Metric)))
}

func TestATraceEndsWhereAWordIsMissing(t *testing.T) {
	c := compiled(t, tracedBook)
	text := tracedText(c.Trace("thin", given(t, words(), "deck.wood = yes, deck.kind = osb"), quantity.Metric))
	assert.Contains(t, text, "thin holds:         depth.least | missing\n")
	assert.Contains(t, text, "thin holds:     least | not reached\n")
	assert.Empty(t, c.Trace("nobody", nil, quantity.Metric))
}

func TestATraceComesToTheSameAsTheCheck(t *testing.T) {
	for _, facts := range []string{"deck.sound = yes, depth.least = 6 mm", "deck.sound = no, depth.least = 6 mm", "depth.least = 12 mm", "deck.sound = yes"} {
		for _, condition := range []string{
			"deck.sound && depth.least > mm(5)", "depth.least > mm(5) || deck.sound", "(deck.sound ? depth.least : mm(3)) > mm(4)",
			"any([depth.least, mm(20)], # > mm(10)) && deck.sound", "let d = depth.least * 2; d > mm(13)", "sum([depth.least, mm(20)]) / 2 > mm(14)",
			"mm(3) < depth.least < mm(8)", "(sheet.least_depth ?? mm(3)) < depth.least", "known(deck.sound) == deck.sound",
		} {
			c := compiled(t, "check it\n weight: stop\n for: deck\n holds: "+condition+"\n says: No.\n")
			g := given(t, words(), facts)
			out, steps := c.Checks("deck", g, quantity.Metric)[0], c.Trace("it", g, quantity.Metric)
			top := steps[0]
			want := map[State]string{Kept: "yes", Broken: "no", Unanswered: ""}[out.State]
			assert.Equal(t, want, top.Value, "%s with %s", condition, facts)
		}
	}
}
