package floor

// Cell is a convex piece of poured ground over which the deck is one flat facet: corners counter-clockwise, the deck's height at each.
type Cell struct {
	Corners []Point
	Heights []float64
}

// CellsOf clips the surface to a region: cells that tile the region, each within one triangle and one piece. What lies outside the surface's
// triangles is left out, so the surface must cover the region.
func CellsOf(s *Surface, g Region) []Cell {
	cells := make([]Cell, 0, len(s.Triangles)+8)
	boxes := boxesOf(g)
	var scratch clipper
	facet := Cell{Corners: make([]Point, 3), Heights: make([]float64, 3)}
	for _, t := range s.Triangles {
		for i, k := range t {
			facet.Corners[i], facet.Heights[i] = s.Points[k], s.Heights[k]
		}
		if Ring(facet.Corners).SignedArea() <= 0 {
			continue
		}
		low, high := Bounds(facet.Corners)
		for i, piece := range g {
			if high.X < boxes[i].low.X || low.X > boxes[i].high.X || high.Y < boxes[i].low.Y || low.Y > boxes[i].high.Y {
				continue
			}
			if cell, some := scratch.clip(facet, piece); some {
				cells = append(cells, cell)
			}
		}
	}
	return cells
}

type box struct{ low, high Point }

func boxesOf(g Region) []box {
	boxes := make([]box, len(g))
	for i, piece := range g {
		boxes[i].low, boxes[i].high = Bounds(piece)
	}
	return boxes
}

// clipper keeps its work space from one cell to the next.
type clipper struct {
	points, nextPoints   []Point
	heights, nextHeights []float64
	keptPoints           shelf[Point]
	keptHeights          shelf[float64]
}

// clip cuts a facet by every side of a convex piece in turn (the Sutherland–Hodgman way), carrying the heights along.
func (c *clipper) clip(facet Cell, piece Ring) (Cell, bool) {
	c.points = append(c.points[:0], facet.Corners...)
	c.heights = append(c.heights[:0], facet.Heights...)
	for i := range piece {
		if !c.cutBy(piece[i], piece.corner(i+1)) {
			return Cell{}, false
		}
	}
	if Ring(c.points).SignedArea() <= 0 {
		return Cell{}, false
	}
	return Cell{c.keptPoints.keep(c.points), c.keptHeights.keep(c.heights)}, true
}

// cutBy keeps what lies left of the line from a to b; false where nothing of any area is left.
func (c *clipper) cutBy(a, b Point) bool {
	c.nextPoints, c.nextHeights = c.nextPoints[:0], c.nextHeights[:0]
	dx, dy := b.X-a.X, b.Y-a.Y
	n := len(c.points)
	before := dx*(c.points[n-1].Y-a.Y) - dy*(c.points[n-1].X-a.X)
	for i, j := n-1, 0; j < n; i, j = j, j+1 {
		now := dx*(c.points[j].Y-a.Y) - dy*(c.points[j].X-a.X)
		if (before > 0 && now < 0) || (before < 0 && now > 0) {
			share := before / (before - now)
			p, q := c.points[i], c.points[j]
			c.nextPoints = append(c.nextPoints, Point{p.X + share*(q.X-p.X), p.Y + share*(q.Y-p.Y)})
			c.nextHeights = append(c.nextHeights, c.heights[i]+share*(c.heights[j]-c.heights[i]))
		}
		if now >= 0 {
			c.nextPoints = append(c.nextPoints, c.points[j])
			c.nextHeights = append(c.nextHeights, c.heights[j])
		}
		before = now
	}
	c.points, c.nextPoints = c.nextPoints, c.points
	c.heights, c.nextHeights = c.nextHeights, c.heights
	return len(c.points) >= 3
}

// HeightAt is the deck's height at a spot in the cell or on its edge.
func (c Cell) HeightAt(p Point) (float64, bool) {
	if !Ring(c.Corners).Contains(p) {
		return 0, false
	}
	for i := 1; i+1 < len(c.Corners); i++ {
		a, b, d := c.Corners[0], c.Corners[i], c.Corners[i+1]
		area := turn(a, b, d)
		if area <= 0 {
			continue
		}
		// Shares of the corners by the areas across from them; a little outside the triangle still lies in the cell's one plane.
		sb, sd := turn(a, p, d)/area, turn(a, b, p)/area
		return c.Heights[0]*(1-sb-sd) + c.Heights[i]*sb + c.Heights[i+1]*sd, true
	}
	return c.Heights[0], true
}
