// A floor that is deeper than one lift may be takes several: the low ground first, each lift ending level under the next, the last over all of it.
package floor

import (
	"math"
	"strconv"
)

// LiftLimits are the least and the greatest thickness of one lift, metres, as the sheet states them.
type LiftLimits struct {
	Least float64 `json:"least"`
	Most  float64 `json:"most"`
}

// Lift is one layer of a pour. Its top runs parallel to the finish plane and is level where that is. A lift that doesn't cover the whole floor stops where
// it would become thinner than its least thickness, against a dam of that height.
type Lift struct {
	Top      Plane     `json:"top"`
	Below    float64   `json:"below"`    // the top under the finish plane, metres
	Whole    bool      `json:"whole"`    // covers the whole floor
	Area     float64   `json:"area"`     // m²
	Volume   float64   `json:"volume"`   // m³
	Least    float64   `json:"least"`    // its thickness at its thinnest, metres
	Greatest float64   `json:"greatest"` // its thickness at its thickest, metres
	Ground   [][]Point `json:"ground"`   // convex polygons that tile the ground it covers; empty where it covers the whole floor
	Edge     [][]Point `json:"edge"`     // the lines where it ends on the floor; empty where it covers the whole floor
	From     float64   `json:"from"`     // depth under the finish plane from which it covers the deck
}

const mostLifts = 40

// Lifts parts a pour into the fewest lifts, in the order to pour them, each within its limits: finish for the last one, lower for those under it (the
// same, or those of a mix with aggregate). Where that can't be done the error says why and where.
func Lifts(cells []Cell, plane Plane, finish, lower LiftLimits) ([]Lift, error) {
	if err := checkLimits(finish, lower); err != nil {
		return nil, err
	}
	depths := DepthsOf(cells, plane)
	if depths.Area <= 0 {
		return nil, &Error{Code: "lift-no-floor", Message: "There is no floor to pour.", Remedy: "Give the room an outline and readings."}
	}
	if depths.Least < finish.Least-sameHeight {
		return nil, &Error{Code: "lift-too-thin", At: depths.LeastAt, Message: "The pour is " + inMillimetres(depths.Least) + " at its thinnest; a lift needs " + inMillimetres(finish.Least) + ".",
			Remedy: "Raise the finish plane, or take down the high spot."}
	}
	tops, err := liftTops(depths, finish, lower)
	if err != nil {
		return nil, err
	}
	return liftsUnder(cells, plane, depths, lower, tops), nil
}

// liftTops are the tops' depths under the finish plane, the last lift's first. Each goes as deep as the lift over it allows, so that they are the fewest
// and the lower ones cover the least floor.
func liftTops(depths Depths, finish, lower LiftLimits) ([]float64, error) {
	tops := []float64{0}
	limits := finish
	for top := 0.0; depths.Greatest-top > limits.Most+sameHeight; limits = lower {
		// Beside a lower lift that ends on the floor, the next one is thicker by the dam's height.
		next := math.Max(top+limits.Most-lower.Least, math.Min(top+limits.Most, depths.Least-lower.Least))
		if next-top < limits.Least-sameHeight || next-top <= sameHeight {
			return nil, &Error{Code: "lift-no-room", At: depths.GreatestAt,
				Message: "The pour is " + inMillimetres(depths.Greatest) + " at its deepest, and lifts of " + inMillimetres(limits.Least) + " to " + inMillimetres(limits.Most) + " can't be stacked over a lower one of " + inMillimetres(lower.Least) + " or more.",
				Remedy:  "Lower the finish plane, fill the low ground with a product that goes thinner or thicker, or choose another leveller."}
		}
		if len(tops) == mostLifts {
			return nil, &Error{Code: "lift-too-many", At: depths.GreatestAt, Message: "The pour would take more than " + strconv.Itoa(mostLifts) + " lifts.", Remedy: "Check the heights, or fill the low ground another way first."}
		}
		top = next
		tops = append(tops, top)
	}
	return tops, nil
}

// liftsUnder measures the lifts. What lies over the deck deeper than a lift's start, less the same of the lift under it, is the lift's volume.
func liftsUnder(cells []Cell, plane Plane, depths Depths, lower LiftLimits, tops []float64) []Lift {
	var lifts []Lift
	under := 0.0
	for i := len(tops) - 1; i >= 0; i-- {
		lift := Lift{Top: Plane{plane.A, plane.B, plane.C - tops[i]}, Below: tops[i], Ground: [][]Point{}, Edge: [][]Point{}, From: tops[i] + lower.Least}
		lift.Whole = i == 0 || lift.From <= depths.Least+sameHeight
		if lift.Whole {
			lift.From = depths.Least
		}
		filled := lift.measure(cells, plane, depths)
		lift.Volume = filled - under
		under = filled
		if i == len(tops)-1 {
			lift.Least, lift.Greatest = lift.From-lift.Below, depths.Greatest-lift.Below
		} else {
			lift.overlay(lifts[len(lifts)-1])
		}
		lifts = append(lifts, lift)
	}
	return lifts
}

// measure finds the ground that a lift covers and gives the volume from its top down to the deck.
func (l *Lift) measure(cells []Cell, plane Plane, depths Depths) float64 {
	if l.Whole {
		all := DepthsOf(cells, l.Top)
		l.Area = all.Area
		return all.Volume
	}
	deep := DepthsOf(cells, Plane{plane.A, plane.B, plane.C - l.From})
	l.Area = deep.Area - deep.Dry
	l.Ground = BandsOf(cells, plane, []float64{l.From, depths.Greatest + 1})[0].Polygons
	l.Edge = ContoursOf(cells, plane, []float64{l.From})[0].Lines
	return deep.Volume + (l.From-l.Below)*l.Area
}

// overlay gives the thickness of a lift that lies over another and, where that one doesn't cover the whole floor, over bare deck beside it.
func (l *Lift) overlay(under Lift) {
	l.Least, l.Greatest = under.Below-l.Below, under.Below-l.Below
	if !under.Whole {
		l.Least = math.Min(l.Least, l.From-l.Below)
		l.Greatest = under.From - l.Below
	}
}

func checkLimits(all ...LiftLimits) error {
	for _, limits := range all {
		if !finite(limits.Least, limits.Most) || limits.Least < 0 || limits.Most <= 0 || limits.Least > limits.Most {
			return &Error{Code: "lift-limits", Message: "A lift's least thickness (" + inMillimetres(limits.Least) + ") and greatest (" + inMillimetres(limits.Most) + ") don't fit each other.",
				Remedy: "Give both as the sheet states them, the least no more than the greatest."}
		}
	}
	return nil
}

// inMillimetres writes a length for a message.
func inMillimetres(length float64) string {
	return strconv.FormatFloat(math.Round(length*1e4)/10, 'f', -1, 64) + " mm"
}
