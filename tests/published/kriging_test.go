// Worked examples of ordinary kriging that books print.
package published

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
)

// Kitanidis, Introduction to Geostatistics, example 3.2, as PyKrige carries it (tests/test_core.py, commit 5e896fb3): the variogram is
// 0.006·h + 0.1, where 0.1 is the nugget. The nugget goes in as the error of each reading, 0.006·h as a constant less a covariance, which an
// ordinary kriging doesn't see. The book's variance is that of one more reading at the spot, so the nugget is added again.
func TestTwoReadingsWithALinearVariogram(t *testing.T) {
	const nugget, slope, constant = 0.1, 0.006, 1.0
	points := []floor.Point{{X: 9.7, Y: 47.6}, {X: 43.8, Y: 24.6}}
	s, err := survey.Solve(points, []float64{1.22, 2.822}, []float64{nugget, nugget}, func(h float64) float64 { return constant - slope*h }, false)
	require.NoError(t, err)
	at := floor.Point{X: 18.8, Y: 67.9}
	estimate, variance := s.Estimate(at)
	assert.InEpsilon(t, 1.6364, estimate, 1e-4)
	assert.InEpsilon(t, 0.4201, variance+nugget, 1e-4)
	weights := s.Weights(at)
	assert.InEpsilon(t, 0.74008, weights[0], 1e-4)
	assert.InEpsilon(t, 0.25992, weights[1], 1e-4)
}

// Isaaks & Srivastava, An Introduction to Applied Geostatistics (1989), chapter 12; printed values as recalled, document not at hand.
func TestSevenReadingsWithAnExponentialCovariance(t *testing.T) {
	points := []floor.Point{{X: 61, Y: 139}, {X: 63, Y: 140}, {X: 64, Y: 129}, {X: 68, Y: 128}, {X: 71, Y: 140}, {X: 73, Y: 141}, {X: 75, Y: 128}}
	values := []float64{477, 696, 227, 646, 606, 791, 783}
	printed := []float64{.173, .318, .129, .086, .151, .057, .086}
	s, err := survey.Solve(points, values, nil, survey.CovarianceOf(survey.Exponential, math.Sqrt(10), 1/0.3), false)
	require.NoError(t, err)
	at := floor.Point{X: 65, Y: 137}
	estimate, variance := s.Estimate(at)
	assert.InDelta(t, 592.7, estimate, 0.05)
	assert.InDelta(t, 8.96, variance, 5e-3)
	assert.InDelta(t, 592.7289, estimate, 5e-5, "unrounded, recomputed")
	assert.InDelta(t, 8.95605, variance, 5e-6, "unrounded, recomputed")
	for i, weight := range s.Weights(at) {
		assert.InDelta(t, printed[i], weight, 5e-4, "weight %d", i+1)
	}
}

// What holds for any ordinary kriging: the weights add up to one; without a nugget readings are met exactly; a constant field stays constant.
func TestWhatOrdinaryKrigingAlwaysKeeps(t *testing.T) {
	points := []floor.Point{{X: 0.3, Y: 0.2}, {X: 3.9, Y: 0.4}, {X: 2.2, Y: 2.7}, {X: 0.5, Y: 3.1}, {X: 3.6, Y: 3.3}, {X: 1.8, Y: 1.1}, {X: 2.9, Y: 1.6}}
	heights := []float64{0.004, -0.002, 0.007, 0.001, 0, -0.005, 0.003}
	constant := []float64{0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25}
	for _, sloped := range []bool{false, true} {
		for _, kind := range []survey.Kind{survey.Matern32, survey.Exponential} {
			covariance := survey.CovarianceOf(kind, 0.004, 1.5)
			s, err := survey.Solve(points, heights, nil, covariance, sloped)
			require.NoError(t, err)
			flat, err := survey.Solve(points, constant, nil, covariance, sloped)
			require.NoError(t, err)
			for _, at := range []floor.Point{{X: 1, Y: 1}, {X: 2.5, Y: 3.4}, {X: -2, Y: 7}} {
				sum, height := 0.0, 0.0
				for i, weight := range s.Weights(at) {
					sum += weight
					height += weight * heights[i]
				}
				assert.InDelta(t, 1, sum, 1e-12)
				assert.InDelta(t, s.Height(at), height, 1e-12)
				assert.InDelta(t, 0.25, flat.Height(at), 1e-12)
			}
			for i, p := range points {
				height, variance := s.Estimate(p)
				assert.InDelta(t, heights[i], height, 1e-12)
				assert.InDelta(t, 0, variance, 1e-15)
			}
		}
	}
}
