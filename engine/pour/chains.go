package pour

import (
	"math"
	"slices"
)

// chain is a stretch of floor over which one front moves: an arm, one side of an island, or the trunk that leads to the exit. Its windows say
// which part of which triangle belongs to it, by rank: what ranks higher is poured earlier.
type chain struct {
	windows []window
	after   []int // the chains that must be down before this one starts
	volume  float64
	low     float64 // rank where the chain ends
}

// window is the part of a triangle whose rank lies between low and high.
type window struct {
	triangle  int
	low, high float64
	over      float64 // m³ of the triangle above high
	volume    float64 // m³ of the window itself
}

// levels are the slabs of equal rank that the floor is sliced into to find its chains.
type levels struct {
	mesh      *mesh
	rank      []float64
	floor     float64
	height    float64
	count     int
	hop       int     // slabs either way through which two parts of a slab count as joined
	bottom    []int   // lowest slab of each triangle
	top       []int   // highest
	reaching  [][]int // triangles by their highest slab
	node      [][]int // of each triangle, for each of its slabs
	nodeLevel []int
	sets      sets
	near      []int // used over again
}

// findChains splits the floor into chains. Two parts of a front that join within reach (in rank) count as one.
func findChains(m *mesh, rank []float64, reach float64) []chain {
	l := newLevels(m, rank, reach)
	for k := l.count - 1; k >= 0; k-- {
		l.join(k)
	}
	return l.chains()
}

func newLevels(m *mesh, rank []float64, reach float64) *levels {
	low, high := slices.Min(rank), slices.Max(rank)
	l := &levels{mesh: m, rank: rank, floor: low, sets: make(sets, len(m.triangles))}
	l.height = math.Max((high-low)/64, 0.1)
	l.count = max(1, int(math.Ceil((high-low)/l.height)))
	l.hop = int(math.Ceil(reach / l.height))
	l.reaching = make([][]int, l.count)
	l.bottom, l.top, l.node = make([]int, 0, len(m.triangles)), make([]int, 0, len(m.triangles)), make([][]int, 0, len(m.triangles))
	all := []int{}
	for t := range m.triangles {
		a, b := m.span(t, rank)
		first := min(l.count-1, int((a-low)/l.height))
		last := max(first, min(l.count-1, int(math.Ceil((b-low)/l.height))-1))
		l.bottom, l.top = append(l.bottom, first), append(l.top, last)
		l.reaching[last] = append(l.reaching[last], t)
		if cap(all)-len(all) < last-first+1 {
			all = make([]int, 0, 4096+last-first)
		}
		all = all[:len(all)+last-first+1]
		l.node = append(l.node, all[len(all)-(last-first+1):len(all):len(all)])
	}
	return l
}

// span is the least and the greatest rank in a triangle.
func (m *mesh) span(t int, rank []float64) (low, high float64) {
	c := m.triangles[t].corner
	low, high = rank[c[0]], rank[c[0]]
	for _, corner := range c[1:] {
		if r := rank[corner]; r < low {
			low = r
		} else if r > high {
			high = r
		}
	}
	return low, high
}

// join gives the triangles of slab k their nodes: one for each part of the slab that hangs together within reach.
func (l *levels) join(k int) {
	lowest, highest := max(0, k-l.hop), min(l.count-1, k+l.hop)
	near := l.near[:0]
	for top := lowest; top < l.count; top++ {
		for _, t := range l.reaching[top] {
			if l.bottom[t] <= highest {
				near = append(near, t)
			}
		}
	}
	l.near = near
	for _, t := range near {
		l.sets[t] = t
	}
	from, to := l.floor+float64(lowest)*l.height, l.floor+float64(highest+1)*l.height
	for _, t := range near {
		for s, other := range l.mesh.triangles[t].across {
			if other > t && l.bottom[other] <= highest && l.top[other] >= lowest && l.sideWithin(t, s, from, to) {
				l.sets.union(t, other)
			}
		}
	}
	nodes := map[int]int{}
	for _, t := range near {
		if l.bottom[t] > k || l.top[t] < k {
			continue
		}
		root := l.sets.find(t)
		id, known := nodes[root]
		if !known {
			id = len(l.nodeLevel)
			nodes[root] = id
			l.nodeLevel = append(l.nodeLevel, k)
		}
		l.node[t][k-l.bottom[t]] = id
	}
}

func (l *levels) sideWithin(t, s int, from, to float64) bool {
	c := l.mesh.triangles[t].corner
	a, b := l.rank[c[s]], l.rank[c[(s+1)%3]]
	return (a >= from || b >= from) && (a <= to || b <= to)
}

// chains strings nodes together wherever one follows one.
func (l *levels) chains() []chain {
	up, down := make([][]int, len(l.nodeLevel)), make([][]int, len(l.nodeLevel))
	for _, own := range l.node {
		for i := 1; i < len(own); i++ {
			if lower, upper := own[i-1], own[i]; !slices.Contains(up[lower], upper) {
				up[lower], down[upper] = append(up[lower], upper), append(down[upper], lower)
			}
		}
	}
	of := make([]int, len(l.nodeLevel)) // nodes are numbered from the top slab down
	chains := []chain{}
	for n := range l.nodeLevel {
		if len(up[n]) == 1 && len(down[up[n][0]]) == 1 {
			of[n] = of[up[n][0]]
			continue
		}
		of[n] = len(chains)
		c := chain{}
		for _, u := range up[n] {
			c.after = append(c.after, of[u])
		}
		slices.Sort(c.after)
		c.after = slices.Compact(c.after)
		chains = append(chains, c)
	}
	for n, k := range l.nodeLevel {
		chains[of[n]].low = l.floor + float64(k)*l.height // the last written is the lowest
	}
	l.fill(chains, of)
	return chains
}

// fill gives every chain its windows: the slabs of a triangle that follow one another in the same chain are one window.
func (l *levels) fill(chains []chain, of []int) {
	for t, own := range l.node {
		low, high := l.mesh.span(t, l.rank)
		for i := len(own) - 1; i >= 0; {
			last := i
			for i >= 0 && of[own[i]] == of[own[last]] {
				i--
			}
			w := window{triangle: t, low: low, high: high}
			if i >= 0 {
				w.low = l.floor + float64(l.bottom[t]+i+1)*l.height
			}
			if last < len(own)-1 {
				w.high = l.floor + float64(l.bottom[t]+last+1)*l.height
			}
			c := &chains[of[own[last]]]
			w.over = l.mesh.wedge(t, l.rank).above(w.high)
			w.volume = l.mesh.wedge(t, l.rank).above(w.low) - w.over
			c.windows = append(c.windows, w)
			c.volume += w.volume
		}
	}
}

// sets is a union of disjoint sets of numbers, each named by its least member.
type sets []int

func (s sets) find(i int) int {
	for s[i] != i {
		s[i] = s[s[i]]
		i = s[i]
	}
	return i
}

func (s sets) union(i, j int) {
	a, b := s.find(i), s.find(j)
	s[max(a, b)] = min(a, b)
}
