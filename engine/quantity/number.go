// Reads one number as people write it: 12, 1,2, 1.200,5, 1 200, 3/8, 1 3/8, 1-3/8, 1e3.
//
// The rule for points and commas. Where both stand, the last one is the decimal mark and the other one parts groups of three.
// One that is repeated parts groups of three. A single point is always a decimal mark. A single comma is a decimal mark too, unless it
// could as well part thousands (one to three digits, not a lone 0, before it and exactly three behind): then the number is refused.
// Spaces may part groups of three (NIST SP 811, 10.5.3).
package quantity

import (
	"math"
	"strconv"
	"strings"
)

// scanner walks over cleaned text.
type scanner struct {
	text string
	at   int
}

func (s *scanner) rest() string { return s.text[s.at:] }

func (s *scanner) skipSpaces() {
	for s.at < len(s.text) && s.text[s.at] == ' ' {
		s.at++
	}
}

// number reads a number without a sign, whole, decimal or with a fraction.
func (s *scanner) number() (float64, *Error) {
	run := s.run()
	if run == "" {
		return 0, s.noNumber()
	}
	if under := fraction(s.rest()); under != "" && allDigits(run) {
		s.at += 1 + len(under)
		return s.quotient(run, under)
	}
	value, err := s.decimal(run)
	if err != nil {
		return 0, err
	}
	over, under := mixed(s.rest())
	if over == "" || !allDigits(run) {
		return value, nil
	}
	s.at += len(over) + len(under) + 2
	part, err := s.quotient(over, under)
	if err == nil && part >= 1 {
		return 0, &Error{Code: CodeNumber, Message: shown(s.text) + " has a fraction of one or more behind a whole number.", Remedy: "Write it as one number, for example “1 3/8”."}
	}
	return value + part, err
}

// run takes the digits, with their points, commas, grouping spaces and exponent.
func (s *scanner) run() string {
	start := s.at
	s.digitsAndMarks()
	run := s.text[start:s.at]
	if len(run) <= 3 && allDigits(run) && run != "0" {
		for {
			group := spacedGroup(s.rest())
			if group == "" {
				break
			}
			run += group
			s.at += 4
		}
		if len(run) > 3 {
			marks := s.at
			s.digitsAndMarks()
			run += s.text[marks:s.at]
		}
	}
	if run != "" {
		start = s.at
		s.exponent()
		run += s.text[start:s.at]
	}
	return run
}

func (s *scanner) digitsAndMarks() {
	for s.at < len(s.text) {
		c := s.text[s.at]
		mark := (c == '.' || c == ',') && s.at+1 < len(s.text) && isDigit(s.text[s.at+1])
		if !mark && !isDigit(c) {
			return
		}
		s.at++
	}
}

func (s *scanner) exponent() {
	rest := s.rest()
	if len(rest) < 2 || rest[0]|0x20 != 'e' {
		return
	}
	i := 1
	if rest[1] == '+' || rest[1] == '-' {
		i = 2
	}
	if digits := leadingDigits(rest[i:]); digits != "" {
		s.at += i + len(digits)
	}
}

// spacedGroup is the three digits of " 200", unless they are the upper part of a fraction or run on.
func spacedGroup(rest string) string {
	if !strings.HasPrefix(rest, " ") {
		return ""
	}
	group := leadingDigits(rest[1:])
	if len(group) != 3 || strings.HasPrefix(rest[4:], "/") {
		return ""
	}
	return group
}

// fraction is the lower part of a fraction whose stroke comes next.
func fraction(rest string) string {
	if !strings.HasPrefix(rest, "/") {
		return ""
	}
	return leadingDigits(rest[1:])
}

// mixed is the fraction behind a whole number: " 3/8" or "-3/8".
func mixed(rest string) (over, under string) {
	if rest == "" || rest[0] != ' ' && rest[0] != '-' {
		return "", ""
	}
	over = leadingDigits(rest[1:])
	if over == "" {
		return "", ""
	}
	if under = fraction(rest[1+len(over):]); under == "" {
		return "", ""
	}
	return over, under
}

func leadingDigits(text string) string {
	n := 0
	for n < len(text) && isDigit(text[n]) {
		n++
	}
	return text[:n]
}

func allDigits(text string) bool { return text != "" && len(leadingDigits(text)) == len(text) }

func (s *scanner) quotient(over, under string) (float64, *Error) {
	a, errA := s.parse(over)
	b, errB := s.parse(under)
	if errA != nil || errB != nil || b == 0 {
		return 0, &Error{Code: CodeNumber, Message: shown(s.text) + " has a fraction that divides by zero.", Remedy: "Write a fraction like “3/8”."}
	}
	return a / b, nil
}

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
	case commas == 1 && run[0] != '0' && grouped(run, ","):
		one, other := strings.Replace(run, ",", "", 1), strings.Replace(run, ",", ".", 1)
		return 0, &Error{Code: CodeAmbiguous, Message: shown(s.text) + " can mean " + other + " or " + one + ".",
			Remedy: "Write “" + strings.Replace(s.text, run, one, 1) + "” or “" + strings.Replace(s.text, run, other, 1) + "”."}
	}
	return s.parse(strings.Replace(run, ",", ".", 1))
}

// grouped tells whether the marks part groups of three.
func grouped(digits, mark string) bool {
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

func (s *scanner) noNumber() *Error {
	if s.at > 0 && strings.HasPrefix(s.rest(), "-") {
		return &Error{Code: CodeParts, Message: shown(s.text) + " reads like a range; a single quantity is wanted."}
	}
	return &Error{Code: CodeNumber, Message: shown(s.text) + " does not give a number where one belongs."}
}

func (s *scanner) badGroups() *Error {
	return &Error{Code: CodeNumber, Message: shown(s.text) + " has points and commas that fit no way of writing a number.", Remedy: "Write it without parting the thousands, for example “1200.5”."}
}

func tooLarge(text string) *Error {
	return &Error{Code: CodeRange, Message: shown(text) + " is too large to work with.", Remedy: "Check the number and its unit."}
}
