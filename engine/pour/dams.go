package pour

import (
	"math"
	"slices"

	"lowspot/engine/floor"
)

// damLine is a straight line across a room from wall to wall, from on side a of the outer ring and to on side b. Where it meets keep-outs it is
// several dams.
type damLine struct {
	from, to floor.Point
	a, b     int
	dams     []Dam
	length   float64
}

// fairShares are how much of the floor a dam must leave on its smaller side, tried in turn.
var fairShares = []float64{0.3, 0.15}

// shortestDam is the shortest line that parts a room fairly: from its corners that jut in, and from places along its walls, square to this wall or to
// any other.
func shortestDam(outline floor.Outline) (damLine, bool) {
	outer := counterClockwise(outline.Outer)
	room := floor.Outline{Outer: outer, Holes: outline.Holes}
	lines := damLines(room)
	for _, share := range fairShares {
		best, found := damLine{}, false
		for _, l := range lines {
			if (!found || l.length < best.length-1e-9) && fair(room, l, share) {
				best, found = l, true
			}
		}
		if found {
			return best, true
		}
	}
	return damLine{}, false
}

// damLines lists the lines to choose from.
func damLines(room floor.Outline) []damLine {
	outer := room.Outer
	lines := []damLine{}
	for i, p := range outer {
		before, after := outer[(i+len(outer)-1)%len(outer)], outer[(i+1)%len(outer)]
		starts := []floor.Point{}
		if turn(before, p, after) < 0 {
			starts = append(starts, p)
		}
		for k := 1; k < 16; k++ {
			t := float64(k) / 16
			starts = append(starts, floor.Point{X: p.X + t*(after.X-p.X), Y: p.Y + t*(after.Y-p.Y)})
		}
		for n, start := range starts {
			for j, q := range outer {
				next := outer[(j+1)%len(outer)]
				if n > 0 && j != i {
					continue // from along a wall, square to that wall only
				}
				square := floor.Point{X: start.X - (next.Y - q.Y), Y: start.Y + (next.X - q.X)}
				for _, way := range []float64{1, -1} {
					toward := floor.Point{X: start.X + way*(square.X-start.X), Y: start.Y + way*(square.Y-start.Y)}
					if l, hit := lineAcross(room, start, i, toward); hit {
						lines = append(lines, l)
					}
				}
			}
		}
	}
	return lines
}

// lineAcross runs from a point on side a towards another point until it meets the next wall.
func lineAcross(room floor.Outline, from floor.Point, a int, toward floor.Point) (damLine, bool) {
	best, side := math.Inf(1), -1
	for j, e := range ringEdges(nil, room.Outer) {
		if t, hit := meet(from, toward, e); hit && t > 1e-9 && t < best {
			best, side = t, j
		}
	}
	if side < 0 || side == a {
		return damLine{}, false
	}
	to := floor.Point{X: from.X + best*(toward.X-from.X), Y: from.Y + best*(toward.Y-from.Y)}
	l := damLine{from: from, to: to, a: a, b: side}
	if !l.clear(room) || len(l.dams) == 0 {
		return damLine{}, false
	}
	return l, true
}

// meet is where, as a multiple of the way from p to q, the line meets an edge.
func meet(p, q floor.Point, e edge) (float64, bool) {
	dx, dy, ex, ey := q.X-p.X, q.Y-p.Y, e.b.X-e.a.X, e.b.Y-e.a.Y
	turned := dx*ey - dy*ex
	if turned == 0 {
		return 0, false
	}
	t := ((e.a.X-p.X)*ey - (e.a.Y-p.Y)*ex) / turned
	s := ((e.a.X-p.X)*dy - (e.a.Y-p.Y)*dx) / turned
	return t, s >= -1e-9 && s <= 1+1e-9
}

// clear cuts the line at the keep-outs into dams; false where it leaves the room.
func (l *damLine) clear(room floor.Outline) bool {
	cuts := []float64{0, 1}
	for _, hole := range room.Holes {
		for _, e := range ringEdges(nil, hole) {
			if t, hit := meet(l.from, l.to, e); hit && t > 0 && t < 1 {
				cuts = append(cuts, t)
			}
		}
	}
	slices.Sort(cuts)
	place := func(t float64) floor.Point {
		return floor.Point{X: l.from.X + t*(l.to.X-l.from.X), Y: l.from.Y + t*(l.to.Y-l.from.Y)}
	}
	for i := 1; i < len(cuts); i++ {
		half := place((cuts[i-1] + cuts[i]) / 2)
		if !within(room.Outer, half) {
			return false
		}
		p, q := place(cuts[i-1]), place(cuts[i])
		if length := apart(p, q); length > 1e-6 && holds(room, half) {
			l.dams = append(l.dams, Dam{p, q, length})
			l.length += length
		}
	}
	return true
}

// fair tells whether a line leaves at least a share of the floor on either side.
func fair(room floor.Outline, l damLine, share float64) bool {
	a, b := splitRing(room.Outer, l)
	left, right := signedArea(a), signedArea(b)
	for _, hole := range room.Holes {
		left -= math.Abs(signedArea(clipRing(hole, l.to, l.from)))
		right -= math.Abs(signedArea(clipRing(hole, l.from, l.to)))
	}
	return left > share*(left+right) && right > share*(left+right)
}

// splitRing parts a counter-clockwise ring along a line: from its start round to its end, and from its end round to its start.
func splitRing(outer floor.Ring, l damLine) (a, b floor.Ring) {
	return walkRing(outer, l.from, l.a, l.to, l.b), walkRing(outer, l.to, l.b, l.from, l.a)
}

func walkRing(outer floor.Ring, from floor.Point, side int, to floor.Point, last int) floor.Ring {
	ring := floor.Ring{from}
	for i := side; i != last; i = (i + 1) % len(outer) {
		if p := outer[(i+1)%len(outer)]; apart(p, ring[len(ring)-1]) > 1e-9 {
			ring = append(ring, p)
		}
	}
	if apart(to, ring[len(ring)-1]) > 1e-9 {
		ring = append(ring, to)
	}
	return ring
}
