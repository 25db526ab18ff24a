package engine

import (
	"sort"

	"lowspot/engine/floor"
	"lowspot/rules"
)

// judge works out every check on everything that it speaks of, the gravest first.
func (w *work) judge() {
	w.findings = []Finding{}
	w.judgeOne(w.facts, Subject{Scope: ScopeJob}, nil)
	for _, room := range w.rooms {
		if room.site == nil {
			continue
		}
		w.judgeRoom(room)
	}
	w.findings = byGravity(w.findings)
}

func (w *work) judgeRoom(room *roomWork) {
	id := room.room.ID
	w.judgeOne(room.facts, Subject{Scope: ScopeRoom, Room: id, ID: id, Name: room.room.Name}, nil)
	for i := range room.decks {
		deck := &room.decks[i]
		var at *floor.Point
		if room.hasPour {
			spot := deck.depths.LeastAt
			at = &spot
		}
		w.judgeOne(deck.facts, Subject{Scope: ScopeDeck, Room: id, ID: deck.area.ID, Name: deck.area.Name}, at)
		room.plan.Decks = append(room.plan.Decks, w.deckPlan(deck))
	}
	for i := range room.doors {
		d := &room.doors[i]
		middle := floor.Point{X: (d.from.X + d.to.X) / 2, Y: (d.from.Y + d.to.Y) / 2}
		w.judgeOne(room.doorFacts[i], Subject{Scope: ScopeDoor, Room: id, ID: d.door.ID, Name: d.door.Name}, &middle)
	}
	for i := range room.penetrations {
		p := &room.penetrations[i]
		at := p.at
		w.judgeOne(room.passedFacts[i], Subject{Scope: ScopePenetration, Room: id, ID: p.penetration.ID, Name: p.penetration.Name}, &at)
	}
}

func (w *work) judgeOne(facts rules.Facts, subject Subject, at *floor.Point) {
	for _, outcome := range w.book.Compiled.Checks(subject.Scope, facts, w.units) {
		if outcome.State == rules.Unanswered && waitsForPour(outcome.Missing) {
			continue
		}
		if outcome.Missing == nil {
			outcome.Missing = []string{}
		}
		w.findings = append(w.findings, Finding{Outcome: outcome, Subject: subject, At: at, Changed: w.book.touched[outcome.Rule]})
	}
}

// waitsForPour tells whether a check lacks what only the pour's clock or pour day itself knows: MakePour shows it.
func waitsForPour(missing []string) bool {
	for _, name := range missing {
		if word := wordByName[name]; word != nil && word.Step == stepPourDay {
			return true
		}
	}
	return false
}

// byGravity puts findings in the order in which a person should read them.
func byGravity(findings []Finding) []Finding {
	ordered := make([]Finding, 0, len(findings))
	for grave := 0; grave <= leastGrave; grave++ {
		for i := range findings {
			if gravity(&findings[i]) == grave {
				ordered = append(ordered, findings[i])
			}
		}
	}
	return ordered
}

const leastGrave = 11

func gravity(f *Finding) int {
	weight := 0
	switch f.Weight {
	case rules.Fix:
		weight = 1
	case rules.Watch:
		weight = 2
	}
	switch f.State {
	case rules.Broken:
		return weight
	case rules.Faulty:
		return 3
	case rules.Unanswered:
		return 4 + weight
	case rules.Kept:
		return 7 + weight
	case rules.Off:
		return 10
	}
	return leastGrave
}

// derived tells which answers a worked-out word waits for.
var derived = map[string][]string{
	"door.rise": {"finish.thickness"}, "door.step": {"finish.thickness"}, "penetration.proud": {"finish.thickness"},
	"mix.temperature": {"water.temperature", "powder.temperature"},
	"deck.wood":       {"deck.kind"}, "deck.mineral": {"deck.kind"}, "deck.hard": {"deck.kind"}, "deck.gypsum": {"deck.kind"}, "deck.screed": {"deck.kind"},
	"deck.tiled": {"deck.kind"}, "deck.residue": {"deck.kind"},
	"joist.ratio": joistAnswers, "joist.ratio_total": joistAnswers, "joist.deflection_live": joistAnswers, "joist.deflection_total": joistAnswers,
	"joist.span_allowed": joistAnswers, "deck.dead_load": {"finish.kind", "finish.thickness"},
	"filler.volume": {"deck.gap", "deck.thickness"}, "filler.mass": {"deck.gap", "deck.thickness"}, "filler.water": {"deck.gap", "deck.thickness"},
	"moisture.probes": {"moisture.method"}, "moisture.chloride": {"moisture.method"}, "moisture.plastic": {"moisture.method"},
	"moisture.probe_depth": {"deck.thickness", "slab.sides"}, "prime.ready": {"deck.absorbency"}, "prime.latest": {"deck.absorbency"},
	"dew.point": {"air.temperature", "air.humidity"}, "dew.margin": {"air.temperature", "air.humidity", "deck.temperature"},
	"evaporation.rate": {"air.temperature", "air.humidity", "air.speed", "deck.temperature"},
	"lift.limit":       {"lift.horizontal", "lift.vertical", "lift.travel"}, "carry.walk": {"carry.per_trip", "carry.distance"}, "stack.load": {"stack.bags"},
	"dust.used": {"dust.task"}, "dust.wheel_driven": {"dust.task"}, "dust.airflow_needed": {"dust.wheel"}, "respirator.needed": {"dust.hours", "dust.indoors"},
}

var joistAnswers = []string{"joist.size", "joist.breadth", "joist.depth", "joist.grade", "joist.spacing", "joist.span", "finish.kind", "finish.thickness"}

var wordOrder = func() map[string]int {
	order := make(map[string]int, len(vocabulary))
	for i := range vocabulary {
		order[vocabulary[i].Name] = i
	}
	return order
}()

// questions lists what the checks would like to know, each thing once, in the order of the work.
func (w *work) questions() []Question {
	type key struct{ word, room, id string }
	byKey := map[key]int{}
	list := []Question{}
	for _, finding := range w.findings {
		if finding.State != rules.Unanswered {
			continue
		}
		for _, name := range w.askedWords(finding.Missing, finding.Subject) {
			word := wordByName[name]
			subject := subjectOf(word.Scope, finding.Subject)
			k := key{name, subject.Room, subject.ID}
			i, known := byKey[k]
			if !known {
				i = len(list)
				byKey[k] = i
				list = append(list, Question{Word: name, Subject: subject, Step: word.Step, Question: word.Question, Why: word.Why, How: word.How, DontKnow: w.answer(name, subject) == DontKnow})
			}
			if !contains(list[i].Checks, finding.Rule) {
				list[i].Checks = append(list[i].Checks, finding.Rule)
				list[i].Risks = append(list[i].Risks, Risk{finding.Rule, finding.Weight, finding.Caution})
			}
		}
	}
	sort.SliceStable(list, func(i, j int) bool { return wordOrder[list[i].Word] < wordOrder[list[j].Word] })
	return list
}

// askedWords turns missing words into those that a person may answer; what a worked-out word waits for is asked only while it is open, and only where
// the question makes sense.
func (w *work) askedWords(missing []string, s Subject) []string {
	facts, _ := w.factsOf(s)
	var asked []string
	for _, name := range missing {
		if word := wordByName[name]; word != nil && word.Asked {
			asked = append(asked, name)
			continue
		}
		for _, source := range derived[name] {
			word := wordByName[source]
			_, answered := facts[source]
			if !answered && (word.When == "" || isTrue(facts, word.When)) && !contains(asked, source) {
				asked = append(asked, source)
			}
		}
	}
	return asked
}

// subjectOf widens a finding's subject to the scope that the word belongs to.
func subjectOf(scope string, s Subject) Subject {
	switch scope {
	case ScopeJob:
		return Subject{Scope: ScopeJob}
	case ScopeRoom:
		return Subject{Scope: ScopeRoom, Room: s.Room, ID: s.Room}
	}
	return s
}

// answer is what the job says to a word of a subject, as typed.
func (w *work) answer(name string, s Subject) string {
	if s.Scope == ScopeJob {
		return w.job.Answers[name]
	}
	for i := range w.job.Rooms {
		if room := &w.job.Rooms[i]; room.ID == s.Room {
			return room.answer(name, s)
		}
	}
	return ""
}

func (r *Room) answer(name string, s Subject) string {
	if s.Scope == ScopeRoom {
		return r.Answers[name]
	}
	for i := range r.Decks {
		if s.Scope == ScopeDeck && r.Decks[i].ID == s.ID {
			return r.Decks[i].Answers[name]
		}
	}
	for i := range r.Doors {
		if s.Scope == ScopeDoor && r.Doors[i].ID == s.ID {
			return r.Doors[i].Answers[name]
		}
	}
	for i := range r.Penetrations {
		if s.Scope == ScopePenetration && r.Penetrations[i].ID == s.ID {
			return r.Penetrations[i].Answers[name]
		}
	}
	return ""
}
