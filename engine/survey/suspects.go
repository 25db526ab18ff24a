package survey

import (
	"math"
	"slices"

	"lowspot/engine/floor"
)

// Suspect is a reading that the others don't bear out.
type Suspect struct {
	Reading    int     // index
	Height     float64 // as read, metres
	Expected   float64 // from the others
	Off        float64 // height less expected
	Deviations float64 // that many standard deviations
}

// When a reading is called suspect: as far off as chance puts one sound reading in some 16,000, with enough others to say so; at most one in
// five, and ten in all, for then it isn't single readings that are wrong. Own choice.
const suspicious, leastOthers, oneIn, mostSuspects = 4.0, 5, 5, 10

// screened is how many neighbours each reading is held against where there are too many to solve for all.
const screened = 16

// Suspects finds mistyped or misread heights, the worst first. A wrong reading also spoils the fit by which it is judged, so the likeliest
// ones are left out in turn and the model fitted anew: the one that then stands furthest off is named, and the search goes on without it.
// Where there are more readings than are fitted at once, one wrong reading can't spoil the fit much, and the model stands.
func (m *Model) Suspects() []Suspect {
	found := []int{}
	rest, kept := m, upTo(len(m.points))
	for len(kept) > leastOthers && len(found) < clampInt(len(m.points)/oneIn, 1, mostSuspects) {
		worst, score, without := rest.worst()
		if score < suspicious {
			break
		}
		found = append(found, kept[worst])
		kept = append(append([]int{}, kept[:worst]...), kept[worst+1:]...)
		rest = without
	}
	return rest.confirm(m, found)
}

// confirm judges the readings that were left out against those that stay. One that only looked wrong beside a worse one is let go.
func (m *Model) confirm(all *Model, found []int) []Suspect {
	suspects := []Suspect{}
	if len(found) == 0 {
		return suspects
	}
	strain := m.strain()
	for _, i := range found {
		s := m.judge(all.points[i], all.heights[i], strain)
		s.Reading = i
		if s.Deviations >= suspicious {
			suspects = append(suspects, s)
		}
	}
	return suspects
}

func clampInt(x, low, high int) int { return max(low, min(high, x)) }

// Without leaves some readings out, to show what that changes.
func Without(points []floor.Point, heights []float64, dropped ...int) ([]floor.Point, []float64) {
	out := make([]bool, len(points))
	for _, i := range dropped {
		if i >= 0 && i < len(points) {
			out[i] = true
		}
	}
	var p []floor.Point
	var h []float64
	for i := range points {
		if !out[i] {
			p, h = append(p, points[i]), append(h, heights[i])
		}
	}
	return p, h
}

// judge holds a reading that isn't in the model against it.
func (m *Model) judge(p floor.Point, height, strain float64) Suspect {
	expected, variance := m.around(p, mostWhole, nearby).Estimate(p)
	off := height - expected
	doubt := strain * math.Sqrt(variance+m.ReadingError*m.ReadingError+leastDoubt)
	return Suspect{Height: height, Expected: expected, Off: off, Deviations: math.Abs(off) / doubt}
}

// leastDoubt keeps readings said to be exact, on ground that is exactly flat, from being judged to the last digit: 0.1 mm squared.
const leastDoubt = 1e-8

// strain is by how much the readings as a whole stand further off each other than the model has it, at least one: on a rough deck, or where
// the error of a reading is stated too small, they all do. It goes by the middle one of the readings, which a few wrong ones don't move.
func (m *Model) strain() float64 {
	off, doubt := m.leftOut()
	ratios := make([]float64, len(off))
	for i := range off {
		ratios[i] = math.Abs(off[i]) / doubt[i]
	}
	slices.Sort(ratios)
	const middleOfNormal = 0.6744897501960817 // half of all standard normal numbers lie within
	return math.Max(1, ratios[len(ratios)/2]/middleOfNormal)
}

// worst is the reading that stands furthest off the model without it.
func (m *Model) worst() (reading int, score float64, without *Model) {
	strain := 0.0
	if len(m.points) > mostFitted {
		strain = m.strain()
	}
	for _, i := range m.likeliest() {
		rest := m.withoutOne(i)
		if len(m.points) <= mostFitted {
			strain = rest.strain()
		}
		if s := rest.judge(m.points[i], m.heights[i], strain); s.Deviations > score*(1+1e-9) {
			reading, score, without = i, s.Deviations, rest
		}
	}
	return
}

func (m *Model) withoutOne(i int) *Model {
	points, heights := Without(m.points, m.heights, i)
	options := m.options
	if len(m.points) > mostFitted {
		options.Unevenness, options.Reach = m.Unevenness, m.Reach
	}
	rest, err := Fit(points, heights, m.ReadingError, options)
	if err != nil {
		panic(err) // the readings were checked, and some are left
	}
	return rest
}

// likeliest are the few readings that stand furthest off by their own doubt, and the one furthest off by length.
func (m *Model) likeliest() []int {
	off, doubt := m.leftOut()
	scaled, plain := make([]float64, len(off)), make([]float64, len(off))
	for i := range off {
		scaled[i], plain[i] = math.Abs(off[i])/doubt[i], math.Abs(off[i])
	}
	chosen := []int{largest(plain)}
	for range 3 {
		k := largest(scaled)
		scaled[k] = -1
		if k != chosen[0] {
			chosen = append(chosen, k)
		}
	}
	return chosen
}

func largest(values []float64) int {
	best := 0
	for i, v := range values {
		if v > values[best]*(1+1e-9) {
			best = i
		}
	}
	return best
}

// leftOut is how far each reading stands off what the others say, and the standard deviation of that: from the inverse of the equations
// where all are solved together, else from the nearest ones.
func (m *Model) leftOut() (off, doubt []float64) {
	if len(m.points) <= mostWhole {
		return m.whole().LeaveOneOut()
	}
	off, doubt = make([]float64, len(m.points)), make([]float64, len(m.points))
	for i, p := range m.points {
		height, variance := m.some(nearestTo(m.points, p, screened, i), p).Estimate(p)
		off[i], doubt[i] = m.heights[i]-height, math.Sqrt(variance+m.noise[i]+leastDoubt)
	}
	return off, doubt
}

// LeaveOneOut is, for each reading, how far it stands off what the others say and the standard deviation of that, all from one inverse: with
// Q = K⁻¹ − K⁻¹F(FᵗK⁻¹F)⁻¹FᵗK⁻¹, the first is (Qz)ᵢ/Qᵢᵢ and the second 1/√Qᵢᵢ (Dubrule 1983, Math. Geol. 15:687; from memory).
func (s *System) LeaveOneOut() (off, deviation []float64) {
	n := len(s.points)
	off, deviation = make([]float64, n), make([]float64, n)
	for i := range n {
		unit := make([]float64, n)
		unit[i] = 1
		s.factor.forward(unit)
		w := view{seen: unit}
		for k, column := range s.carried {
			w.rest[k] = dot(column, unit)
		}
		s.normal.forward(w.rest[:s.trend.terms])
		own := math.Max(-s.shared(&w, &w), 1e-300)
		off[i], deviation[i] = s.pull[i]/own, 1/math.Sqrt(own)
	}
	return off, deviation
}
