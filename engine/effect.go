package engine

import "lowspot/rules"

// Effect is what a change does to a job's plan.
type Effect struct {
	BagsBefore int        `json:"bagsBefore"`
	BagsAfter  int        `json:"bagsAfter"`
	Money      *MoneyTold `json:"money"`   // nil where nothing is priced
	Broken     []Affected `json:"broken"`  // checks that break by it
	Cleared    []Affected `json:"cleared"` // checks that no longer break
}

// MoneyTold is what a job's take-off comes to before and after a change, as text with the currency. By is signed; empty where it stays the same.
type MoneyTold struct {
	Before string `json:"before"`
	After  string `json:"after"`
	By     string `json:"by"`
}

// Affected is one check on one subject.
type Affected struct {
	Rule    string  `json:"rule"`
	Weight  string  `json:"weight"`
	Subject Subject `json:"subject"`
	Says    string  `json:"says"` // of one that breaks
}

// effectOf compares two workings of a job.
func effectOf(before, after *work) Effect {
	e := Effect{BagsBefore: before.totals.Bags, BagsAfter: after.totals.Bags, Broken: []Affected{}, Cleared: []Affected{}}
	was, is := before.brokenFindings(), after.brokenFindings()
	for _, f := range after.findings {
		if f.State == rules.Broken && !was[f.key()] {
			e.Broken = append(e.Broken, affected(f))
		}
	}
	for _, f := range before.findings {
		if f.State == rules.Broken && !is[f.key()] {
			e.Cleared = append(e.Cleared, affected(f))
		}
	}
	return e
}

func affected(f Finding) Affected { return Affected{f.Rule, f.Weight, f.Subject, f.Says} }

// findingKey tells findings apart: the rule, and what it is about.
type findingKey struct{ rule, scope, room, id string }

func (f Finding) key() findingKey {
	return findingKey{f.Rule, f.Subject.Scope, f.Subject.Room, f.Subject.ID}
}

func (w *work) brokenFindings() map[findingKey]bool {
	broken := map[findingKey]bool{}
	for _, f := range w.findings {
		if f.State == rules.Broken {
			broken[f.key()] = true
		}
	}
	return broken
}

func (w *work) find(rule string, s Subject) *Finding {
	for i := range w.findings {
		if f := &w.findings[i]; f.key() == (findingKey{rule, s.Scope, s.Room, s.ID}) {
			return f
		}
	}
	return nil
}
