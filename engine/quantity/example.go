// An example that works for every dimension, metric and US customary, for errors and hints.
package quantity

import "strings"

var exampleTable = map[Dimension][2]string{
	Number:                {"3", "3"},
	Length:                {"9.5 mm", "3/8 in"},
	Area:                  {"12.5 m²", "135 sq ft"},
	Volume:                {"4.8 L", "5 qt"},
	Mass:                  {"25 kg", "50 lb"},
	Time:                  {"20 min", "20 min"},
	Temperature:           {"20 °C", "68 °F"},
	TemperatureDifference: {"3 °C", "5 °F"},
	Money:                 {"12.50", "12.50"},
	Speed:                 {"5 km/h", "3 mph"},
	Force:                 {"200 N", "45 lbf"},
	Pressure:              {"1.5 kPa", "200 psi"},
	Density:               {"2000 kg/m³", "125 lb/ft³"},
	Flow:                  {"20 L/min", "5 gal/min"},
	EvaporationRate:       {"0.5 kg/m²/h", "0.1 lb/ft²/h"},
	MassPerArea:           {"1.5 kg/m²", "0.3 lb/ft²"},
	Coverage:              {"8 m²/L", "300 sq ft/gal"},
	Yield:                 {"0.55 L/kg", "0.009 ft³/lb"},
	AreaPerMass:           {"5 m²/kg", "25 sq ft/lb"},
}

func exampleOf(d Dimension) (metric, us string) {
	if e, ok := exampleTable[d]; ok {
		return e[0], e[1]
	}
	text := Write(1, d, Metric)
	return text, text
}

func examples(d Dimension) string {
	metric, us := exampleOf(d)
	if metric == us {
		return "“" + metric + "”"
	}
	return "“" + metric + "” or “" + us + "”"
}

func unitOf(example string) string { return strings.TrimLeft(example, "0123456789./ ") }
