package rules

// How far a condition is from tipping over.
//
// A comparison's margin is the distance between its sides, in their own unit: at or above zero while it holds, at or below zero where it does not.
// Both of “a && b” must hold, so the smaller margin counts; of “a || b” the larger; “!a” turns the sign. Only what was reached counts, so a side
// that a short circuit passed over has no say. Margins of different dimensions are put in order by their share of the larger side of the
// comparison (for a temperature, of 10 K: common practice). A condition that tips over on something other than a quantity has no margin.

import (
	"math"

	"lowspot/engine/quantity"
)

// marginOf is how the comparisons of an expression make it up. Without kids it is one comparison; negative sign turns it.
type marginOf struct {
	op      string // && or ||, ? for whichever side was reached; a comparison's operator
	kids    []*marginOf
	limit   int
	dim     quantity.Dimension
	percent bool
	negated bool
}

func marginOfBoth(op string, a, b *marginOf) *marginOf {
	if a == nil && b == nil {
		return nil
	}
	return &marginOf{op: op, kids: []*marginOf{a, b}}
}

func marginOfEither(a, b *marginOf) *marginOf { return marginOfBoth("?", a, b) }

// turned is the margin of the opposite.
func (m *marginOf) turned() *marginOf {
	if m == nil {
		return nil
	}
	t := *m
	t.negated = !t.negated
	return &t
}

const temperatureScale = 10 // K

// measure works the margin out from the comparisons that were reached; nil where none was.
func (m *marginOf) measure(compared []comparison) *Margin {
	if m == nil {
		return nil
	}
	var out *Margin
	if m.kids == nil {
		out = m.distance(compared[m.limit])
	} else {
		for _, kid := range m.kids {
			out = tighter(m.op, out, kid.measure(compared))
		}
	}
	if out != nil && m.negated {
		out.Value, out.Share = -out.Value, -out.Share
	}
	return out
}

func tighter(op string, a, b *Margin) *Margin {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	case (op == "||") == (b.Share > a.Share):
		return b
	}
	return a
}

func (m *marginOf) distance(c comparison) *Margin {
	if !c.reached {
		return nil
	}
	value := c.a - c.b
	if equal(c.a, c.b) {
		value = 0
	}
	switch m.op {
	case "<", "<=":
		value = -value
	case "==":
		value = -math.Abs(value)
	case "!=":
		value = math.Abs(value)
	}
	scale, d := math.Max(math.Abs(c.a), math.Abs(c.b)), m.dim
	if d.Point {
		scale, d = temperatureScale, quantity.TemperatureDifference
	}
	share := 0.0
	if value != 0 {
		share = value / scale
	}
	return &Margin{Value: value, Dimension: d, Share: share, percent: m.percent}
}

// fits tells whether a margin says the same as the outcome; where a yes-or-no word decided, it doesn't.
func (m *Margin) fits(holds bool) bool {
	return m != nil && (holds && m.Value >= 0 || !holds && m.Value <= 0)
}
