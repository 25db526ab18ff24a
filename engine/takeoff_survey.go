package engine

import (
	"math"

	"lowspot/engine/quantity"
)

// fine writes a length of fractions of a millimetre.
func (t *buying) fine(si float64) Amount {
	step, unit := 1e-4, "mm"
	if t.units == quantity.US {
		step, unit = 2.54e-4, "in"
	}
	return Amount{si, quantity.WriteIn(math.Round(si/step)*step, unit)}
}

// quickSurvey tells what reading the floor would spare. The mean depth is taken to come out as said; then only the doubt shrinks, and with it
// the bags that are bought against running out.
func (t *buying) quickSurvey() {
	if t.out.Bags == nil {
		return
	}
	area, readings, now := 0.0, 0.0, 0.0
	after := *t.doubt
	still := t.usual("surveyed_doubt")
	for _, r := range t.rooms {
		if r.rough == nil {
			continue
		}
		own := r.outline.Area()
		said, read := r.rough.doubt*own, math.Min(still, r.rough.doubt)*own
		area, now = area+own, now+said*said
		after.ground += read*read - said*said
		readings += t.asked("least_readings", r.facts)
	}
	if area == 0 {
		return
	}
	after.ground = math.Max(after.ground, 0)
	then := t.bags(after)
	if then == nil {
		return
	}
	t.out.Survey = &SurveySaves{
		Doubt: t.fine(math.Sqrt(now) / area), After: t.fine(still), Buy: t.out.Bags.Buy, Surely: then.Buy, Fewer: max(t.out.Bags.Buy-then.Buy, 0), Readings: int(readings),
	}
	t.out.Survey.Saves = t.worth("leveller", t.out.Survey.Fewer)
}
