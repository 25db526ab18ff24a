package pour

import (
	"math"

	"lowspot/engine/floor"
)

// row is a band of floor that one or more batches cover side by side along a front.
type row struct {
	windows []window
	batches []int // from 0
	volumes []float64
	first   bool // of its chain
}

// longestRow is the most batches that are poured side by side along one front.
const longestRow = 12

// plannedRows are the rows of all chains, with the most batches that an edge between two rows waits and the places over one that batches are poured in.
type plannedRows struct {
	rows    []row
	longest int
	places  int
}

// planRows bands every chain for its batches' shares, several batches to a row where one alone would make a patch narrower than strip.
func (m *mesh) planRows(rank []float64, chains []chain, shares [][]share, strip float64) plannedRows {
	batches, volumes := make([][]int, len(chains)), make([][]float64, len(chains))
	for b, list := range shares {
		for _, s := range list {
			batches[s.chain], volumes[s.chain] = append(batches[s.chain], b), append(volumes[s.chain], s.volume)
		}
	}
	p := plannedRows{}
	last := make([]row, len(chains))
	for i, c := range chains {
		if len(batches[i]) == 0 {
			continue
		}
		first := len(p.rows)
		p.chain(newFront(m, rank, c), batches[i], volumes[i], strip)
		for _, before := range c.after {
			p.longest = max(p.longest, last[before].wait(p.rows[first]))
		}
		last[i] = p.rows[len(p.rows)-1]
	}
	return p
}

func (p *plannedRows) chain(f *front, batches []int, volumes []float64, strip float64) {
	for at := 0; at < len(batches); {
		level := f.levelFor(volumes[at])
		side := min(f.side(level, strip), len(batches)-at)
		if side > 1 {
			sum := 0.0
			for _, v := range volumes[at : at+side] {
				sum += v
			}
			level = f.levelFor(sum)
		}
		if at+side == len(batches) {
			level = math.Inf(-1) // all that is left, however it was rounded
		}
		r := row{f.advance(level), batches[at : at+side], volumes[at : at+side], at == 0}
		if at > 0 {
			p.longest = max(p.longest, p.rows[len(p.rows)-1].wait(r))
		}
		p.places += f.pieces(r.windows) - 1
		p.rows = append(p.rows, r)
		at += side
	}
}

// wait is the most batches between one row and the next where they lie against each other, the rows taken as evenly shared out.
func (r row) wait(next row) int {
	longest := 0
	if len(r.batches) == 0 {
		return longest
	}
	for i, b := range next.batches {
		longest = max(longest, b-r.batches[i*len(r.batches)/len(next.batches)])
	}
	return longest
}

// pieces is how many separate pieces of floor windows make.
func (f *front) pieces(windows []window) int {
	place := make(map[int]int, len(windows))
	own := make(sets, len(windows))
	for i, w := range windows {
		place[w.triangle], own[i] = i, i
	}
	count := len(windows)
	for i, w := range windows {
		tri := &f.mesh.triangles[w.triangle]
		for s, other := range tri.across {
			k, taken := place[other]
			if other < w.triangle || !taken {
				continue
			}
			a, b := f.rank[tri.corner[s]], f.rank[tri.corner[(s+1)%3]]
			if math.Max(a, b) > math.Max(w.low, windows[k].low) && math.Min(a, b) < math.Min(w.high, windows[k].high) && own.find(i) != own.find(k) {
				own.union(i, k)
				count--
			}
		}
	}
	return count
}

// side is how many batches to pour along the front so that none is narrower than strip, where one alone would take it to a level.
func (f *front) side(level, strip float64) int {
	length, area := 0.0, 0.0
	for w := range f.windows {
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
