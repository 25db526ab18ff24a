package pour

import (
	"math"
	"slices"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// part is a fragment of floor and the batch, from 0, that covers it.
type part struct {
	fragment
	batch int
}

// longestRow is the most batches that are poured side by side along one front.
const longestRow = 12

// layer cuts the chains into the batches' parts.
type layer struct {
	mesh  *mesh
	rank  []float64
	exit  []float64
	parts []part
	lines map[float64]int32
	cuts  int32
}

// lay cuts every chain into its batches' shares, in rows of several where a batch alone would make a patch narrower than strip.
func (m *mesh) lay(rank []float64, chains []chain, shares [][]share, strip float64, fromExit []float64) []part {
	l := &layer{mesh: m, rank: rank, exit: fromExit, lines: map[float64]int32{}, parts: make([]part, 0, 2*len(m.triangles))}
	batches, volumes := make([][]int, len(chains)), make([][]float64, len(chains))
	for b, list := range shares {
		for _, s := range list {
			batches[s.chain], volumes[s.chain] = append(batches[s.chain], b), append(volumes[s.chain], s.volume)
		}
	}
	for i, c := range chains {
		if len(batches[i]) > 0 {
			l.chain(newFront(m, rank, c), batches[i], volumes[i], strip)
		}
	}
	return l.parts
}

func (l *layer) chain(f *front, batches []int, volumes []float64, strip float64) {
	along := floor.Point{}
	for at := 0; at < len(batches); {
		level := f.levelFor(volumes[at])
		row := min(f.row(level, strip), len(batches)-at)
		if row > 1 {
			sum := 0.0
			for _, v := range volumes[at : at+row] {
				sum += v
			}
			level = f.levelFor(sum)
		}
		if at+row == len(batches) {
			level = math.Inf(-1) // all that is left, however it was rounded
		}
		windows := f.advance(level)
		fragments := make([]fragment, 0, len(windows))
		for _, w := range windows {
			if g := l.mesh.fragmentOf(w, l.rank, l.number); g.count > 2 {
				fragments = append(fragments, g)
			}
		}
		if row > 1 {
			along = l.direction(fragments, along)
		}
		l.across(fragments, along, batches[at:at+row], volumes[at:at+row])
		at += row
	}
}

// number names the line of a level within a triangle.
func (l *layer) number(level float64) int32 {
	n, known := l.lines[level]
	if !known {
		l.cuts++
		n = 2 + l.cuts
		l.lines[level] = n
	}
	return n
}

// row is how many batches to pour along the front so that none is narrower than strip, where one alone would take it to a level.
func (f *front) row(level, strip float64) int {
	length, area := 0.0, 0.0
	for _, w := range f.windows {
		if strip == 0 || w.high <= level {
			break
		}
		flat := f.mesh.wedge(w.triangle, f.rank)
		flat.depth = [3]float64{1, 1, 1}
		area += flat.above(math.Max(level, w.low)) - flat.above(w.high)
		if w.low < level {
			length += f.mesh.edgeAt(w.triangle, f.rank, level)
		}
	}
	if length == 0 || area == 0 {
		return 1
	}
	return min(longestRow, max(1, int(math.Ceil(strip*length/area-0.01))))
}

// edgeAt is the length of the line along which a triangle's rank is at a level, m.
func (m *mesh) edgeAt(t int, rank []float64, level float64) float64 {
	c := m.triangles[t].corner
	ends, count := [3]floor.Point{}, 0
	for i := range 3 {
		a, b := c[i], c[(i+1)%3]
		if (rank[a] > level) != (rank[b] > level) {
			s := (level - rank[a]) / (rank[b] - rank[a])
			p, q := m.points[a], m.points[b]
			ends[count] = floor.Point{X: p.X + s*(q.X-p.X), Y: p.Y + s*(q.Y-p.Y)}
			count++
		}
	}
	return apart(ends[0], ends[1]) // neither end: nothing apart
}

// direction is the way along a row: its long axis, keeping to the way of the row before; the first row starts at its end farther from the exit.
func (l *layer) direction(fragments []fragment, before floor.Point) floor.Point {
	sum, x, y, xx, xy, yy, d, dx, dy := 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0
	for i := range fragments {
		f := &fragments[i]
		area, _, p := f.measure()
		walk := l.exit[l.mesh.triangles[f.triangle].corner[0]]
		sum, x, y, d = sum+area, x+area*p.X, y+area*p.Y, d+area*walk
		xx, xy, yy = xx+area*p.X*p.X, xy+area*p.X*p.Y, yy+area*p.Y*p.Y
		dx, dy = dx+area*p.X*walk, dy+area*p.Y*walk
	}
	x, y, d = x/sum, y/sum, d/sum
	xx, xy, yy, dx, dy = xx/sum-x*x, xy/sum-x*y, yy/sum-y*y, dx/sum-x*d, dy/sum-y*d
	half := (xx - yy) / 2
	axis := floor.Point{X: half + steady.Hypot(half, xy), Y: xy}
	if half < 0 {
		axis = floor.Point{X: xy, Y: -half + steady.Hypot(half, xy)}
	}
	long := steady.Hypot(axis.X, axis.Y)
	if long == 0 {
		axis, long = floor.Point{X: 1}, 1
	}
	axis = floor.Point{X: axis.X / long, Y: axis.Y / long}
	heading := axis.X*before.X + axis.Y*before.Y
	if before == (floor.Point{}) {
		heading = -(axis.X*dx + axis.Y*dy)
	}
	if heading < 0 {
		return floor.Point{X: -axis.X, Y: -axis.Y}
	}
	return axis
}

// across shares a row out to its batches by straight cuts square to its direction.
func (l *layer) across(fragments []fragment, along floor.Point, batches []int, volumes []float64) {
	if len(batches) == 1 {
		for _, f := range fragments {
			l.parts = append(l.parts, part{f, batches[0]})
		}
		return
	}
	levels := rowLevels(fragments, along, volumes)
	for i := range fragments {
		f := &fragments[i]
		low, high := slices.Min(f.value[:f.count]), slices.Max(f.value[:f.count])
		for k, batch := range batches {
			above, below := levels[k], levels[k+1]
			if high <= below || low >= above {
				continue
			}
			own := *f
			if low < below {
				own = own.keep(below, 1, l.cuts+int32(k)+4)
			}
			if high > above {
				own = own.keep(above, -1, l.cuts+int32(k)+3)
			}
			if own.count > 2 {
				l.parts = append(l.parts, part{own, batch})
			}
		}
	}
	l.cuts += int32(len(batches)) + 1
}

// rowLevels is where a row is cut, from its start down to its end: the batch numbered k lies between levels k and k+1.
func rowLevels(fragments []fragment, along floor.Point, volumes []float64) []float64 {
	low, high := math.Inf(1), math.Inf(-1)
	wedges := make([]wedge, 0, 3*len(fragments))
	for i := range fragments {
		f := &fragments[i]
		for k := range f.count {
			f.value[k] = -(f.corners[k].X*along.X + f.corners[k].Y*along.Y) // what is poured first is highest
			low, high = math.Min(low, f.value[k]), math.Max(high, f.value[k])
		}
		wedges = f.wedges(wedges)
	}
	levels := []float64{math.Inf(1)}
	sum := 0.0
	for _, v := range volumes[:len(volumes)-1] {
		sum += v
		levels = append(levels, levelWith(sum, low, high, func(level float64) float64 {
			above := 0.0
			for i := range wedges {
				above += wedges[i].above(level)
			}
			return above
		}))
	}
	return append(levels, math.Inf(-1))
}
