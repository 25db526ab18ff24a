package engine

import (
	"lowspot/rules"
	"lowspot/rules/shipped"
)

// Rulebook is a book that works against the vocabulary. Rules with errors come out faulty; the others work.
type Rulebook struct {
	Book     *rules.Book
	Compiled *rules.Compiled
	misread  []*rules.Error      // what is wrong with the lines that it was read from
	changed  map[string]bool     // the rules that say something else than the shipped ones, or that are the person's own
	touched  map[string][]string // by rule: the changed ones behind it, itself or a figure that it reads
}

// NewRulebook prepares a book.
func NewRulebook(book *rules.Book) *Rulebook {
	b := prepared(book)
	ships, _ := shipped.Book()
	for i := range book.Rules {
		if name := book.Rules[i].Name; !ships.Find(name).Alike(&book.Rules[i]) {
			b.changed[name] = true
		}
	}
	if len(b.changed) > 0 {
		b.touch()
	}
	return b
}

func prepared(book *rules.Book) *Rulebook {
	return &Rulebook{Book: book, Compiled: rules.Prepare(book, ruleVocabulary()), changed: map[string]bool{}, touched: map[string][]string{}}
}

// ReadRulebook reads a book's text; what is wrong with its lines is among the errors.
func ReadRulebook(text string) *Rulebook {
	book, misread := rules.Parse(text)
	b := NewRulebook(book)
	b.misread = misread
	return b
}

// ShippedRulebook is the rulebook that ships.
func ShippedRulebook() *Rulebook {
	book, _ := shipped.Book()
	return prepared(book)
}

// Errors is all that is wrong with the book.
func (b *Rulebook) Errors() []*rules.Error {
	return append(b.misread[:len(b.misread):len(b.misread)], b.Compiled.Errors()...)
}

// quantity gives a figure's number where it is known.
func (b *Rulebook) quantity(name string, facts rules.Facts) (float64, rules.Result) {
	result := b.Compiled.Figure(name, facts)
	return result.Value.Number, result
}

// touch finds the changed rules behind each rule.
func (b *Rulebook) touch() {
	for i := range b.Book.Rules {
		name := b.Book.Rules[i].Name
		for _, one := range append([]string{name}, b.Compiled.Uses(name)...) {
			if b.changed[one] {
				b.touched[name] = append(b.touched[name], one)
			}
		}
	}
}
