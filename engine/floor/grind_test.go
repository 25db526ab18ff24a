package floor

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pyramids is a flat deck, 6 m × 3 m, with two four-sided humps on a base of 2 m × 2 m each: one of 10 mm, one of 6 mm.
func pyramids() []Cell {
	var s Surface
	square := func(x float64, height float64) {
		n := len(s.Points)
		s.Points = append(s.Points, Point{x, 0}, Point{x + 3, 0}, Point{x + 3, 3}, Point{x, 3}, Point{x + 0.5, 0.5}, Point{x + 2.5, 0.5}, Point{x + 2.5, 2.5}, Point{x + 0.5, 2.5}, Point{x + 1.5, 1.5})
		s.Heights = append(s.Heights, 0, 0, 0, 0, 0, 0, 0, 0, height)
		for k := 0; k < 4; k++ {
			a, b := k, (k+1)%4
			s.Triangles = append(s.Triangles, [3]int{n + a, n + b, n + 4 + b}, [3]int{n + a, n + 4 + b, n + 4 + a}, [3]int{n + 4 + a, n + 4 + b, n + 8})
		}
	}
	square(0, 0.010)
	square(3, 0.006)
	return CellsOf(&s, RegionOf(Outline{Outer: Rectangle(6, 3)}))
}

// A pyramid of 10 mm loses h at its tip: base (h/10)² × 4 m², volume a third of base times h.
func TestCuttingAHighSpotSavesPourOverTheWholeFloor(t *testing.T) {
	cuts, err := Grinding([]GrindArea{{pyramids(), 0.003, 0.008}}, Plane{C: 0.013}, 0.001)
	require.NoError(t, err)
	require.Len(t, cuts, 8)
	for i, cut := range cuts {
		h := 0.001 * float64(i+1)
		want := math.Pow(h/0.010, 2) * 4
		volume := want * h / 3
		spots := 1
		if low := h - 0.004; low > 1e-9 {
			base := math.Pow(low/0.006, 2) * 4
			want, volume, spots = want+base, volume+base*low/3, 2
		}
		assert.InDelta(t, h, cut.Height, 1e-15)
		assert.InDelta(t, want, cut.Area, 1e-9)
		assert.InDelta(t, volume, cut.Volume, 1e-12)
		assert.InDelta(t, 18*h-volume, cut.Saved, 1e-12)
		require.Len(t, cut.Spots, spots, "%v mm", h*1000)
		assert.InDelta(t, 1.5, cut.Spots[0].At.X, 1e-6, "the higher one first")
		assert.InDelta(t, h, cut.Spots[0].Height, 1e-12)
		assert.InDelta(t, 0.013-h, cut.Plane.C, 1e-12)
	}
}

func TestTheCurveStopsWhereADeckMayLoseNoMore(t *testing.T) {
	deck := pyramids()
	none, err := Grinding([]GrindArea{{deck, 0.003, 0}}, Plane{C: 0.013}, 0.001)
	require.NoError(t, err)
	assert.Empty(t, none)
	higher, err := Grinding([]GrindArea{{deck, 0.003, 0}}, Plane{C: 0.015}, 0.001)
	require.NoError(t, err)
	require.Len(t, higher, 2, "a plane that stands 2 mm too high comes down without a cut")
	assert.Zero(t, higher[1].Volume)
	assert.InDelta(t, 0.036, higher[1].Saved, 1e-12)
}

func TestGrindingRefusesWhatIsNoNumber(t *testing.T) {
	_, err := Grinding(nil, Plane{}, 0)
	assert.ErrorContains(t, err, "step")
	_, err = Grinding([]GrindArea{{pyramids(), 0.003, math.NaN()}}, Plane{C: 0.013}, 0.001)
	assert.ErrorContains(t, err, "cut off")
	empty, err := Grinding(nil, Plane{}, 0.001)
	require.NoError(t, err)
	assert.Empty(t, empty)
}

// What is saved is the difference of two exact volumes: before, and over the deck as cut.
func TestThePourSavedIsTheDifferenceOfTheVolumes(t *testing.T) {
	rng := rand.New(rand.NewSource(8))
	for deck := 0; deck < 20; deck++ {
		s := meshed(4, 3, 6, 5, rng, roughDeck(rng))
		room := Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 1.7}, {2.2, 1.7}, {2.2, 3}, {0, 3}}}
		cells := CellsOf(&s, RegionOf(room))
		highest, _, _ := highestOf(cells)
		plane := Plane{C: highest + 0.003}
		cuts, err := Grinding([]GrindArea{{cells, 0.003, 0.006}}, plane, 0.002)
		require.NoError(t, err)
		require.Len(t, cuts, 3)
		before := DepthsOf(cells, plane).Volume
		for _, cut := range cuts {
			least := Plane{C: cut.Plane.C - 0.003}
			after := DepthsOf(cells, least).Volume + 0.003*room.Area()
			assert.InDelta(t, before-after, cut.Saved, 1e-10)
			assert.InDelta(t, DepthsOf(cells, least).Dry, cut.Area, 1e-4)
		}
	}
}

func BenchmarkGrinding(b *testing.B) {
	rng := rand.New(rand.NewSource(1))
	deck := meshed(10, 8, 50, 40, rng, roughDeck(rng))
	cells := CellsOf(&deck, RegionOf(Outline{Outer: Rectangle(10, 8)}))
	highest, _, _ := highestOf(cells)
	for i := 0; i < b.N; i++ {
		if _, err := Grinding([]GrindArea{{cells, 0.003, 0.010}}, Plane{C: highest + 0.003}, 0.001); err != nil {
			b.Fatal(err)
		}
	}
}
