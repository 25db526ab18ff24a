// The units that people type. Simple ones are facts; composed ones are worked out from them, so that no factor is stated twice.
//
// Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 US gal = 231 in³ (NIST Handbook 44, Appendix C),
// 1 imperial gal = 4.54609 L (Weights and Measures Act 1985, value as recalled, document not at hand),
// standard gravity 9.80665 m/s² (NIST SP 811, value as recalled, document not at hand).
package quantity

const (
	cubicInch = 254 * 254 * 254 // in cubic tenths of a millimetre, 1e-12 m³
	gallon    = 231 * cubicInch
	pound     = 45359237 // in 1e-8 kg
	gravity   = 980665   // in 1e-5 m/s²
)

var simple = []Unit{
	unit("", Number, 1, 1),
	unit("%", Number, 1, 100, "percent", "per cent", "pct"),

	unit("mm", Length, 1, 1000, "millimetre", "millimetres", "millimeter", "millimeters"),
	unit("cm", Length, 1, 100, "centimetre", "centimetres", "centimeter", "centimeters"),
	unit("m", Length, 1, 1, "metre", "metres", "meter", "meters"),
	unit("km", Length, 1000, 1),
	unit("µm", Length, 1, 1e6, "μm", "um", "micron", "microns"),
	unit("in", Length, 254, 1e4, `"`, "inch", "inches"),
	unit("ft", Length, 3048, 1e4, "'", "foot", "feet"),
	unit("yd", Length, 9144, 1e4, "yard", "yards"),
	unit("mi", Length, 1609344, 1000, "mile", "miles"),
	unit("mil", Length, 254, 1e7, "mils", "thou"),

	unit("L", Volume, 1, 1000, "l", "ℓ", "litre", "litres", "liter", "liters", "ltr"),
	unit("mL", Volume, 1, 1e6, "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"),
	unit("gal", Volume, gallon, 1e12, "us gal", "gallon", "gallons", "us gallon", "us gallons", "gals"),
	unit("qt", Volume, gallon, 4e12, "us qt", "quart", "quarts", "us quart", "us quarts", "qts"),
	unit("pt", Volume, gallon, 8e12, "us pt", "pint", "pints", "us pint", "us pints"),
	unit("fl oz", Volume, gallon, 128e12, "us fl oz", "floz", "fluid ounce", "fluid ounces"),
	unit("imp gal", Volume, 454609, 1e8, "uk gal", "imperial gallon", "imperial gallons"),

	unit("kg", Mass, 1, 1, "kilo", "kilos", "kilogram", "kilograms", "kgs"),
	unit("g", Mass, 1, 1000, "gram", "grams", "gramme", "grammes"),
	unit("mg", Mass, 1, 1e6),
	unit("µg", Mass, 1, 1e9, "μg", "ug"),
	unit("t", Mass, 1000, 1, "Mg", "tonne", "tonnes", "metric ton", "metric tons"),
	unit("lb", Mass, pound, 1e8, "lbs", "pound", "pounds"),
	unit("oz", Mass, pound, 16e8, "ounce", "ounces"),
	unit("short ton", Mass, 2000*pound, 1e8, "us ton", "short tons"),

	unit("s", Time, 1, 1, "sec", "secs", "second", "seconds"),
	unit("min", Time, 60, 1, "mins", "minute", "minutes"),
	unit("h", Time, 3600, 1, "hr", "hrs", "hour", "hours"),
	unit("d", Time, 86400, 1, "day", "days"),
	unit("wk", Time, 604800, 1, "wks", "week", "weeks"),

	scale("°C", 100, 27315, 100, "c", "degc", "deg c", "degrees c", "celsius", "degrees celsius", "centigrade"),
	scale("°F", 500, 5*45967, 900, "f", "degf", "deg f", "degrees f", "fahrenheit", "degrees fahrenheit"),
	scale("K", 1, 0, 1, "kelvin"),

	unit("N", Force, 1, 1, "newton", "newtons"),
	unit("kN", Force, 1000, 1),
	unit("lbf", Force, pound*gravity, 1e13),

	unit("Pa", Pressure, 1, 1, "pascal"),
	unit("hPa", Pressure, 100, 1, "mbar"),
	unit("kPa", Pressure, 1000, 1),
	unit("MPa", Pressure, 1e6, 1),
	unit("bar", Pressure, 1e5, 1),
}

// aliases are short names of composed units.
var aliases = map[string]string{
	"psi": "lbf/in^2",
	"psf": "lbf/ft^2",
	"mph": "mi/h",
	"fpm": "ft/min",
	"gpm": "gal/min",
	"pcf": "lb/ft^3",
	"sf":  "ft^2",
	"cf":  "ft^3",
}

// composed are the composed units that Units offers; any other composition of known units is read too.
var composed = []string{
	"m²", "cm²", "mm²", "sq ft", "sq in", "sq yd",
	"m³", "cm³", "cu ft", "cu in", "cu yd",
	"km/h", "m/s", "mph", "ft/s", "ft/min",
	"N/mm²", "kN/m²", "psi", "psf",
	"kg/m³", "kg/L", "g/cm³", "lb/ft³", "lb/gal",
	"L/min", "L/s", "L/h", "m³/h", "m³/s", "gal/min", "qt/min", "gal/h",
	"kg/m²/h", "g/m²/h", "lb/ft²/h", "g/(m2 24 h)", "lb/(1000 ft2 24 h)",
	"kg/m²", "g/m²", "lb/ft²", "lb/sq yd",
	"m²/L", "sq ft/gal", "sq ft/qt",
	"L/kg", "m³/kg", "ft³/lb", "qt/lb",
	"m²/kg", "sq ft/lb",
	"mm/m", "in/ft",
}

// offered are the units that Units offers, simple ones first.
var offered = offer()

func offer() []Unit {
	all := append([]Unit(nil), simple...)
	for _, symbol := range composed {
		u, _ := UnitNamed(symbol)
		all = append(all, u)
	}
	return all
}

// Units are the units to offer for a dimension, the most used first.
func Units(d Dimension) []Unit {
	var units []Unit
	for _, u := range offered {
		if u.Dimension == TemperatureDifference || u.Dimension == Temperature && d == TemperatureDifference {
			u = u.difference()
		}
		if u.Dimension == d {
			units = append(units, u)
		}
	}
	return units
}

// UnitNamed finds a unit by any spelling, composed ones too ("kg/m²/h"). Temperatures come as points on the scale.
func UnitNamed(symbol string) (Unit, bool) {
	if symbol == "" {
		return simple[0], true
	}
	if len(symbol) > 4*Longest {
		return Unit{}, false
	}
	if u, ok := bySpelling[symbol]; ok {
		return u, true
	}
	u, ok := compose(clean(symbol))
	if u.Symbol == "" {
		u.Symbol = symbol
	}
	return u, ok
}
