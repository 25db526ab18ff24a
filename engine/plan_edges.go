package engine

import (
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// workDoors works out what the floor does at each door. Heights at a door are those of the deck at the middle of its opening.
func (w *work) workDoors(r *roomWork) {
	for i := range r.doors {
		d := &r.doors[i]
		facts := within(r.facts)
		w.readAnswers(d.door.Answers, ScopeDoor, d.field+"/answers", rules.FromTyped, facts)
		worksOut(facts, "door.exit", truth(d.door.Exit))
		plan := DoorPlan{ID: d.door.ID, Name: d.door.Name, From: d.from, To: d.to, Exit: d.door.Exit}
		if r.hasPour {
			middle := d.middle()
			top := r.topAt(r.plane, middle)
			if deck, ok := heightAt(r, middle); ok {
				depth := top - deck
				plan.Depth = w.pointer(depth, quantity.Length)
				worksOut(facts, "door.pour_depth", number(depth))
				if r.finishStated {
					plan.Rise = w.pointer(depth+r.finish, quantity.Length)
					worksOut(facts, "door.rise", number(depth+r.finish))
				}
			}
			if d.hasNeighbour && r.finishStated {
				step := top + r.finish - d.neighbour
				plan.Step = w.pointer(step, quantity.Length)
				worksOut(facts, "door.step", number(step))
			}
		}
		if flight, ok := flightOf(facts); ok {
			worksOut(facts, "stair.variation", number(flight.Variation))
		}
		plan.Holds = holding(ScopeDoor, facts)
		r.doorFacts = append(r.doorFacts, facts)
		r.plan.Doors = append(r.plan.Doors, plan)
	}
}

// middle of the opening.
func (d *doorSite) middle() floor.Point {
	return floor.Point{X: (d.from.X + d.to.X) / 2, Y: (d.from.Y + d.to.Y) / 2}
}

// flightOf is the stair that meets the floor at a door, once the floor is in; false where there is none or too little is said of it.
func flightOf(facts rules.Facts) (floor.Flight, bool) {
	place, near, other, rise := facts["stair.place"], facts["stair.nearest"], facts["stair.riser"], facts["door.rise"]
	if near.From == "" || other.From == "" || rise.From == "" {
		return floor.Flight{}, false
	}
	risers, foot, head := []float64{near.Value.Number, other.Value.Number}, rise.Value.Number, 0.0
	switch place.Value.Text {
	case "foot":
	case "head":
		risers[0], risers[1], foot, head = risers[1], risers[0], 0, foot
	default:
		return floor.Flight{}, false
	}
	flight, err := floor.FlightAfter(risers, foot, head)
	return flight, err == nil
}

// heightAt is the deck's height at a spot of the poured ground; a door stands on the wall, so the nearest facet's edge will do.
func heightAt(r *roomWork, p floor.Point) (float64, bool) {
	for _, deck := range r.decks {
		for _, cell := range deck.cells {
			if height, ok := cell.HeightAt(p); ok {
				return height, true
			}
		}
	}
	return 0, false
}

// topAt is what the finish lies on at a spot: the pour, or the bare deck where that stands above the finish plane and stays dry.
func (r *roomWork) topAt(plane floor.Plane, spot floor.Point) float64 {
	top := plane.At(spot)
	if deck, ok := heightAt(r, spot); ok && deck > top {
		return deck
	}
	return top
}

// workPenetrations works out how each drain, flange and pipe stands to the finished floor.
func (w *work) workPenetrations(r *roomWork) {
	for i := range r.penetrations {
		p := &r.penetrations[i]
		facts := within(r.facts)
		w.readAnswers(p.penetration.Answers, ScopePenetration, p.field+"/answers", rules.FromTyped, facts)
		plan := PenetrationPlan{ID: p.penetration.ID, Name: p.penetration.Name, Kind: p.penetration.Kind, At: p.at, Radius: p.radius}
		if word := wordByName["penetration.kind"]; isOne(p.penetration.Kind, word.Type.Choices...) {
			worksOut(facts, "penetration.kind", choice(p.penetration.Kind))
			worksOut(facts, "penetration.drain", truth(p.penetration.Kind == "drain"))
			worksOut(facts, "penetration.flange", truth(p.penetration.Kind == "flange"))
		}
		if r.hasPour && p.hasTop && r.finishStated {
			proud := p.top - r.topAt(r.plane, p.at) - r.finish
			plan.Proud = w.pointer(proud, quantity.Length)
			worksOut(facts, "penetration.proud", number(proud))
		}
		plan.Holds = holding(ScopePenetration, facts)
		r.passedFacts = append(r.passedFacts, facts)
		r.plan.Penetrations = append(r.plan.Penetrations, plan)
	}
}
