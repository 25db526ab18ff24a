// Reads one number as people write it: 12, 1,2, 1.200,5, 1 200, 3/8, 1 3/8, 1-3/8, 1e3.
package quantity

import "strings"

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

func (s *scanner) noNumber() *Error {
	if s.at > 0 && strings.HasPrefix(s.rest(), "-") {
		return &Error{Code: CodeParts, Message: shown(s.text) + " reads like a range; a single quantity is wanted."}
	}
	return &Error{Code: CodeNumber, Message: shown(s.text) + " does not give a number where one belongs."}
}

func tooLarge(text string) *Error {
	return &Error{Code: CodeRange, Message: shown(text) + " is too large to work with.", Remedy: "Check the number and its unit."}
}
