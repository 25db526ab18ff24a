package pour

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// march spreads distance over a field's grid in order of distance. The front is kept in a ring of buckets, each a quarter of a step wide, so that
// taking the nearest node costs no search; within a bucket order doesn't matter to the precision of the grid.
type march struct {
	field   *Field
	perStep float64 // buckets a metre
	buckets [ring][]int32
	waiting int
	lowest  int
}

// A node's distance exceeds its nearest neighbour's by a step at most, which is four buckets, and the sources' by exactDisc steps.
const ring, bucketsPerStep, exactDisc = 64, 4, 12

func newMarch(f *Field) *march {
	return &march{field: f, perStep: bucketsPerStep / f.step, lowest: math.MaxInt}
}

func (m *march) push(n int, d float64) {
	b := int(d * m.perStep)
	if b < m.lowest {
		m.lowest = b
	}
	m.buckets[b%ring] = append(m.buckets[b%ring], int32(n))
	m.waiting++
}

// source gives the nodes in sight of the exit their exact distance, out to a few steps, since the march is coarsest about a point.
func (m *march) source(outline floor.Outline, exit floor.Point) error {
	f := m.field
	from := exit
	if !holds(outline, exit) {
		from = nearestOn(outline.Outer, exit)
	}
	if away := steady.Hypot(from.X-exit.X, from.Y-exit.Y); !(away <= 0.5) {
		return refuse("exit", "("+number(exit.X, 2)+" m, "+number(exit.Y, 2)+" m) lies off the floor", "put it in a door of the outline")
	}
	edges := edgesOf(outline)
	ci, cj := int(math.Round((from.X-f.origin.X)/f.step)), int(math.Round((from.Y-f.origin.Y)/f.step))
	found := false
	for j := max(0, cj-exactDisc); j <= min(f.up-1, cj+exactDisc); j++ {
		for i := max(0, ci-exactDisc); i <= min(f.across-1, ci+exactDisc); i++ {
			n, p := j*f.across+i, f.node(i, j)
			d := steady.Hypot(p.X-from.X, p.Y-from.Y)
			if f.marks[n]&inside == 0 || d > exactDisc*f.step || d >= f.distance[n] || walled(edges, from, p) {
				continue
			}
			f.distance[n] = d
			m.push(n, d)
			found = true
		}
	}
	if !found {
		return refuse("exit", "("+number(exit.X, 2)+" m, "+number(exit.Y, 2)+" m)", "put it where the floor can be stepped on")
	}
	return nil
}

func (m *march) run() {
	f := m.field
	for b := m.lowest; m.waiting > 0; b++ {
		slot := b % ring
		for len(m.buckets[slot]) > 0 {
			last := len(m.buckets[slot]) - 1
			n := int(m.buckets[slot][last])
			m.buckets[slot] = m.buckets[slot][:last]
			m.waiting--
			if f.marks[n]&settled != 0 || int(f.distance[n]*m.perStep) > b {
				continue
			}
			f.marks[n] |= settled
			m.spread(n)
		}
	}
}

// spread updates the four neighbours of a settled node.
func (m *march) spread(n int) {
	marks, across := m.field.marks, m.field.across
	if marks[n]&shutRight == 0 && marks[n+1]&(inside|settled) == inside {
		m.update(n + 1)
	}
	if marks[n-1]&(inside|settled|shutRight) == inside {
		m.update(n - 1)
	}
	if marks[n]&shutUp == 0 && marks[n+across]&(inside|settled) == inside {
		m.update(n + across)
	}
	if marks[n-across]&(inside|settled|shutUp) == inside {
		m.update(n - across)
	}
}

// update solves (d − a)² + (d − b)² = step² for the nearer neighbour along each axis.
func (m *march) update(n int) {
	f := m.field
	own, across, step := f.marks[n], f.across, f.step
	a, b := math.MaxFloat64, math.MaxFloat64
	if d := f.distance[n-1]; f.marks[n-1]&shutRight == 0 && d < a {
		a = d
	}
	if d := f.distance[n+1]; own&shutRight == 0 && d < a {
		a = d
	}
	if d := f.distance[n-across]; f.marks[n-across]&shutUp == 0 && d < b {
		b = d
	}
	if d := f.distance[n+across]; own&shutUp == 0 && d < b {
		b = d
	}
	if a > b {
		a, b = b, a
	}
	d := a + step
	if gap := b - a; gap < step {
		d = (a + b + math.Sqrt(2*step*step-gap*gap)) / 2
	}
	if d < f.distance[n] {
		f.distance[n] = d
		m.push(n, d)
	}
}
