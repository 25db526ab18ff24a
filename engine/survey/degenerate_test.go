package survey

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// usable holds a model to what any answer must keep: numbers, doubts not below zero, bags in order.
func usable(t *testing.T, m *Model, o floor.Outline, plane floor.Plane) {
	for _, p := range []floor.Point{o.Outer[0], o.Centroid(), spot(-50, 80)} {
		assert.True(t, finite(m.At(p)))
		assert.True(t, finite(m.Deviation(p)) && m.Deviation(p) >= 0)
	}
	v, err := volumeOver(m, o, plane, 200)
	require.NoError(t, err)
	assert.True(t, finite(v.Mean) && v.Mean >= 0, "%g m³", v.Mean)
	assert.True(t, finite(v.Deviation) && v.Deviation >= 0, "±%g m³", v.Deviation)
	assert.True(t, v.Proud >= -1e-9 && v.Proud <= o.Area()*(1+1e-9), "%g m² proud", v.Proud)
	next, err := v.NextReading(bagYield, 0.25)
	require.NoError(t, err)
	assert.True(t, next.After >= 0 && next.After <= next.Before*(1+1e-12), "%+v", next)
	for _, s := range m.Suspects() {
		assert.True(t, finite(s.Expected) && s.Deviations >= suspicious, "%+v", s)
	}
}

func TestOddReadingsStillGiveUsableAnswers(t *testing.T) {
	line := func(n int, dx, dy float64) (points []floor.Point) {
		for i := range n {
			points = append(points, spot(0.5+dx*float64(i), 0.5+dy*float64(i)))
		}
		return
	}
	for _, c := range []struct {
		name    string
		points  []floor.Point
		heights func(i int) float64
		sloped  bool
	}{
		{"one", line(1, 0, 0), func(int) float64 { return 0.01 }, false},
		{"two", line(2, 1, 0.4), func(i int) float64 { return 0.01 * float64(i) }, false},
		{"two on one spot that differ", line(2, 0, 0), func(i int) float64 { return 0.01 * float64(i) }, false},
		{"thirty on one spot", line(30, 0, 0), func(i int) float64 { return 0.001 * float64(i%3) }, false},
		{"five hundred on one spot", line(500, 0, 0), func(i int) float64 { return 0.001 * float64(i%3) }, false},
		{"five hundred on a line", line(500, 0.01, 0.004), func(i int) float64 { return 0.001 * float64(i%7) }, false},
		{"seven on a line", line(7, 0.7, 0.3), func(i int) float64 { return 0.004 * float64(i) }, false},
		{"seven a hair off a line", append(line(6, 0.7, 0), spot(2, 0.5+1e-9)), func(i int) float64 { return 0.004 * float64(i%2) }, false},
		{"ten within a hair", line(10, 1e-7, 1e-7), func(i int) float64 { return 0.001 * float64(i%3) }, false},
		{"identical heights", append(line(5, 1, 0), line(5, 0, 0.9)...), func(int) float64 { return 2 }, true},
		{"a step of a metre", append(line(8, 0.9, 0), line(4, 0, 1.1)...), func(i int) float64 { return math.Floor(float64(i) / 8) }, true},
		{"heights of a survey datum", append(line(5, 1, 0), line(5, 0, 0.9)...), func(i int) float64 { return 4321 + 0.003*float64(i%4) }, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			heights := make([]float64, len(c.points))
			for i := range heights {
				heights[i] = c.heights(i)
			}
			for _, readingError := range []float64{0, 1e-9, 0.001, 1} {
				m := fitted(t, c.points, heights, readingError)
				assert.Equal(t, c.sloped, m.Sloped)
				usable(t, m, room, floor.Plane{C: mean(heights) + 0.01})
			}
		})
	}
}

func TestTwoReadingsOfOneSpotAreWorthTheirMean(t *testing.T) {
	points := []floor.Point{spot(1, 1), spot(1, 1), spot(6, 4)}
	m := fitted(t, points, []float64{0.004, 0.006, 0}, 0)
	assert.InDelta(t, 0.005, m.At(spot(1, 1)), 1e-6)
	assert.InDelta(t, 0, m.At(spot(6, 4)), 1e-9)
}

func TestReadingsOnARegularGridAndTwoThousandOfThem(t *testing.T) {
	r := rand.New(rand.NewSource(31))
	points, heights := []floor.Point{}, []float64{}
	for x := range 50 {
		for y := range 40 {
			points = append(points, spot(float64(x)*0.16, float64(y)*0.125))
			heights = append(heights, 0.003*math.Sin(float64(x)/5)+0.001*r.NormFloat64())
		}
	}
	m := fitted(t, points, heights, 0.001)
	v, err := VolumeOf(m, room, floor.Plane{C: 0.02})
	require.NoError(t, err)
	// Readings averaged over the room leave about a millimetre over the root of their number, on 40 m².
	assert.InDelta(t, 40*0.001/math.Sqrt(2000), v.Deviation, 0.0005)
	next, err := v.NextReading(bagYield, 0.25)
	require.NoError(t, err)
	assert.True(t, next.Enough)
	assert.Empty(t, m.Suspects())
}

func TestTheSameReadingsGiveTheSameBits(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(32)), 120, 0.004, 1.5, 0.001)
	a, b := fitted(t, points, heights, 0.001), fitted(t, points, heights, 0.001)
	b.Deviation(spot(1, 1)) // in another order
	va, err := VolumeOf(a, room, floor.Plane{C: 0.02})
	require.NoError(t, err)
	vb, err := VolumeOf(b, room, floor.Plane{C: 0.02})
	require.NoError(t, err)
	assert.Equal(t, va.Mean, vb.Mean)
	assert.Equal(t, va.Deviation, vb.Deviation)
	assert.Equal(t, a.Suspects(), b.Suspects())
}

// FuzzSurvey reads spots and heights out of bytes: coarse steps make spots and lines coincide.
func FuzzSurvey(f *testing.F) {
	f.Add([]byte{1, 1, 10}, byte(1), 0.02)
	f.Add([]byte{1, 1, 10, 1, 1, 12, 9, 9, 0, 4, 4, 4}, byte(0), 0.0)
	f.Add([]byte{0, 0, 1, 1, 0, 2, 2, 0, 3, 3, 0, 4, 4, 0, 5, 5, 0, 6, 6, 0, 255}, byte(3), -0.5)
	f.Add([]byte{0, 0, 1, 9, 0, 2, 9, 7, 3, 0, 7, 4, 4, 3, 5, 200, 200, 6}, byte(20), 1e300)
	f.Add([]byte{5, 5, 0, 5, 5, 255, 5, 5, 0, 5, 5, 255, 5, 5, 1, 5, 5, 1, 5, 5, 1}, byte(0), math.NaN())
	f.Fuzz(func(t *testing.T, data []byte, errorTenths byte, plane float64) {
		var points []floor.Point
		var heights []float64
		for ; len(data) >= 3 && len(points) < 60; data = data[3:] {
			points = append(points, spot(float64(data[0])*0.25, float64(data[1])*0.25))
			heights = append(heights, float64(data[2])*0.002)
		}
		m, err := Fit(points, heights, float64(errorTenths)*1e-4, Options{})
		if len(points) == 0 {
			require.Error(t, err)
			return
		}
		require.NoError(t, err)
		if !within(plane, -1000, 1000) {
			return
		}
		usable(t, m, lShaped, floor.Plane{C: plane})
	})
}
