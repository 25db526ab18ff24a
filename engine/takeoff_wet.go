package engine

import (
	"math"
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
	"lowspot/rules"
)

// primer adds up what comes out of the tin, deck by deck and coat by coat.
func (t *buying) primer() {
	need, reasons := t.overDecks("primer_liquid", []string{"primer_coats", "primer_neat"})
	for _, r := range t.rooms {
		reasons = append(reasons, t.primerBetween(r, &need)...)
	}
	if need.Amount > 0 {
		reasons = append(reasons, t.by("primer_coverage", t.facts))
	}
	pack := t.usual("primer_pack")
	t.buy(goods{key: "primer", group: GroupPrepare, item: "Primer", pack: "tin", names: []string{t.sheetName("primer")}, holds: pack, weighs: pack * t.usual("primer_density"), small: t.stated("primer.pack_small"), keeps: "primer_keeps"}, need, reasons)
}

// primerBetween adds the coat over each lift of a room before the next.
func (t *buying) primerBetween(r *roomWork, need *takeoff.Need) []Reason {
	var reasons []Reason
	if way, parted := t.pouredLifts(r); parted {
		for i, lift := range way.lifts[:len(way.lifts)-1] {
			amount := t.primerOver(lift.Area)
			need.Amount += amount
			reasons = append(reasons, Reason{Says: called(r, nil) + ", over lift " + strconv.Itoa(i+1) + ": " + t.area(lift.Area).Text + ", " + t.volume(amount).Text + "."}, t.by("lift_primer_share", t.facts))
		}
	}
	return reasons
}

// overDecks adds a volume up over every deck, with the figures behind it told for each.
func (t *buying) overDecks(figure string, behind []string) (takeoff.Need, []Reason) {
	need := takeoff.Need{Dimension: quantity.Volume}
	var reasons []Reason
	t.eachDeck(func(r *roomWork, deck *deckWork) {
		facts := t.assumed(figure, r, deck)
		amount := t.asked(figure, facts)
		if amount <= 0 {
			return
		}
		need.Amount += amount
		reasons = append(reasons, Reason{Says: called(r, deck) + ": " + t.area(deck.facts["deck.area"].Value.Number).Text + "."})
		for _, name := range behind {
			reasons = append(reasons, t.by(name, facts))
		}
		reasons = append(reasons, t.by(figure, facts))
		if guess := unsaid(deck.facts, facts); guess != "" {
			reasons = append(reasons, Reason{Says: guess})
		}
	})
	return need, reasons
}

// assumed are a deck's facts with what the figure still lacks taken as most decks have it, so that a quote names a primer at all. The reasons say so.
func (t *buying) assumed(figure string, r *roomWork, deck *deckWork) rules.Facts {
	result := t.book.Compiled.Figure(figure, deck.facts)
	if result.State != rules.Unanswered {
		return deck.facts
	}
	t.ask(result.Missing, Subject{Scope: ScopeDeck, Room: r.plan.ID, ID: deck.area.ID, Name: called(r, deck)})
	facts := within(deck.facts)
	if facts["deck.wood"].From == "" {
		worksOut(facts, "deck.wood", truth(false))
	}
	if facts["deck.absorbency"].From == "" {
		worksOut(facts, "deck.absorbency", choice("normal"))
	}
	return facts
}

// ask puts what is missing on the list of questions, each once.
func (t *buying) ask(missing []string, s Subject) {
	for _, name := range t.askedWords(missing, s) {
		word := wordByName[name]
		subject := subjectOf(word.Scope, s)
		if t.isAsked(name, subject) {
			continue
		}
		t.out.Asks = append(t.out.Asks, Question{Word: name, Subject: subject, Step: word.Step, Question: word.Question, Why: word.Why, How: word.How, Checks: []string{}, DontKnow: t.answer(name, subject) == DontKnow})
	}
}

func (t *buying) isAsked(word string, s Subject) bool {
	for _, q := range t.out.Asks {
		if q.Word == word && q.Subject.Room == s.Room && q.Subject.ID == s.ID {
			return true
		}
	}
	return false
}

func unsaid(said, assumed rules.Facts) string {
	wood, drinks := said["deck.wood"].From == "" && assumed["deck.wood"].From != "", said["deck.absorbency"].From == "" && assumed["deck.absorbency"].From != ""
	switch {
	case wood:
		return "Nobody has said what the deck is made of: it is taken as mineral and of normal absorbency."
	case drinks:
		return "Nobody has said how fast the deck drinks: it is taken as normal."
	}
	return ""
}

// patch closes joints, holes and screw heads.
func (t *buying) patch() {
	need, reasons := t.overDecks("patch_need", nil)
	t.buy(goods{key: "patch", group: GroupPrepare, item: "Patch", pack: "bag", names: []string{t.sheetName("patch")}, holds: t.usual("patch_yield"), weighs: t.usual("patch_bag"), keeps: "patch_keeps"}, need, append(reasons, t.by("patch_yield", t.facts)))
}

// barrier coats the decks on which a rule asks for one.
func (t *buying) barrier() {
	area, reasons := t.areaWhere("barrier_asked")
	if area == 0 {
		return
	}
	need, err := t.writer.Coats(area, t.usual("barrier_coverage"), int(math.Round(t.usual("barrier_coats"))), 0)
	if err != nil {
		t.refuse("barrier", err)
		return
	}
	reasons = append(append(reasons, plainly(need.Because...)...), t.by("barrier_coverage", t.facts), t.by("barrier_coats", t.facts))
	pack := t.usual("barrier_pack")
	t.buy(goods{key: "barrier", group: GroupPrepare, item: "Moisture barrier", pack: "tin", names: []string{t.sheetName("barrier")}, holds: pack, weighs: pack * t.usual("barrier_density"), small: t.stated("barrier.pack_small"), keeps: "barrier_keeps"}, need, reasons)
}

// mesh reinforces the decks on which a rule asks for it.
func (t *buying) mesh() {
	area, reasons := t.areaWhere("mesh_asked")
	if area == 0 {
		return
	}
	need, err := t.writer.Sheeting(area, t.usual("mesh_width"), t.usual("mesh_lap"), t.usual("cut_allowance"))
	if err != nil {
		t.refuse("mesh", err)
		return
	}
	t.buy(goods{key: "mesh", group: GroupPrepare, item: "Reinforcing mesh", pack: "roll", holds: t.usual("mesh_roll"), weighs: 0.16 * t.usual("mesh_roll")}, need,
		append(append(reasons, plainly(need.Because...)...), t.by("mesh_roll", t.facts)))
}

// areaWhere adds up the decks of which a figure of truth is so.
func (t *buying) areaWhere(figure string) (float64, []Reason) {
	area := 0.0
	var reasons []Reason
	t.eachDeck(func(r *roomWork, deck *deckWork) {
		if !t.yes(figure, deck.facts) {
			return
		}
		own := deck.facts["deck.area"].Value.Number
		area += own
		reasons = append(reasons, Reason{Says: called(r, deck) + ": " + t.area(own).Text + "."}, t.by(figure, deck.facts))
	})
	return area, reasons
}
