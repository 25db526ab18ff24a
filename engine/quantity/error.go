// What a person is told when a quantity can't be read.
package quantity

import "strings"

// The codes of errors, for programs.
const (
	CodeEmpty     = "empty"     // nothing was typed
	CodeLong      = "long"      // more than Longest characters
	CodeNumber    = "number"    // no number where one belongs, or one that can't be written so
	CodeAmbiguous = "ambiguous" // two readings are possible
	CodeNoUnit    = "no-unit"   // a bare number for something that has a unit
	CodeUnit      = "unit"      // an unknown unit
	CodeDimension = "dimension" // a unit of something else
	CodeParts     = "parts"     // parts that don't add up to one quantity: "7 in 5 ft"
	CodeRange     = "range"     // too large, too small, or below absolute zero
)

// Error says which field, what was given, what is wrong with it and what would work. Field is empty until the caller fills it in.
type Error struct {
	Field, Given, Message, Remedy, Code string
}

func (e *Error) Error() string {
	text := e.Message
	if e.Field != "" {
		text = e.Field + ": " + text
	}
	if e.Remedy != "" {
		text += " " + e.Remedy
	}
	return text
}

// shown is typed text in quotation marks, cut where it is too long to repeat and freed of what can't be printed.
func shown(text string) string {
	var b strings.Builder
	n := 0
	for _, r := range text {
		if r < ' ' || r == 0x7f || r == '\uFFFD' {
			continue
		}
		if n++; n > 40 {
			b.WriteString("…")
			break
		}
		b.WriteRune(r)
	}
	return "“" + b.String() + "”"
}
