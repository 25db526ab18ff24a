package floor

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func level(h float64) func(Point) float64 { return func(Point) float64 { return h } }

func planeHeights(points []Point, l Plane) []float64 {
	heights := make([]float64, len(points))
	for i, p := range points {
		heights[i] = l.At(p)
	}
	return heights
}

func scattered(r *rand.Rand, n int, length, width float64) []Point {
	points := make([]Point, n)
	for i := range points {
		points[i] = Point{r.Float64() * length, r.Float64() * width}
	}
	return points
}

// highestOf is the highest ground of some cells and where it is; false where there are none.
func highestOf(cells []Cell) (height float64, at Point, some bool) {
	for _, cell := range cells {
		for i, h := range cell.Heights {
			if !some || h > height {
				height, at, some = h, cell.Corners[i], true
			}
		}
	}
	return
}

var ell = Outline{
	Outer: Ring{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 3}, {0, 3}},
	Holes: []Ring{{{0.5, 0.5}, {1, 0.5}, {1, 1.2}, {0.5, 1}}},
}

func TestEveryCircleOfTheTriangulationIsEmpty(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	floors := map[string][]Point{"scattered": scattered(r, 300, 4, 3), "none": nil, "one": {{1, 1}}, "on a line": {{0, 0}, {1, 1}, {2, 2}, {3, 3}}}
	for x := 0.0; x < 12; x++ {
		for y := 0.0; y < 9; y++ {
			floors["grid"] = append(floors["grid"], Point{x * 0.3, y * 0.3})
		}
	}
	for name, points := range floors {
		s, merges := Triangulate(points, make([]float64, len(points)), nil, 1, level(0))
		assert.Empty(t, merges, name)
		assert.Len(t, s.Points, len(points)+4, name)
		assert.Len(t, s.Triangles, 2*len(points)+2, "Euler's count, %s", name)
		area := 0.0
		for _, tri := range s.Triangles {
			corners := Ring{s.Points[tri[0]], s.Points[tri[1]], s.Points[tri[2]]}
			require.Greater(t, corners.SignedArea(), 0.0, name)
			area += corners.SignedArea()
			for i, p := range s.Points {
				if i != tri[0] && i != tri[1] && i != tri[2] {
					require.LessOrEqual(t, inCircle(corners, p), 1e-9, "%s: %v lies inside the circle of %v", name, p, corners)
				}
			}
		}
		low, high := Bounds(s.Points)
		assert.InEpsilon(t, (high.X-low.X)*(high.Y-low.Y), area, 1e-12, name)
	}
}

func inCircle(c Ring, p Point) float64 {
	ax, ay, bx, by, cx, cy := c[0].X-p.X, c[0].Y-p.Y, c[1].X-p.X, c[1].Y-p.Y, c[2].X-p.X, c[2].Y-p.Y
	return (ax*ax+ay*ay)*(bx*cy-by*cx) + (bx*bx+by*by)*(cx*ay-cy*ax) + (cx*cx+cy*cy)*(ax*by-ay*bx)
}

func TestReadingsOfOneSpotAreMergedIntoTheirMean(t *testing.T) {
	s, merges := Triangulate([]Point{{1, 1}, {2, 1}, {1, 1}, {1, 1}}, []float64{3, 5, 6, 9}, nil, 1, level(0))
	require.Len(t, merges, 1)
	assert.Equal(t, []int{0, 2, 3}, merges[0].Indexes)
	assert.InDelta(t, 6, merges[0].Spread, 1e-12)
	assert.Contains(t, s.Heights, 6.0)
	assert.Len(t, s.Points, 6)
}

func pourOf(points []Point, heights []float64, o Outline, plane Plane, beyond func(Point) float64) Depths {
	walls := make([][2]int, len(o.Outer))
	for i, corner := range o.Outer {
		points, heights = append(points[:len(points):len(points)], corner), append(heights[:len(heights):len(heights)], beyond(corner))
		walls[i] = [2]int{len(points) - 1, len(points)}
	}
	walls[len(walls)-1][1] -= len(walls)
	s, _ := Triangulate(points, heights, walls, 1, beyond)
	return DepthsOf(CellsOf(s, RegionOf(o)), plane)
}

func TestTheVolumeOverAFlatDeckIsExact(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	deck, finish := Plane{0.01, -0.02, 0.003}, Plane{0.002, 0.001, 0.1}
	points := scattered(r, 80, 4, 3)
	d := pourOf(points, planeHeights(points, deck), ell, finish, deck.At)
	middle := RegionOf(ell).Centroid()
	assert.InEpsilon(t, ell.Area(), d.Area, 1e-12)
	assert.InEpsilon(t, ell.Area()*(finish.At(middle)-deck.At(middle)), d.Volume, 1e-11)
	assert.Zero(t, d.Dry)
	assert.InDelta(t, finish.At(Point{4, 0})-deck.At(Point{4, 0}), d.Least, 1e-12, "the deck is highest at its right-hand end")
}

func TestMovingEveryReadingMovesNothingButTheDatum(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	points := scattered(r, 60, 4, 3)
	heights := make([]float64, len(points))
	moved := make([]float64, len(points))
	for i := range heights {
		heights[i] = r.Float64() * 0.02
		moved[i] = heights[i] + 1.375
	}
	a := pourOf(points, heights, ell, Plane{C: 0.03}, level(0))
	b := pourOf(points, moved, ell, Plane{C: 1.405}, level(1.375))
	assert.InEpsilon(t, a.Volume, b.Volume, 1e-9)
	assert.InDelta(t, a.Least, b.Least, 1e-12)
}

func TestTurningOrMirroringTheRoomChangesNoVolume(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	points := scattered(r, 60, 4, 3)
	heights := make([]float64, len(points))
	for i := range heights {
		heights[i] = r.Float64() * 0.02
	}
	// Beyond the readings the deck is told by a rule that turns with the room, so the same floor is meant.
	want := pourOf(points, heights, ell, Plane{C: 0.015}, level(0.01))
	for name, turned := range map[string]func(Point) Point{
		"turned by 33 degrees": func(p Point) Point {
			c, s := math.Cos(0.576), math.Sin(0.576)
			return Point{c*p.X - s*p.Y + 7, s*p.X + c*p.Y - 2}
		},
		"mirrored":            func(p Point) Point { return Point{-p.X, p.Y} },
		"turned by a quarter": func(p Point) Point { return Point{-p.Y, p.X} },
	} {
		o := Outline{Outer: turnRing(ell.Outer, turned), Holes: []Ring{turnRing(ell.Holes[0], turned)}}
		got := pourOf(turnRing(points, turned), heights, o, Plane{C: 0.015}, level(0.01))
		assert.InEpsilon(t, want.Volume, got.Volume, 1e-9, name)
		assert.InEpsilon(t, want.Dry, got.Dry, 1e-9, name)
	}
	assert.Positive(t, want.Dry)
}

func turnRing(ring []Point, turn func(Point) Point) Ring {
	turned := make(Ring, len(ring))
	for i, p := range ring {
		turned[i] = turn(p)
	}
	return turned
}

func TestAReadingThatLiesOnTheSurfaceChangesNoVolume(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	deck := Plane{0.004, 0.003, 0}
	points := scattered(r, 40, 4, 3)
	heights := planeHeights(points, deck)
	before := pourOf(points, heights, ell, Plane{C: 0.05}, deck.At)
	extra := Point{1.234, 2.345}
	after := pourOf(append(points, extra), append(heights, deck.At(extra)), ell, Plane{C: 0.05}, deck.At)
	assert.InEpsilon(t, before.Volume, after.Volume, 1e-12)
}

func TestGroundAboveThePlaneStaysDryAndTheRestIsExact(t *testing.T) {
	// A deck that falls from 10 mm to 0 over 2 m, plane at 5 mm: half is dry, the wet half is a wedge of 5 mm.
	o := Outline{Outer: Rectangle(2, 1)}
	deck := Plane{A: -0.005, C: 0.010}
	d := pourOf([]Point{{1, 0.5}}, planeHeights([]Point{{1, 0.5}}, deck), o, Plane{C: 0.005}, deck.At)
	assert.InDelta(t, 1, d.Dry, 1e-9)
	assert.InDelta(t, 0.5*1*0.005, d.Volume, 1e-12)
	assert.InDelta(t, -0.005, d.Least, 1e-12)
	assert.InDelta(t, 0.0025, d.Mean(), 1e-12)
}

func TestDeckAreasShareTheGroundOut(t *testing.T) {
	areas := []Ring{{{1.5, -1}, {3, -1}, {3, 5}, {1.5, 5}}, {{2.5, 1}, {6, 1}, {6, 1.7}, {2.5, 1.7}}}
	regions := RegionsOf(ell, areas)
	require.Len(t, regions, 3)
	sum := 0.0
	for _, region := range regions {
		sum += region.Area()
	}
	assert.InDelta(t, ell.Area(), sum, 1e-12)
	assert.InDelta(t, 1.5*0.7, regions[2].Area(), 1e-12)
	assert.InDelta(t, 0.5*3+1*2-0.5*0.7, regions[1].Area(), 1e-12)
}

func TestContoursOfATiltedDeckAreStraightAndWhole(t *testing.T) {
	r := rand.New(rand.NewSource(6))
	o := Outline{Outer: Rectangle(4, 3)}
	deck := Plane{A: 0.01}
	points := scattered(r, 200, 4, 3)
	s, _ := Triangulate(points, planeHeights(points, deck), nil, 10, deck.At)
	cells := CellsOf(s, RegionOf(o))
	contours := ContoursOf(cells, Plane{C: 0.05}, []float64{0.02, 0.03})
	for _, contour := range contours {
		require.Len(t, contour.Lines, 1, "one line across the room at depth %v", contour.Depth)
		line := contour.Lines[0]
		assert.InDelta(t, 3, Distance(line[0], line[len(line)-1]), 1e-9)
		for _, p := range line {
			assert.InDelta(t, (0.05-contour.Depth)/0.01, p.X, 1e-9)
		}
	}
	area := 0.0
	for _, band := range BandsOf(cells, Plane{C: 0.05}, []float64{0, 0.02, 0.03, 0.06}) {
		for _, polygon := range band.Polygons {
			area += Ring(polygon).Area()
		}
	}
	assert.InDelta(t, 12, area, 1e-9, "bands tile the floor")
}

func FuzzPour(f *testing.F) {
	f.Add(int64(1), uint8(5), 4.0, 3.0)
	f.Add(int64(2), uint8(0), 0.001, 900.0)
	f.Fuzz(func(t *testing.T, seed int64, n uint8, length, width float64) {
		o := Outline{Outer: Rectangle(length, width)}
		if o.Check() != nil {
			return
		}
		r := rand.New(rand.NewSource(seed))
		points := scattered(r, int(n), length, width)
		for i := range points {
			if i%3 == 1 {
				points[i].X = points[i-1].X
			}
			if i%7 == 6 {
				points[i] = points[0]
			}
		}
		heights := make([]float64, len(points))
		for i := range heights {
			heights[i] = r.NormFloat64() * 0.02
		}
		d := pourOf(points, heights, o, Plane{C: 0.01}, level(0))
		assert.False(t, math.IsNaN(d.Volume) || d.Volume < 0 || d.Dry < -1e-9, "%+v", d)
		// Triangles are chosen on places told apart to the extent over 2^29: along each wall a sliver of that width may be counted twice or not.
		assert.InDelta(t, o.Area(), d.Area, 1e-9*o.Area()+o.Perimeter()*o.Perimeter()/(1<<27))
	})
}

func BenchmarkSurfaceAndPour(b *testing.B) {
	r := rand.New(rand.NewSource(7))
	for _, n := range []int{200, 2000, 20000} {
		points := scattered(r, n, 4, 3)
		heights := make([]float64, n)
		for i := range heights {
			heights[i] = r.Float64() * 0.02
		}
		b.Run(map[int]string{200: "200", 2000: "2000", 20000: "20000"}[n], func(b *testing.B) {
			for b.Loop() {
				pourOf(points, heights, ell, Plane{C: 0.03}, level(0.01))
			}
		})
	}
}
