package rules

// The weights of a check.
const (
	Stop  = "stop"  // do not pour
	Fix   = "fix"   // put right first
	Watch = "watch" // keep an eye on it
)

// Book is a rulebook: figures and checks in the order of its text.
type Book struct {
	Title   string `json:"title"`
	Version string `json:"version"`
	Rules   []Rule `json:"rules"`
	Opening []Note `json:"opening,omitempty"` // comments before the title and the version
	Ending  []Note `json:"ending,omitempty"`  // comments after the last rule
}

// Rule is a figure (a named value) or a check (a condition that must hold). Expressions keep their line breaks.
type Rule struct {
	Check bool   `json:"check"` // otherwise a figure
	Name  string `json:"name"`  // lower_snake for a figure, lower-hyphen for a check
	Theme string `json:"theme"`
	For   string `json:"for"` // its scope
	Words string `json:"words,omitempty"`

	// A figure's own: what it is and what it comes to.
	Kind      Kind     `json:"kind,omitempty"`      // empty: a quantity
	Dimension string   `json:"dimension,omitempty"` // of a quantity, by name
	Choices   []string `json:"choices,omitempty"`   // of a choice
	Value     string   `json:"value,omitempty"`

	Applies string `json:"applies,omitempty"` // where a check holds, and where a figure is worth telling; empty: always

	// A check's own.
	Weight  string `json:"weight,omitempty"`
	Holds   string `json:"holds,omitempty"`
	Says    string `json:"says,omitempty"`
	Remedy  string `json:"remedy,omitempty"`
	Asks    string `json:"asks,omitempty"`
	Caution string `json:"caution,omitempty"`

	Source   string   `json:"source,omitempty"`
	Examples []string `json:"examples,omitempty"` // "deck.kind = plywood, depth.least = 6 mm => broken"
	Off      string   `json:"off,omitempty"`      // why it is switched off; empty: it is on
	History  []string `json:"history,omitempty"`  // what it said before and who changed it, oldest first
	Notes    []Note   `json:"notes,omitempty"`    // comments

	places map[string][]place // where each field's lines stand in the text that it was read from
}

// Note is a comment: the lines as written, and the field before which they stand ("" for the rule's first line, "example 2" for the second example).
type Note struct {
	Before string `json:"before"`
	Text   string `json:"text"`
}

// place is the line and column, both from 1, of the first character of a field's line.
type place struct{ line, column int }

// Find returns the rule of that name, or nil.
func (b *Book) Find(name string) *Rule {
	for i := range b.Rules {
		if b.Rules[i].Name == name {
			return &b.Rules[i]
		}
	}
	return nil
}
