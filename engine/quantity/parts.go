// Splits a typed quantity into its parts, number by unit, and adds them up.
package quantity

import "strings"

// part is a number and the unit behind it, as typed.
type part struct {
	value float64
	unit  string
}

func split(plain string) ([]part, *Error) {
	s := &scanner{text: plain}
	var parts []part
	for s.skipSpaces(); s.at < len(s.text); s.skipSpaces() {
		value, err := s.number()
		if err != nil {
			return nil, err
		}
		s.skipSpaces()
		p := part{value, s.unit()}
		parts = append(parts, p)
		s.footDash(p.unit)
	}
	if len(parts) == 0 {
		return nil, s.noNumber()
	}
	return parts, nil
}

// footDash steps over the dash that drawings put between feet and inches: 5'-7 1/2".
func (s *scanner) footDash(unit string) {
	if u, ok := lookup(unit); !ok || u.Symbol != "ft" {
		return
	}
	rest := strings.TrimLeft(s.rest(), " ")
	if after, ok := strings.CutPrefix(rest, "-"); ok {
		s.at = len(s.text) - len(after)
	}
}

// unit takes the text up to the next part's number.
func (s *scanner) unit() string {
	start, depth := s.at, 0
	for s.at < len(s.text) {
		c := s.text[s.at]
		switch {
		case c == '(':
			depth++
		case c == ')':
			depth--
		case depth > 0:
		case isDigit(c):
			digits := leadingDigits(s.rest())
			if !s.belongs(start, digits) {
				return strings.TrimSpace(s.text[start:s.at])
			}
			s.at += len(digits) - 1
		case c == '-' || c == '+' || (c == '.' || c == ',') && s.at+1 < len(s.text) && isDigit(s.text[s.at+1]):
			return strings.TrimSpace(s.text[start:s.at])
		}
		s.at++
	}
	return strings.TrimSpace(s.text[start:])
}

// belongs tells whether digits are of the unit ("m2", "m^2", "/24 h") and not the next part's number.
func (s *scanner) belongs(start int, digits string) bool {
	before := s.text[start:s.at]
	if before == "" {
		return false
	}
	last := before[len(before)-1]
	if last == '^' || strings.HasSuffix(strings.TrimRight(before, " "), "/") {
		return true
	}
	after := s.rest()[len(digits):]
	ends := after == "" || after[0] == ' ' || after[0] == '/' || after[0] == ')'
	return isLetter(last) && ends && (digits == "2" || digits == "3" || digits == "4")
}

// add sums the parts. Each must be of the dimension, and each later one less than one of the unit before it.
func add(plain string, parts []part, sign float64, d Dimension, bareUnit string) (float64, *Error) {
	total := 0.0 // in the unit of the part just added
	var before Unit
	for i, p := range parts {
		symbol := p.unit
		if symbol == "" {
			symbol = bare(i, len(parts), before, bareUnit)
		}
		if symbol == "" && (len(parts) > 1 || d != Number && d != Money) {
			return 0, noUnit(plain, len(parts), d)
		}
		u, err := unitFor(symbol, d)
		if err != nil {
			return 0, err
		}
		if i > 0 && (u.shift != 0 || u.Factor >= before.Factor || p.value*u.Factor >= before.Factor) {
			return 0, &Error{Code: CodeParts, Message: shown(plain) + " has parts that don't make one quantity.", Remedy: "Write the larger unit first and less than one of it behind, like “5 ft 7 in”, or use a single unit."}
		}
		if i > 0 {
			total *= before.over * u.under / (before.under * u.over)
		}
		total, before = total+p.value, u
	}
	return before.SI(sign * total), nil
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
