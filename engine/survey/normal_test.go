package survey

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestDecayIsTheExponential(t *testing.T) {
	for x := 0.0; x < 39.9; x += 0.0137 {
		assert.InEpsilon(t, math.Exp(-x), decay(x), 1e-15)
	}
	assert.Equal(t, 1.0, decay(0))
	assert.Zero(t, decay(decayEnd))
	assert.Zero(t, decay(1e300))
}

func TestChanceIsTheNormalDistribution(t *testing.T) {
	for x := -9.0; x < 9; x += 0.0137 {
		assert.InDelta(t, math.Erfc(-x/math.Sqrt2)/2, chance(x), 2e-15)
	}
	assert.InDelta(t, 0.9, chance(z90), 1e-15)
	assert.InDelta(t, 0.99, chance(z99), 1e-15)
	assert.Equal(t, 0.0, chance(math.Inf(-1)))
	assert.Equal(t, 1.0, chance(math.Inf(1)))
}

// The closed forms of a rectified normal number: with t the mean in deviations, mean·chance(t) + deviation·density(t), and the second moment
// (mean² + deviation²)·chance(t) + mean·deviation·density(t).
func TestADepthThatMayBeZero(t *testing.T) {
	const deviation = 0.003
	for mean := -0.009; mean < 0.013; mean += 0.0005 {
		b := bentOf(mean, deviation)
		steps, sum, squares := 20000, 0.0, 0.0
		for i := range steps { // by the middle rule over ±10 deviations
			x := -10 + 20*(float64(i)+0.5)/float64(steps)
			depth := math.Max(0, mean+deviation*x)
			sum += depth * density(x) * 20 / float64(steps)
			squares += depth * depth * density(x) * 20 / float64(steps)
		}
		assert.InDelta(t, sum, b.mean, 1e-9)
		variance := squares - sum*sum
		series := b.order[1]*b.order[1] + beyondFirst(&b, &b, 1)
		assert.LessOrEqual(t, series, variance*(1+1e-6))
		assert.InDelta(t, variance, series, 0.004*deviation*deviation, "what the series leaves out")
	}
	assert.Equal(t, 0.02, bentOf(0.02, 0).mean)
	assert.Zero(t, bentOf(-0.02, 0).mean)
}
