package engine

import (
	"lowspot/rules"
	"lowspot/rules/shipped"
)

// BookView is a rulebook as the page shows it: every rule with what is wrong with it, its examples run, its numbers, and what shipped in its place.
type BookView struct {
	Title   string         `json:"title"`
	Version string         `json:"version"`
	Rules   []RuleView     `json:"rules"`
	Errors  []*rules.Error `json:"errors"`
	Left    []RuleText     `json:"left"` // shipped rules that this book leaves out
}

// RuleView is one rule of a book.
type RuleView struct {
	Rule     rules.Rule            `json:"rule"`
	Text     string                `json:"text"`
	Shipped  *RuleText             `json:"shipped"` // nil: it is the person's own
	Changed  bool                  `json:"changed"` // it says something else than the shipped one
	Errors   []*rules.Error        `json:"errors"`
	Examples []rules.ExampleResult `json:"examples"`
	Literals []rules.Literal       `json:"literals"`
	Uses     []string              `json:"uses"`  // figures
	Needs    []string              `json:"needs"` // words
}

// RuleText is a rule with the text that the rulebook writes for it.
type RuleText struct {
	Rule rules.Rule `json:"rule"`
	Text string     `json:"text"`
}

func textOf(r *rules.Rule) *RuleText {
	if r == nil {
		return nil
	}
	return &RuleText{*r, r.Text()}
}

// ViewBook shows a whole book.
func ViewBook(b *Rulebook) BookView {
	ships, _ := shipped.Book()
	view := BookView{Title: b.Book.Title, Version: b.Book.Version, Rules: []RuleView{}, Errors: some(b.Errors()), Left: []RuleText{}}
	examples := b.Compiled.Examples()
	for i := range b.Book.Rules {
		view.Rules = append(view.Rules, b.view(&b.Book.Rules[i], ships, examples))
	}
	for i := range ships.Rules {
		if b.Book.Find(ships.Rules[i].Name) == nil {
			view.Left = append(view.Left, *textOf(&ships.Rules[i]))
		}
	}
	return view
}

func (b *Rulebook) view(r *rules.Rule, ships *rules.Book, examples []rules.ExampleResult) RuleView {
	v := RuleView{
		Rule: *r, Text: r.Text(), Shipped: textOf(ships.Find(r.Name)), Changed: b.changed[r.Name], Errors: []*rules.Error{}, Examples: []rules.ExampleResult{},
		Literals: some(r.Literals()), Uses: some(b.Compiled.Uses(r.Name)), Needs: some(b.Compiled.Needs(r.Name)),
	}
	for _, e := range b.Errors() {
		if e.Rule == r.Name {
			v.Errors = append(v.Errors, e)
		}
	}
	for _, e := range examples {
		if e.Rule == r.Name {
			v.Examples = append(v.Examples, e)
		}
	}
	return v
}
