// Package rules reads a rulebook, checks its expressions against a vocabulary of named, dimensioned words, and works it out on given values.
// It knows nothing of floors. The expressions are those of github.com/expr-lang/expr; they run as plain float64 in SI units, and everything
// that could make a number look right and be wrong (units, missing values, divisions by zero) is refused when compiling or named when run.
package rules

import "lowspot/engine/quantity"

// Kind is what sort of value a word or a figure has.
type Kind string

// The kinds of value.
const (
	Quantity Kind = "quantity" // a number with a dimension, in SI units
	Choice   Kind = "choice"   // one of a list of options
	Truth    Kind = "truth"    // yes or no
	Text     Kind = "text"     // any text
)

// Type is a value's kind, with the dimension of a quantity or the options of a choice.
type Type struct {
	Kind      Kind               `json:"kind"`
	Dimension quantity.Dimension `json:"dimension"`
	Choices   []string           `json:"choices,omitempty"`
}

// Word is a name that expressions may use.
type Word struct {
	Name     string `json:"name"`  // lower_snake parts joined by dots: "deck.kind"
	Scope    string `json:"scope"` // what one value of it belongs to: see Scopes
	Type     Type   `json:"type"`
	Meaning  string `json:"meaning"`
	Example  string `json:"example"` // a value as a person types it
	Asked    bool   `json:"asked"`   // a person may answer it; otherwise it is worked out
	Question string `json:"question,omitempty"`
	Why      string `json:"why,omitempty"`
	How      string `json:"how,omitempty"`
}

// Vocabulary is every word that a rulebook may use.
type Vocabulary []Word

// Scopes names the scopes from the widest down, each with the one above it. A rule may use words of its own scope and of those above.
var Scopes = []struct{ Name, Above string }{
	{"job", ""}, {"room", "job"}, {"deck", "room"}, {"door", "room"}, {"penetration", "room"},
}

// Value is one value of a kind: Number in SI units for a quantity, Text for a choice or a text, Truth for yes or no.
type Value struct {
	Kind   Kind    `json:"kind"`
	Number float64 `json:"number,omitempty"`
	Text   string  `json:"text,omitempty"`
	Truth  bool    `json:"truth,omitempty"`
}

// Given is a value with where it came from.
type Given struct {
	Value Value  `json:"value"`
	From  string `json:"from"`            // one of the From constants
	Where string `json:"where,omitempty"` // the place in the job that holds it
	Typed string `json:"typed,omitempty"` // as the person typed it
}

// Where a value comes from.
const (
	FromTyped     = "typed"
	FromSheet     = "sheet"
	FromWorkedOut = "worked out"
	FromRulebook  = "rulebook"
)

// Facts are the values given in one scope and those above it, by word. A figure's name may be among them: it then overrides the rulebook.
type Facts map[string]Given

// State is how a figure or a check came out.
type State string

// The states. A figure is known, unanswered or faulty; a check is any of the others.
const (
	Known      State = "known"      // the figure has a value
	Kept       State = "kept"       // the check holds
	Broken     State = "broken"     // it does not
	Unanswered State = "unanswered" // a word that it reads is missing
	Idle       State = "idle"       // it does not apply
	Faulty     State = "faulty"     // it could not be worked out: see the fault
	Off        State = "off"        // switched off, with a reason
)

// Result is a figure worked out.
type Result struct {
	Name    string   `json:"name"`
	Words   string   `json:"words,omitempty"` // what the figure is
	State   State    `json:"state"`
	Value   Value    `json:"value"`
	Given   bool     `json:"given"` // the facts overrode the rulebook
	Missing []string `json:"missing,omitempty"`
	Fault   *Error   `json:"fault,omitempty"`
}

// Outcome is a check worked out.
type Outcome struct {
	Rule    string   `json:"rule"`
	Theme   string   `json:"theme"`
	Weight  string   `json:"weight"` // stop, fix or watch
	State   State    `json:"state"`
	Words   string   `json:"words,omitempty"` // what the rule is about
	Says    string   `json:"says"`            // what is wrong, with values put in; only when broken
	Remedy  string   `json:"remedy"`          // with values put in; only when broken
	Caution string   `json:"caution,omitempty"`
	Source  string   `json:"source,omitempty"`
	Asks    string   `json:"asks,omitempty"` // the rule's own question for what is missing
	Off     string   `json:"off,omitempty"`  // why it is switched off
	Missing []string `json:"missing,omitempty"`
	Margin  *Margin  `json:"margin,omitempty"`
	Fault   *Error   `json:"fault,omitempty"`
	Trace   []Step   `json:"trace,omitempty"` // filled by whoever wants it, from Compiled.Trace
}

// Margin is how far a comparison is from tipping over: zero or more when the check is kept, zero or less when broken.
type Margin struct {
	Value     float64            `json:"value"` // SI
	Dimension quantity.Dimension `json:"dimension"`
	Share     float64            `json:"share"` // Value as a share of the limit it is measured against; puts margins of different dimensions in order
	Text      string             `json:"text"`
	percent   bool
}

// Step is one sub-expression of a trace. From and To are UTF-16 offsets into the field's expression.
type Step struct {
	Field   string `json:"field"` // value, applies or holds
	Of      string `json:"of"`    // the rule whose field it is: the one explained, or a figure that it uses
	From    int    `json:"from"`
	To      int    `json:"to"`
	Depth   int    `json:"depth"`
	Text    string `json:"text"`
	Name    string `json:"name,omitempty"` // the word or figure, where the step is one
	Value   string `json:"value"`          // with its unit; empty when not reached or missing
	Reached bool   `json:"reached"`
	Missing bool   `json:"missing,omitempty"`
	Given   *Given `json:"given,omitempty"` // for a word: where its value came from
}
