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
	buckets [ringSize][]int32
	waiting int
	lowest  int
}

// A node's distance exceeds its nearest neighbour's by a step at most, which is four buckets, and the sources' by exactDisc steps: no bucket of the
// ring ever holds nodes of two rounds.
const ringSize, bucketsPerStep, exactDisc = 64, 4, 12

func newMarch(f *Field) *march {
	return &march{field: f, perStep: bucketsPerStep / f.step, lowest: math.MaxInt}
}

func (m *march) push(n int, d float64) {
	b := int(d * m.perStep)
	if b < m.lowest {
		m.lowest = b
	}
	m.buckets[b%ringSize] = append(m.buckets[b%ringSize], int32(n))
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

// run settles nodes in order of distance, each at most once, and brings the distances of those around it down. It is where the time goes, so that
// what it does for each neighbour stands in it rather than behind a call.
func (m *march) run() {
	marks, distance, across, step := m.field.marks, m.field.distance, m.field.across, m.field.step
	buckets, perStep, waiting := &m.buckets, m.perStep, m.waiting
	around, shut := [4]int{1, -1, across, -across}, [4]uint8{shutRight, shutLeft, shutUp, shutDown}
	for at := uint(m.lowest); waiting > 0; at++ {
		bucket := &buckets[at%ringSize]
		for len(*bucket) > 0 {
			last := len(*bucket) - 1
			n := int((*bucket)[last])
			*bucket = (*bucket)[:last]
			waiting--
			own := marks[n]
			if own&settled != 0 {
				continue
			}
			marks[n] = own | settled
			for k := range around {
				to := n + around[k]
				mark := marks[to]
				if own&shut[k] != 0 || mark&(inside|settled) != inside {
					continue
				}
				// (d − a)² + (d − b)² = step², from the nearer neighbour along each axis.
				a, b := distance[to-1], distance[to-across]
				if right := distance[to+1]; right < a {
					a = right
				}
				if up := distance[to+across]; up < b {
					b = up
				}
				if mark&shutAny != 0 {
					a, b = m.unwalled(to)
				}
				if a > b {
					a, b = b, a
				}
				d := a + step
				if gap := b - a; gap < step {
					d = (a + b + math.Sqrt(2*step*step-gap*gap)) / 2
				}
				if d < distance[to] {
					distance[to] = d
					later := &buckets[uint(int(d*perStep))%ringSize]
					*later = append(*later, int32(to))
					waiting++
				}
			}
		}
	}
}

// unwalled is the distance of the nearer neighbour along each axis that no wall parts from the node.
func (m *march) unwalled(n int) (a, b float64) {
	mark, distance, across := m.field.marks[n], m.field.distance, m.field.across
	a, b = math.Inf(1), math.Inf(1)
	if mark&shutLeft == 0 {
		a = distance[n-1]
	}
	if right := distance[n+1]; mark&shutRight == 0 && right < a {
		a = right
	}
	if mark&shutDown == 0 {
		b = distance[n-across]
	}
	if up := distance[n+across]; mark&shutUp == 0 && up < b {
		b = up
	}
	return a, b
}
