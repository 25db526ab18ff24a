// One straight line over the floor: where it crosses a triangle, and where it runs inside the room.
package floor

import "sort"

// planeOver is the plane through three heights; false where the corners lie on a line.
func planeOver(corners [3]Point, heights [3]float64) (Plane, bool) {
	p, q, r := corners[0], corners[1], corners[2]
	det := (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X)
	if det == 0 {
		return Plane{}, false
	}
	dq, dr := heights[1]-heights[0], heights[2]-heights[0]
	a := (dq*(r.Y-p.Y) - dr*(q.Y-p.Y)) / det
	b := (dr*(q.X-p.X) - dq*(r.X-p.X)) / det
	return through(p, heights[0], a, b), true
}

// triangleSpan is where the line y = v crosses a triangle.
func triangleSpan(corners [3]Point, v float64) (from, to float64, crossed bool) {
	for i := range corners {
		p, q := corners[i], corners[(i+1)%3]
		if (p.Y > v && q.Y > v) || (p.Y < v && q.Y < v) {
			continue
		}
		ends := [2]float64{p.X, q.X}
		if p.Y != q.Y {
			u := p.X + (q.X-p.X)*(v-p.Y)/(q.Y-p.Y)
			ends = [2]float64{u, u}
		}
		for _, u := range ends {
			if !crossed || u < from {
				from = u
			}
			if !crossed || u > to {
				to = u
			}
			crossed = true
		}
	}
	return from, to, crossed
}

// piecesInside are the spans of the line y = v that lie inside an outline, from left to right.
func piecesInside(outline Outline, v float64) [][2]float64 {
	var crossings []float64
	for _, ring := range outline.Rings() {
		for i := range ring {
			p, q := ring[i], ring.corner(i+1)
			if (p.Y > v) != (q.Y > v) {
				crossings = append(crossings, p.X+(q.X-p.X)*(v-p.Y)/(q.Y-p.Y))
			}
		}
	}
	sort.Float64s(crossings)
	var pieces [][2]float64
	for i := 0; i+1 < len(crossings); i += 2 {
		pieces = append(pieces, [2]float64{crossings[i], crossings[i+1]})
	}
	return pieces
}

// seen is the outline as another frame sees it.
func (o Outline) seen(from func(Point) Point) Outline {
	var out Outline
	for i, ring := range o.Rings() {
		moved := make(Ring, len(ring))
		for k, p := range ring {
			moved[k] = from(p)
		}
		if i == 0 {
			out.Outer = moved
		} else {
			out.Holes = append(out.Holes, moved)
		}
	}
	return out
}
