package survey

import (
	"errors"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func spot(x, y float64) floor.Point { return floor.Point{X: x, Y: y} }

// deckSeen draws a deck with the covariance of a decks' model, and reads it at random spots of a room of 8 m by 5 m.
func deckSeen(r *rand.Rand, readings int, unevenness, reach, readingError float64) ([]floor.Point, []float64) {
	points := make([]floor.Point, readings)
	for i := range points {
		points[i] = spot(8*r.Float64(), 5*r.Float64())
	}
	heights := drawn(r, points, CovarianceOf(Matern32, unevenness, reach))
	for i, p := range points {
		heights[i] += 0.003*p.X - 0.001*p.Y + readingError*r.NormFloat64()
	}
	return points, heights
}

// drawn is a random field at some points.
func drawn(r *rand.Rand, points []floor.Point, c Covariance) []float64 {
	n := len(points)
	matrix := make([]float64, n*n)
	for i, p := range points {
		for j, q := range points[:i+1] {
			matrix[i*n+j] = c(floor.Distance(p, q))
		}
	}
	f, ok := factorFirmly(matrix, n)
	if !ok {
		panic("no covariance")
	}
	white, heights := make([]float64, n), make([]float64, n)
	for i := range white {
		white[i] = r.NormFloat64()
		heights[i] = dot(f.row(i), white[:i+1])
	}
	return heights
}

func fitted(t testing.TB, points []floor.Point, heights []float64, readingError float64) *Model {
	m, err := Fit(points, heights, readingError, Options{})
	require.NoError(t, err)
	return m
}

func TestReadingsWithoutErrorAreMetExactly(t *testing.T) {
	for _, n := range []int{1, 2, 3, 5, 6, 8, 30, 100, 250} {
		points, heights := deckSeen(rand.New(rand.NewSource(int64(n))), n, 0.004, 1.5, 0)
		m := fitted(t, points, heights, 0)
		for i, p := range points {
			assert.InDelta(t, heights[i], m.At(p), 1e-9, "reading %d of %d", i, n)
			assert.InDelta(t, 0, m.Deviation(p), 1e-6, "reading %d of %d", i, n)
		}
	}
}

func TestOneHeightEverywhereIsThatHeightEverywhere(t *testing.T) {
	for _, n := range []int{1, 2, 3, 7, 40, 300} {
		points, heights := deckSeen(rand.New(rand.NewSource(1)), n, 0.004, 1.5, 0)
		for i := range heights {
			heights[i] = 101.25
		}
		m := fitted(t, points, heights, 0.001)
		for _, p := range []floor.Point{spot(0, 0), spot(4, 2), spot(8, 5), spot(-3, 12)} {
			assert.InDelta(t, 101.25, m.At(p), 1e-9)
			assert.Greater(t, m.Deviation(p), 0.0)
		}
	}
}

func TestReadingsOnAPlaneCarryItOn(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(2)), 20, 0.004, 1.5, 0)
	for i, p := range points {
		heights[i] = 0.01*p.X - 0.02*p.Y + 3
	}
	m := fitted(t, points, heights, 0.0005)
	assert.True(t, m.Sloped)
	assert.InDelta(t, 0.08-0.1+3, m.At(spot(8, 5)), 1e-9)
	assert.InDelta(t, 0.12+0.04+3, m.At(spot(12, -2)), 1e-9)
	assert.Less(t, m.Unevenness, usualUnevenness/4)
	assert.GreaterOrEqual(t, m.Unevenness, leastUnevenness*(1-1e-12))
}

func TestDoubtGrowsAwayFromTheReadings(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(3)), 12, 0.004, 1.5, 0.001)
	m := fitted(t, points, heights, 0.001)
	assert.Less(t, m.Deviation(points[0]), 0.0011)
	assert.Greater(t, m.Deviation(spot(16, 10)), m.Unevenness)
}

func TestWhatCannotBeUsedIsRefusedInWords(t *testing.T) {
	here := []floor.Point{spot(1, 1), spot(2, 2)}
	flat := []float64{0, 0}
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		name    string
		points  []floor.Point
		heights []float64
		err     float64
		options Options
		code    string
		reading int
	}{
		{"no readings", nil, nil, 0.001, Options{}, "no-readings", -1},
		{"a height is missing", here, flat[:1], 0.001, Options{}, "uneven-lists", -1},
		{"a place that is no number", []floor.Point{spot(0, 0), spot(nan, 0)}, flat, 0.001, Options{}, "no-place", 1},
		{"a place beyond all rooms", []floor.Point{spot(0, 1e9), spot(0, 0)}, flat, 0.001, Options{}, "no-place", 0},
		{"a height that is no number", here, []float64{0, nan}, 0.001, Options{}, "no-height", 1},
		{"a height without end", here, []float64{inf, 0}, 0.001, Options{}, "no-height", 0},
		{"an error that is no number", here, flat, nan, Options{}, "reading-error", -1},
		{"an error below zero", here, flat, -0.001, Options{}, "reading-error", -1},
		{"an error of metres", here, flat, 2, Options{}, "reading-error", -1},
		{"a reach below zero", here, flat, 0.001, Options{Reach: -1}, "options", -1},
		{"an unevenness of next to nothing", here, flat, 0.001, Options{Unevenness: 1e-200}, "options", -1},
		{"a covariance that isn't there", here, flat, 0.001, Options{Kind: 7}, "options", -1},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Fit(c.points, c.heights, c.err, c.options)
			var e *Error
			require.True(t, errors.As(err, &e))
			assert.Equal(t, c.code, e.Code)
			assert.Equal(t, c.reading, e.Reading)
			assert.NotEmpty(t, e.Remedy)
		})
	}
}
