// F-numbers of ASTM E1155 on a published sheet and on lines that can be worked out by hand. The constants 4.57 in and 12.5 in, the sample standard
// deviation and the way of combining are as recalled, document not at hand.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// The §9.4 curvature table of the SLAC sheet (see slacLine0), mm.
var (
	slacCurvatures0 = []float64{0.635, -0.102, -0.381, -1.956, -0.457, 1.448, 0.610, -1.854, -0.787, 1.118, -1.880, -1.448}
	slacCurvatures1 = []float64{-1.499, -1.549, -0.914, 2.565, -1.549, 1.422, -0.711, -0.610, 0.000, 1.067, -2.921, 2.565, -2.413}
	slacCurvatures4 = []float64{1.575, -0.457, 0.483, -0.813, 1.194, -1.651, 2.032, -0.635, -0.889, -1.016, 0.457, 0.533}
)

func scaled(values []float64, factor float64) []float64 {
	out := make([]float64, len(values))
	for i, v := range values {
		out[i] = v * factor
	}
	return out
}

// The sheet kept more digits than it prints: ± 0.0015 mm.
func TestCurvaturesOfTheSLACSheet(t *testing.T) {
	for _, line := range []struct{ heights, want []float64 }{{slacLine0, slacCurvatures0}, {slacLine1, slacCurvatures1}} {
		got := floor.Curvatures(line.heights)
		require.Len(t, got, len(line.want))
		for i := range got {
			assert.InDelta(t, line.want[i], got[i], 0.0015)
		}
	}
}

// Recomputed from the sheet; the population deviation would give 29.98, 21.23 and 34.46.
func TestFlatnessOfTheSLACLines(t *testing.T) {
	for _, line := range []struct {
		curvatures                []float64
		mean, deviation, flatness float64
	}{{slacCurvatures0, -0.4212, 1.2012, 28.84}, {slacCurvatures1, -0.3498, 1.7758, 20.45}, {slacCurvatures4, 0.0677, 1.1492, 33.02}} {
		mean, deviation := floor.MeanAndDeviation(line.curvatures)
		assert.InDelta(t, line.mean, mean, 5e-4)
		assert.InDelta(t, line.deviation, deviation, 5e-4)
		assert.InDelta(t, line.flatness, floor.FlatnessNumber(scaled(line.curvatures, millimetres)).Value, 0.02)
	}
}

func TestLevelnessOfTheSLACLines(t *testing.T) {
	for _, line := range []struct {
		heights, falls []float64
		levelness      float64
	}{{slacLine0, []float64{4.547, 2.820, -1.422, -7.010}, 20.21}, {slacLine1, []float64{2.591, 0.813, -2.388, -1.473, -2.058}, 45.98}} {
		falls := floor.TenStepFalls(line.heights)
		require.Len(t, falls, len(line.falls))
		for i := range falls {
			assert.InDelta(t, line.falls[i], falls[i], 1e-3)
		}
		assert.InDelta(t, line.levelness, floor.LevelnessNumber(scaled(falls, millimetres)).Value, 0.02)
	}
}

// The metric sheet's 300 mm: the constants belong to 12 in, so the readings are rescaled and the result says so. Anything else is refused.
func TestMetricLinesAreRescaledAndLabelled(t *testing.T) {
	heights := scaled(slacLine0, millimetres)
	asInches, err := floor.LineFNumbers(heights, 12*inches)
	require.NoError(t, err)
	assert.False(t, asInches.Rescaled)
	assert.InDelta(t, 28.84, asInches.Flatness.Value, 0.02)
	metric, err := floor.LineFNumbers(heights, 0.3)
	require.NoError(t, err)
	assert.True(t, metric.Rescaled)
	assert.InEpsilon(t, asInches.Flatness.Value/(1.016*1.016), metric.Flatness.Value, 1e-9, "curvature goes with the square of the spacing")
	assert.InEpsilon(t, asInches.Levelness.Value/1.016, metric.Levelness.Value, 1e-9, "fall goes with the spacing")
	_, err = floor.LineFNumbers(heights, 0.5)
	assert.ErrorContains(t, err, "12 in")
	_, err = floor.LineFNumbers(heights[:11], 12*inches)
	assert.ErrorContains(t, err, "12 readings")
}

// Recomputed from the equations.
func TestLinesThatCanBeWorkedOutByHand(t *testing.T) {
	slope := func(perTenFeet float64) floor.FNumbers {
		heights := make([]float64, 20)
		for i := range heights {
			heights[i] = perTenFeet / 10 * float64(i)
		}
		f, err := floor.LineFNumbers(heights, 12*inches)
		require.NoError(t, err)
		return f
	}
	assert.InDelta(t, 50, slope(inches/4).Levelness.Value, 1e-9)
	assert.True(t, slope(inches/4).Flatness.Unbounded)
	assert.InDelta(t, 100, slope(inches/8).Levelness.Value, 1e-9)

	bowl := make([]float64, 15)
	for i := range bowl {
		bowl[i] = 0.01 * inches * float64(i*i)
	}
	assert.InDelta(t, 228.5, floor.FlatnessNumber(floor.Curvatures(bowl)).Value, 1e-6)

	for n, want := range map[int]float64{14: 11.668, 13: 11.339} {
		zigzag := make([]float64, n)
		for i := 1; i < n; i += 2 {
			zigzag[i] = inches / 16
		}
		f, err := floor.LineFNumbers(zigzag, 12*inches)
		require.NoError(t, err)
		assert.InDelta(t, want, f.Flatness.Value, 1e-3, "%d readings", n)
		assert.True(t, f.Levelness.Unbounded)
	}
	assert.InDelta(t, 1, floor.FlatnessNumber([]float64{0.116078, 0.116078}).Value, 1e-12, "4.57 in is 116.078 mm")
	assert.InDelta(t, 1, floor.LevelnessNumber([]float64{0.3175, 0.3175}).Value, 1e-12, "12.5 in is 317.5 mm")
}

// The metric rules from the SLAC sheet (reproduction); the inch rules of ASTM E1155 as recalled, document not at hand.
func TestSamplingRules(t *testing.T) {
	inch, metric := floor.FSamplingRules()
	assert.Equal(t, floor.FSampling{LineLength: 3.3, EdgeMargin: 0.6, LinesApart: 1.2, DiagonalUnder: 7.5}, metric)
	assert.InDelta(t, 11*12*inches, inch.LineLength, 1e-12)
	assert.InDelta(t, 24*inches, inch.EdgeMargin, 1e-12)
	assert.InDelta(t, 48*inches, inch.LinesApart, 1e-12)
	assert.InDelta(t, 96*inches, inch.SectionSide, 1e-12)
	assert.InDelta(t, 320*144*inches*inches, inch.SectionArea, 1e-12)
}

func TestCombiningLines(t *testing.T) {
	line := func(f float64, n int) floor.FNumbers {
		return floor.FNumbers{Flatness: floor.FNumber{Value: f}, Levelness: floor.FNumber{Unbounded: true}, Readings: n}
	}
	equal := floor.CombineFNumbers([]floor.FNumbers{line(25, 100), line(25, 50)})
	assert.InDelta(t, 25, equal.Flatness.Value, 1e-9)
	assert.True(t, equal.Levelness.Unbounded)
	assert.Equal(t, 150, equal.Readings)
	// F = Fa·Fb·√((ra + rb)/(ra·Fb² + rb·Fa²)) = 20·30·√(150/(100·900 + 50·400)).
	assert.InDelta(t, 22.156, floor.CombineFNumbers([]floor.FNumbers{line(20, 100), line(30, 50)}).Flatness.Value, 1e-3)
}
