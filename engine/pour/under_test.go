package pour

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// deck is a room's deck in triangles on a grid, its heights random within 8 mm.
func deck(across, up int, step float64) []floor.Cell {
	random := rand.New(rand.NewSource(5))
	heights := make([]float64, (across+1)*(up+1))
	for i := range heights {
		heights[i] = 0.008 * random.Float64()
	}
	cells := []floor.Cell{}
	for j := range up {
		for i := range across {
			for _, t := range [][3][2]int{{{0, 0}, {1, 0}, {1, 1}}, {{0, 0}, {1, 1}, {0, 1}}} {
				c := floor.Cell{}
				for _, d := range t {
					c.Corners = append(c.Corners, floor.Point{X: float64(i+d[0]) * step, Y: float64(j+d[1]) * step})
					c.Heights = append(c.Heights, heights[(j+d[1])*(across+1)+i+d[0]])
				}
				cells = append(cells, c)
			}
		}
	}
	return cells
}

func TestThePourUnderAPlaneHasTheFloorsVolume(t *testing.T) {
	ground := deck(30, 20, 0.3)
	for _, height := range []float64{0.012, 0.006} { // over all of it, and with high ground standing proud
		plane := floor.Plane{A: 0.0001, C: height}
		cells := CellsUnder(ground, plane)
		depths := floor.DepthsOf(ground, plane)
		assert.InEpsilon(t, depths.Volume, roomVolume(t, cells), 1e-6)
		outline := floor.Outline{Outer: box(0, 0, 9, 6)}
		volumes := batchesOf(roomVolume(t, cells), 0.0275)
		s, err := Order(Room{outline, []floor.Point{{X: 0, Y: 3}}, cells}, volumes, 0.5)
		require.NoError(t, err)
		eachPointInOnePatch(t, outline, s)
		wayOutStaysDry(t, testRoom{"", outline, []floor.Point{{X: 0, Y: 3}}}, s)
		area := 0.0
		for i, p := range s.Patches {
			assert.InEpsilon(t, volumes[i], p.Volume, 1e-6)
			area += p.Area
		}
		assert.InEpsilon(t, 54.0, area, 1e-6)
	}
}

func BenchmarkOrderOfThousandsOfReadings(b *testing.B) {
	cells := CellsUnder(deck(50, 40, 0.18), floor.Plane{C: 0.015})
	outline := floor.Outline{Outer: box(0, 0, 9, 7.2)}
	volumes := batchesOf(roomVolume(b, cells), 0.0275)
	for b.Loop() {
		if _, err := Order(Room{outline, []floor.Point{{X: 0, Y: 3}}, cells}, volumes, 0.5); err != nil {
			b.Fatal(err)
		}
	}
}
