// What published documents say of volumes and of scattered heights: a borrow-pit field book and a data set of a textbook.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// Wolf & Ghilani, Elementary Surveying, Plate B.2 "Borrow-pit leveling" (Second & Oak Streets, Madison, 11 Oct 2000), the full field book, seen in a
// reproduction. Squares of 20 ft, columns A to E, elevations in feet; the pit is dug to a grade of 358.0 ft.
const (
	benchmark, backsight = 360.48, 4.22 // ft
	grade, square        = 358.0, 20.0  // ft
)

var (
	elevations = [][]float64{
		{359.5, 359.3, 359.0, 358.8, 358.5},
		{360.0, 359.9, 359.5, 359.2, 358.9},
		{360.5, 360.0, 359.9, 359.7},
		{360.9, 360.7, 360.1, 360.1},
		{361.3, 361.0, 360.5},
	}
	cuts = [][]float64{
		{1.5, 1.3, 1.0, 0.8, 0.5},
		{2.0, 1.9, 1.5, 1.2, 0.9},
		{2.5, 2.0, 1.9, 1.7},
		{2.9, 2.7, 2.1, 2.1},
		{3.3, 3.0, 2.5},
	}
	// n·h, where n squares meet at the point.
	weighted = [][]float64{
		{1.5, 2.6, 2.0, 1.6, 0.5},
		{4.0, 7.6, 6.0, 3.6, 0.9},
		{5.0, 8.0, 7.6, 3.4},
		{5.8, 10.8, 6.3, 2.1},
		{3.3, 6.0, 2.5},
	}
	// The squares read: 4 in the first row, 3, 3 and 2 below.
	squaresInRow = []int{4, 3, 3, 2}
	pit          = floor.Outline{Outer: floor.Ring{{X: 0, Y: 0}, {X: 80, Y: 0}, {X: 80, Y: 20}, {X: 60, Y: 20}, {X: 60, Y: 60}, {X: 40, Y: 60}, {X: 40, Y: 80}, {X: 0, Y: 80}}}
)

func TestTheBorrowPitFieldBookChecksItself(t *testing.T) {
	assert.InDelta(t, 364.70, benchmark+backsight, 1e-6, "height of instrument, ft")
	sum := 0.0
	for i, row := range elevations {
		for j, elevation := range row {
			assert.InDelta(t, cuts[i][j], elevation-grade, 1e-9)
			assert.InDelta(t, weighted[i][j], cuts[i][j]*float64(squaresMeeting(i, j)), 1e-9)
			sum += weighted[i][j]
		}
	}
	assert.InDelta(t, 91.1, sum, 1e-9, "the book's sum of n·h")
	assert.InDelta(t, 337, square*square*sum/(4*27), 0.5, "the book's volume, cubic yards")
	require.NoError(t, pit.Check())
	assert.Equal(t, 4800.0, pit.Area(), "twelve squares, square feet")
}

func squaresMeeting(i, j int) (n int) {
	for _, row := range []int{i - 1, i} {
		for _, column := range []int{j - 1, j} {
			if row >= 0 && row < len(squaresInRow) && column >= 0 && column < squaresInRow[row] {
				n++
			}
		}
	}
	return n
}

// The triangles' volumes are worked out from the field book's elevations: the squares' 9110.0 ft³ is the mean of the two diagonals.
func TestTheBorrowPitCutIntoTriangles(t *testing.T) {
	falling := volumeOf(diagonals(func(a, b, c, d int) [][3]int { return [][3]int{{a, b, d}, {b, c, d}} }))
	rising := volumeOf(diagonals(func(a, b, c, d int) [][3]int { return [][3]int{{a, b, c}, {a, c, d}} }))
	lesser, greater := falling, rising
	if lesser > greater {
		lesser, greater = greater, lesser
	}
	assert.InDelta(t, 9106.667, lesser, 1e-3)
	assert.InDelta(t, 9113.333, greater, 1e-3)
	assert.InDelta(t, 9110.000, (lesser+greater)/2, 1e-3)
	assert.InDelta(t, 337.407, (lesser+greater)/2/27, 1e-3, "cubic yards")
}

// A regular grid leaves the diagonal of each square open, so the volume lies between those of all falling and all rising, square by square.
func TestTheBorrowPitTriangulatedFromItsReadings(t *testing.T) {
	points, heights := pitReadings()
	support, walls := floor.Support(pit, points, 0)
	points, heights = append(points, support...), append(heights, cornerHeights(support)...)
	surface, merges := floor.Triangulate(points, heights, walls, 10, func(floor.Point) float64 { return 0 })
	for _, merge := range merges {
		assert.Zero(t, merge.Spread, "the corners of the pit were read")
	}
	poured := floor.DepthsOf(floor.CellsOf(surface, floor.RegionOf(pit)), floor.Plane{C: 0})
	assert.InDelta(t, 4800, poured.Area, 1e-9)
	least, most := 0.0, 0.0
	for i, row := range squaresInRow {
		for j := range row {
			a, b, c, d := cuts[i][j], cuts[i][j+1], cuts[i+1][j+1], cuts[i+1][j]
			one, other := square*square*(2*a+b+2*c+d)/6, square*square*(a+2*b+c+2*d)/6
			least, most = least+min(one, other), most+max(one, other)
		}
	}
	assert.GreaterOrEqual(t, poured.Volume, least-1e-9)
	assert.LessOrEqual(t, poured.Volume, most+1e-9)
	assert.InDelta(t, 3.3, poured.Greatest, 1e-9)
	assert.InDelta(t, 0.5, poured.Least, 1e-9)
	assert.Equal(t, floor.Point{X: 80, Y: 0}, poured.LeastAt)
}

// pitReadings are the grade as the deck below a finish plane at zero: the cuts downwards.
func pitReadings() (points []floor.Point, heights []float64) {
	for i, row := range cuts {
		for j, cut := range row {
			points = append(points, floor.Point{X: float64(j) * square, Y: float64(i) * square})
			heights = append(heights, -cut)
		}
	}
	return points, heights
}

func cornerHeights(corners []floor.Point) []float64 {
	heights := make([]float64, len(corners))
	for k, p := range corners {
		heights[k] = -cuts[int(p.Y/square)][int(p.X/square)]
	}
	return heights
}

// diagonals cuts every square of the pit, its corners in order round it, into two triangles.
func diagonals(cutSquare func(a, b, c, d int) [][3]int) *floor.Surface {
	points, heights := pitReadings()
	first := make([]int, len(cuts))
	for i := 1; i < len(cuts); i++ {
		first[i] = first[i-1] + len(cuts[i-1])
	}
	surface := &floor.Surface{Points: points, Heights: heights}
	for i, row := range squaresInRow {
		for j := range row {
			surface.Triangles = append(surface.Triangles, cutSquare(first[i]+j, first[i]+j+1, first[i+1]+j+1, first[i+1]+j)...)
		}
	}
	return surface
}

func volumeOf(surface *floor.Surface) float64 {
	return floor.DepthsOf(floor.CellsOf(surface, floor.RegionOf(pit)), floor.Plane{}).Volume
}

// Davis, Statistics and Data Analysis in Geology (1973), as the data set topo of R's package MASS 7.3-58.2: x and y in units of 50 ft, heights in feet.
var topo = [][3]float64{
	{0.3, 6.1, 870}, {1.4, 6.2, 793}, {2.4, 6.1, 755}, {3.6, 6.2, 690}, {5.7, 6.2, 800}, {1.6, 5.2, 800}, {2.9, 5.1, 730}, {3.4, 5.3, 728},
	{3.4, 5.7, 710}, {4.8, 5.6, 780}, {5.3, 5, 804}, {6.2, 5.2, 855}, {0.2, 4.3, 830}, {0.9, 4.2, 813}, {2.3, 4.8, 762}, {2.5, 4.5, 765},
	{3, 4.5, 740}, {3.5, 4.5, 765}, {4.1, 4.6, 760}, {4.9, 4.2, 790}, {6.3, 4.3, 820}, {0.9, 3.2, 855}, {1.7, 3.8, 812}, {2.4, 3.8, 773},
	{3.7, 3.5, 812}, {4.5, 3.2, 827}, {5.2, 3.2, 805}, {6.3, 3.4, 840}, {0.3, 2.4, 890}, {2, 2.7, 820}, {3.8, 2.3, 873}, {6.3, 2.2, 875},
	{0.6, 1.7, 873}, {1.5, 1.8, 865}, {2.1, 1.8, 841}, {2.1, 1.1, 862}, {3.1, 1.1, 908}, {4.5, 1.8, 855}, {5.5, 1.7, 850}, {5.7, 1, 882},
	{6.2, 1, 910}, {0.4, 0.5, 940}, {1.4, 0.6, 915}, {1.4, 0.1, 890}, {2.1, 0.7, 880}, {2.3, 0.3, 870}, {3.1, 0, 880}, {4.1, 0.8, 960},
	{5.4, 0.4, 890}, {6, 0.1, 860}, {5.7, 3, 830}, {3.6, 6, 705},
}

// The plane is R 4.2.2's lm(z ~ x + y) of the same heights.
func TestTheLeastSquaresPlaneThroughScatteredHeights(t *testing.T) {
	points, heights, sum := make([]floor.Point, len(topo)), make([]float64, len(topo)), 0.0
	lowest, highest := topo[0][2], topo[0][2]
	for i, row := range topo {
		points[i], heights[i] = floor.Point{X: row[0], Y: row[1]}, row[2]
		sum += row[2]
		lowest, highest = min(lowest, row[2]), max(highest, row[2])
	}
	assert.Len(t, topo, 52)
	assert.Equal(t, []float64{690, 960}, []float64{lowest, highest})
	assert.InDelta(t, 827.0769, sum/52, 1e-4)

	plane := floor.TrendOf(points, heights)
	assert.InDelta(t, 913.800018, plane.C, 1e-6)
	assert.InDelta(t, -1.695042, plane.A, 1e-6)
	assert.InDelta(t, -25.251717, plane.B, 1e-6)
}
