// Reads a typed quantity: one number with its unit, or several that add up ("5 ft 7 in", "1 qt 3 fl oz", "2 h 30 min").
package quantity

import (
	"math"
	"strings"
	"unicode/utf8"
)

// Longest is how many characters a typed quantity may have. Greatest is how large a quantity may be, in SI base units.
const (
	Longest  = 64
	Greatest = 1e12
)

// Read gives the quantity in SI base units. A bare number is an error unless the dimension is a number or money. Errors are *Error.
func Read(text string, d Dimension) (float64, error) { return ReadIn(text, d, "") }

// ReadIn reads like Read; a bare number is of the given unit.
func ReadIn(text string, d Dimension, bareUnit string) (float64, error) {
	si, err := read(text, d, bareUnit)
	if err == nil {
		return si, nil
	}
	err.Given = text
	if err.Remedy == "" {
		err.Remedy = "Write it like " + examples(d) + "."
	}
	return 0, err
}

func read(text string, d Dimension, bareUnit string) (float64, *Error) {
	if utf8.RuneCountInString(text) > Longest {
		return 0, &Error{Code: CodeLong, Message: shown(text) + " has more than 64 characters."}
	}
	plain := clean(text)
	if plain == "" {
		return 0, &Error{Code: CodeEmpty, Message: "Nothing was given."}
	}
	sign := 1.0
	if plain[0] == '-' || plain[0] == '+' {
		if plain[0] == '-' {
			sign = -1
		}
		plain = strings.TrimSpace(plain[1:])
	}
	si, err := unsigned(plain, sign, d, bareUnit)
	if err != nil {
		return 0, err
	}
	return inRange(text, si, d)
}

func unsigned(plain string, sign float64, d Dimension, bareUnit string) (float64, *Error) {
	if strings.Contains(plain, ":") {
		si, err := colon(plain, d)
		return sign * si, err
	}
	parts, err := split(plain)
	if err != nil {
		return 0, err
	}
	return add(plain, parts, sign, d, bareUnit)
}

func inRange(text string, si float64, d Dimension) (float64, *Error) {
	switch {
	case math.IsNaN(si) || math.Abs(si) > Greatest:
		return 0, tooLarge(text)
	case d == Temperature && si < 0:
		return 0, &Error{Code: CodeRange, Message: shown(text) + " is below absolute zero."}
	case si == 0:
		return 0, nil // never -0
	}
	return si, nil
}
