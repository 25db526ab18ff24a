package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// front is how far a chain has been poured: the windows not yet down, the highest first, and the rank its edge stands at.
type front struct {
	mesh    *mesh
	rank    []float64
	windows []window
	at      float64
	low     float64
}

func newFront(m *mesh, rank []float64, c chain) *front {
	windows := slices.Clone(c.windows)
	slices.SortFunc(windows, func(a, b window) int {
		return cmp.Or(cmp.Compare(b.high, a.high), cmp.Compare(a.triangle, b.triangle))
	})
	return &front{mesh: m, rank: rank, windows: windows, at: windows[0].high, low: c.low}
}

// advance takes the next volume off the front, exactly, and returns the windows that it fills. Everything that is left is taken by all.
func (f *front) advance(volume float64, all bool) []window {
	level := math.Inf(-1)
	if !all {
		level = f.levelFor(volume)
	}
	taken, left := []window{}, f.windows[:0:0]
	for _, w := range f.windows {
		switch {
		case w.low >= level:
			taken = append(taken, w)
		case w.high <= level:
			left = append(left, w)
		default:
			taken = append(taken, window{w.triangle, level, w.high})
			left = append(left, window{w.triangle, w.low, level})
		}
	}
	f.windows, f.at = left, math.Max(level, f.low)
	return taken
}

// volumeAbove is what lies between the front and a lower level of rank, m³.
func (f *front) volumeAbove(level float64) float64 {
	sum := 0.0
	for _, w := range f.windows {
		if w.high <= level {
			continue
		}
		sum += f.mesh.above(w.triangle, f.rank, math.Max(level, w.low)) - f.mesh.above(w.triangle, f.rank, w.high)
	}
	return sum
}

// levelFor finds the level above which exactly the volume lies, by false position kept honest with halving (the Illinois rule).
func (f *front) levelFor(volume float64) float64 {
	high, low := f.at, f.low
	over, under := volume, volume-f.volumeAbove(low) // what is missing at high, and at low (below zero: too much)
	if under >= 0 {
		return math.Inf(-1)
	}
	for range 200 {
		level := low + (high-low)*under/(under-over)
		if !(level > low && level < high) {
			level = (low + high) / 2
		}
		missing := volume - f.volumeAbove(level)
		if math.Abs(missing) <= 1e-13*volume || high-low < 1e-14*(1+math.Abs(low)) {
			return level
		}
		if missing > 0 {
			high, over, under = level, missing, under/2
		} else {
			low, under, over = level, missing, over/2
		}
	}
	return (low + high) / 2
}

// fragment is a convex part of one triangle that belongs to one patch. line[i] is what its side from corner i lies on: 0 to 2 a side of the
// triangle, above that the cut of that number.
type fragment struct {
	triangle int
	corners  []spot
	line     []int
}

// fragmentOf is the part of a triangle whose rank lies within the window; cuts numbers the levels that cut the triangle.
func (m *mesh) fragmentOf(w window, rank []float64, number func(level float64) int) fragment {
	tri := &m.triangles[w.triangle]
	f := fragment{triangle: w.triangle, line: []int{0, 1, 2}}
	ranks := []float64{}
	for i, c := range tri.corner {
		f.corners = append(f.corners, spot{m.points[c], tri.depth[i]})
		ranks = append(ranks, rank[c])
	}
	low, high := m.span(w.triangle, rank)
	if w.low > low {
		f, ranks = f.keep(ranks, w.low, 1, number(w.low))
	}
	if w.high < high {
		f, _ = f.keep(ranks, w.high, -1, number(w.high))
	}
	return f
}

// keep is the part of the fragment where value lies on the given side of a level: above it (side 1) or below (side −1).
func (f fragment) keep(value []float64, level, side float64, line int) (fragment, []float64) {
	out, values := fragment{triangle: f.triangle}, []float64{}
	add := func(s spot, v float64, line int) {
		out.corners, out.line, values = append(out.corners, s), append(out.line, line), append(values, v)
	}
	for i, a := range f.corners {
		next := (i + 1) % len(f.corners)
		va, vb := side*(value[i]-level), side*(value[next]-level)
		if va >= 0 {
			if vb < 0 && va == 0 {
				add(a, value[i], line)
				continue
			}
			add(a, value[i], f.line[i])
		}
		if (va > 0 && vb < 0) || (va < 0 && vb > 0) {
			cut := between(a, f.corners[next], va/(va-vb))
			if va > 0 {
				add(cut, level, line) // from here along the cut
			} else {
				add(cut, level, f.line[i])
			}
		}
	}
	return out, values
}

// measure is the fragment's area, m², volume, m³, and centroid.
func (f fragment) measure() (area, volume float64, middle floor.Point) {
	for i := 1; i+1 < len(f.corners); i++ {
		a, b, c := f.corners[0], f.corners[i], f.corners[i+1]
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
