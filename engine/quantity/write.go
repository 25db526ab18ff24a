// Writes quantities for people: a sensible unit and sensible digits for what is measured.
//
// What is written reads back within half of the last digit shown, and writing what was read back gives the same text again.
package quantity

import "math"

// System is the family of units that a job is shown in.
type System string

const (
	Metric System = "metric"
	US     System = "us" // US customary
)

const unknown = "—"

// Write shows a quantity in SI base units. What is not a number is written "—".
func Write(si float64, d Dimension, s System) string {
	switch {
	case math.IsNaN(si) || math.IsInf(si, 0):
		return unknown
	case math.Abs(si) > Greatest:
		return behind(figures(si, 4), baseSymbol(d))
	case d == Money:
		return fixed(si, 2)
	case d == Time:
		return writeTime(si)
	case d == Length && s == US:
		return writeFeet(si)
	}
	return climb(si, d, stepsOf(d, s))
}

// WriteIn shows a quantity in SI base units in the given unit, to six figures. An unknown unit is written "—".
func WriteIn(si float64, unit string) string {
	u, ok := UnitNamed(unit)
	value := u.From(si)
	if !ok || math.IsNaN(value) || math.IsInf(value, 0) {
		return unknown
	}
	return behind(figures(value, 6), u.Symbol)
}

// climb writes in the first unit whose rounded value stays under the step's limit.
func climb(si float64, d Dimension, steps []step) string {
	for _, st := range steps[:len(steps)-1] {
		u, _ := unitFor(st.unit, d)
		value := u.From(si)
		text, rounded := st.round(value)
		if math.Abs(rounded) < st.below {
			return behind(text, st.unit)
		}
		if math.Abs(value) < st.below { // only rounding reaches the next step: start it at its foot
			si = math.Copysign(u.SI(st.below), si)
		}
	}
	last := steps[len(steps)-1]
	u, _ := unitFor(last.unit, d)
	text, _ := last.round(u.From(si))
	return behind(text, last.unit)
}

func behind(number, symbol string) string {
	if symbol == "" {
		return number
	}
	return number + " " + symbol
}
