package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// stretch is a side of one part, its floor to the left, on a line that other parts may share.
type stretch struct {
	cut      int32
	from, to floor.Point
	a, b     float64 // along the line, a below b
	forward  bool
	batch    int
}

// border is a stretch between two batches, or between one and a wall (other −1), with the batch's floor to the left.
type border struct {
	from, to     floor.Point
	batch, other int
}

// patches puts the parts of every batch together.
func (m *mesh) patches(parts []part, count int, fromExit []float64) []Patch {
	patches := make([]Patch, count)
	m.total(parts, patches, fromExit)
	borders := m.borders(parts)
	lengths := make([]map[int]float64, count)
	own := make([][]border, count)
	for _, b := range borders {
		own[b.batch] = append(own[b.batch], b)
		if b.other >= 0 {
			if lengths[b.batch] == nil {
				lengths[b.batch] = map[int]float64{}
			}
			lengths[b.batch][b.other] += apart(b.from, b.to)
		}
	}
	for i := range patches {
		patches[i].Polygons = rings(own[i])
		patches[i].Neighbours = []Neighbour{}
		for other := range count {
			if length := lengths[i][other]; length > 1e-6 {
				patches[i].Neighbours = append(patches[i].Neighbours, Neighbour{other + 1, length})
			}
		}
	}
	return patches
}

// total sums every batch's volume, area and walk, and puts the label in the part nearest to the middle of the patch.
func (m *mesh) total(parts []part, patches []Patch, fromExit []float64) {
	type middle struct{ x, y float64 }
	middles := make([]middle, len(patches))
	for i := range patches {
		patches[i].Batch = i + 1
	}
	for i := range parts {
		p := &parts[i]
		area, volume, at := p.measure()
		patch := &patches[p.batch]
		patch.Area += area
		patch.Volume += volume
		corner := m.triangles[p.triangle].corner
		patch.Distance += area * (fromExit[corner[0]] + fromExit[corner[1]] + fromExit[corner[2]]) / 3
		middles[p.batch].x += area * at.X
		middles[p.batch].y += area * at.Y
	}
	best := make([]float64, len(patches))
	for i := range best {
		best[i] = math.Inf(1)
		if patches[i].Area > 0 {
			patches[i].Distance /= patches[i].Area
		}
	}
	for i := range parts {
		p := &parts[i]
		area, _, at := p.measure()
		patch := &patches[p.batch]
		middle := floor.Point{X: middles[p.batch].x / patch.Area, Y: middles[p.batch].y / patch.Area}
		if d := apart(at, middle); area > 1e-6*patch.Area && d < best[p.batch] {
			best[p.batch], patch.Label = d, at
		}
	}
}

// borders lays the sides of all parts on their lines and keeps the stretches where the batch changes.
func (m *mesh) borders(parts []part) []border {
	borders := []border{}
	stretches, first := m.byLine(parts)
	for line := 0; line+1 < len(first); line++ {
		own := stretches[first[line]:first[line+1]]
		if line < m.edges {
			borders = overlay(borders, own)
			continue
		}
		slices.SortStableFunc(own, func(a, b stretch) int { return cmp.Compare(a.cut, b.cut) })
		for from, k := 0, 1; k <= len(own); k++ {
			if k == len(own) || own[k].cut != own[from].cut {
				borders = overlay(borders, own[from:k])
				from = k
			}
		}
	}
	return borders
}

// byLine sorts all sides of the parts by where they lie: on a side of the mesh, by its number, and after those within a triangle, by the triangle's.
// Those of line n run from first[n] to first[n+1].
func (m *mesh) byLine(parts []part) (sorted []stretch, first []int) {
	lineOf := func(p *part, k int) int {
		if p.line[k] < 3 {
			return m.triangles[p.triangle].side[p.line[k]]
		}
		return m.edges + p.triangle
	}
	first = make([]int, m.edges+len(m.triangles)+1)
	for i := range parts {
		for k := range parts[i].count {
			first[lineOf(&parts[i], k)+1]++
		}
	}
	for n := 1; n < len(first); n++ {
		first[n] += first[n-1]
	}
	sorted = make([]stretch, first[len(first)-1])
	place := slices.Clone(first)
	for i := range parts {
		p := &parts[i]
		for k := range p.count {
			line := lineOf(p, k)
			sorted[place[line]] = stretch{cut: p.line[k], from: p.corners[k].Point, to: p.corners[(k+1)%p.count].Point, batch: p.batch}
			place[line]++
		}
	}
	return sorted, first
}

// mark is a place along a line.
type mark struct {
	along float64
	at    floor.Point
}

// overlay compares the two sides of one line and adds the borders along it.
func overlay(borders []border, line []stretch) []border {
	if len(line) == 0 || len(line) == 2 && line[0].batch == line[1].batch && apart(line[0].from, line[1].to) < same && apart(line[0].to, line[1].from) < same {
		return borders
	}
	marks := measureAlong(line)
	for i := 1; i < len(marks); i++ {
		middle := (marks[i-1].along + marks[i].along) / 2
		left, right := -1, -1
		for _, s := range line {
			if s.a < middle && middle < s.b {
				if s.forward {
					left = s.batch
				} else {
					right = s.batch
				}
			}
		}
		if left == right {
			continue
		}
		if left >= 0 {
			borders = append(borders, border{marks[i-1].at, marks[i].at, left, right})
		}
		if right >= 0 {
			borders = append(borders, border{marks[i].at, marks[i-1].at, right, left})
		}
	}
	return borders
}

// measureAlong gives the stretches their places along the line, by x or y whichever it follows more, and returns where stretches end.
func measureAlong(line []stretch) []mark {
	wide, deep := 0.0, 0.0
	for _, s := range line {
		wide, deep = math.Max(wide, math.Abs(s.to.X-s.from.X)), math.Max(deep, math.Abs(s.to.Y-s.from.Y))
	}
	marks := []mark{}
	for i := range line {
		s := &line[i]
		s.a, s.b = s.from.X, s.to.X
		if deep > wide {
			s.a, s.b = s.from.Y, s.to.Y
		}
		marks = append(marks, mark{s.a, s.from}, mark{s.b, s.to})
		if s.forward = s.a < s.b; !s.forward {
			s.a, s.b = s.b, s.a
		}
	}
	slices.SortStableFunc(marks, func(a, b mark) int { return cmp.Compare(a.along, b.along) })
	kept := marks[:1]
	for _, m := range marks[1:] {
		if m.along-kept[len(kept)-1].along > same/10 {
			kept = append(kept, m)
		}
	}
	return kept
}

// rings strings borders end to end into closed polygons.
func rings(borders []border) []floor.Ring {
	pool := newPool(0.05)
	ends := make([]int, len(borders))
	starts := make([]int, len(borders))
	for i, b := range borders {
		starts[i], ends[i] = pool.id(b.from), pool.id(b.to)
	}
	// The borders that start at a point, in their order: first[point], then after[that one], and so on.
	first, after := slices.Repeat([]int{-1}, len(pool.points)), make([]int, len(borders))
	for i := len(borders) - 1; i >= 0; i-- {
		after[i], first[starts[i]] = first[starts[i]], i
	}
	used := make([]bool, len(borders))
	out := []floor.Ring{}
	for i := range borders {
		if used[i] || starts[i] == ends[i] {
			continue
		}
		ring := floor.Ring{}
		for at := i; at >= 0; {
			used[at] = true
			ring = append(ring, pool.points[starts[at]])
			for at = first[ends[at]]; at >= 0 && (used[at] || starts[at] == ends[at]); {
				at = after[at]
			}
		}
		if ring = straighten(ring); len(ring) > 2 {
			out = append(out, ring)
		}
	}
	return out
}

// straighten leaves out the corners that don't turn.
func straighten(ring floor.Ring) floor.Ring {
	out := floor.Ring{}
	for i, p := range ring {
		before, after := ring[(i+len(ring)-1)%len(ring)], ring[(i+1)%len(ring)]
		if len(out) > 0 {
			before = out[len(out)-1]
		}
		if math.Abs(turn(before, p, after)) > 1e-9*apart(before, after) {
			out = append(out, p)
		}
	}
	return out
}
