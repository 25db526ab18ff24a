package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// Cell is a convex piece of the floor, corners in order, with the depth of the pour at each corner, m; between them the depth is linear.
type Cell struct {
	Corners []floor.Point `json:"corners"`
	Depths  []float64     `json:"depths"`
}

// mesh is the pour cut into small triangles that meet side to side, so that a quantity given at its points is continuous over the floor.
type mesh struct {
	points    []floor.Point
	triangles []triangle
	edges     int    // how many sides there are, each shared by one or two triangles
	parts     []part // room for the parts of one drawing, used over again
}

// triangle has the depth of its own cell at each corner: two cells may differ along a common side. side[i] runs from corner i to the next.
type triangle struct {
	corner [3]int
	depth  [3]float64
	side   [3]int
	across [3]int // the triangle beyond each side, −1 at a wall
	area   float64
}

func (t *triangle) volume() float64 { return t.area * (t.depth[0] + t.depth[1] + t.depth[2]) / 3 }

// spot is a place with the depth of the pour there.
type spot struct {
	floor.Point
	depth float64
}

// same is how near two corners are taken for one, m; it is far below what anybody can measure and far above rounding.
const same = 1e-7

// newMesh cuts the cells along a grid of squares of the given side and each part into triangles about its middle.
func newMesh(cells []Cell, square float64) (*mesh, error) {
	pieces := [][]spot{}
	for i, c := range cells {
		if err := checkCell(i, c); err != nil {
			return nil, err
		}
		pieces = append(pieces, squares(spots(c), square)...)
	}
	m := &mesh{}
	pool := newPool(square)
	rings := make([][]int, len(pieces))
	for i, piece := range pieces {
		for _, s := range piece {
			rings[i] = append(rings[i], pool.id(s.Point))
		}
	}
	for i, piece := range pieces {
		ring, depths := pool.hang(rings[i], piece)
		m.fan(pool, ring, depths)
	}
	m.points = pool.points
	m.meet()
	return m, nil
}

func checkCell(i int, c Cell) error {
	if len(c.Corners) < 3 || len(c.Corners) != len(c.Depths) {
		return refuse("cell "+number(float64(i), 0), number(float64(len(c.Corners)), 0)+" corners and "+number(float64(len(c.Depths)), 0)+" depths",
			"give three corners or more and a depth for each")
	}
	for k, p := range c.Corners {
		if !(math.Abs(p.X) < 1e6 && math.Abs(p.Y) < 1e6) || !(c.Depths[k] > -1e-9 && c.Depths[k] < 1e3) {
			return refuse("cell "+number(float64(i), 0), number(c.Depths[k]*1000, 2)+" mm at ("+number(p.X, 2)+" m, "+number(p.Y, 2)+" m)",
				"raise the finish plane until the pour is nowhere below zero")
		}
	}
	return nil
}

func spots(c Cell) []spot {
	piece := make([]spot, len(c.Corners))
	turned := 0.0
	for i, p := range c.Corners {
		piece[i] = spot{p, math.Max(0, c.Depths[i])}
		turned += turn(c.Corners[0], p, c.Corners[(i+1)%len(c.Corners)])
	}
	if turned < 0 {
		slices.Reverse(piece)
	}
	return piece
}

// squares cuts a convex piece along the lines of a grid, where it isn't smaller than its squares already.
func squares(piece []spot, square float64) [][]spot {
	if low, high := extent(piece); high.X-low.X <= square && high.Y-low.Y <= square {
		return [][]spot{piece}
	}
	parts := [][]spot{}
	for _, strip := range strips(piece, square, func(s spot) float64 { return s.X }) {
		parts = append(parts, strips(strip, square, func(s spot) float64 { return s.Y })...)
	}
	return parts
}

func extent(piece []spot) (low, high floor.Point) {
	low, high = piece[0].Point, piece[0].Point
	for _, s := range piece[1:] {
		low = floor.Point{X: math.Min(low.X, s.X), Y: math.Min(low.Y, s.Y)}
		high = floor.Point{X: math.Max(high.X, s.X), Y: math.Max(high.Y, s.Y)}
	}
	return low, high
}

// strips cuts a convex piece wherever a coordinate is a multiple of the square's side.
func strips(piece []spot, square float64, along func(spot) float64) [][]spot {
	low, high := math.Inf(1), math.Inf(-1)
	for _, s := range piece {
		low, high = math.Min(low, along(s)), math.Max(high, along(s))
	}
	parts := [][]spot{}
	for k := math.Floor((low+same)/square) + 1; k*square < high-same; k++ {
		below, above := halve(piece, func(s spot) float64 { return along(s) - k*square })
		parts = append(parts, below)
		piece = above
	}
	return append(parts, piece)
}

// halve cuts a convex piece where side is zero; corners within rounding of the line belong to both parts.
func halve(piece []spot, side func(spot) float64) (below, above []spot) {
	for i, a := range piece {
		b := piece[(i+1)%len(piece)]
		sa, sb := side(a), side(b)
		if sa < same/10 {
			below = append(below, a)
		}
		if sa > -same/10 {
			above = append(above, a)
		}
		if (sa <= -same/10 && sb >= same/10) || (sa >= same/10 && sb <= -same/10) {
			cut := between(a, b, sa/(sa-sb))
			below, above = append(below, cut), append(above, cut)
		}
	}
	return below, above
}

func between(a, b spot, t float64) spot {
	return spot{floor.Point{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}, a.depth + t*(b.depth-a.depth)}
}

// fan adds the triangles of a convex piece: a large one's about its middle, so that they are small; a small one's about a corner, if one sees all
// sides.
func (m *mesh) fan(pool *pool, ring []int, depths []float64) {
	area := 0.0
	for i := 1; i+1 < len(ring); i++ {
		area += turn(pool.points[ring[0]], pool.points[ring[i]], pool.points[ring[i+1]]) / 2
	}
	first := -1
	if area < pool.square*pool.square/4 {
		first = pool.overlook(ring, area)
	}
	if first < 0 {
		m.fanAbout(pool, ring, depths)
		return
	}
	for k := 1; k+1 < len(ring); k++ {
		i, j := (first+k)%len(ring), (first+k+1)%len(ring)
		m.add(pool, [3]int{ring[first], ring[i], ring[j]}, [3]float64{depths[first], depths[i], depths[j]})
	}
}

// overlook is a corner of a ring that no side lies in line with; −1 where there is none.
func (p *pool) overlook(ring []int, area float64) int {
	for first := range ring {
		least := math.Inf(1)
		for k := 1; k+1 < len(ring); k++ {
			least = math.Min(least, turn(p.points[ring[first]], p.points[ring[(first+k)%len(ring)]], p.points[ring[(first+k+1)%len(ring)]]))
		}
		if least > 1e-6*area {
			return first
		}
	}
	return -1
}

func (m *mesh) fanAbout(pool *pool, ring []int, depths []float64) {
	middle, depth := floor.Point{}, 0.0
	n := float64(len(ring))
	for i, id := range ring {
		p := pool.points[id]
		middle.X, middle.Y, depth = middle.X+p.X/n, middle.Y+p.Y/n, depth+depths[i]/n
	}
	hub := pool.add(middle)
	for i, id := range ring {
		next := (i + 1) % len(ring)
		m.add(pool, [3]int{hub, id, ring[next]}, [3]float64{depth, depths[i], depths[next]})
	}
}

func (m *mesh) add(pool *pool, corner [3]int, depth [3]float64) {
	if area := turn(pool.points[corner[0]], pool.points[corner[1]], pool.points[corner[2]]) / 2; area > 0 {
		m.triangles = append(m.triangles, triangle{corner: corner, depth: depth, area: area})
	}
}

// meet numbers the sides and finds which triangle lies beyond each.
func (m *mesh) meet() {
	type half struct{ from, to, triangle, side int }
	halves := make([]half, 0, 3*len(m.triangles))
	for t := range m.triangles {
		for s := range 3 {
			a, b := m.triangles[t].corner[s], m.triangles[t].corner[(s+1)%3]
			halves = append(halves, half{min(a, b), max(a, b), t, s})
		}
	}
	slices.SortFunc(halves, func(a, b half) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.to, b.to), cmp.Compare(a.triangle, b.triangle))
	})
	for i, h := range halves {
		if i == 0 || halves[i-1].from != h.from || halves[i-1].to != h.to {
			m.edges++
		}
		m.triangles[h.triangle].side[h.side] = m.edges - 1
		m.triangles[h.triangle].across[h.side] = -1
		for _, k := range []int{i - 1, i + 1} {
			if k >= 0 && k < len(halves) && halves[k].from == h.from && halves[k].to == h.to {
				m.triangles[h.triangle].across[h.side] = halves[k].triangle
			}
		}
	}
}

func (m *mesh) volume() float64 {
	sum := 0.0
	for t := range m.triangles {
		sum += m.triangles[t].volume()
	}
	return sum
}
