package floor

import "math"

// Where four readings lie on one circle, as on every square of a regular grid, either diagonal is Delaunay's. Which of them is taken must not
// hang on how the room lies on the paper, or turning it could change a bag: the one between the heights that differ less is taken, which is
// also the smoother floor.

// level turns such diagonals. Each turn makes the sum of the height differences smaller, so it ends.
func (m *mesh) level() {
	for changed := true; changed; {
		changed = false
		for t := range m.triangles {
			for k := range int32(3) {
				if m.triangles[t].n[k] > int32(t) && m.smoother(int32(t), k) {
					m.flip(int32(t), k)
					changed = true
				}
			}
		}
	}
}

// smoother tells whether the side opposite corner k of t is such a diagonal and the other one is flatter.
func (m *mesh) smoother(t, k int32) bool {
	of := &m.triangles[t]
	p, a, b := of.v[k], of.v[(k+1)%3], of.v[(k+2)%3]
	d, _, _ := m.triangles[of.n[k]].beyond(t)
	now, then := math.Abs(m.heights[a]-m.heights[b]), math.Abs(m.heights[p]-m.heights[d])
	const same = 1e-9 // metres: no survey tells less apart
	if !(then < now-same) || !oneCircle(m.points[a], m.points[b], m.points[p], m.points[d]) {
		return false
	}
	left, right := m.turn(p, d, a), m.turn(p, d, b)
	return left < 0 && right > 0 || left > 0 && right < 0
}

// oneCircle tells whether d lies on the circle through a, b and p, to a billionth of its size.
func oneCircle(a, b, p, d Point) bool {
	ax, ay := a.X-d.X, a.Y-d.Y
	bx, by := b.X-d.X, b.Y-d.Y
	px, py := p.X-d.X, p.Y-d.Y
	size, bb, pp := ax*ax+ay*ay, bx*bx+by*by, px*px+py*py
	determinant := size*(bx*py-by*px) + bb*(px*ay-py*ax) + pp*(ax*by-ay*bx)
	if bb > size {
		size = bb
	}
	if pp > size {
		size = pp
	}
	return math.Abs(determinant) <= 1e-9*size*size
}
