package floor

import (
	"math"
	"math/bits"
)

// gridBits is how finely places are told apart when triangles are chosen: the ground's extent over 2^29, some 20 nm in a room of 10 m.
// Whole numbers of this size make the orientation and circle tests exact, so that regular grids and straight lines need no special care.
// Only the choice of triangles rests on them; lengths and volumes use the places as given.
const gridBits = 29

// Merge is a spot that was read more than once: the surface takes the mean.
type Merge struct {
	At      Point
	Indexes []int   // of the readings, in order
	Spread  float64 // greatest height less least, metres
}

// Triangulate makes the Delaunay surface through every reading. Walls are pairs of indexes of points that stay sides of triangles whatever the
// circles say, so that the deck on one hand of a wall tells nothing of the ground on the other. Everything lies inside a box that reaches
// margin metres beyond the points all round; the box's corners take their heights from beyond and count only outside the walls. Nothing is
// asked of the readings: none, one or all on a line will do. Readings of one spot are merged into their mean and listed. All places and
// heights must be finite.
func Triangulate(points []Point, heights []float64, walls [][2]int, margin float64, beyond func(Point) float64) (*Surface, []Merge) {
	low, high := Bounds(points)
	low, high = Point{low.X - margin, low.Y - margin}, Point{high.X + margin, high.Y + margin}
	m := newMesh(low, high, len(points))
	for _, p := range []Point{low, {high.X, low.Y}, high, {low.X, high.Y}} {
		m.add(p, beyond(p))
	}
	m.start()
	for _, i := range alongSnake(points, low, high) {
		m.insert(points[i], heights[i], i)
	}
	merges := m.merge(points, heights)
	m.level()
	if len(walls) > 0 {
		m.findTriangles()
	}
	for _, wall := range walls {
		m.hold(m.vertexOf[wall[0]], m.vertexOf[wall[1]])
	}
	return m.surface(), merges
}

// mesh is a triangulation under construction.
type mesh struct {
	low       Point
	scale     float64
	at        []place
	points    []Point
	heights   []float64
	triangles []triangle
	last      int32 // the triangle that changed last
	stack     []int32

	vertexOf []int32 // of each reading
	merged   map[int32][]int
	of       []int32 // a triangle of each vertex, once walls are held
	held     map[[2]int32]bool
}

// place is a point on the grid on which triangles are chosen.
type place struct{ x, y int64 }

// triangle has corners v, counter-clockwise; n[k] is the triangle across the side opposite corner k, or -1.
type triangle struct{ v, n [3]int32 }

func newMesh(low, high Point, readings int) *mesh {
	extent := math.Max(high.X-low.X, high.Y-low.Y)
	vertices := readings + 4
	return &mesh{
		low: low, scale: float64(int64(1)<<gridBits) / extent,
		at: make([]place, 0, vertices), points: make([]Point, 0, vertices), heights: make([]float64, 0, vertices),
		triangles: make([]triangle, 0, 2*vertices),
		vertexOf:  make([]int32, readings), merged: map[int32][]int{}, held: map[[2]int32]bool{},
	}
}

func (m *mesh) add(p Point, height float64) int32 {
	m.points = append(m.points, p)
	m.heights = append(m.heights, height)
	m.at = append(m.at, place{int64((p.X-m.low.X)*m.scale + 0.5), int64((p.Y-m.low.Y)*m.scale + 0.5)})
	return int32(len(m.points) - 1)
}

// start cuts the box into two triangles.
func (m *mesh) start() {
	m.more(0, 1, 2, -1, 1, -1)
	m.more(0, 2, 3, -1, -1, 0)
}

// turn is above zero where a, b, c go left round. Exact: the differences stay below 2^30.
func (m *mesh) turn(a, b, c int32) int64 {
	o, p, q := m.at[a], m.at[b], m.at[c]
	return (p.x-o.x)*(q.y-o.y) - (p.y-o.y)*(q.x-o.x)
}

// insideCircle tells whether d lies strictly inside the circle through a, b, c (counter-clockwise). Exact, in 128 bits.
func (m *mesh) insideCircle(a, b, c, d int32) bool {
	o := m.at[d]
	ax, ay := m.at[a].x-o.x, m.at[a].y-o.y
	bx, by := m.at[b].x-o.x, m.at[b].y-o.y
	cx, cy := m.at[c].x-o.x, m.at[c].y-o.y
	high, low := product(ax*ax+ay*ay, bx*cy-by*cx)
	high, low = plus(high, low, bx*bx+by*by, cx*ay-cy*ax)
	high, low = plus(high, low, cx*cx+cy*cy, ax*by-ay*bx)
	return int64(high) > 0 || (high == 0 && low > 0)
}

// product is the signed 128-bit product of a square sum and a cross product.
func product(square, cross int64) (high, low uint64) {
	if cross >= 0 {
		return bits.Mul64(uint64(square), uint64(cross))
	}
	high, low = bits.Mul64(uint64(square), uint64(-cross))
	low = ^low + 1
	high = ^high
	if low == 0 {
		high++
	}
	return high, low
}

func plus(high, low uint64, square, cross int64) (uint64, uint64) {
	moreHigh, moreLow := product(square, cross)
	sum, carry := bits.Add64(low, moreLow, 0)
	high, _ = bits.Add64(high, moreHigh, carry)
	return high, sum
}

// insert adds a reading, or merges it with the one already at its spot.
func (m *mesh) insert(p Point, height float64, reading int) {
	vertex := m.add(p, height)
	t, side, at := m.locate(m.at[vertex])
	if at >= 0 {
		m.forget()
		m.vertexOf[reading] = at
		m.merged[at] = append(m.merged[at], reading)
		return
	}
	m.vertexOf[reading] = vertex
	if side < 0 {
		m.splitTriangle(t, vertex)
	} else {
		m.splitSide(t, side, vertex)
	}
	m.settle(vertex)
}

func (m *mesh) forget() {
	last := len(m.points) - 1
	m.points, m.heights, m.at = m.points[:last], m.heights[:last], m.at[:last]
}

// locate walks from the last triangle to the one that holds the place; side is the side it lies on or -1, at the vertex it coincides with or -1.
func (m *mesh) locate(q place) (t int32, side int32, at int32) {
	t = m.last
	places, triangles := m.at, m.triangles
	for {
		of := &triangles[t]
		a, b, c := &places[of.v[0]], &places[of.v[1]], &places[of.v[2]]
		ax, ay, bx, by, cx, cy := a.x-q.x, a.y-q.y, b.x-q.x, b.y-q.y, c.x-q.x, c.y-q.y
		acrossA, acrossB, acrossC := bx*cy-by*cx, cx*ay-cy*ax, ax*by-ay*bx
		if acrossA < 0 {
			t = of.n[0]
		} else if acrossB < 0 {
			t = of.n[1]
		} else if acrossC < 0 {
			t = of.n[2]
		} else {
			side, at = onBorder(of, acrossA == 0, acrossB == 0, acrossC == 0)
			return t, side, at
		}
	}
}

// onBorder tells which side or which corner of a triangle a place lies on, from the sides whose lines it lies on.
func onBorder(t *triangle, a, b, c bool) (side, at int32) {
	switch {
	case b && c:
		return -1, t.v[0]
	case c && a:
		return -1, t.v[1]
	case a && b:
		return -1, t.v[2]
	case a:
		return 0, -1
	case b:
		return 1, -1
	case c:
		return 2, -1
	}
	return -1, -1
}

// splitTriangle puts the vertex into triangle t: three triangles, each with the vertex last.
func (m *mesh) splitTriangle(t, p int32) {
	old := &m.triangles[t]
	a, b, c, na, nb, nc := old.v[0], old.v[1], old.v[2], old.n[0], old.n[1], old.n[2]
	t1 := int32(len(m.triangles))
	t2 := t1 + 1
	m.more(b, c, p, t2, t, na)
	m.more(c, a, p, t, t1, nb)
	m.triangles[t].set(a, b, p, t1, t2, nc)
	m.relink(na, t, t1)
	m.relink(nb, t, t2)
	m.last = t
	m.stack = append(m.stack, t, t1, t2)
}

// splitSide puts the vertex onto a side of t: two triangles on each hand of it.
func (m *mesh) splitSide(t, side, p int32) {
	old := &m.triangles[t]
	after, before := (side+1)%3, (side+2)%3
	a, b, c := old.v[side], old.v[after], old.v[before]
	u, nb, nc := old.n[side], old.n[after], old.n[before]
	// a is opposite the side b–c; the new triangles are (a, b, p) and (c, a, p).
	t1 := int32(len(m.triangles))
	m.more(c, a, p, t, -1, nb)
	m.triangles[t].set(a, b, p, -1, t1, nc)
	m.relink(nb, t, t1)
	m.last = t
	m.stack = append(m.stack, t, t1)
	if u < 0 {
		return
	}
	d, nd1, nd2 := m.triangles[u].beyond(t) // nd1 is across (b, d) and nd2 across (d, c), since u runs d, c, b
	t2 := int32(len(m.triangles))
	m.more(b, d, p, u, t, nd1)
	m.triangles[u].set(d, c, p, t1, t2, nd2)
	m.relink(nd1, u, t2)
	m.triangles[t].n[0] = t2
	m.triangles[t1].n[1] = u
	m.stack = append(m.stack, u, t2)
}

// more adds a triangle. Two a vertex are reserved, which is all that there can be.
func (m *mesh) more(a, b, c, na, nb, nc int32) {
	m.triangles = m.triangles[:len(m.triangles)+1]
	m.triangles[len(m.triangles)-1].set(a, b, c, na, nb, nc)
}

// set writes number by number: a triangle assigned as a whole is built elsewhere and then copied.
func (t *triangle) set(a, b, c, na, nb, nc int32) {
	t.v[0], t.v[1], t.v[2] = a, b, c
	t.n[0], t.n[1], t.n[2] = na, nb, nc
}

func (m *mesh) relink(t, from, to int32) {
	if t >= 0 {
		of := &m.triangles[t]
		of.n[of.opposite(from)] = to
	}
}

// opposite is the corner across from a neighbour.
func (t *triangle) opposite(neighbour int32) int32 {
	if t.n[0] == neighbour {
		return 0
	}
	if t.n[1] == neighbour {
		return 1
	}
	return 2
}

// beyond is the corner across from a neighbour, and the other two neighbours in the order in which they follow.
func (t *triangle) beyond(neighbour int32) (corner, next, last int32) {
	if t.n[0] == neighbour {
		return t.v[0], t.n[1], t.n[2]
	}
	if t.n[1] == neighbour {
		return t.v[1], t.n[2], t.n[0]
	}
	return t.v[2], t.n[0], t.n[1]
}

// certain is beyond what rounding can do to a circle test in floating point: its terms stay below 2^124, and what is lost of them below 2^74.
const certain = 1 << 75

// settle flips the sides opposite the new vertex, which stands last in every triangle on the stack, until every circle is empty. It is where the
// time goes, so that what it does stands in it rather than behind calls.
func (m *mesh) settle(p int32) {
	places, triangles, stack := m.at, m.triangles, m.stack
	ox, oy := places[p].x, places[p].y
	for len(stack) > 0 {
		t := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		one := &triangles[t]
		u := one.n[2]
		if u < 0 {
			continue
		}
		other := &triangles[u]
		a, b := one.v[0], one.v[1]
		d, acrossAD, acrossDB := other.beyond(t)
		// The circle test from the new vertex: below zero where d lies inside the circle through a, b and it.
		atA, atB, atD := &places[a], &places[b], &places[d]
		ax, ay := float64(atA.x-ox), float64(atA.y-oy)
		bx, by := float64(atB.x-ox), float64(atB.y-oy)
		dx, dy := float64(atD.x-ox), float64(atD.y-oy)
		outside := (ax*ax+ay*ay)*(bx*dy-by*dx) + (bx*bx+by*by)*(dx*ay-dy*ax) + (dx*dx+dy*dy)*(ax*by-ay*bx)
		if outside > certain || (outside > -certain && !m.insideCircle(a, b, p, d)) {
			continue
		}
		acrossBP := one.n[0]
		one.set(a, d, p, u, one.n[1], acrossAD)
		other.set(d, b, p, acrossBP, t, acrossDB)
		m.relink(acrossAD, u, t)
		m.relink(acrossBP, t, u)
		stack = append(stack, t, u)
	}
	m.stack = stack
}

// flip turns the side opposite corner k of t. With p that corner, a and b the side and d the corner beyond it, t becomes (a, d, p) and the
// neighbour (d, b, p).
func (m *mesh) flip(t, k int32) {
	old := &m.triangles[t]
	p, a, b := old.v[k], old.v[(k+1)%3], old.v[(k+2)%3]
	u, acrossBP, acrossPA := old.n[k], old.n[(k+1)%3], old.n[(k+2)%3]
	d, acrossAD, acrossDB := m.triangles[u].beyond(t)
	old.set(a, d, p, u, acrossPA, acrossAD)
	m.triangles[u].set(d, b, p, acrossBP, t, acrossDB)
	m.relink(acrossAD, u, t)
	m.relink(acrossBP, t, u)
}

func (m *mesh) surface() *Surface {
	s := &Surface{Points: m.points, Heights: m.heights, Triangles: make([][3]int, len(m.triangles))}
	for t := range s.Triangles {
		from, to := &m.triangles[t].v, &s.Triangles[t]
		to[0], to[1], to[2] = int(from[0]), int(from[1]), int(from[2])
	}
	return s
}
