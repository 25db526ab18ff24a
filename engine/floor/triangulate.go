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
	for _, wall := range walls {
		m.hold(m.vertexOf[wall[0]], m.vertexOf[wall[1]])
	}
	return m.surface(), merges
}

// mesh is a triangulation under construction. Triangle t has corners v[3t..3t+2], counter-clockwise; n[3t+k] is the triangle across the
// side opposite corner k, or -1.
type mesh struct {
	low     Point
	scale   float64
	x, y    []int64
	points  []Point
	heights []float64
	v, n    []int32
	of      []int32 // a triangle of each vertex
	last    int32
	stack   []int32

	vertexOf []int32 // of each reading
	merged   map[int32][]int
	held     map[[2]int32]bool
}

func newMesh(low, high Point, readings int) *mesh {
	extent := math.Max(high.X-low.X, high.Y-low.Y)
	return &mesh{
		low: low, scale: float64(int64(1)<<gridBits) / extent,
		vertexOf: make([]int32, readings), merged: map[int32][]int{}, held: map[[2]int32]bool{},
	}
}

func (m *mesh) add(p Point, height float64) int32 {
	m.points = append(m.points, p)
	m.heights = append(m.heights, height)
	m.x = append(m.x, int64(math.Round((p.X-m.low.X)*m.scale)))
	m.y = append(m.y, int64(math.Round((p.Y-m.low.Y)*m.scale)))
	m.of = append(m.of, 0)
	return int32(len(m.points) - 1)
}

// start cuts the box into two triangles.
func (m *mesh) start() {
	m.append(0, 1, 2, -1, 1, -1)
	m.append(0, 2, 3, -1, -1, 0)
}

// turn is above zero where a, b, c go left round. Exact: the differences stay below 2^30.
func (m *mesh) turn(a, b, c int32) int64 {
	return (m.x[b]-m.x[a])*(m.y[c]-m.y[a]) - (m.y[b]-m.y[a])*(m.x[c]-m.x[a])
}

// insideCircle tells whether d lies strictly inside the circle through a, b, c (counter-clockwise). Exact, in 128 bits.
func (m *mesh) insideCircle(a, b, c, d int32) bool {
	ax, ay := m.x[a]-m.x[d], m.y[a]-m.y[d]
	bx, by := m.x[b]-m.x[d], m.y[b]-m.y[d]
	cx, cy := m.x[c]-m.x[d], m.y[c]-m.y[d]
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
	t, side, at := m.locate(vertex)
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
	m.points, m.heights, m.x, m.y, m.of = m.points[:last], m.heights[:last], m.x[:last], m.y[:last], m.of[:last]
}

// locate walks from the last triangle to the one that holds the vertex; side is the side it lies on or -1, at the vertex it coincides with or -1.
func (m *mesh) locate(vertex int32) (t int32, side int, at int32) {
	t = m.last
	for {
		a, b, c := m.v[3*t], m.v[3*t+1], m.v[3*t+2]
		acrossA, acrossB, acrossC := m.turn(b, c, vertex), m.turn(c, a, vertex), m.turn(a, b, vertex)
		switch {
		case acrossA < 0:
			t = m.n[3*t]
		case acrossB < 0:
			t = m.n[3*t+1]
		case acrossC < 0:
			t = m.n[3*t+2]
		case acrossB == 0 && acrossC == 0:
			return t, -1, a
		case acrossC == 0 && acrossA == 0:
			return t, -1, b
		case acrossA == 0 && acrossB == 0:
			return t, -1, c
		case acrossA == 0:
			return t, 0, -1
		case acrossB == 0:
			return t, 1, -1
		case acrossC == 0:
			return t, 2, -1
		default:
			return t, -1, -1
		}
	}
}

// splitTriangle puts the vertex into triangle t: three triangles, each with the vertex last.
func (m *mesh) splitTriangle(t, p int32) {
	a, b, c := m.v[3*t], m.v[3*t+1], m.v[3*t+2]
	na, nb, nc := m.n[3*t], m.n[3*t+1], m.n[3*t+2]
	t1 := int32(len(m.v) / 3)
	t2 := t1 + 1
	m.append(b, c, p, t2, t, na)
	m.append(c, a, p, t, t1, nb)
	m.set(t, a, b, p, t1, t2, nc)
	m.relink(na, t, t1)
	m.relink(nb, t, t2)
	m.last = t
	m.stack = append(m.stack, t, t1, t2)
}

// splitSide puts the vertex onto a side of t: two triangles on each hand of it.
func (m *mesh) splitSide(t int32, side int, p int32) {
	a, b, c := m.v[3*t+int32(side)], m.v[3*t+int32(side+1)%3], m.v[3*t+int32(side+2)%3]
	nb, nc := m.n[3*t+int32(side+1)%3], m.n[3*t+int32(side+2)%3]
	u := m.n[3*t+int32(side)]
	// a is opposite the side b–c; the new triangles are (a, b, p) and (c, a, p).
	t1 := int32(len(m.v) / 3)
	m.append(c, a, p, t, -1, nb)
	m.set(t, a, b, p, -1, t1, nc)
	m.relink(nb, t, t1)
	m.last = t
	m.stack = append(m.stack, t, t1)
	if u < 0 {
		return
	}
	k := m.opposite(u, t)
	d := m.v[3*u+k]
	nd1, nd2 := m.n[3*u+(k+1)%3], m.n[3*u+(k+2)%3] // across (b, d) and across (d, c), since u runs d, c, b
	t2 := int32(len(m.v) / 3)
	m.append(b, d, p, u, t, nd1)
	m.set(u, d, c, p, t1, t2, nd2)
	m.relink(nd1, u, t2)
	m.n[3*t] = t2
	m.n[3*t1+1] = u
	m.stack = append(m.stack, u, t2)
}

func (m *mesh) append(a, b, c, na, nb, nc int32) {
	m.v, m.n = append(m.v, 0, 0, 0), append(m.n, 0, 0, 0)
	m.set(int32(len(m.v)/3-1), a, b, c, na, nb, nc)
}

func (m *mesh) set(t, a, b, c, na, nb, nc int32) {
	m.of[a], m.of[b], m.of[c] = t, t, t
	m.v[3*t], m.v[3*t+1], m.v[3*t+2] = a, b, c
	m.n[3*t], m.n[3*t+1], m.n[3*t+2] = na, nb, nc
}

func (m *mesh) relink(t, from, to int32) {
	if t >= 0 {
		m.n[3*t+m.opposite(t, from)] = to
	}
}

// opposite is the corner of t across from its neighbour.
func (m *mesh) opposite(t, neighbour int32) int32 {
	for k := int32(0); k < 2; k++ {
		if m.n[3*t+k] == neighbour {
			return k
		}
	}
	return 2
}

// settle flips the sides opposite the new vertex, which stands last in every triangle on the stack, until every circle is empty.
func (m *mesh) settle(p int32) {
	for len(m.stack) > 0 {
		t := m.stack[len(m.stack)-1]
		m.stack = m.stack[:len(m.stack)-1]
		u := m.n[3*t+2]
		if u < 0 {
			continue
		}
		if d := m.v[3*u+m.opposite(u, t)]; m.insideCircle(m.v[3*t], m.v[3*t+1], p, d) {
			m.flip(t, 2)
			m.stack = append(m.stack, t, u)
		}
	}
}

// flip turns the side opposite corner k of t. With p that corner, a and b the side and d the corner beyond it, t becomes (a, d, p) and the
// neighbour (d, b, p).
func (m *mesh) flip(t, k int32) {
	p, a, b := m.v[3*t+k], m.v[3*t+(k+1)%3], m.v[3*t+(k+2)%3]
	acrossBP, acrossPA := m.n[3*t+(k+1)%3], m.n[3*t+(k+2)%3]
	u := m.n[3*t+k]
	j := m.opposite(u, t)
	d := m.v[3*u+j]
	acrossAD, acrossDB := m.n[3*u+(j+1)%3], m.n[3*u+(j+2)%3]
	m.set(t, a, d, p, u, acrossPA, acrossAD)
	m.set(u, d, b, p, acrossBP, t, acrossDB)
	m.relink(acrossAD, u, t)
	m.relink(acrossBP, t, u)
}

func (m *mesh) surface() *Surface {
	s := &Surface{Points: m.points, Heights: m.heights, Triangles: make([][3]int, len(m.v)/3)}
	for t := range s.Triangles {
		s.Triangles[t] = [3]int{int(m.v[3*t]), int(m.v[3*t+1]), int(m.v[3*t+2])}
	}
	return s
}
