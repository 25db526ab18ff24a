package floor

import (
	"math"
	"strconv"
)

// The limits of one outline: a square kilometre, and more corners than any room has.
const (
	mostCorners = 1000
	farthest    = 1000.0 // metres from the origin
	shortest    = 1e-4   // metres: the least wall
)

// Check tells what is wrong with an outline and where: too few corners, a wall of no length, walls that cross or touch, a hole outside.
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
	return o.checkHoles()
}

func (r Ring) check() error {
	for _, p := range r {
		if math.IsNaN(p.X) || math.IsNaN(p.Y) || math.Abs(p.X) > farthest || math.Abs(p.Y) > farthest {
			return &Error{Code: "too-far", Message: "A corner lies more than a kilometre away.", Remedy: "Check the units of its distances."}
		}
	}
	if len(r) < 3 {
		return &Error{Code: "too-few-corners", Message: "An outline needs three corners at least.", Remedy: "Add the missing corners."}
	}
	for i := range r {
		if r.WallLength(i) < shortest {
			return &Error{Code: "no-length", At: r[i], Message: "Wall " + strconv.Itoa(i+1) + " has no length.", Remedy: "Take out the doubled corner."}
		}
	}
	if err := r.checkCrossing(); err != nil {
		return err
	}
	if math.Abs(r.Area()) < shortest {
		return &Error{Code: "no-area", At: r[0], Message: "The outline encloses nothing.", Remedy: "Check the corners' order."}
	}
	return nil
}

func (r Ring) checkCrossing() error {
	for i := range r {
		if foldsBack(r[i], r.corner(i+1), r.corner(i+2)) {
			return &Error{Code: "folds-back", At: r.corner(i + 1), Message: "Walls " + strconv.Itoa(i+1) + " and " + strconv.Itoa((i+1)%len(r)+1) + " lie on each other.", Remedy: "Check the turn between them."}
		}
		for j := i + 2; j < len(r); j++ {
			if i == 0 && j == len(r)-1 {
				continue
			}
			if at, meet := meeting(r[i], r.corner(i+1), r[j], r.corner(j+1)); meet {
				return &Error{Code: "crosses-itself", At: at, Message: "Wall " + strconv.Itoa(i+1) + " meets wall " + strconv.Itoa(j+1) + ".", Remedy: "Check the lengths and turns between them."}
			}
		}
	}
	return nil
}

func foldsBack(a, b, c Point) bool {
	across := (b.X-a.X)*(c.Y-b.Y) - (b.Y-a.Y)*(c.X-b.X)
	along := (b.X-a.X)*(c.X-b.X) + (b.Y-a.Y)*(c.Y-b.Y)
	return along < 0 && math.Abs(across) < 1e-9*math.Abs(along)
}

// meeting finds where two walls cross or touch.
func meeting(a, b, c, d Point) (Point, bool) {
	for _, touch := range []struct{ p, from, to Point }{{a, c, d}, {b, c, d}, {c, a, b}, {d, a, b}} {
		if onSegment(touch.p, touch.from, touch.to) {
			return touch.p, true
		}
	}
	return crossingOf(a, b, c, d)
}

// checkHoles allows a hole to stand against a wall, as a bath does, but not to reach through it or into another hole.
func (o Outline) checkHoles() error {
	for i, hole := range o.Holes {
		for _, corner := range hole {
			if !o.Outer.Contains(corner) {
				return &Error{Code: "hole-outside", At: corner, Message: "A corner of this keep-out lies outside the room.", Remedy: "Check where it stands and how large it is."}
			}
		}
		if at, crosses := ringsCross(hole, o.Outer); crosses {
			return &Error{Code: "hole-crosses", At: at, Message: "This keep-out reaches through a wall.", Remedy: "Check where it stands and how large it is."}
		}
		for _, other := range o.Holes[:i] {
			if at, crosses := ringsCross(hole, other); crosses || other.Contains(hole[0]) || hole.Contains(other[0]) {
				if !crosses {
					at = hole[0]
				}
				return &Error{Code: "holes-overlap", At: at, Message: "Two keep-outs lie on each other.", Remedy: "Make one outline of the two."}
			}
		}
	}
	return nil
}

// ringsCross tells whether two rings' walls properly cross; touching is not crossing.
func ringsCross(r, s Ring) (Point, bool) {
	for i := range r {
		for j := range s {
			a, b, c, d := r[i], r.corner(i+1), s[j], s.corner(j+1)
			if onSegment(a, c, d) || onSegment(b, c, d) || onSegment(c, a, b) || onSegment(d, a, b) {
				continue
			}
			if at, meet := meeting(a, b, c, d); meet {
				return at, true
			}
		}
	}
	return Point{}, false
}
