// Which unit and how many digits each dimension is shown with, by size.
package quantity

// step is a unit with its digits, for values below a limit in that unit. Every limit is a round value in the next step's unit too,
// so that rounding can't carry a value back and forth between two steps.
type step struct {
	unit     string
	below    float64
	decimals int // four significant figures where negative
}

const fourFigures = -1

func (s step) round(value float64) (string, float64) {
	text := ""
	if s.decimals >= 0 {
		text = decimals(value, s.decimals)
	} else {
		text = figures(value, 4)
	}
	return text, parsed(text)
}

func one(unit string, decimals int) []step { return []step{{unit: unit, decimals: decimals}} }

var stepTable = map[Dimension][2][]step{ // metric, US customary
	Number: {one("", fourFigures), one("", fourFigures)},
	Length: {{{"mm", 100, 1}, {"mm", 1000, 0}, {"m", 10, 3}, {"m", 0, 2}}, nil}, // US: feet and inches
	Area: {
		{{"m²", 1000, 2}, {"m²", 0, 1}},
		{{"sq ft", 1000, 1}, {"sq ft", 0, 0}},
	},
	Volume: {
		{{"mL", 100, 1}, {"mL", 1000, 0}, {"L", 10, 2}, {"L", 1000, 1}, {"m³", 0, 3}},
		{{"fl oz", 32, 1}, {"qt", 8, 2}, {"gal", 288, 2}, {"cu ft", 0, 1}}, // 288 gal = 38.5 cu ft
	},
	Mass: {
		{{"g", 1000, 0}, {"kg", 100, 2}, {"kg", 0, 1}},
		{{"oz", 16, 1}, {"lb", 0, 1}},
	},
	Temperature:           {one("°C", 1), one("°F", 1)},
	TemperatureDifference: {one("°C", 1), one("°F", 1)},
	Speed:                 {one("km/h", 1), one("mph", 1)},
	Force:                 {{{"N", 1000, fourFigures}, {"kN", 0, fourFigures}}, one("lbf", fourFigures)},
	Pressure: {
		{{"kPa", 1000, fourFigures}, {"MPa", 0, fourFigures}},
		{{"psf", 144, fourFigures}, {"psi", 0, fourFigures}},
	},
	Density: {one("kg/m³", fourFigures), one("lb/ft³", fourFigures)},
	Flow:    {one("L/min", fourFigures), one("gal/min", fourFigures)},
	// What a slab gives off is a thousandth of what a fresh pour loses, and is told in the units of its test.
	EvaporationRate: {
		{{"g/(m² 24 h)", 240, fourFigures}, {"kg/m²/h", 0, fourFigures}},
		{{"lb/(1000 ft² 24 h)", 240, fourFigures}, {"lb/ft²/h", 0, fourFigures}},
	},
	MassPerArea: {one("kg/m²", fourFigures), one("lb/ft²", fourFigures)},
	Coverage:    {one("m²/L", fourFigures), one("sq ft/gal", fourFigures)},
	Yield:       {one("L/kg", fourFigures), one("ft³/lb", fourFigures)},
	AreaPerMass: {one("m²/kg", fourFigures), one("sq ft/lb", fourFigures)},
}

// stepsOf are the steps of a dimension; one without a name of its own is shown in SI base units.
func stepsOf(d Dimension, s System) []step {
	pair, ok := stepTable[d]
	if !ok {
		return one(baseSymbol(d), fourFigures)
	}
	if s == US {
		return pair[1]
	}
	return pair[0]
}
