package engine

import "lowspot/rules"

// Explanation is one rule on one subject, step by step.
type Explanation struct {
	Rule  *rules.Rule  `json:"rule"`
	Text  string       `json:"text"` // the rule as the rulebook writes it
	Steps []rules.Step `json:"steps"`
}

// Explain works a job out again and traces one rule on one subject. False where the rulebook has no such rule or the job no such subject.
func Explain(job *Job, book *Rulebook, rule string, subject Subject) (Explanation, bool) {
	found := book.Book.Find(rule)
	facts, known := workFor(job, book, rule).factsOf(subject)
	if found == nil || !known {
		return Explanation{}, false
	}
	w := amounts{job.Units}
	return Explanation{Rule: found, Text: found.Text(), Steps: book.Compiled.Trace(rule, facts, w.units)}, true
}

// workFor works out what a rule reads: the pour too, where it asks for that.
func workFor(job *Job, book *Rulebook, rule string) *work {
	if !waitsForPour(book.Compiled.Needs(rule)) {
		return workOut(job, book)
	}
	p := newPourWork(job, book)
	for _, room := range p.rooms {
		p.roomPours(room)
	}
	return p.work
}

// factsOf are the facts that a check on the subject reads.
func (w *work) factsOf(s Subject) (rules.Facts, bool) {
	if s.Scope == ScopeJob {
		return w.facts, true
	}
	for _, room := range w.rooms {
		if room.plan.ID == s.Room && room.site != nil {
			return room.factsOf(s)
		}
	}
	return nil, false
}

func (r *roomWork) factsOf(s Subject) (rules.Facts, bool) {
	switch s.Scope {
	case ScopeRoom:
		return r.facts, true
	case ScopeDeck:
		for _, deck := range r.decks {
			if deck.area.ID == s.ID {
				return deck.facts, true
			}
		}
	case ScopeDoor:
		for i, door := range r.doors {
			if door.door.ID == s.ID {
				return r.doorFacts[i], true
			}
		}
	case ScopePenetration:
		for i, p := range r.penetrations {
			if p.penetration.ID == s.ID {
				return r.passedFacts[i], true
			}
		}
	}
	return nil, false
}
