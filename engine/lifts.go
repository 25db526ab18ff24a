package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/rules"
)

// liftWay is one way to part a room's pour into lifts, of leveller alone or with aggregate in those under the last.
type liftWay struct {
	share float64 // of aggregate by the powder's mass, in the lower lifts; nought: leveller alone
	most  float64 // thickness of a lower lift, metres
	lifts []floor.Lift
	err   error
}

// liftWays are the ways to part a room's pour: of leveller alone, and with aggregate where the rulebook asks for it and there is more than one lift.
func (w *work) liftWays(r *roomWork) []liftWay {
	thinnest, thickest, share := math.Inf(1), 0.0, 0.0
	for i := range r.decks {
		thinnest, thickest = math.Min(thinnest, r.decks[i].least), math.Max(thickest, r.decks[i].least)
		if value, result := w.book.quantity("aggregate_share", r.decks[i].facts); result.State == rules.Known {
			share = math.Max(share, value)
		}
	}
	most, _ := w.book.quantity("greatest_lift", w.facts)
	finish := floor.LiftLimits{Least: thinnest, Most: most}
	ways := []liftWay{w.liftWay(r, finish, floor.LiftLimits{Least: thickest, Most: most}, 0)}
	if filled, _ := w.book.quantity("greatest_lift_filled", w.facts); share > 0 && filled > 0 {
		least, _ := w.book.quantity("filled_least", w.facts)
		if with := w.liftWay(r, finish, floor.LiftLimits{Least: math.Max(thickest, least), Most: filled}, share); with.err == nil && len(with.lifts) > 1 {
			ways = append(ways, with)
		}
	}
	return ways
}

func (w *work) liftWay(r *roomWork, finish, lower floor.LiftLimits, share float64) liftWay {
	way := liftWay{share: share, most: lower.Most}
	way.lifts, way.err = floor.Lifts(r.allCells(), r.plane, finish, lower)
	return way
}

// pouredLifts is the way that is bought for and poured: the last that there is, for the rulebook asks for aggregate only where it may be used. Without
// lifts the room is one pour.
func (w *work) pouredLifts(r *roomWork) (liftWay, bool) {
	if !r.hasPour {
		return liftWay{}, false
	}
	ways := w.liftWays(r)
	way := ways[len(ways)-1]
	return way, way.err == nil && len(way.lifts) > 1
}

// filledYield is what one bag of powder fills with a share of aggregate in it: its own yield and the grains' own volume, m³.
func filledYield(yield, share, bagMass, grainDensity float64) float64 {
	if share <= 0 || grainDensity <= 0 {
		return yield
	}
	return yield + share*bagMass/grainDensity
}
