package rules

// The units as functions: mm(10), litres(2), celsius(20). A temperature's name makes a point on its scale; celsius_degrees, fahrenheit_degrees and
// kelvin make differences.

import (
	"lowspot/engine/quantity"
)

// unitNames are the functions that are offered, each with the unit's spelling where the name is no spelling itself.
var unitNames = []struct{ name, spelling string }{
	{"mm", ""}, {"cm", ""}, {"m", ""}, {"inch", ""}, {"ft", ""}, {"yd", ""}, {"mil", ""},
	{"mm2", ""}, {"cm2", ""}, {"m2", ""}, {"sqft", "sq ft"}, {"sqin", "sq in"}, {"sqyd", "sq yd"},
	{"ml", ""}, {"litres", ""}, {"m3", ""}, {"floz", ""}, {"pt", ""}, {"qt", ""}, {"gal", ""}, {"cuft", "cu ft"}, {"cuyd", "cu yd"},
	{"g", ""}, {"kg", ""}, {"t", ""}, {"oz", ""}, {"lb", ""},
	{"seconds", ""}, {"minutes", ""}, {"hours", ""}, {"days", ""}, {"weeks", ""},
	{"celsius", ""}, {"fahrenheit", ""},
	{"m_per_s", "m/s"}, {"kmh", "km/h"}, {"mph", ""}, {"fpm", ""},
	{"pa", "Pa"}, {"kpa", "kPa"}, {"mpa", "MPa"}, {"psi", ""}, {"psf", ""},
	{"kg_per_m3", "kg/m³"}, {"kg_per_litre", "kg/L"}, {"pcf", ""},
	{"kg_per_m2", "kg/m²"}, {"lb_per_sqft", "lb/ft²"},
	{"litres_per_kg", "L/kg"}, {"qt_per_lb", "qt/lb"},
	{"m2_per_litre", "m²/L"}, {"sqft_per_gal", "sq ft/gal"},
	{"litres_per_minute", "L/min"}, {"gpm", ""},
	{"kg_per_m2_h", "kg/m²/h"}, {"lb_per_sqft_h", "lb/ft²/h"},
	{"percent", "%"},
}

// otherUnitNames are further names that are read but not offered.
var otherUnitNames = []struct{ name, spelling string }{
	{"inches", "in"}, {"feet", "ft"}, {"foot", "ft"}, {"yards", "yd"}, {"metres", "m"}, {"meters", "m"}, {"millimetres", "mm"}, {"millimeters", "mm"},
	{"liters", "L"}, {"litre", "L"}, {"liter", "L"}, {"quarts", "qt"}, {"gallons", "gal"}, {"pints", "pt"},
	{"kilograms", "kg"}, {"grams", "g"}, {"pounds", "lb"}, {"lbs", "lb"}, {"ounces", "oz"}, {"tonnes", "t"},
	{"second", "s"}, {"minute", "min"}, {"hour", "h"}, {"day", "d"}, {"week", "wk"}, {"ft2", "sq ft"}, {"ft3", "cu ft"},
}

var unitByName = nameUnits()

func nameUnits() map[string]quantity.Unit {
	byName := map[string]quantity.Unit{}
	for _, names := range [][]struct{ name, spelling string }{unitNames, otherUnitNames} {
		for _, n := range names {
			spelling := n.spelling
			if spelling == "" {
				spelling = n.name
			}
			if unit, known := quantity.UnitNamed(spelling); known {
				byName[n.name] = unit
			}
		}
	}
	for _, unit := range quantity.Units(quantity.TemperatureDifference) {
		switch unit.Symbol {
		case "°C":
			byName["celsius_degrees"] = unit
		case "°F":
			byName["fahrenheit_degrees"] = unit
		case "K":
			byName["kelvin"] = unit
		}
	}
	return byName
}

// unitExample is how a quantity of that dimension is written, for a remedy: "mm(10) or inch(10)".
func unitExample(d quantity.Dimension, number string) string {
	var names []string
	for _, n := range unitNames {
		if unit, known := unitByName[n.name]; known && unit.Dimension == d && len(names) < 2 && usual(n.name) {
			names = append(names, n.name+"("+number+")")
		}
	}
	switch d {
	case quantity.TemperatureDifference:
		names = []string{"kelvin(" + number + ")", "fahrenheit_degrees(" + number + ")"}
	case quantity.Money:
		names = []string{"money(" + number + ")"}
	}
	return orList(names, "")
}

// usual leaves out units that few would mean first.
func usual(name string) bool {
	switch name {
	case "cm", "m", "mm2", "cm2", "ml", "m3", "floz", "pt", "g", "seconds", "pa", "m_per_s":
		return false
	}
	return true
}
