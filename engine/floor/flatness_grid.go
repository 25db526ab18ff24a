// The first look for gaps: the surface's heights on a grid that is turned to each direction in turn, and the gaps on its lines.
package floor

import (
	"math"
	"sort"
)

// likelyGaps lists the places where the largest gap may be, the worst first.
func likelyGaps(surface *Surface, outline Outline, length float64) []edgeLine {
	step := gridStep(outline, length)
	places := places{apart: math.Max(step, length/8)}
	edge := edge{length: length}
	for k := 0; k < edgeDirections; k++ {
		angle := math.Pi * float64(k) / edgeDirections
		grid := newEdgeGrid(surface, outline, math.Cos(angle), math.Sin(angle), step)
		grid.eachRun(func(line int, along, heights []float64) {
			for from := 0; from < len(along); {
				gap, next := edge.block(along, heights, from, places.bar())
				if gap.Depth > 0 {
					places.add(grid.place(line, along, gap))
				}
				from = next
			}
		})
	}
	return places.kept
}

// places keeps the worst gaps, no two of them near each other in place and direction.
type places struct {
	apart float64
	kept  []edgeLine
}

// bar is what a gap must pass to be kept. Half of the worst is too little for any refinement to raise to the top.
func (p *places) bar() float64 {
	if len(p.kept) == 0 {
		return reach
	}
	if len(p.kept) < likelyPlaces {
		return p.kept[0].depth / 2
	}
	return math.Max(p.kept[len(p.kept)-1].depth, p.kept[0].depth/2)
}

func (p *places) add(place edgeLine) {
	for i, other := range p.kept {
		alike := math.Abs(place.x*other.y-place.y*other.x) < 0.2
		if alike && Distance(place.point(place.at), other.point(other.at)) < p.apart {
			if place.depth <= other.depth {
				return
			}
			p.kept = append(p.kept[:i], p.kept[i+1:]...)
			break
		}
	}
	at := sort.Search(len(p.kept), func(i int) bool { return p.kept[i].depth < place.depth })
	p.kept = append(p.kept, edgeLine{})
	copy(p.kept[at+1:], p.kept[at:])
	p.kept[at] = place
	if len(p.kept) > likelyPlaces {
		p.kept = p.kept[:likelyPlaces]
	}
}

// edgeGrid is the surface on a grid whose lines run in one direction. Heights are NaN where the surface has none.
type edgeGrid struct {
	x, y          float64 // the direction
	step          float64
	low           Point // in turned coordinates
	columns, rows int
	heights       []float64
	outline       Outline
}

func newEdgeGrid(surface *Surface, outline Outline, x, y, step float64) *edgeGrid {
	t := &edgeGrid{x: x, y: y, step: step}
	t.outline = outline.seen(t.turn)
	low, high := Bounds(t.outline.Outer)
	t.low = Point{low.X, low.Y + step/2}
	t.columns, t.rows = int((high.X-low.X)/step)+1, int((high.Y-low.Y)/step)+1
	t.heights = make([]float64, t.columns*t.rows)
	for i := range t.heights {
		t.heights[i] = math.NaN()
	}
	points := make([]Point, len(surface.Points))
	for i, p := range surface.Points {
		points[i] = t.turn(p)
	}
	for _, triangle := range surface.Triangles {
		t.fill(points, surface.Heights, triangle)
	}
	return t
}

func (t *edgeGrid) turn(p Point) Point { return Point{p.X*t.x + p.Y*t.y, p.Y*t.x - p.X*t.y} }

// fill writes a triangle's heights on every grid spot that it covers.
func (t *edgeGrid) fill(points []Point, heights []float64, triangle [3]int) {
	corners := [3]Point{points[triangle[0]], points[triangle[1]], points[triangle[2]]}
	plane, ok := planeOver(corners, [3]float64{heights[triangle[0]], heights[triangle[1]], heights[triangle[2]]})
	if !ok {
		return
	}
	low, high := Bounds(corners[:])
	for row := t.index(low.Y - t.low.Y); row < t.rows; row++ {
		v := t.low.Y + float64(row)*t.step
		if v > high.Y {
			return
		}
		from, to, crossed := triangleSpan(corners, v)
		if !crossed {
			continue
		}
		for column := t.index(from - t.low.X - reach); column < t.columns; column++ {
			u := t.low.X + float64(column)*t.step
			if u > to+reach {
				break
			}
			t.heights[row*t.columns+column] = plane.At(Point{u, v})
		}
	}
}

// index is the first line or sample at or beyond a distance from the grid's start.
func (t *edgeGrid) index(distance float64) int {
	i := int(math.Ceil(distance / t.step))
	if i < 0 {
		return 0
	}
	return i
}

// eachRun hands over every unbroken piece of grid line within the outline.
func (t *edgeGrid) eachRun(use func(line int, along, heights []float64)) {
	var along, heights []float64
	flush := func(row int) {
		if len(along) > 2 {
			use(row, along, heights)
		}
		along, heights = along[:0], heights[:0]
	}
	for row := 0; row < t.rows; row++ {
		for _, piece := range piecesInside(t.outline, t.low.Y+float64(row)*t.step) {
			for column := t.index(piece[0] - t.low.X - reach); column < t.columns; column++ {
				u := t.low.X + float64(column)*t.step
				if u > piece[1]+reach {
					break
				}
				height := t.heights[row*t.columns+column]
				if height != height {
					flush(row)
					continue
				}
				along, heights = append(along, u), append(heights, height)
			}
			flush(row)
		}
	}
}

// place is a gap on a grid line, back in the room's own coordinates.
func (t *edgeGrid) place(row int, along []float64, gap ProfileGap) edgeLine {
	v := t.low.Y + float64(row)*t.step
	return edgeLine{
		through: Point{-v * t.y, v * t.x}, x: t.x, y: t.y,
		depth: gap.Depth, from: along[gap.From], at: along[gap.At], to: along[gap.To],
	}
}
