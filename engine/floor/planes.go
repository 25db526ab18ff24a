// Where the top of the pour may go: level over the highest ground, the flat plane of least volume within a slope limit, through a door's
// given height, or by hand. Each is worked out from the same ground, so that they can stand side by side.
package floor

import (
	"sort"

	"lowspot/engine/steady"
)

// tight is how near a plane counts as touching a reading's least depth, metres: far below what a staff reads, far above rounding.
const tight = 1e-9

// hair is what a depth may lack and still be kept, metres: a hundredth of a micrometre, which leaves a pinned plane room to turn.
const hair = 10 * tight

// Ground is what a finish plane must clear: heights of the deck and the least depth of pour over each, metres, one for each point.
// Give every corner of the surface, so that what holds at the points holds between them.
type Ground struct {
	Points  []Point
	Heights []float64
	Least   []float64
}

// Finish is a finish plane and how it stands on its ground.
type Finish struct {
	Plane     Plane   `json:"plane"`
	Slope     float64 `json:"slope"`     // steepest slope, without unit: 0.01 is 1 %
	Carriers  []int   `json:"carriers"`  // the points that stop the plane from going lower, three at most, in ascending order
	Shortfall float64 `json:"shortfall"` // the most by which the pour misses its least depth at any point, metres; zero where it is kept
	ShortAt   int     `json:"shortAt"`   // the point where it misses by that much; -1 where it is kept
}

// LevelOver is the lowest level plane that keeps the least depth over every point: the highest ground plus the least depth.
func LevelOver(ground Ground) (Finish, error) {
	if err := ground.check(); err != nil {
		return Finish{}, err
	}
	highest := ground.highest()
	return standingOn(Plane{C: ground.target(highest)}, []int{highest}), nil
}

// ByHand is the plane through a given height at one spot that falls at a given slope towards another; level where the slope is zero.
func ByHand(ground Ground, at Point, height, slope float64, towards Point) (Finish, error) {
	if err := ground.check(); err != nil {
		return Finish{}, err
	}
	if !finite(at.X, at.Y, height, towards.X, towards.Y) {
		return Finish{}, &Error{Code: "plane-height", Message: "The finish plane's height or spot isn't a number.", Remedy: "Give the height of the finish plane at one spot.", At: at}
	}
	if !finite(slope) || slope < 0 {
		return Finish{}, badSlope()
	}
	plane := Plane{C: height}
	if slope > 0 {
		run := steady.Hypot(towards.X-at.X, towards.Y-at.Y)
		if run == 0 {
			return Finish{}, &Error{Code: "plane-direction", Message: "The plane slopes, but the spot that it falls towards is the spot that it starts from.", Remedy: "Give another spot for the plane to fall towards, or a slope of zero.", At: at}
		}
		plane = through(at, height, -slope*(towards.X-at.X)/run, -slope*(towards.Y-at.Y)/run)
	}
	return ground.finish(plane, nil), nil
}

// through is the plane of slopes a and b at a given height over a spot.
func through(at Point, height, a, b float64) Plane {
	return Plane{a, b, height - a*at.X - b*at.Y}
}

// finish describes a plane over its ground.
func (g Ground) finish(plane Plane, carriers []int) Finish {
	f := standingOn(plane, carriers)
	worst := 2 * hair
	for i, p := range g.Points {
		if short := g.target(i) - plane.At(p); short > worst {
			worst, f.Shortfall, f.ShortAt = short, short, i
		}
	}
	return f
}

// standingOn describes a plane that keeps every least depth.
func standingOn(plane Plane, carriers []int) Finish {
	if carriers == nil {
		carriers = []int{}
	}
	sort.Ints(carriers)
	return Finish{Plane: plane, Slope: steady.Hypot(plane.A, plane.B), Carriers: carriers, ShortAt: -1}
}

// target is the lowest that the finish may be over a point.
func (g Ground) target(i int) float64 { return g.Heights[i] + g.Least[i] }

// highest is the first of the points that ask for the highest finish.
func (g Ground) highest() int {
	best, most := 0, g.target(0)
	for i := range g.Points {
		if target := g.target(i); target > most {
			best, most = i, target
		}
	}
	return best
}

func (g Ground) check() error {
	if len(g.Points) == 0 {
		return &Error{Code: "no-readings", Message: "There are no readings to put a finish plane over.", Remedy: "Take at least one reading; nine or more make a floor."}
	}
	if len(g.Heights) != len(g.Points) || len(g.Least) != len(g.Points) {
		return &Error{Code: "readings-unequal", Message: "The readings, their heights and their least depths aren't of the same number.", Remedy: "Give one height and one least depth for every reading."}
	}
	for i, p := range g.Points {
		// A sum is a number only where all its parts are.
		if sum := p.X + p.Y + g.Heights[i] + g.Least[i]; sum-sum != 0 {
			return &Error{Code: "reading-not-a-number", Message: "A reading's place, height or least depth isn't a number.", Remedy: "Correct the reading or leave it out.", At: p}
		}
	}
	return nil
}

func badSlope() error {
	return &Error{Code: "plane-slope", Message: "The slope of a finish plane must be zero or more.", Remedy: "Give a slope such as 1 %, or zero for a level floor."}
}

// finite tells whether all of the values are numbers: neither infinite nor NaN.
func finite(values ...float64) bool {
	for _, v := range values {
		if v-v != 0 {
			return false
		}
	}
	return true
}
