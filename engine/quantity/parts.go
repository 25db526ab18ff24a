// Splits a typed quantity into its parts, number by unit.
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
