package pour

import (
	"fmt"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// cellsOf cuts a test room along every x and y of its corners, and each rectangle or triangle that is floor into cells whose depth is deepest to the
// north-east: 5 mm and 1 mm a metre.
func cellsOf(t testing.TB, outline floor.Outline) []Cell {
	depth := func(p floor.Point) float64 { return 0.005 + 0.001*p.X + 0.0005*p.Y }
	cells := []Cell{}
	for _, tri := range triangulate(t, outline) {
		cell := Cell{Corners: tri}
		for _, p := range tri {
			cell.Depths = append(cell.Depths, depth(p))
		}
		cells = append(cells, cell)
	}
	return cells
}

// triangulate cuts an outline into trapezoids between the heights of its corners.
func triangulate(t testing.TB, outline floor.Outline) [][]floor.Point {
	heights := []float64{}
	edges := edgesOf(outline)
	for _, e := range edges {
		heights = append(heights, e.a.Y)
	}
	sortFloats(heights)
	pieces := [][]floor.Point{}
	for i := 1; i < len(heights); i++ {
		low, high := heights[i-1], heights[i]
		if high-low < 1e-9 {
			continue
		}
		middle := (low + high) / 2
		type crossing struct{ low, middle, high float64 }
		found := []crossing{}
		for _, e := range edges {
			at := func(y float64) float64 { return e.a.X + (e.b.X-e.a.X)*(y-e.a.Y)/(e.b.Y-e.a.Y) }
			if (e.a.Y > middle) != (e.b.Y > middle) {
				found = append(found, crossing{at(low), at(middle), at(high)})
			}
		}
		for a := range found {
			for b := a + 1; b < len(found); b++ {
				if found[b].middle < found[a].middle {
					found[a], found[b] = found[b], found[a]
				}
			}
		}
		require.Zero(t, len(found)%2)
		for c := 0; c < len(found); c += 2 {
			piece := []floor.Point{{X: found[c].low, Y: low}}
			if found[c+1].low-found[c].low > 1e-9 {
				piece = append(piece, floor.Point{X: found[c+1].low, Y: low})
			}
			piece = append(piece, floor.Point{X: found[c+1].high, Y: high})
			if found[c+1].high-found[c].high > 1e-9 {
				piece = append(piece, floor.Point{X: found[c].high, Y: high})
			}
			pieces = append(pieces, piece)
		}
	}
	return pieces
}

func roomVolume(t testing.TB, cells []Cell) float64 {
	m, err := newMesh(cells, 100)
	require.NoError(t, err)
	return m.volume()
}

// batchesOf splits a volume into full batches and a part batch.
func batchesOf(volume, full float64) []float64 {
	volumes := []float64{}
	for ; volume > full*(1+1e-9); volume -= full {
		volumes = append(volumes, full)
	}
	return append(volumes, volume)
}

func TestEveryBatchHasItsPatchAndThePatchesTileTheFloor(t *testing.T) {
	for _, room := range testRooms {
		for _, strip := range []float64{0, 0.5} {
			t.Run(fmt.Sprint(room.name, ", strip ", strip), func(t *testing.T) {
				cells := cellsOf(t, room.outline)
				volumes := batchesOf(roomVolume(t, cells), 0.0275)
				s, err := Order(Room{room.outline, room.exits, cells}, volumes, strip)
				require.NoError(t, err)
				require.Len(t, s.Patches, len(volumes))
				area := 0.0
				for i, p := range s.Patches {
					assert.Equal(t, i+1, p.Batch)
					assert.InEpsilon(t, volumes[i], p.Volume, 1e-6)
					area += p.Area
					ringed := 0.0
					for _, ring := range p.Polygons {
						ringed += signedArea(ring)
					}
					assert.InDelta(t, p.Area, ringed, 1e-6*p.Area, "batch %d: the drawn polygons hold the patch's floor", p.Batch)
					assert.True(t, inPatch(p, p.Label), "batch %d is numbered inside its patch", p.Batch)
				}
				assert.InEpsilon(t, outlineArea(room.outline), area, 1e-6)
				eachPointInOnePatch(t, room.outline, s)
				neighboursAgree(t, s)
				wayOutStaysDry(t, room, s)
				t.Log("longest gap", s.LongestGap, "batches", len(volumes), "exits", s.Exits)
				if dir := os.Getenv("POUR_DRAW"); dir != "" {
					draw(t, fmt.Sprintf("%s/%s %v.svg", dir, room.name, strip), room, s)
				}
			})
		}
	}
}

func outlineArea(outline floor.Outline) float64 {
	area := math.Abs(signedArea(outline.Outer))
	for _, hole := range outline.Holes {
		area -= math.Abs(signedArea(hole))
	}
	return area
}

func inPatch(p Patch, at floor.Point) bool {
	inside := false
	for _, ring := range p.Polygons {
		inside = inside != within(ring, at)
	}
	return inside
}

// samples lays points over the floor on a grid that no wall or square of the tests runs along.
func samples(outline floor.Outline, step float64) (points []floor.Point, across int) {
	low, high := bounds(outline.Outer)
	across = int((high.X-low.X)/step) + 1
	up := int((high.Y-low.Y)/step) + 1
	for j := range up {
		for i := range across {
			points = append(points, floor.Point{X: low.X + (float64(i)+0.517)*step, Y: low.Y + (float64(j)+0.483)*step})
		}
	}
	return points, across
}

func batchAt(s Sequence, p floor.Point) (batch, count int) {
	for _, patch := range s.Patches {
		if inPatch(patch, p) {
			batch, count = patch.Batch, count+1
		}
	}
	return batch, count
}

func eachPointInOnePatch(t *testing.T, outline floor.Outline, s Sequence) {
	points, _ := samples(outline, 0.07)
	for _, p := range points {
		_, count := batchAt(s, p)
		want := 0
		if holds(outline, p) {
			want = 1
		}
		require.Equal(t, want, count, "(%v, %v)", p.X, p.Y)
	}
}

func neighboursAgree(t *testing.T, s Sequence) {
	for _, p := range s.Patches {
		for _, n := range p.Neighbours {
			back := 0.0
			for _, m := range s.Patches[n.Batch-1].Neighbours {
				if m.Batch == p.Batch {
					back = m.Length
				}
			}
			require.InDelta(t, n.Length, back, 1e-6, "batches %d and %d share one edge", p.Batch, n.Batch)
		}
	}
}

// wayOutStaysDry floods the floor that is still bare from the exits after each batch: all of it must be reached.
func wayOutStaysDry(t *testing.T, room testRoom, s Sequence) {
	const step = 0.05
	points, across := samples(room.outline, step)
	batch := make([]int, len(points))
	for i, p := range points {
		batch[i], _ = batchAt(s, p)
	}
	for done := range len(s.Patches) - 1 {
		bare, reached := 0, 0
		seen := make([]bool, len(points))
		queue := []int{}
		for i, p := range points {
			if batch[i] <= done {
				continue
			}
			bare++
			for _, e := range s.Exits {
				if apart(p, room.exits[e]) < 2.5*step {
					seen[i] = true
					queue = append(queue, i)
				}
			}
		}
		for len(queue) > 0 {
			i := queue[0]
			queue = queue[1:]
			reached++
			for dj := -1; dj <= 1; dj++ {
				for di := -1; di <= 1; di++ {
					n := i + dj*across + di
					if n >= 0 && n < len(points) && batch[n] > done && !seen[n] && n%across-i%across == di {
						seen[n] = true
						queue = append(queue, n)
					}
				}
			}
		}
		// Slivers of bare floor thinner than the flood's grid are no place to stand.
		require.LessOrEqual(t, bare-reached, 3+bare/200, "after batch %d", done)
	}
}

func draw(t *testing.T, path string, room testRoom, s Sequence) {
	low, high := bounds(room.outline.Outer)
	svg := fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="%v %v %v %v" width="900">`, low.X-0.2, -high.Y-0.2, high.X-low.X+0.4, high.Y-low.Y+0.4)
	for i, p := range s.Patches {
		path := ""
		for _, ring := range p.Polygons {
			for k, q := range ring {
				path += fmt.Sprintf("%s%.4f %.4f", map[bool]string{true: "M", false: "L"}[k == 0], q.X, -q.Y)
			}
			path += "Z"
		}
		svg += fmt.Sprintf(`<path d="%s" fill="hsl(%d,60%%,70%%)" stroke="#333" stroke-width="0.01" fill-rule="evenodd"/><text x="%.3f" y="%.3f" font-size="0.2" text-anchor="middle">%d</text>`,
			path, i*47%360, p.Label.X, -p.Label.Y, p.Batch)
	}
	for _, e := range room.exits {
		svg += fmt.Sprintf(`<circle cx="%v" cy="%v" r="0.1" fill="red"/>`, e.X, -e.Y)
	}
	require.NoError(t, os.WriteFile(path, []byte(svg+"</svg>"), 0o644))
}

func BenchmarkOrder60SquareMetres(b *testing.B) {
	room := testRoom{outline: floor.Outline{Outer: corners(0, 0, 10, 0, 10, 4, 6, 4, 6, 7, 0, 7), Holes: []floor.Ring{box(2, 2, 2, 1)}}, exits: []floor.Point{{X: 0, Y: 1}}}
	cells := cellsOf(b, room.outline)
	volumes := batchesOf(roomVolume(b, cells), 0.0275)
	b.ReportMetric(float64(len(volumes)), "batches")
	for b.Loop() {
		if _, err := Order(Room{room.outline, room.exits, cells}, volumes, 0.5); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkOrderAndClock60SquareMetres(b *testing.B) {
	outline := floor.Outline{Outer: box(0, 0, 10, 6)}
	exits := []floor.Point{{X: 0, Y: 1}}
	cells := cellsOf(b, outline)
	batches, err := Batches(roomVolume(b, cells), bag, Bucket{37e-3, 0.25}, LitreMark)
	require.NoError(b, err)
	b.ReportMetric(float64(len(batches)), "batches")
	for b.Loop() {
		s, err := Order(Room{outline, exits, cells}, Volumes(batches), 0.5)
		require.NoError(b, err)
		loads, err := Loads(batches, s)
		require.NoError(b, err)
		_, err = Clock(loads, Crew{3, 1, 4, 0}, usual)
		require.NoError(b, err)
	}
}
