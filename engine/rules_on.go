package engine

import "lowspot/rules"

// RuleOn is how one figure or check comes out on one part of a job.
type RuleOn struct {
	Rule    string        `json:"rule"`
	Subject Subject       `json:"subject"`
	State   rules.State   `json:"state"`
	Text    string        `json:"text"` // a figure's value, or what a broken check says
	Margin  *rules.Margin `json:"margin"`
	Missing []string      `json:"missing"`
	Fault   *rules.Error  `json:"fault"`
}

// RulesOn works a job out and gives every figure's value and every check's outcome on all that it speaks of, in the book's order for each part.
func RulesOn(job *Job, book *Rulebook) []RuleOn { return workOut(job, book).rulesOn() }

func (w *work) rulesOn() []RuleOn {
	list := []RuleOn{}
	w.eachSubject(func(s Subject, facts rules.Facts) {
		for _, r := range w.book.Compiled.Figures(s.Scope, facts) {
			on := RuleOn{Rule: r.Name, Subject: s, State: r.State, Missing: some(r.Missing), Fault: r.Fault}
			if r.State == rules.Known {
				on.Text = w.book.Compiled.Show(r.Name, r.Value, w.units)
			}
			list = append(list, on)
		}
		for _, o := range w.book.Compiled.Checks(s.Scope, facts, w.units) {
			list = append(list, RuleOn{Rule: o.Rule, Subject: s, State: o.State, Text: o.Says, Margin: o.Margin, Missing: some(o.Missing), Fault: o.Fault})
		}
	})
	return list
}

// eachSubject visits all that a rule can speak of, with the facts that it reads there: the job, then each room with what is in it.
func (w *work) eachSubject(visit func(Subject, rules.Facts)) {
	visit(Subject{Scope: ScopeJob}, w.facts)
	for _, r := range w.rooms {
		if r.site == nil {
			continue
		}
		id := r.room.ID
		visit(Subject{Scope: ScopeRoom, Room: id, ID: id, Name: r.room.Name}, r.facts)
		for _, d := range r.decks {
			visit(Subject{Scope: ScopeDeck, Room: id, ID: d.area.ID, Name: d.area.Name}, d.facts)
		}
		for i, d := range r.doors {
			visit(Subject{Scope: ScopeDoor, Room: id, ID: d.door.ID, Name: d.door.Name}, r.doorFacts[i])
		}
		for i, p := range r.penetrations {
			visit(Subject{Scope: ScopePenetration, Room: id, ID: p.penetration.ID, Name: p.penetration.Name}, r.passedFacts[i])
		}
	}
}
