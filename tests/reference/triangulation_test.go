// The deck's triangles and the volumes over them against general-purpose libraries: delaunator (npm) for the triangles, scipy and shapely
// (Debian python3-scipy, python3-shapely) for volumes clipped to rooms with nooks and keep-outs.
package reference

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand"
	"os/exec"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// ask runs a reference library on some input; the test is skipped where the library isn't installed.
func ask(t *testing.T, probe, command []string, input, answer any) {
	t.Helper()
	if out, err := exec.Command(probe[0], probe[1:]...).CombinedOutput(); err != nil {
		t.Skipf("the library isn't installed: %v %s", err, out)
	}
	text, err := json.Marshal(input)
	require.NoError(t, err)
	run := exec.Command(command[0], command[1:]...)
	run.Stdin = bytes.NewReader(text)
	var complaints bytes.Buffer
	run.Stderr = &complaints
	out, err := run.Output()
	require.NoError(t, err, complaints.String())
	require.NoError(t, json.Unmarshal(out, answer))
}

func askDelaunator(t *testing.T, floors [][]floor.Point) (triangles [][]int) {
	t.Helper()
	plain := make([][][2]float64, len(floors))
	for i, points := range floors {
		plain[i] = pairs(points)
	}
	ask(t, []string{"node", "--input-type=module", "-e", "import 'delaunator'"}, []string{"node", "triangulation.mjs"}, plain, &triangles)
	require.Len(t, triangles, len(floors))
	return triangles
}

func pairs(points []floor.Point) [][2]float64 {
	plain := make([][2]float64, len(points))
	for i, p := range points {
		plain[i] = [2]float64{p.X, p.Y}
	}
	return plain
}

func scattered(r *rand.Rand, n int) []floor.Point {
	points := make([]floor.Point, n)
	for i := range points {
		points[i] = floor.Point{X: 8 * r.Float64(), Y: 6 * r.Float64()}
	}
	return points
}

func bumpy(r *rand.Rand, n int) []float64 {
	heights := make([]float64, n)
	for i := range heights {
		heights[i] = 0.02 * r.Float64()
	}
	return heights
}

func zero(floor.Point) float64 { return 0 }

// canonical lists triangles with the lowest index first, in order, so that two lists can be compared.
func canonical(flat []int) [][3]int {
	triangles := make([][3]int, len(flat)/3)
	for i := range triangles {
		corners := flat[3*i : 3*i+3]
		slices.Sort(corners)
		triangles[i] = [3]int(corners)
	}
	slices.SortFunc(triangles, func(a, b [3]int) int { return slices.Compare(a[:], b[:]) })
	return triangles
}

func flat(surface *floor.Surface) []int {
	indexes := []int{}
	for _, triangle := range surface.Triangles {
		indexes = append(indexes, triangle[:]...)
	}
	return indexes
}

// measure gives the area and the volume above zero of some triangles.
func measure(surface *floor.Surface, flat []int, height func(i int) float64) (area, volume float64) {
	for i := 0; i+2 < len(flat); i += 3 {
		a, b, c := flat[i], flat[i+1], flat[i+2]
		part := floor.Ring{surface.Points[a], surface.Points[b], surface.Points[c]}.Area()
		area += part
		volume += part * (height(a) + height(b) + height(c)) / 3
	}
	return area, volume
}

func TestScatteredReadingsMakeTheTrianglesOfDelaunatorWhereInstalled(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	var floors [][]floor.Point
	var surfaces []*floor.Surface
	for _, n := range []int{0, 1, 2, 3, 4, 9, 30, 100, 500, 2000, 10000} {
		surface, _ := floor.Triangulate(scattered(r, n), bumpy(r, n), nil, 1.3, zero)
		floors, surfaces = append(floors, surface.Points), append(surfaces, surface)
	}
	for i, theirs := range askDelaunator(t, floors) {
		surface := surfaces[i]
		height := func(i int) float64 { return surface.Heights[i] }
		area, volume := measure(surface, theirs, height)
		ourArea, ourVolume := measure(surface, flat(surface), height)
		assert.InEpsilon(t, area, ourArea, 1e-9)
		if len(surface.Points) == 4 {
			continue // nothing but the box round no readings, whose diagonal is open
		}
		assert.Equal(t, canonical(theirs), canonical(flat(surface)), "%d readings", len(surface.Points)-4)
		assert.InEpsilon(t, volume, ourVolume, 1e-9, "%d readings", len(surface.Points)-4)
	}
}

// Where four readings or more lie on one circle the diagonals are open, so a plane-shaped deck stands in for the volume: it has one answer.
func TestGridsCirclesAndLinesCoverTheAreaOfDelaunatorWhereInstalled(t *testing.T) {
	floors := map[string][]floor.Point{}
	for i := range 30 {
		for j := range 20 {
			x, y := float64(i), float64(j)
			floors["a grid 0.3 m apart"] = append(floors["a grid 0.3 m apart"], floor.Point{X: 0.3 * x, Y: 0.3 * y})
			floors["a grid by the foot, turned"] = append(floors["a grid by the foot, turned"], floor.Point{X: 0.3048 * (0.8*x - 0.6*y), Y: 0.3048 * (0.6*x + 0.8*y)})
			floors["staggered rows"] = append(floors["staggered rows"], floor.Point{X: 0.4*x + 0.2*float64(j%2), Y: 0.2 * math.Sqrt(3) * y})
		}
	}
	for i := range 48 {
		angle := float64(i) * math.Pi / 24
		floors["round a column"] = append(floors["round a column"], floor.Point{X: 3 + math.Cos(angle), Y: 3 + math.Sin(angle)})
		floors["along one wall"] = append(floors["along one wall"], floor.Point{X: 0.1 * float64(i), Y: 2})
		floors["along a slanting wall"] = append(floors["along a slanting wall"], floor.Point{X: 0.1 * float64(i), Y: 0.07 * float64(i)})
		floors["two rows a millimetre apart"] = append(floors["two rows a millimetre apart"], floor.Point{X: 0.1 * float64(i/2), Y: 2 + 0.001*float64(i%2)})
	}
	deck := floor.Plane{A: 0.01, B: -0.003, C: 0.2}
	var names []string
	var surfaces []*floor.Surface
	var asked [][]floor.Point
	for _, name := range []string{"a grid 0.3 m apart", "a grid by the foot, turned", "staggered rows", "round a column", "along one wall", "along a slanting wall", "two rows a millimetre apart"} {
		surface, merges := floor.Triangulate(floors[name], make([]float64, len(floors[name])), nil, 1, zero)
		assert.Empty(t, merges, name)
		names, surfaces, asked = append(names, name), append(surfaces, surface), append(asked, surface.Points)
	}
	for i, theirs := range askDelaunator(t, asked) {
		surface := surfaces[i]
		height := func(i int) float64 { return deck.At(surface.Points[i]) }
		area, volume := measure(surface, theirs, height)
		ourArea, ourVolume := measure(surface, flat(surface), height)
		assert.Len(t, surface.Triangles, 2*len(surface.Points)-6, "Euler's count: %s", names[i])
		assert.InEpsilon(t, area, ourArea, 1e-9, names[i])
		assert.InEpsilon(t, volume, ourVolume, 1e-9, names[i])
	}
}

type clipped struct {
	Points    [][2]float64   `json:"points"`
	Heights   []float64      `json:"heights"`
	Plane     [3]float64     `json:"plane"`
	Outer     [][2]float64   `json:"outer"`
	Holes     [][][2]float64 `json:"holes"`
	Triangles [][3]int       `json:"triangles"`
}

type poured struct {
	Volume   float64      `json:"volume"`
	Wet      float64      `json:"wet"`
	Dry      float64      `json:"dry"`
	Least    float64      `json:"least"`
	Greatest float64      `json:"greatest"`
	Outer    [][2]float64 `json:"outer"`
}

func askShapely(t *testing.T, floors []clipped) (answers []poured) {
	t.Helper()
	ask(t, []string{"/usr/bin/python3", "-c", "import scipy, shapely"}, []string{"/usr/bin/python3", "triangulation_clip.py"}, floors, &answers)
	require.Len(t, answers, len(floors))
	return answers
}

// nooks is a room with as many corners as asked for, nooks and a keep-out or two; its centre stays floor or keep-out.
func nooks(r *rand.Rand, corners int) floor.Outline {
	star := func(x, y, least, most float64, n int) floor.Ring {
		ring := make(floor.Ring, n)
		for i := range ring {
			angle, reach := 2*math.Pi*(float64(i)+0.6*r.Float64())/float64(n), least+(most-least)*r.Float64()
			ring[i] = floor.Point{X: x + reach*math.Cos(angle), Y: y + reach*math.Sin(angle)}
		}
		return ring
	}
	return floor.Outline{Outer: star(4, 3, 1.2, 2.9, corners), Holes: []floor.Ring{star(3.6, 3, 0.1, 0.3, 5), star(4.4, 3, 0.1, 0.35, 7)}}
}

func rings(holes []floor.Ring) (plain [][][2]float64) {
	for _, hole := range holes {
		plain = append(plain, pairs(hole))
	}
	return plain
}

func compare(t *testing.T, want poured, got floor.Depths, name string) {
	t.Helper()
	assert.InEpsilon(t, want.Volume, got.Volume, 1e-9, name)
	assert.InEpsilon(t, want.Wet+want.Dry, got.Area, 1e-9, name)
	assert.InDelta(t, want.Dry, got.Dry, 1e-9*got.Area, name)
	assert.InDelta(t, want.Least, got.Least, 1e-11, name)
	assert.InDelta(t, want.Greatest, got.Greatest, 1e-11, name)
}

func TestVolumesInRoomsWithNooksAgreeWithShapelyWhereInstalled(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	plane := floor.Plane{A: 0.001, B: -0.0005, C: 0.012}
	var asked []clipped
	var ours []floor.Depths
	var names []string
	add := func(name string, points []floor.Point, corners int, theirTriangles bool) {
		room := nooks(r, corners)
		require.NoError(t, room.Check(), name)
		surface, _ := floor.Triangulate(points, bumpy(r, len(points)), nil, 9, zero)
		floorAsked := clipped{pairs(surface.Points), surface.Heights, [3]float64{plane.A, plane.B, plane.C}, pairs(room.Outer), rings(room.Holes), nil}
		if !theirTriangles {
			floorAsked.Triangles = surface.Triangles
		}
		asked, names = append(asked, floorAsked), append(names, name)
		ours = append(ours, floor.DepthsOf(floor.CellsOf(surface, floor.RegionOf(room)), plane))
	}
	for _, n := range []int{1, 3, 10, 60, 400} {
		for _, corners := range []int{5, 12, 40, 200} {
			add("scattered", scattered(r, n), corners, true)
		}
	}
	grid := []floor.Point{}
	for i := range 27 {
		for j := range 21 {
			grid = append(grid, floor.Point{X: 0.3 * float64(i), Y: 0.3 * float64(j)})
		}
	}
	add("a grid", grid, 30, false)
	add("one line of readings", grid[:21], 30, false)
	partlyDry := 0
	for i, want := range askShapely(t, asked) {
		compare(t, want, ours[i], names[i])
		if want.Dry > 0 {
			partlyDry++
		}
	}
	assert.Greater(t, partlyDry, len(names)/2, "in most of the rooms the deck must stand above the plane somewhere, or the check is weak")
}

// Heights of Davis, Statistics and Data Analysis in Geology (1973), as R's package MASS 7.3-58.2 has them (topo), moved a little so that no four lie on
// one circle: the hull's area and the volume over datum within it.
func TestTheHullOfScatteredHeightsAgreesWithScipyWhereInstalled(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	points, heights := make([]floor.Point, len(topo)), make([]float64, len(topo))
	for i, row := range topo {
		points[i] = floor.Point{X: row[0] + 0.001*r.Float64(), Y: row[1] + 0.001*r.Float64()}
		heights[i] = -row[2]
	}
	want := askShapely(t, []clipped{{Points: pairs(points), Heights: heights}})[0]
	hull, walls := floor.Outline{}, [][2]int{}
	for _, p := range want.Outer {
		hull.Outer = append(hull.Outer, floor.Point{X: p[0], Y: p[1]})
	}
	indexOf := func(p floor.Point) int { return slices.Index(points, p) }
	for i := range hull.Outer {
		from, to := hull.Outer.Wall(i)
		walls = append(walls, [2]int{indexOf(from), indexOf(to)})
	}
	surface, _ := floor.Triangulate(points, heights, walls, 1, zero)
	compare(t, want, floor.DepthsOf(floor.CellsOf(surface, floor.RegionOf(hull)), floor.Plane{}), "topo")
	assert.InEpsilon(t, hull.Area(), want.Wet, 1e-12)
}
