// What a unit is, and how numbers cross between it and SI.
package quantity

// Unit is a unit of measure: si = given × Factor + Offset. Only points on a temperature scale have an offset.
type Unit struct {
	Symbol         string
	Dimension      Dimension
	Factor, Offset float64
	Spellings      []string // other ways to type it, besides upper and lower case

	over, under float64 // Factor as a quotient of whole numbers, so that 9 mm and 0.009 m are one float64
	shift       float64 // Offset × under, a whole number too
}

// SI is a number of this unit in SI base units. The conversions to float64 forbid fused arithmetic: every machine gives the same bits.
func (u Unit) SI(given float64) float64 { return (float64(given*u.over) + u.shift) / u.under }

// From is a quantity in SI base units as a number of this unit.
func (u Unit) From(si float64) float64 { return (float64(si*u.under) - u.shift) / u.over }

func unit(symbol string, d Dimension, over, under float64, spellings ...string) Unit {
	return Unit{Symbol: symbol, Dimension: d, Factor: over / under, Spellings: spellings, over: over, under: under}
}

func scale(symbol string, over, shift, under float64, spellings ...string) Unit {
	u := unit(symbol, Temperature, over, under, spellings...)
	u.shift, u.Offset = shift, shift/under
	return u
}

// difference is the unit as a step on its scale.
func (u Unit) difference() Unit {
	u.shift, u.Offset, u.Dimension.Point = 0, 0, false
	return u
}
