package engine

import (
	"sort"
	"strings"

	"lowspot/engine/quantity"
	"lowspot/rules"
)

// readAnswers turns what a person answered into facts. What can't be read is a problem of its own field and stays unanswered.
func (r *reader) readAnswers(answers Answers, scope, field, from string, into rules.Facts) {
	for _, name := range sortedNames(answers) {
		typed := answers[name]
		word, known := wordByName[name]
		at := field + "/" + name
		switch {
		case strings.TrimSpace(typed) == "" || typed == DontKnow:
		case !known || !word.Asked || word.Scope != scope:
			r.fail(Problem{Code: "unknown-word", Field: at, Given: typed, Message: "Nothing here is called " + name + ".", Remedy: "It may come from another version; it is kept, but not used."})
		default:
			if value, ok := r.readValue(word, at, typed); ok {
				into[name] = rules.Given{Value: value, From: from, Where: at, Typed: typed}
			}
		}
	}
}

func (r *reader) readValue(word *Word, field, typed string) (rules.Value, bool) {
	switch word.Type.Kind {
	case rules.Quantity:
		number, ok := r.quantity(field, typed, word.Type.Dimension)
		return rules.Value{Kind: rules.Quantity, Number: number}, ok
	case rules.Truth:
		return r.readTruth(field, typed)
	case rules.Choice:
		return r.readChoice(word, field, typed)
	}
	return rules.Value{Kind: rules.Text, Text: typed}, true
}

func (r *reader) readTruth(field, typed string) (rules.Value, bool) {
	switch strings.ToLower(strings.TrimSpace(typed)) {
	case "yes", "true":
		return truth(true), true
	case "no", "false":
		return truth(false), true
	}
	r.fail(Problem{Code: "yes-or-no", Field: field, Given: typed, Message: "This is neither yes nor no.", Remedy: "Answer yes, no or don't know."})
	return rules.Value{}, false
}

func (r *reader) readChoice(word *Word, field, typed string) (rules.Value, bool) {
	wanted := strings.TrimSpace(typed)
	for _, choice := range word.Type.Choices {
		if strings.EqualFold(choice, wanted) {
			return rules.Value{Kind: rules.Choice, Text: choice}, true
		}
	}
	r.fail(Problem{Code: "choice", Field: field, Given: typed, Message: "This isn't one of the choices.", Remedy: "Choose one of: " + strings.Join(word.Type.Choices, ", ") + "."})
	return rules.Value{}, false
}

func sortedNames(answers Answers) []string {
	names := make([]string, 0, len(answers))
	for name := range answers {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

func truth(yes bool) rules.Value { return rules.Value{Kind: rules.Truth, Truth: yes} }

func number(si float64) rules.Value { return rules.Value{Kind: rules.Quantity, Number: si} }

func choice(option string) rules.Value { return rules.Value{Kind: rules.Choice, Text: option} }

// worksOut adds a worked-out value to facts.
func worksOut(facts rules.Facts, name string, value rules.Value) {
	facts[name] = rules.Given{Value: value, From: rules.FromWorkedOut}
}

// amounts writes quantities in the job's units.
type amounts struct{ units quantity.System }

func (a amounts) of(si float64, d quantity.Dimension) Amount {
	return Amount{SI: si, Text: quantity.Write(si, d, a.units)}
}

func (a amounts) length(si float64) Amount { return a.of(si, quantity.Length) }

func (a amounts) pointer(si float64, d quantity.Dimension) *Amount {
	amount := a.of(si, d)
	return &amount
}
