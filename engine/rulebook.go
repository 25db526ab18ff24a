package engine

import (
	"lowspot/rules"
	"lowspot/rules/shipped"
)

// Rulebook is a book compiled against the vocabulary. Rules with errors come out faulty; the others work.
type Rulebook struct {
	Book     *rules.Book
	Compiled *rules.Compiled
	Errors   []*rules.Error
}

// NewRulebook compiles a book.
func NewRulebook(book *rules.Book) *Rulebook {
	compiled, errors := rules.Compile(book, ruleVocabulary())
	return &Rulebook{Book: book, Compiled: compiled, Errors: errors}
}

// ShippedRulebook compiles the rulebook that ships.
func ShippedRulebook() *Rulebook {
	book, errors := shipped.Book()
	compiled := NewRulebook(book)
	compiled.Errors = append(errors, compiled.Errors...)
	return compiled
}

// quantity gives a figure's number where it is known.
func (b *Rulebook) quantity(name string, facts rules.Facts) (float64, rules.Result) {
	result := b.Compiled.Figure(name, facts)
	return result.Value.Number, result
}
