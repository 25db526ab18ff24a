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
	changed  map[string]bool     // the rules that say something else than the shipped ones, or that are the person's own
	touched  map[string][]string // by rule: the changed ones behind it, itself or a figure that it reads
}

// NewRulebook compiles a book.
func NewRulebook(book *rules.Book) *Rulebook {
	compiled, errors := rules.Compile(book, ruleVocabulary())
	b := &Rulebook{Book: book, Compiled: compiled, Errors: errors, changed: map[string]bool{}, touched: map[string][]string{}}
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

// ReadRulebook reads a book's text and compiles it; what is wrong with its lines is among the errors.
func ReadRulebook(text string) *Rulebook {
	book, errors := rules.Parse(text)
	compiled := NewRulebook(book)
	compiled.Errors = append(errors, compiled.Errors...)
	return compiled
}

// ShippedRulebook compiles the rulebook that ships.
func ShippedRulebook() *Rulebook { return ReadRulebook(shipped.Text()) }

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
