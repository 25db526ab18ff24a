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
	done    []bool
	buckets [ring][]int32
	waiting int
	lowest  int
}

// A node's distance exceeds its nearest neighbour's by a step at most, which is four buckets, and the sources' by exactDisc steps.
const ring, bucketsPerStep, exactDisc = 64, 4, 12

func newMarch(f *Field) *march {
	return &march{field: f, done: make([]bool, len(f.distance)), lowest: math.MaxInt}
}

func (m *march) bucket(d float64) int { return int(d / m.field.step * bucketsPerStep) }

func (m *march) push(n int, d float64) {
	b := m.bucket(d)
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
			if !f.inside[n] || d > exactDisc*f.step || d >= f.distance[n] || walled(edges, from, p) {
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
			if m.done[n] || m.bucket(f.distance[n]) > b {
				continue
			}
			m.done[n] = true
			m.spread(n)
		}
	}
}

// spread updates the four neighbours of a settled node.
func (m *march) spread(n int) {
	f := m.field
	i, j := n%f.across, n/f.across
	if i+1 < f.across && !f.shutRight[n] {
		m.update(n+1, i+1, j)
	}
	if i > 0 && !f.shutRight[n-1] {
		m.update(n-1, i-1, j)
	}
	if j+1 < f.up && !f.shutUp[n] {
		m.update(n+f.across, i, j+1)
	}
	if j > 0 && !f.shutUp[n-f.across] {
		m.update(n-f.across, i, j-1)
	}
}

// update solves (d − a)² + (d − b)² = step² for the nearer settled neighbour along each axis.
func (m *march) update(n, i, j int) {
	f := m.field
	if m.done[n] || !f.inside[n] {
		return
	}
	a, b := math.Inf(1), math.Inf(1)
	if i > 0 && !f.shutRight[n-1] && f.distance[n-1] < a {
		a = f.distance[n-1]
	}
	if i+1 < f.across && !f.shutRight[n] && f.distance[n+1] < a {
		a = f.distance[n+1]
	}
	if j > 0 && !f.shutUp[n-f.across] && f.distance[n-f.across] < b {
		b = f.distance[n-f.across]
	}
	if j+1 < f.up && !f.shutUp[n] && f.distance[n+f.across] < b {
		b = f.distance[n+f.across]
	}
	if a > b {
		a, b = b, a
	}
	d := a + f.step
	if gap := b - a; gap < f.step {
		d = (a + b + math.Sqrt(2*f.step*f.step-gap*gap)) / 2
	}
	if d < f.distance[n] {
		f.distance[n] = d
		m.push(n, d)
	}
}
