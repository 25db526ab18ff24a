package engine

import "lowspot/rules"

// factPours gives the checks what the clock knows of a room's pours: the worst of them, and all of them together.
func (p *pourWork) factPours(r *roomWork) {
	batches, wait, oldest, lasts, timed := 0, 0.0, 0.0, 0.0, false
	for _, work := range p.poured {
		if work.room != r {
			continue
		}
		batches += len(work.batches)
		if work.timed {
			wait, oldest, lasts, timed = max(wait, work.clock.LongestWait), max(oldest, work.clock.OldestFlow), lasts+work.clock.Finish, true
		}
	}
	worksOut(r.facts, "pour.batches", number(float64(batches)))
	if !timed {
		return
	}
	worksOut(r.facts, "pour.longest_wait", number(wait))
	worksOut(r.facts, "pour.oldest_batch", number(oldest))
	worksOut(r.facts, "pour.lasts", number(lasts))
	worksOut(r.facts, "pour.wet_edge", number(p.setting.wetEdge))
	worksOut(r.facts, "pour.flow_time", number(p.setting.flow))
}

// pourFindings are the checks that need what only the pour knows, the gravest first.
func (p *pourWork) pourFindings() []Finding {
	list := p.judgePour(p.facts, Subject{Scope: ScopeJob})
	for _, room := range p.rooms {
		if room.site != nil {
			list = append(list, p.judgePour(room.facts, Subject{Scope: ScopeRoom, Room: room.room.ID, ID: room.room.ID, Name: room.room.Name})...)
		}
	}
	return byGravity(list)
}

func (p *pourWork) judgePour(facts rules.Facts, subject Subject) []Finding {
	list := []Finding{}
	for _, outcome := range p.book.Compiled.Checks(subject.Scope, facts, p.units) {
		if waitsForPour(p.book.Compiled.Needs(outcome.Rule)) {
			outcome.Missing = some(outcome.Missing)
			list = append(list, Finding{Outcome: outcome, Subject: subject})
		}
	}
	return list
}
