// Reads what is written with a colon: a ratio ("1:3") or a time in hours and minutes ("1:30", "1:30 h", "1:30:15").
package quantity

import "strings"

func colon(plain string, d Dimension) (float64, *Error) {
	switch d {
	case Number:
		return ratio(plain)
	case Time:
		return clock(plain)
	}
	return 0, &Error{Code: CodeNumber, Message: shown(plain) + " is a ratio or a time; what is wanted is " + d.Name() + "."}
}

func ratio(plain string) (float64, *Error) {
	left, right, _ := strings.Cut(plain, ":")
	over, err := wholeNumber(left)
	if err != nil {
		return 0, err
	}
	under, err := wholeNumber(right)
	if err != nil {
		return 0, err
	}
	if under == 0 {
		return 0, &Error{Code: CodeNumber, Message: shown(plain) + " divides by zero.", Remedy: "Write it like “1:3”."}
	}
	return over / under, nil
}

// wholeNumber reads a number with nothing behind it.
func wholeNumber(text string) (float64, *Error) {
	s := &scanner{text: strings.TrimSpace(text)}
	value, err := s.number()
	if err == nil && s.at < len(s.text) {
		return 0, &Error{Code: CodeNumber, Message: shown(text) + " is not a plain number."}
	}
	return value, err
}

func clock(plain string) (float64, *Error) {
	text, _ := strings.CutSuffix(plain, "h")
	fields := strings.Split(strings.TrimSpace(text), ":")
	seconds, unit := 0.0, 3600.0
	for i, f := range fields {
		s := &scanner{text: f}
		value, err := s.parse(f)
		if err != nil || !allDigits(f) || i > 0 && (len(f) != 2 || value >= 60) || i > 2 {
			return 0, &Error{Code: CodeNumber, Message: shown(plain) + " is not a time in hours and minutes.", Remedy: "Write it like “1:30” or “1 h 30 min”."}
		}
		seconds += value * unit
		unit /= 60
	}
	return seconds, nil
}
