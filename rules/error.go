package rules

import "strconv"

// Error is something wrong with a rulebook or with one rule, told to the person who can put it right.
type Error struct {
	Code    string `json:"code"`
	Rule    string `json:"rule,omitempty"`
	Field   string `json:"field,omitempty"`  // value, applies, holds, says, remedy, example, ...
	Line    int    `json:"line,omitempty"`   // in the book's text, from 1; 0 when the rule was not read from text
	Column  int    `json:"column,omitempty"` // in characters, from 1
	From    int    `json:"from"`             // UTF-16 offsets into the field's own text
	To      int    `json:"to"`
	Found   string `json:"found,omitempty"` // what stands there
	Message string `json:"message"`
	Remedy  string `json:"remedy,omitempty"` // what would work
}

// Error tells it in one line: where, what, and what would work.
func (e *Error) Error() string {
	text := ""
	if e.Line > 0 {
		text = strconv.Itoa(e.Line) + ":" + strconv.Itoa(e.Column) + ": "
	}
	if e.Rule != "" {
		text += e.Rule
		if e.Field != "" {
			text += ", " + e.Field
		}
		text += ": "
	}
	text += e.Message
	if e.Remedy != "" {
		text += " " + e.Remedy
	}
	return text
}

// The codes of errors, for programs.
const (
	CodeLimit     = "limit"     // too long, too deep, too many
	CodeFormat    = "format"    // the rulebook's lines
	CodeSyntax    = "syntax"    // an expression that can't be read
	CodeForbidden = "forbidden" // a part of the expression language that rules may not use
	CodeUnknown   = "unknown"   // a name nobody knows
	CodeScope     = "scope"     // a word of another scope
	CodeDimension = "dimension" // quantities that don't go together
	CodeKind      = "kind"      // a text, choice or yes/no where another kind belongs
	CodeChoice    = "choice"    // an option the word doesn't have
	CodeCircle    = "circle"    // figures that need each other
	CodeExample   = "example"   // an example that can't be read
	CodeFault     = "fault"     // a value that can't be worked out
)
