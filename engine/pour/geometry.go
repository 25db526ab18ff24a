package pour

import (
	"math"
	"slices"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// edge is one side of an outline's ring.
type edge struct{ a, b floor.Point }

func edgesOf(outline floor.Outline) []edge {
	edges := ringEdges(nil, outline.Outer)
	for _, hole := range outline.Holes {
		edges = ringEdges(edges, hole)
	}
	return edges
}

func ringEdges(edges []edge, ring floor.Ring) []edge {
	for i, a := range ring {
		edges = append(edges, edge{a, ring[(i+1)%len(ring)]})
	}
	return edges
}

func bounds(ring floor.Ring) (low, high floor.Point) {
	low, high = ring[0], ring[0]
	for _, p := range ring {
		low = floor.Point{X: math.Min(low.X, p.X), Y: math.Min(low.Y, p.Y)}
		high = floor.Point{X: math.Max(high.X, p.X), Y: math.Max(high.Y, p.Y)}
	}
	return low, high
}

// turn is twice the signed area of the triangle abc: above zero when c lies to the left of the line from a to b.
func turn(a, b, c floor.Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }

// walled tells whether an edge stands between two points. An edge that from itself lies on doesn't count.
func walled(edges []edge, from, to floor.Point) bool {
	for _, e := range edges {
		if d := offEdge(e, from); d > 1e-9 &&
			(turn(e.a, e.b, from) > 0) != (turn(e.a, e.b, to) > 0) && (turn(from, to, e.a) > 0) != (turn(from, to, e.b) > 0) {
			return true
		}
	}
	return false
}

// nearestOnEdge is the point of an edge nearest to p.
func nearestOnEdge(e edge, p floor.Point) floor.Point {
	dx, dy := e.b.X-e.a.X, e.b.Y-e.a.Y
	long := dx*dx + dy*dy
	if long == 0 {
		return e.a
	}
	t := math.Max(0, math.Min(1, ((p.X-e.a.X)*dx+(p.Y-e.a.Y)*dy)/long))
	return floor.Point{X: e.a.X + t*dx, Y: e.a.Y + t*dy}
}

func offEdge(e edge, p floor.Point) float64 { return apart(nearestOnEdge(e, p), p) }

func apart(a, b floor.Point) float64 { return steady.Hypot(a.X-b.X, a.Y-b.Y) }

func nearestOn(ring floor.Ring, p floor.Point) floor.Point {
	best, at := math.Inf(1), p
	for _, e := range ringEdges(nil, ring) {
		if q := nearestOnEdge(e, p); apart(p, q) < best {
			best, at = apart(p, q), q
		}
	}
	return at
}

// within tells whether p is inside a ring, by the even-odd rule.
func within(ring floor.Ring, p floor.Point) bool {
	inside := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) {
			inside = !inside
		}
	}
	return inside
}

// holds tells whether p is floor: inside the outline and in no keep-out.
func holds(outline floor.Outline, p floor.Point) bool {
	if !within(outline.Outer, p) {
		return false
	}
	for _, hole := range outline.Holes {
		if within(hole, p) {
			return false
		}
	}
	return true
}

func sortFloats(x []float64) { slices.Sort(x) }

// signedArea is a ring's area, m², above zero when it runs counter-clockwise.
func signedArea(ring floor.Ring) float64 {
	sum := 0.0
	for i, p := range ring {
		sum += turn(ring[0], p, ring[(i+1)%len(ring)]) / 2
	}
	return sum
}
