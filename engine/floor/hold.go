package floor

// A wall is held as a side of triangles by flipping away every side that crosses it, and then flipping what is new back to empty circles
// where that doesn't cross a wall (constrained Delaunay triangulation, after Sloan, Advances in Engineering Software 13, 1993; from memory).

func sideKey(a, b int32) [2]int32 {
	if a > b {
		a, b = b, a
	}
	return [2]int32{a, b}
}

// hold makes the straight line from a to b sides of triangles. A vertex that lies on the line parts it in two.
func (m *mesh) hold(a, b int32) {
	for a != b {
		next, crossed := m.crossedFrom(a, b)
		if len(crossed) > 0 {
			m.restore(a, next, m.clear(a, next, crossed))
		}
		m.held[sideKey(a, next)] = true
		a = next
	}
}

// findTriangles finds a triangle of every vertex.
func (m *mesh) findTriangles() {
	m.of = make([]int32, len(m.points))
	for t := range m.triangles {
		m.found(int32(t))
	}
}

func (m *mesh) found(t int32) {
	for _, vertex := range m.triangles[t].v {
		m.of[vertex] = t
	}
}

// flipHolding flips and finds the two triangles' vertices again.
func (m *mesh) flipHolding(t, k int32) {
	u := m.triangles[t].n[k]
	m.flip(t, k)
	m.found(t)
	m.found(u)
}

// crossedFrom lists the sides that the line from a towards b crosses, up to the first vertex on it, which is b or lies before b.
func (m *mesh) crossedFrom(a, b int32) (next int32, crossed [][2]int32) {
	t, k := m.leaving(a, b)
	p, q := m.triangles[t].v[(k+1)%3], m.triangles[t].v[(k+2)%3]
	if m.ahead(a, b, p) {
		return p, nil
	}
	for {
		crossed = append(crossed, [2]int32{p, q})
		u := m.triangles[t].n[k]
		j := m.triangles[u].opposite(t)
		d := m.triangles[u].v[j]
		side := m.turn(a, b, d)
		if side == 0 {
			return d, crossed
		}
		// u runs d, q, p: the line leaves it between p and d or between d and q.
		if side > 0 {
			q = d
		} else {
			p = d
		}
		t = u
		k = m.cornerNot(t, p, q)
	}
}

// ahead tells whether p lies on the line from a, on b's hand of a.
func (m *mesh) ahead(a, b, p int32) bool {
	from, to, on := m.at[a], m.at[b], m.at[p]
	return m.turn(a, b, p) == 0 && (to.x-from.x)*(on.x-from.x)+(to.y-from.y)*(on.y-from.y) > 0
}

// leaving finds the triangle round a through which the line to b leaves it, and a's corner there: its next corner lies on the line or
// right of it, the one after left.
func (m *mesh) leaving(a, b int32) (t, k int32) {
	t = m.of[a]
	for {
		k = 0
		for m.triangles[t].v[k] != a {
			k++
		}
		p, q := m.triangles[t].v[(k+1)%3], m.triangles[t].v[(k+2)%3]
		if m.ahead(a, b, p) || (m.turn(a, b, p) < 0 && m.turn(a, b, q) > 0) {
			return t, k
		}
		t = m.triangles[t].n[(k+1)%3] // across the side from q to a: round to the left
	}
}

func (m *mesh) cornerNot(t, p, q int32) int32 {
	k := int32(0)
	for m.triangles[t].v[k] == p || m.triangles[t].v[k] == q {
		k++
	}
	return k
}

// clear flips crossing sides until none is left, and lists the sides that came of it.
func (m *mesh) clear(a, b int32, crossed [][2]int32) (fresh [][2]int32) {
	for len(crossed) > 0 {
		side := crossed[0]
		crossed = crossed[1:]
		t, k := m.triangleOn(side)
		c, u := m.triangles[t].v[k], m.triangles[t].n[k]
		d := m.triangles[u].v[m.triangles[u].opposite(t)]
		if (m.turn(c, d, side[0]) > 0) == (m.turn(c, d, side[1]) > 0) || m.turn(c, d, side[0]) == 0 || m.turn(c, d, side[1]) == 0 {
			crossed = append(crossed, side) // not convex yet
			continue
		}
		m.flipHolding(t, k)
		if c != a && c != b && d != a && d != b && (m.turn(a, b, c) > 0) != (m.turn(a, b, d) > 0) {
			crossed = append(crossed, [2]int32{c, d})
		} else {
			fresh = append(fresh, [2]int32{c, d})
		}
	}
	return fresh
}

// restore flips the new sides back to empty circles, leaving the held ones and the line itself.
func (m *mesh) restore(a, b int32, fresh [][2]int32) {
	line := sideKey(a, b)
	for changed := true; changed; {
		changed = false
		for i, side := range fresh {
			if key := sideKey(side[0], side[1]); key == line || m.held[key] {
				continue
			}
			t, k := m.triangleOn(side)
			c, u := m.triangles[t].v[k], m.triangles[t].n[k]
			if u < 0 {
				continue
			}
			d := m.triangles[u].v[m.triangles[u].opposite(t)]
			if of := m.triangles[t].v; m.insideCircle(of[0], of[1], of[2], d) {
				m.flipHolding(t, k)
				fresh[i] = [2]int32{c, d}
				changed = true
			}
		}
	}
}

// triangleOn finds a triangle with the side, and the corner opposite it.
func (m *mesh) triangleOn(side [2]int32) (t, k int32) {
	if side[0] < 4 { // one of the box's corners, round which one can't go all the way
		side[0], side[1] = side[1], side[0]
	}
	t = m.of[side[0]]
	for {
		k = 0
		for m.triangles[t].v[k] != side[0] {
			k++
		}
		if m.triangles[t].v[(k+1)%3] == side[1] {
			return t, (k + 2) % 3
		}
		t = m.triangles[t].n[(k+1)%3]
	}
}
