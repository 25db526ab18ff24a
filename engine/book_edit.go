package engine

import (
	"lowspot/rules"
	"lowspot/rules/shipped"
)

// ChangeRule puts a rule into a book, notes in its history what it said before, and gives the book's new text.
func ChangeRule(book *Rulebook, to rules.Rule, who, when string) string {
	edited := copyBook(book.Book)
	edited.Changed(to, who, when)
	return edited.Text()
}

// LeaveOutRule takes a rule out of a book and gives the book's new text.
func LeaveOutRule(book *Rulebook, name string) string {
	edited := copyBook(book.Book)
	for i := range edited.Rules {
		if edited.Rules[i].Name == name {
			edited.Rules = append(edited.Rules[:i], edited.Rules[i+1:]...)
			break
		}
	}
	return edited.Text()
}

func copyBook(b *rules.Book) *rules.Book {
	copied := *b
	copied.Rules = append([]rules.Rule{}, b.Rules...)
	return &copied
}

// Merged is a person's book brought up to what ships now.
type Merged struct {
	Book      string         `json:"book"`
	Rules     []RuleChange   `json:"rules"`     // what of the person's book changes by it
	Conflicts []RuleConflict `json:"conflicts"` // rules that both sides changed: the person's stand until they say otherwise
}

// RuleConflict is a rule that both the person and the shipped book changed. A nil side has no such rule.
type RuleConflict struct {
	Name    string    `json:"name"`
	Base    *RuleText `json:"base"`
	Users   *RuleText `json:"users"`
	Shipped *RuleText `json:"shipped"`
}

// MergeShipped brings the rulebook that ships now and a person's edits together; base is what shipped when they began.
func MergeShipped(users *Rulebook, base string) Merged {
	ships, _ := shipped.Book()
	began, _ := rules.Parse(base)
	book, conflicts := rules.Merge(ships, users.Book, began)
	merged := Merged{Book: book.Text(), Rules: ruleChanges(users.Book, book), Conflicts: []RuleConflict{}}
	for _, c := range conflicts {
		merged.Conflicts = append(merged.Conflicts, RuleConflict{c.Rule, textOf(c.Base), textOf(c.Users), textOf(c.Shipped)})
	}
	return merged
}
