package engine

import (
	"lowspot/rules"
	"lowspot/rules/shipped"
)

// Tried is a rule as somebody is writing it: what is wrong with it, its examples run, and how it comes out on a job.
type Tried struct {
	View   RuleView `json:"view"`
	On     []RuleOn `json:"on"`     // the rule on every part of the job
	Effect *Effect  `json:"effect"` // against the book as it stands; nil without a job
}

// TryRule puts a rule into a copy of the book, in the place of the one of that name or at the end, and works the job out by it. The job may be nil.
func TryRule(job *Job, book *Rulebook, draft rules.Rule) Tried {
	with := *book.Book
	with.Rules = append([]rules.Rule{}, book.Book.Rules...)
	if there := with.Find(draft.Name); there != nil {
		*there = draft
	} else {
		with.Rules = append(with.Rules, draft)
	}
	tried := NewRulebook(&with)
	ships, _ := shipped.Book()
	out := Tried{View: tried.view(with.Find(draft.Name), ships, tried.Compiled.Examples()), On: []RuleOn{}}
	if job == nil {
		return out
	}
	after := workOut(job, tried)
	for _, on := range after.rulesOn() {
		if on.Rule == draft.Name {
			out.On = append(out.On, on)
		}
	}
	effect := effectOf(workOut(job, book), after)
	out.Effect = &effect
	return out
}
