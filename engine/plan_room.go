package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/engine/survey"
	"lowspot/rules"
)

// roomWork is one room in the making.
type roomWork struct {
	*site
	plan         RoomPlan
	facts        rules.Facts
	decks        []deckWork
	doorFacts    []rules.Facts
	passedFacts  []rules.Facts  // of the penetrations
	model        *survey.Model  // nil without readings
	surface      *floor.Surface // nil without readings
	merges       []floor.Merge  // of readings at one spot
	exact        float64        // how far off one reading may be, metres
	plane        floor.Plane
	volume       float64
	hasPour      bool
	finish       float64 // thickness of what goes on top, metres
	finishStated bool
	rough        *roughFloor // nil where the floor was read, or nothing is said of it
}

// deckWork is one deck area in the making.
type deckWork struct {
	*deckSite
	region floor.Region
	cells  []floor.Cell
	facts  rules.Facts
	least  float64
	depths floor.Depths
	tests  []testSite // moisture tests entered one by one
}

func (w *work) workRoom(room *Room, field string) *roomWork {
	r := &roomWork{plan: emptyRoom(room), facts: within(w.facts)}
	w.readAnswers(room.Answers, ScopeRoom, field+"/answers", rules.FromTyped, r.facts)
	site, ok := w.readRoom(room, field)
	if !ok {
		r.plan.Sketch = some(site.path)
		return r
	}
	r.site = site
	w.measure(r)
	w.workDecks(r)
	switch {
	case w.brokenFigure("least_depth"):
	case len(r.points) > 0:
		w.workPour(r)
	default:
		w.workRough(r)
	}
	w.proveDecks(r)
	w.proveRoom(r)
	w.workDoors(r)
	w.workPenetrations(r)
	return r
}

func emptyRoom(room *Room) RoomPlan {
	return RoomPlan{
		ID: room.ID, Name: room.Name, Outline: floor.Outline{Outer: floor.Ring{}, Holes: []floor.Ring{}}, Walls: []Amount{}, Doors: []DoorPlan{},
		Penetrations: []PenetrationPlan{}, Decks: []DeckPlan{}, Readings: []ReadingPlan{}, Sketch: []floor.Point{}, Holds: []string{},
	}
}

// measure works out what the outline alone tells.
func (w *work) measure(r *roomWork) {
	p := &r.plan
	p.Drawn, p.Outline = true, r.outline
	if p.Outline.Holes == nil {
		p.Outline.Holes = []floor.Ring{}
	}
	for i := range r.outline.Outer {
		p.Walls = append(p.Walls, w.length(r.outline.Outer.WallLength(i)))
	}
	if r.closing != nil && r.closing.OneIn > 0 {
		p.Closing = &ClosingPlan{Error: w.length(r.closing.Error), OneIn: int(math.Round(r.closing.OneIn))}
	}
	area, perimeter := r.outline.Area(), r.outline.Perimeter()
	p.Area, p.Perimeter = w.of(area, quantity.Area), w.length(perimeter)
	worksOut(r.facts, "room.area", number(area))
	worksOut(r.facts, "room.perimeter", number(perimeter))
	worksOut(r.facts, "survey.count", number(float64(len(r.points))))
	exits := 0
	for _, door := range r.doors {
		if door.door.Exit {
			exits++
		}
	}
	worksOut(r.facts, "exits.count", number(float64(exits)))
	if given, stated := r.facts["finish.thickness"]; stated {
		r.finish, r.finishStated = given.Value.Number, true
	}
}

// workDecks shares the ground out among the deck areas and reads what is said of each.
func (w *work) workDecks(r *roomWork) {
	var areas []floor.Ring
	var drawn []*deckSite
	var covering *deckSite
	for i := range r.site.decks {
		d := &r.site.decks[i]
		if d.whole {
			if covering == nil {
				covering = d
			}
			continue
		}
		drawn, areas = append(drawn, d), append(areas, d.outline.Outer)
	}
	regions := floor.RegionsOf(r.outline, areas)
	if covering == nil {
		covering = &deckSite{area: &DeckArea{ID: r.room.ID + "-deck", Answers: Answers{}}, outline: r.outline, whole: true, field: r.field + "/decks"}
	}
	for i, d := range append([]*deckSite{covering}, drawn...) {
		if area := regions[i].Area(); area > 1e-6 {
			r.decks = append(r.decks, w.workDeck(r, d, regions[i], area))
		}
	}
}

func (w *work) workDeck(r *roomWork, d *deckSite, region floor.Region, area float64) deckWork {
	deck := deckWork{deckSite: d, region: region, facts: within(r.facts)}
	w.readAnswers(d.area.Answers, ScopeDeck, d.field+"/answers", rules.FromTyped, deck.facts)
	worksOut(deck.facts, "deck.area", number(area))
	factKind(deck.facts)
	deck.least = w.leastDepth(&deck)
	return deck
}

func isOne(text string, of ...string) bool {
	for _, option := range of {
		if text == option {
			return true
		}
	}
	return false
}

// leastDepth asks the rulebook. Where it can't say for want of an answer the figure itself is unanswered on the page, and the plane is
// placed by the wood deck's depth, the deeper of the two: buying for less than the floor needs is the dearer mistake.
func (w *work) leastDepth(deck *deckWork) float64 {
	least, known := w.resting("least_depth", deck.facts)
	if known || w.brokenFigure("least_depth") {
		return least
	}
	assumed := within(deck.facts)
	worksOut(assumed, "deck.wood", truth(true))
	least, _ = w.book.quantity("least_depth", assumed)
	return least
}
