// Where walls meet walls.
package floor

import "sort"

// touching is how near a spot counts as lying on a wall, metres: nobody measures a micrometre, and rounding stays far below it.
const touching = 1e-6

// onSegment tells whether p lies on the wall from a to b, ends included.
func onSegment(p, a, b Point) bool { return Distance(nearestOn(a, b, p), p) <= touching }

// meeting finds a spot where the walls ab and cd cross or touch.
func meeting(a, b, c, d Point) (Point, bool) {
	if clear(a, b, c, d) {
		return Point{}, false
	}
	for _, touch := range [4][3]Point{{a, c, d}, {b, c, d}, {c, a, b}, {d, a, b}} {
		if onSegment(touch[0], touch[1], touch[2]) {
			return touch[0], true
		}
	}
	sideA, sideB := turn(c, d, a), turn(c, d, b)
	if (sideA > 0) == (sideB > 0) || (turn(a, b, c) > 0) == (turn(a, b, d) > 0) {
		return Point{}, false
	}
	return toward(a, b, sideA/(sideA-sideB)), true
}

// clear tells whether the upright boxes round two walls lie apart, which spares most pairs the rest.
func clear(a, b, c, d Point) bool { return apart(a.X, b.X, c.X, d.X) || apart(a.Y, b.Y, c.Y, d.Y) }

func apart(a, b, c, d float64) bool {
	if a > b {
		a, b = b, a
	}
	if c > d {
		c, d = d, c
	}
	return b < c-touching || d < a-touching
}

// stretch goes along the ring's walls, each parted wherever it meets a wall of the other ring, and finds the first part whose middle is faulty:
// it gives the spot where that part begins.
func (r Ring) stretch(other Ring, faulty func(Point) bool) (Point, bool) {
	for i := range r {
		a, b := r.Wall(i)
		stops := other.stopsAlong(a, b)
		for k := 1; k < len(stops); k++ {
			if (stops[k]-stops[k-1])*Distance(a, b) > 4*touching && faulty(toward(a, b, (stops[k-1]+stops[k])/2)) {
				return toward(a, b, stops[k-1]), true
			}
		}
	}
	return Point{}, false
}

// stopsAlong are the shares of the way from a to b where it meets the ring's walls, in order, with both ends.
func (r Ring) stopsAlong(a, b Point) []float64 {
	stops := []float64{0, 1}
	for i := range r {
		c, d := r.Wall(i)
		at, meet := meeting(a, b, c, d)
		if !meet {
			continue
		}
		for _, p := range []Point{at, c, d} {
			if onSegment(p, a, b) {
				stops = append(stops, Distance(a, p)/Distance(a, b))
			}
		}
	}
	sort.Float64s(stops)
	return stops
}
