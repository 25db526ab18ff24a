package survey

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

const bagYield = 0.012 // m³

func TestTheNextReadingTakesAwayTheDoubtItPromises(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(4)), 9, 0.004, 1.2, 0.001)
	options := Options{Unevenness: 0.004, Reach: 1.2}
	m, err := Fit(points, heights, 0.001, options)
	require.NoError(t, err)
	plane := floor.Plane{C: 0.2}
	v, err := VolumeOf(m, lShaped, plane)
	require.NoError(t, err)
	next, err := v.NextReading(bagYield, 0.25)
	require.NoError(t, err)
	require.True(t, next.Possible)
	assert.True(t, lShaped.Contains(next.At))
	assert.InDelta(t, z90*(next.Before-next.After)/bagYield, next.Bags, 1e-12)

	// Whatever is read there: the doubt afterwards is what was promised, and no other spot would have left less.
	after := func(p floor.Point) float64 {
		m, err := Fit(append(append([]floor.Point{}, points...), p), append(append([]float64{}, heights...), 0.003), 0.001, options)
		require.NoError(t, err)
		v, err := VolumeOf(m, lShaped, plane)
		require.NoError(t, err)
		return v.Deviation
	}
	assert.InEpsilon(t, next.After, after(next.At), 1e-9)
	for _, c := range v.candidates()[:40] {
		assert.GreaterOrEqual(t, after(c.at), next.After*(1-1e-9))
	}
}

func TestReadingOnAndOnEndsInEnough(t *testing.T) {
	r := rand.New(rand.NewSource(8))
	points, heights := deckSeen(r, 1, 0.004, 1.2, 0.001)
	options := Options{Unevenness: 0.004, Reach: 1.5}
	before := math.Inf(1)
	for range 60 {
		m, err := Fit(points, heights, 0.001, options)
		require.NoError(t, err)
		v, err := volumeOver(m, room, floor.Plane{C: 0.2}, 400)
		require.NoError(t, err)
		next, err := v.NextReading(bagYield, 0.1)
		require.NoError(t, err)
		assert.LessOrEqual(t, next.Before, before*(1+1e-9))
		before = next.Before
		if next.Enough {
			assert.Greater(t, len(points), 4)
			assert.Less(t, next.Bags, 0.1)
			return
		}
		points, heights = append(points, next.At), append(heights, 0.001*r.NormFloat64())
	}
	t.Fatal("never enough")
}

func TestABagWithoutYieldIsRefused(t *testing.T) {
	v, err := VolumeOf(fitted(t, []floor.Point{spot(1, 1)}, []float64{0}, 0.001), room, floor.Plane{C: 0.1})
	require.NoError(t, err)
	for _, yield := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err := v.NextReading(yield, 0.25)
		var e *Error
		require.ErrorAs(t, err, &e)
		assert.Equal(t, "yield", e.Code)
	}
}

func TestDoubtIsDrawnOverTheWholeFloor(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(9)), 30, 0.004, 1.2, 0.001)
	m := fitted(t, points, heights, 0.001)
	doubts, err := m.DoubtsOver(lShaped, 500)
	require.NoError(t, err)
	assert.InDelta(t, 500, len(doubts), 120)
	for _, d := range doubts {
		assert.InDelta(t, m.Deviation(d.At), d.Deviation, 1e-15)
		assert.Greater(t, d.Deviation, 0.0)
		assert.InDelta(t, d.At.X, (d.Corners[0].X+d.Corners[2].X)/2, 1e-9)
		assert.InDelta(t, d.At.Y, (d.Corners[1].Y+d.Corners[3].Y)/2, 1e-9)
	}
}

func TestDoubtFromTheNearestReadingsIsNearlyThatFromAll(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(10)), 150, 0.004, 1.2, 0.001)
	m := fitted(t, points, heights, 0.001)
	for x := 0.0; x <= 8; x += 0.5 {
		for y := 0.0; y <= 5; y += 0.5 {
			_, variance := m.whole().Estimate(spot(x, y))
			assert.InEpsilon(t, math.Sqrt(variance), m.Deviation(spot(x, y)), 0.05)
		}
	}
}

func TestHeightsFromTheNearestReadingsAreThoseFromAll(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(12)), 300, 0.004, 1.2, 0.001)
	m := fitted(t, points, heights, 0.001)
	for x := 0.0; x <= 8; x += 0.5 {
		for _, y := range []float64{0, 2.5, 5} {
			height, variance := m.whole().Estimate(spot(x, y))
			assert.InDelta(t, height, m.At(spot(x, y)), 0.2*math.Sqrt(variance), "a fifth of its doubt, which adds two percent to that")
		}
	}
}
