// Adds up the parts of a typed quantity, each checked for what it measures.
package quantity

import "math"

// add sums the parts. Each must be of the dimension, and each later one less than one of the unit before it.
func add(plain string, parts []part, sign float64, d Dimension, bareUnit string) (float64, *Error) {
	total := 0.0 // in the unit of the part just added
	var before Unit
	for i, p := range parts {
		u, err := unitOfPart(plain, parts, i, before, d, bareUnit)
		if err != nil {
			return 0, err
		}
		if i > 0 {
			ratio := before.over / before.under * (u.under / u.over)
			if u.shift != 0 || before.shift != 0 || !whole(ratio) || p.value >= ratio {
				return 0, &Error{Code: CodeParts, Message: shown(plain) + " has parts that don't make one quantity.", Remedy: "Write the larger unit first and less than one of it behind, like “5 ft 7 in”, or use a single unit."}
			}
			total *= math.Round(ratio)
		}
		total, before = total+p.value, u
	}
	return before.SI(sign * total), nil
}

func unitOfPart(plain string, parts []part, i int, before Unit, d Dimension, bareUnit string) (Unit, *Error) {
	symbol := parts[i].unit
	if symbol == "" {
		symbol = bare(i, len(parts), before, bareUnit)
	}
	if symbol == "" && (len(parts) > 1 || d != Number && d != Money) {
		return Unit{}, noUnit(plain, len(parts), d)
	}
	return unitFor(symbol, d)
}

// whole tells whether the larger unit holds a whole number of the smaller, two or more. It keeps feet from mixing with millimetres: 1'200 mm.
func whole(ratio float64) bool {
	n := math.Round(ratio)
	return n >= 2 && math.Abs(ratio-n) < 1e-9*n
}

// bare is the unit of a number that came without one.
func bare(i, parts int, before Unit, bareUnit string) string {
	switch {
	case parts == 1:
		return bareUnit
	case i == 0 || i < parts-1:
		return ""
	case before.Symbol == "ft":
		return "in"
	case before.Symbol == "h":
		return "min"
	}
	return ""
}

// unitFor finds the unit and makes sure that it measures what is wanted.
func unitFor(symbol string, d Dimension) (Unit, *Error) {
	u, ok := UnitNamed(symbol)
	if !ok {
		return u, &Error{Code: CodeUnit, Message: shown(symbol) + " is not a unit known here."}
	}
	want := d
	want.Money = 0 // "12.50 per m²": the currency is not part of the text
	if want == TemperatureDifference && u.Dimension == Temperature {
		return u.difference(), nil
	}
	if u.Dimension != want || d == Money && symbol != "" {
		return u, &Error{Code: CodeDimension, Message: shown(symbol) + " is a unit of " + u.Dimension.Name() + "; what is wanted is " + d.Name() + "."}
	}
	return u, nil
}

func noUnit(plain string, parts int, d Dimension) *Error {
	if parts > 1 {
		return &Error{Code: CodeParts, Message: shown(plain) + " has a number without its unit."}
	}
	e := &Error{Code: CodeNoUnit, Message: shown(plain) + " has no unit; what is wanted is " + d.Name() + "."}
	metric, us := exampleOf(d)
	e.Remedy = "Write “" + plain + " " + unitOf(metric) + "”."
	if us != metric {
		e.Remedy = "Write “" + plain + " " + unitOf(metric) + "” or “" + plain + " " + unitOf(us) + "”."
	}
	return e
}
