// Makes out what points and commas mean in a number.
//
// The rule for points and commas. Where both stand, the last one is the decimal mark and the other one parts groups of three.
// One that is repeated parts groups of three. A single point is always a decimal mark. A single comma is a decimal mark too, unless it
// could as well part thousands (one to three digits, the first not 0, before it and exactly three behind): then the number is refused.
// Spaces may part groups of three (NIST SP 811, 10.5.3).
package quantity

import (
	"math"
	"strconv"
	"strings"
)

// decimal reads digits with points and commas by the rule at the head of this file.
func (s *scanner) decimal(run string) (float64, *Error) {
	points, commas := strings.Count(run, "."), strings.Count(run, ",")
	switch {
	case points > 0 && commas > 0:
		group, mark := ",", "."
		if strings.LastIndex(run, ",") > strings.LastIndex(run, ".") {
			group, mark = ".", ","
		}
		whole, decimals, _ := strings.Cut(run, mark)
		if strings.Contains(decimals, mark) || strings.Contains(decimals, group) || !grouped(whole, group) {
			return 0, s.badGroups()
		}
		return s.parse(strings.ReplaceAll(whole, group, "") + "." + decimals)
	case points > 1 || commas > 1:
		mark := run[strings.IndexAny(run, ".,"):][:1]
		if !grouped(run, mark) {
			return 0, s.badGroups()
		}
		return s.parse(strings.ReplaceAll(run, mark, ""))
	case commas == 1 && grouped(run, ","):
		one, other := strings.Replace(run, ",", "", 1), strings.Replace(run, ",", ".", 1)
		return 0, &Error{Code: CodeAmbiguous, Message: shown(s.text) + " can mean " + other + " or " + one + ".",
			Remedy: "Write “" + strings.Replace(s.text, run, one, 1) + "” or “" + strings.Replace(s.text, run, other, 1) + "”."}
	}
	return s.parse(strings.Replace(run, ",", ".", 1))
}

// grouped tells whether the marks part groups of three. No such number starts with a zero.
func grouped(digits, mark string) bool {
	if digits[0] == '0' {
		return false
	}
	groups := strings.Split(digits, mark)
	for i, g := range groups {
		if !allDigits(g) || len(g) > 3 || i > 0 && len(g) != 3 {
			return false
		}
	}
	return true
}

// parse reads plain digits and refuses what a float64 can't hold.
func (s *scanner) parse(plain string) (float64, *Error) {
	value, err := strconv.ParseFloat(plain, 64)
	mantissa, _, _ := strings.Cut(strings.ToLower(plain), "e")
	switch {
	case math.IsInf(value, 0):
		return 0, tooLarge(s.text)
	case err != nil:
		return 0, s.noNumber()
	case value == 0 && strings.ContainsAny(mantissa, "123456789"):
		return 0, &Error{Code: CodeRange, Message: shown(s.text) + " is too small to tell from zero.", Remedy: "Write 0 with its unit if nothing is meant."}
	}
	return value, nil
}

func (s *scanner) badGroups() *Error {
	return &Error{Code: CodeNumber, Message: shown(s.text) + " has points and commas that fit no way of writing a number.", Remedy: "Write it without parting the thousands, for example “1200.5”."}
}
