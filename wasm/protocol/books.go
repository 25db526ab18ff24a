package protocol

import (
	"lowspot/engine"
	"lowspot/rules"
)

func viewBook(b *Bridge, t BookText) (engine.BookView, error) {
	return engine.ViewBook(b.rulebook(t.Text)), nil
}

// RulesOnJob is every rule on every part of a job.
type RulesOnJob struct {
	On []engine.RuleOn `json:"on"`
}

func rulesOn(b *Bridge, p PlanJob) (RulesOnJob, error) {
	return RulesOnJob{engine.RulesOn(&p.Job, b.rulebook(p.Book))}, nil
}

// DraftRule is a rule as somebody is writing it, tried in a book and, where one is open, on a job.
type DraftRule struct {
	Job  *engine.Job `json:"job"`
	Book string      `json:"book,omitempty"`
	Rule rules.Rule  `json:"rule"`
}

func tryRule(b *Bridge, d DraftRule) (engine.Tried, error) {
	return engine.TryRule(d.Job, b.rulebook(d.Book), d.Rule), nil
}

// RewriteNumber puts what was typed in the place of one number of a rule's field.
type RewriteNumber struct {
	Rule  rules.Rule `json:"rule"`
	Field string     `json:"field"`
	From  int        `json:"from"`
	Typed string     `json:"typed"`
}

// Rewritten is a field's new text.
type Rewritten struct {
	Text string `json:"text"`
}

func rewriteNumber(_ *Bridge, r RewriteNumber) (Rewritten, error) {
	text, err := r.Rule.Rewrite(r.Field, r.From, r.Typed)
	if err != nil {
		return Rewritten{}, engine.Problem{Code: err.Code, Field: r.Field, Given: r.Typed, Message: err.Message, Remedy: err.Remedy}
	}
	return Rewritten{text}, nil
}

// ChangeRule is a rule to put into a book, with who changed it and when, for its history.
type ChangeRule struct {
	Book string     `json:"book,omitempty"`
	Rule rules.Rule `json:"rule"`
	Who  string     `json:"who"`
	When string     `json:"when"`
}

func changeRule(b *Bridge, c ChangeRule) (BookText, error) {
	return BookText{engine.ChangeRule(b.rulebook(c.Book), c.Rule, c.Who, c.When)}, nil
}

// NamedRule is one rule of a book.
type NamedRule struct {
	Book string `json:"book,omitempty"`
	Name string `json:"name"`
}

func leaveOutRule(b *Bridge, n NamedRule) (BookText, error) {
	return BookText{engine.LeaveOutRule(b.rulebook(n.Book), n.Name)}, nil
}

// MergeBook is a person's book with what had shipped when they began.
type MergeBook struct {
	Book string `json:"book"`
	Base string `json:"base"`
}

func mergeBook(b *Bridge, m MergeBook) (engine.Merged, error) {
	return engine.MergeShipped(b.rulebook(m.Book), m.Base), nil
}

func writeBookFile(_ *Bridge, f engine.BookFile) (FileText, error) { return FileText{f.Text()}, nil }

// BroughtFile is a file with the book that it would change.
type BroughtFile struct {
	Text string `json:"text"`
	Book string `json:"book,omitempty"`
}

func previewFile(b *Bridge, f BroughtFile) (engine.Preview, error) {
	return engine.PreviewFile(f.Text, b.rulebook(f.Book)), nil
}

// ClearRule names a check to clear; a shop prices what clears it.
type ClearRule struct {
	ExplainRule
	Shop *engine.Shop `json:"shop,omitempty"`
}

func clearFinding(b *Bridge, e ClearRule) (engine.Clearing, error) {
	clearing, found := engine.Clear(&e.Job, b.rulebook(e.Book), e.Shop, e.Rule, e.Subject)
	if !found {
		return clearing, engine.Problem{Code: "missing", Field: "rule", Given: e.Rule, Message: "There is no such finding on this job any more.", Remedy: "Look at the findings again."}
	}
	return clearing, nil
}
