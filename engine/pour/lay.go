package pour

import (
	"math"

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
	lines map[float64]int
	cuts  int
}

// lay cuts every chain into its batches' shares, in rows of several where a batch alone would make a patch narrower than strip.
func (m *mesh) lay(rank []float64, chains []chain, shares [][]share, strip float64, fromExit []float64) []part {
	l := &layer{mesh: m, rank: rank, exit: fromExit, lines: map[float64]int{}}
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
		row := min(f.row(volumes[at], strip), len(batches)-at)
		sum := 0.0
		for _, v := range volumes[at : at+row] {
			sum += v
		}
		fragments := []fragment{}
		for _, w := range f.advance(sum, at+row == len(batches)) {
			if g := l.mesh.fragmentOf(w, l.rank, l.number); len(g.corners) > 2 {
				fragments = append(fragments, g)
			}
		}
		if row > 1 {
			along = l.direction(fragments, along)
		}
		for k := range row {
			own := fragments
			if k < row-1 {
				own, fragments = l.across(fragments, along, volumes[at+k])
			}
			for _, g := range own {
				l.parts = append(l.parts, part{g, batches[at+k]})
			}
		}
		at += row
	}
}

// number names the line of a level within a triangle.
func (l *layer) number(level float64) int {
	n, known := l.lines[level]
	if !known {
		l.cuts++
		n = 2 + l.cuts
		l.lines[level] = n
	}
	return n
}

// row is how many batches to pour along the front so that none is narrower than strip.
func (f *front) row(volume, strip float64) int {
	if strip == 0 {
		return 1
	}
	level := f.levelFor(volume)
	length, area := 0.0, 0.0
	for _, w := range f.windows {
		if w.high <= level {
			continue
		}
		area += f.mesh.areaAbove(w.triangle, f.rank, math.Max(level, w.low)) - f.mesh.areaAbove(w.triangle, f.rank, w.high)
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
	ends := []floor.Point{}
	for i := range 3 {
		a, b := c[i], c[(i+1)%3]
		if (rank[a] > level) != (rank[b] > level) {
			s := (level - rank[a]) / (rank[b] - rank[a])
			p, q := m.points[a], m.points[b]
			ends = append(ends, floor.Point{X: p.X + s*(q.X-p.X), Y: p.Y + s*(q.Y-p.Y)})
		}
	}
	if len(ends) < 2 {
		return 0
	}
	return apart(ends[0], ends[1])
}

// areaAbove is the area of the part of a triangle that ranks above a level, m²: its volume if it were a metre deep.
func (m *mesh) areaAbove(t int, rank []float64, level float64) float64 {
	flat := mesh{triangles: []triangle{m.triangles[t]}}
	flat.triangles[0].depth = [3]float64{1, 1, 1}
	return flat.above(0, rank, level)
}

// direction is the way along a row: its long axis, keeping to the way of the row before; the first row starts at its end farther from the exit.
func (l *layer) direction(fragments []fragment, before floor.Point) floor.Point {
	sum, x, y, xx, xy, yy, d, dx, dy := 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0
	for _, f := range fragments {
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

// across takes the next volume off a row by one straight cut square to its direction.
func (l *layer) across(fragments []fragment, along floor.Point, volume float64) (taken, left []fragment) {
	low, high := math.Inf(1), math.Inf(-1)
	values := make([][]float64, len(fragments))
	for i, f := range fragments {
		for _, s := range f.corners {
			v := s.X*along.X + s.Y*along.Y
			values[i] = append(values[i], v)
			low, high = math.Min(low, v), math.Max(high, v)
		}
	}
	for range 60 {
		level := (low + high) / 2
		sum := 0.0
		for i, f := range fragments {
			part, _ := f.keep(values[i], level, -1, 0)
			_, v, _ := part.measure()
			sum += v
		}
		if sum < volume {
			low = level
		} else {
			high = level
		}
		if math.Abs(sum-volume) < 1e-12*volume {
			low, high = level, level
			break
		}
	}
	level := (low + high) / 2
	l.cuts++
	line := 2 + l.cuts
	for i, f := range fragments {
		if part, _ := f.keep(values[i], level, -1, line); len(part.corners) > 2 {
			taken = append(taken, part)
		}
		if part, _ := f.keep(values[i], level, 1, line); len(part.corners) > 2 {
			left = append(left, part)
		}
	}
	return taken, left
}
