package engine

import (
	"errors"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// proveRoom works out what the checks on closing and priming a room read.
func (w *work) proveRoom(r *roomWork) {
	if reach := longestIn(r.outline.Outer); reach > 0 {
		worksOut(r.facts, "room.longest", number(reach))
	}
	deepest := 0.0
	for _, d := range r.decks {
		deepest = max(deepest, d.facts["depth.greatest"].Value.Number)
	}
	if deepest > 0 {
		worksOut(r.facts, "pour.greatest", number(deepest))
	}
	w.provePriming(r)
	r.plan.Holds = holding(ScopeRoom, r.facts)
}

// mostCorners are held against each other for the greatest distance.
const mostCorners = 500

// longestIn is the greatest distance between two corners; nought where there are too many to look at.
func longestIn(ring floor.Ring) float64 {
	longest := 0.0
	if len(ring) > mostCorners {
		return longest
	}
	for i := range ring {
		for _, other := range ring[i+1:] {
			if d := floor.Distance(ring[i], other); d > longest {
				longest = d
			}
		}
	}
	return longest
}

// provePriming finds the hours in which every deck of the room may be poured on: the slowest is dry, the first is not yet too old.
func (w *work) provePriming(r *roomWork) {
	if len(r.decks) == 0 {
		return
	}
	ready, latest := 0.0, 0.0
	for i, d := range r.decks {
		window, set := w.set(d.facts, "primer_dry_here", "primer_latest_here")
		if !set {
			return
		}
		ready = max(ready, window[0])
		if i == 0 || window[1] < latest {
			latest = window[1]
		}
	}
	worksOut(r.facts, "prime.ready", number(ready))
	worksOut(r.facts, "prime.latest", number(latest))
}

// fieldNames are the words behind the fields that the formulas name in their refusals.
var fieldNames = map[string]string{
	"joists.size": "joist.size", "joists.grade": "joist.grade", "joists.spacing": "joist.spacing", "joists.span": "joist.span", "loads": "floor.live_load",
	"density": "sheet.density", "sheets.length": "deck.sheet_length", "sheets.width": "deck.sheet_width", "sheets.edge": "deck.fastener_edge",
	"sheets.field": "deck.fastener_field", "joints": "deck.gap", "deck.load": "floor.live_load", "bags": "stack.bags", "lift.rate": "lift.per_minute",
	"carry.bags": "carry.per_trip", "slab.drying_sides": "slab.sides",
}

// failAnswer reports an answer that a formula refuses, where it was given. Owner is the field of the deck area that it belongs to, if it does.
func (r *reader) failAnswer(owner string, err error) {
	var bad *quantity.Error
	if !errors.As(err, &bad) {
		r.failShape(owner, err)
		return
	}
	name := bad.Field
	if known, renamed := fieldNames[name]; renamed {
		name = known
	}
	field := owner
	switch word := wordByName[name]; {
	case word == nil:
	case word.Scope == ScopeDeck:
		field += "/answers/" + name
	case word.Scope == ScopeJob && isOne(word.Step, SheetKinds...):
		field = "sheets/" + word.Step + "/values/" + name
	case word.Scope == ScopeJob:
		field = "answers/" + name
	}
	r.fail(Problem{Code: bad.Code, Field: field, Given: bad.Given, Message: bad.Message, Remedy: bad.Remedy})
}

// conditions are the words that others wait for, by scope, each once.
var conditions = func() map[string][]string {
	byScope := map[string][]string{}
	for _, word := range vocabulary {
		if word.When != "" && !contains(byScope[word.Scope], word.When) {
			byScope[word.Scope] = append(byScope[word.Scope], word.When)
		}
	}
	return byScope
}()

// holding are the conditions of a scope that hold: the page asks what waits for them.
func holding(scope string, facts rules.Facts) []string {
	list := []string{}
	for _, name := range conditions[scope] {
		if isTrue(facts, name) {
			list = append(list, name)
		}
	}
	return list
}
