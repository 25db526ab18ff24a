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

// layer cuts rows into the batches' parts.
type layer struct {
	mesh  *mesh
	rank  []float64
	exit  []float64
	parts []part
	lines map[float64]int32
	cuts  int32
}

// lay cuts every row into its batches' parts.
func (m *mesh) lay(rank []float64, rows []row, fromExit []float64) []part {
	if m.parts == nil {
		m.parts = make([]part, 0, 2*len(m.triangles))
	}
	l := &layer{mesh: m, rank: rank, exit: fromExit, lines: map[float64]int32{}, parts: m.parts[:0]}
	along := floor.Point{}
	for _, r := range rows {
		fragments := make([]fragment, 0, len(r.windows))
		for _, w := range r.windows {
			if g := m.fragmentOf(w, rank, l.number); g.count > 2 {
				fragments = append(fragments, g)
			}
		}
		if r.first {
			along = floor.Point{}
		}
		if len(r.batches) > 1 {
			along = l.direction(fragments, along)
		}
		l.across(fragments, along, r.batches, r.volumes)
	}
	m.parts = l.parts
	return l.parts
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
	sum, down := 0.0, 0.0 // what the batches so far take, and how much of it lies in wedges that later cuts needn't look at
	for _, v := range volumes[:len(volumes)-1] {
		sum += v
		high = levelWith(sum-down, low, high, func(level float64) float64 {
			above := 0.0
			for i := range wedges {
				w := &wedges[i]
				above += w.above(level)
			}
			return above
		})
		levels = append(levels, high)
		wedges = slices.DeleteFunc(wedges, func(w wedge) bool {
			passed := w.value[0] > high && w.value[1] > high && w.value[2] > high
			if passed {
				down += w.volume()
			}
			return passed
		})
	}
	return append(levels, math.Inf(-1))
}
