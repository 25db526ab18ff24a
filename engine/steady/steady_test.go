package steady

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTheFunctionsAgreeWithTheStandardLibraryToTheLastBits(t *testing.T) {
	for x := -700.0; x <= 700; x += 0.37 {
		assert.InEpsilon(t, math.Exp(x), Exp(x), 4e-16*4, "exp %v", x)
	}
	for x := 1e-300; x < 1e300; x *= 1.7 {
		if want := math.Log(x); want != 0 {
			assert.InEpsilon(t, want, Log(x), 1e-15, "log %v", x)
		}
	}
	for x := 0.01; x < 100; x *= 1.3 {
		assert.InEpsilon(t, math.Pow(x, 2.5), Pow(x, 2.5), 1e-14, "pow %v", x)
		assert.InEpsilon(t, math.Hypot(x, 3), Hypot(x, 3), 1e-15, "hypot %v", x)
	}
}

func TestTheEndsOfTheRangeAreDefined(t *testing.T) {
	assert.Zero(t, Exp(-1000))
	assert.True(t, math.IsInf(Exp(1000), 1))
	assert.True(t, math.IsNaN(Exp(math.NaN())))
	assert.True(t, math.IsInf(Log(0), -1))
	assert.True(t, math.IsNaN(Log(-1)))
	assert.Equal(t, 0.0, Log(1))
	assert.Equal(t, 1.0, Exp(0))
	assert.Equal(t, 1.0, Pow(0, 0))
	assert.Zero(t, Pow(0, 2.5))
	assert.True(t, math.IsNaN(Pow(-2, 0.5)))
}
