// What an outline must be before anything is worked out on it. Every fault says where it is, so that the map can point at it.
package floor

import (
	"math"
	"strconv"
)

// The limits of one outline: a kilometre, and more corners than any room has.
const (
	mostCorners = 2000
	farthest    = 1000.0 // metres from the origin
	shortest    = 1e-4   // metres: the least wall
	leastArea   = 1e-4   // square metres: a square centimetre
)

// Check tells what is wrong with an outline and where: too few corners, a wall of no length, walls that cross or touch, a keep-out outside the
// room or on another. Keep-outs may stand against walls and against each other. The error is an *Error.
func (o Outline) Check() error {
	corners := 0
	for _, ring := range o.Rings() {
		corners += len(ring)
	}
	if corners > mostCorners {
		return &Error{Code: "too-many-corners", Message: "The outline has " + strconv.Itoa(corners) + " corners; " + strconv.Itoa(mostCorners) + " are the most.", Remedy: "Leave out small offsets, or split the room."}
	}
	for _, ring := range o.Rings() {
		if err := ring.check(); err != nil {
			return err
		}
	}
	if err := o.checkHoles(); err != nil {
		return err
	}
	if o.Area() < leastArea {
		return &Error{Code: "no-floor", At: o.Outer[0], Message: "The keep-outs leave no floor to pour.", Remedy: "Check their sizes, or take the room out of the job."}
	}
	return nil
}

func (r Ring) check() error {
	if len(r) < 3 {
		return &Error{Code: "too-few-corners", Message: "An outline needs three corners at least.", Remedy: "Add the missing corners."}
	}
	for i, p := range r {
		if !finite(p.X, p.Y) {
			return &Error{Code: "too-far", Message: "Corner " + strconv.Itoa(i+1) + " has no usable place.", Remedy: "Check its distances."}
		}
		if math.Abs(p.X) > farthest || math.Abs(p.Y) > farthest {
			return &Error{Code: "too-far", At: p, Message: "Corner " + strconv.Itoa(i+1) + " lies more than a kilometre away.", Remedy: "Check the units of its distances."}
		}
	}
	for i := range r {
		if r.WallLength(i) < shortest {
			return &Error{Code: "no-length", At: r[i], Message: "Wall " + strconv.Itoa(i+1) + " has no length.", Remedy: "Take out the doubled corner."}
		}
	}
	if err := r.checkWalls(); err != nil {
		return err
	}
	if r.Area() < leastArea {
		return &Error{Code: "no-area", At: r[0], Message: "The outline encloses nothing.", Remedy: "Check the corners' order."}
	}
	return nil
}

func (r Ring) checkWalls() error {
	for i := range r {
		a, b, c := r[i], r.corner(i+1), r.corner(i+2)
		if onSegment(c, a, b) || onSegment(a, b, c) {
			return &Error{Code: "folds-back", At: b, Message: "Walls " + strconv.Itoa(i+1) + " and " + strconv.Itoa((i+1)%len(r)+1) + " lie on each other.", Remedy: "Check the turn between them."}
		}
	}
	for i := range r {
		for j := i + 2; j < len(r) && !(i == 0 && j == len(r)-1); j++ {
			if at, meet := meeting(r[i], r.corner(i+1), r[j], r.corner(j+1)); meet {
				return &Error{Code: "crosses-itself", At: at, Message: "Wall " + strconv.Itoa(i+1) + " meets wall " + strconv.Itoa(j+1) + ".", Remedy: "Check the lengths and turns between them."}
			}
		}
	}
	return nil
}

// checkHoles allows a keep-out to stand against a wall, as a bath does, but not to reach through it or into another keep-out.
func (o Outline) checkHoles() error {
	for i, hole := range o.Holes {
		name := "Keep-out " + strconv.Itoa(i+1)
		for _, corner := range hole {
			if !o.Outer.Contains(corner) {
				return &Error{Code: "hole-outside", At: corner, Message: name + " has a corner outside the room.", Remedy: "Check where it stands and how large it is."}
			}
		}
		if at, some := hole.stretch(o.Outer, func(p Point) bool { return !o.Outer.Contains(p) }); some {
			return &Error{Code: "hole-crosses", At: at, Message: name + " reaches through a wall.", Remedy: "Check where it stands and how large it is."}
		}
		for j, other := range o.Holes[:i] {
			if at, some := overlap(hole, other); some {
				return &Error{Code: "holes-overlap", At: at, Message: name + " lies on keep-out " + strconv.Itoa(j+1) + ".", Remedy: "Make one outline of the two, or move one."}
			}
		}
	}
	return nil
}

// overlap finds a spot where two rings have ground in common.
func overlap(r, s Ring) (Point, bool) {
	if farApart(r, s) {
		return Point{}, false
	}
	if at, some := r.stretch(s, s.holds); some {
		return at, true
	}
	if at, some := s.stretch(r, r.holds); some {
		return at, true
	}
	// No wall of either runs inside the other: they lie apart, or are the same ring.
	at := r.justInside()
	return at, s.holds(at)
}

// farApart tells whether the rectangles round two rings lie apart, which is soon seen.
func farApart(r, s Ring) bool {
	low, high := Bounds(r)
	least, most := Bounds(s)
	return apart(low.X, high.X, least.X, most.X) || apart(low.Y, high.Y, least.Y, most.Y)
}

// holds tells whether p lies in the ring and on none of its walls.
func (r Ring) holds(p Point) bool {
	_, _, off := r.NearestWall(p)
	return off > touching && r.Contains(p)
}

// justInside is a spot ten micrometres inside the first wall.
func (r Ring) justInside() Point {
	a, b := r.Wall(0)
	middle, reach := toward(a, b, 0.5), math.Copysign(10*touching, r.SignedArea())/Distance(a, b)
	return Point{middle.X - reach*(b.Y-a.Y), middle.Y + reach*(b.X-a.X)}
}
