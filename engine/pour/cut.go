package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// front is how far a chain has been poured: the windows that its edge runs through, cut off there, and those it hasn't reached, the highest first.
type front struct {
	mesh    *mesh
	rank    []float64
	edge    []window
	beyond  []window
	at, low float64
}

func newFront(m *mesh, rank []float64, c chain) *front {
	slices.SortFunc(c.windows, func(a, b window) int {
		if a.high != b.high {
			return cmp.Compare(b.high, a.high)
		}
		return a.triangle - b.triangle
	})
	return &front{mesh: m, rank: rank, beyond: c.windows, at: c.windows[0].high, low: c.low}
}

// windows goes through all that is left, the highest first.
func (f *front) windows(yield func(*window) bool) {
	for i := range f.edge {
		if !yield(&f.edge[i]) {
			return
		}
	}
	for i := range f.beyond {
		if !yield(&f.beyond[i]) {
			return
		}
	}
}

// advance moves the front down to a level, −Inf for the end of its chain, and returns the windows that it passes.
func (f *front) advance(level float64) []window {
	reached := 0
	for reached < len(f.beyond) && f.beyond[reached].high > level {
		reached++
	}
	taken := append(f.edge, f.beyond[:reached]...)
	edge := make([]window, 0, len(f.edge)+8)
	for i := range taken {
		w := &taken[i]
		if w.low < level {
			over := f.mesh.wedge(w.triangle, f.rank).above(level)
			edge = append(edge, window{w.triangle, w.low, level, over, w.volume + w.over - over})
			w.low, w.volume = level, over-w.over
		}
	}
	f.edge, f.beyond, f.at = edge, f.beyond[reached:], math.Max(level, f.low)
	return taken
}

// levelFor is the level that the front reaches with the next volume.
func (f *front) levelFor(volume float64) float64 {
	return levelWith(volume, f.low, f.at, func(level float64) float64 { return f.above(f.edge, level) + f.above(f.beyond, level) })
}

// above is the volume of windows, sorted from the highest, above a level.
func (f *front) above(windows []window, level float64) float64 {
	sum := 0.0
	for i := range windows {
		w := &windows[i]
		if w.high <= level {
			break
		}
		if w.low >= level {
			sum += w.volume
		} else {
			sum += f.mesh.wedge(w.triangle, f.rank).above(level) - w.over
		}
	}
	return sum
}

// most corners a fragment has: a triangle cut by two levels and by the two ends of its place in a row, each adding one at the most.
const mostCorners = 8

// fragment is a convex part of one triangle that belongs to one patch. line[i] is what its side from corner i lies on: 0 to 2 a side of the
// triangle, above that the cut of that number. value is what it is being cut by.
type fragment struct {
	triangle int
	count    int
	corners  [mostCorners]spot
	line     [mostCorners]int32
	value    [mostCorners]float64
}

// fragmentOf is the part of a triangle whose rank lies within the window; number names the cuts at the window's ends.
func (m *mesh) fragmentOf(w window, rank []float64, number func(level float64) int32) fragment {
	tri := &m.triangles[w.triangle]
	f := fragment{triangle: w.triangle}
	for i, c := range tri.corner {
		f.add(spot{m.points[c], tri.depth[i]}, int32(i), rank[c])
	}
	low, high := m.span(w.triangle, rank)
	if w.low > low {
		f = f.keep(w.low, 1, number(w.low))
	}
	if w.high < high {
		f = f.keep(w.high, -1, number(w.high))
	}
	return f
}

func (f *fragment) add(s spot, line int32, value float64) {
	f.corners[f.count], f.line[f.count], f.value[f.count] = s, line, value
	f.count++
}

// keep is the part of the fragment where its value lies on the given side of a level: above it (side 1) or below (side −1).
func (f *fragment) keep(level, side float64, line int32) fragment {
	out := fragment{triangle: f.triangle}
	for i := range f.count {
		next := i + 1
		if next == f.count {
			next = 0
		}
		a, va, vb := f.corners[i], side*(f.value[i]-level), side*(f.value[next]-level)
		switch {
		case va == 0 && vb < 0:
			out.add(a, line, f.value[i])
		case va >= 0:
			out.add(a, f.line[i], f.value[i])
		}
		if va > 0 && vb < 0 {
			out.add(between(a, f.corners[next], va/(va-vb)), line, level)
		} else if va < 0 && vb > 0 {
			out.add(between(a, f.corners[next], va/(va-vb)), f.line[i], level)
		}
	}
	return out
}

// wedges cuts the fragment into triangles with its value.
func (f *fragment) wedges(list []wedge) []wedge {
	for i := 1; i+1 < f.count; i++ {
		a, b, c := f.corners[0], f.corners[i], f.corners[i+1]
		list = append(list, wedge{[3]float64{f.value[0], f.value[i], f.value[i+1]}, [3]float64{a.depth, b.depth, c.depth}, turn(a.Point, b.Point, c.Point) / 2})
	}
	return list
}

// measure is the fragment's area, m², volume, m³, and centroid.
func (f *fragment) measure() (area, volume float64, middle floor.Point) {
	for i := 1; i+1 < f.count; i++ {
		a, b, c := &f.corners[0], &f.corners[i], &f.corners[i+1]
		part := turn(a.Point, b.Point, c.Point) / 2
		area += part
		volume += part * (a.depth + b.depth + c.depth) / 3
		middle.X += part * (a.X + b.X + c.X) / 3
		middle.Y += part * (a.Y + b.Y + c.Y) / 3
	}
	if area > 0 {
		middle = floor.Point{X: middle.X / area, Y: middle.Y / area}
	}
	return area, volume, middle
}
