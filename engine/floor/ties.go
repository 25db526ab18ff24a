package floor

import "math"

// Where four readings lie on one circle, as on every square of a regular grid, either diagonal is Delaunay's. Which of them is taken must not
// hang on how the room lies on the paper, or turning it could change a bag: the one between the heights that differ less is taken, which is
// also the smoother floor.

// level turns such diagonals. Each turn makes the sum of the height differences smaller, so it ends.
func (m *mesh) level() {
	for changed := true; changed; {
		changed = false
		for t := int32(0); t < int32(len(m.triangles)); t++ {
			for k := int32(0); k < 3; k++ {
				if m.triangles[t].n[k] > t && m.smoother(t, k) {
					m.flip(t, k)
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
	return then < now-same && m.oneCircle(a, b, p, d) && m.turn(p, d, a) < 0 == (m.turn(p, d, b) > 0) && m.turn(p, d, a) != 0 && m.turn(p, d, b) != 0
}

// oneCircle tells whether d lies on the circle through a, b and p, to a billionth of its size.
func (m *mesh) oneCircle(a, b, p, d int32) bool {
	o := m.points[d]
	ax, ay := m.points[a].X-o.X, m.points[a].Y-o.Y
	bx, by := m.points[b].X-o.X, m.points[b].Y-o.Y
	px, py := m.points[p].X-o.X, m.points[p].Y-o.Y
	aa, bb, pp := ax*ax+ay*ay, bx*bx+by*by, px*px+py*py
	determinant := aa*(bx*py-by*px) + bb*(px*ay-py*ax) + pp*(ax*by-ay*bx)
	size := math.Max(aa, math.Max(bb, pp))
	return math.Abs(determinant) <= 1e-9*size*size
}
