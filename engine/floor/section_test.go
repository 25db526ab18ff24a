package floor

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestASectionDownTheFallIsStraight(t *testing.T) {
	stretches := Section(wedge(0, -0.040), Point{0, 1}, Point{4, 1})
	require.Len(t, stretches, 1)
	for i, along := range stretches[0].Along {
		assert.InDelta(t, -0.010*along, stretches[0].Deck[i], 1e-12)
	}
	assert.InDelta(t, 4, stretches[0].end(), 1e-9)
}

func TestASectionStopsAtTheWallsAndAtAKeepOut(t *testing.T) {
	s := Surface{Points: []Point{{-1, -1}, {9, -1}, {9, 9}, {-1, 9}}, Heights: make([]float64, 4), Triangles: [][3]int{{0, 1, 2}, {0, 2, 3}}}
	room := Outline{Outer: Rectangle(4, 3), Holes: []Ring{{{1, 1}, {2, 1}, {2, 2}, {1, 2}}}}
	stretches := Section(CellsOf(&s, RegionOf(room)), Point{-1, 1.5}, Point{5, 1.5})
	require.Len(t, stretches, 2)
	assert.InDelta(t, 1, stretches[0].Along[0], 1e-9)
	assert.InDelta(t, 2, stretches[0].end(), 1e-9)
	assert.InDelta(t, 3, stretches[1].Along[0], 1e-9)
	assert.InDelta(t, 5, stretches[1].end(), 1e-9)
}

func TestASectionAlongAnyWallShowsTheDeckThere(t *testing.T) {
	corners := Rectangle(4, 3)
	for i := range corners {
		for _, ends := range [][2]Point{{corners[i], corners.corner(i + 1)}, {corners.corner(i + 1), corners[i]}} {
			stretches := Section(wedge(0, -0.040), ends[0], ends[1])
			require.Len(t, stretches, 1, "%v", ends)
			assert.InDelta(t, -0.010*ends[0].X, stretches[0].Deck[0], 1e-12)
			assert.InDelta(t, Distance(ends[0], ends[1]), stretches[0].end(), 1e-9)
		}
	}
}

func TestALineOfNoLengthOrBesideTheFloorCutsNothing(t *testing.T) {
	assert.Empty(t, Section(wedge(0, 0), Point{1, 1}, Point{1, 1}))
	assert.Empty(t, Section(wedge(0, 0), Point{5, 0}, Point{5, 3}))
	assert.Empty(t, Section(nil, Point{0, 0}, Point{1, 1}))
}

// A section must meet the surface itself at every spot, whichever way it is laid.
func TestASectionAgreesWithTheSurface(t *testing.T) {
	rng := rand.New(rand.NewSource(7))
	deck := meshed(4, 3, 9, 7, rng, roughDeck(rng))
	cells := CellsOf(&deck, RegionOf(Outline{Outer: Rectangle(4, 3)}))
	for try := 0; try < 60; try++ {
		from, to := Point{4 * rng.Float64(), 3 * rng.Float64()}, Point{4 * rng.Float64(), 3 * rng.Float64()}
		stretches := Section(cells, from, to)
		require.Len(t, stretches, 1)
		require.InDelta(t, Distance(from, to), stretches[0].end()-stretches[0].Along[0], 1e-6)
		for k := 1; k < 20; k++ {
			along := Distance(from, to) * float64(k) / 20
			height, inside := stretches[0].At(along)
			require.True(t, inside)
			want, _ := deck.HeightAt(LineOf(from, to).At(along))
			assert.InDelta(t, want, height, 1e-9)
		}
	}
}

// 3 mm to 43 mm deep with 30 mm a lift: the lower lift begins 2.7 m from the high end.
func TestALowerLiftShowsOnlyWhereItIs(t *testing.T) {
	cells := wedge(0, -0.040)
	plane := Plane{C: 0.003}
	lifts, err := Lifts(cells, plane, plainLifts, plainLifts)
	require.NoError(t, err)
	from, to := Point{0, 1}, Point{4, 1}
	stretch := Section(cells, from, to)[0]
	lower := lifts[0].Layer(stretch, plane, LineOf(from, to))
	require.Len(t, lower, 1)
	assert.InDelta(t, 2.7, lower[0].Along[0], 1e-9)
	assert.InDelta(t, 4, lower[0].end(), 1e-9)
	assert.Equal(t, []Profile{stretch}, lifts[1].Layer(stretch, plane, LineOf(from, to)))
	across := Section(cells, Point{1, 0}, Point{1, 3})[0]
	assert.Empty(t, lifts[0].Layer(across, plane, LineOf(Point{1, 0}, Point{1, 3})), "no lower lift where it is shallow")
}
