package survey

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
)

// On ground as even, or as wild, as the fit allows, what was fitted must stand as given when a reading is left out.
func TestManyReadingsAtTheBoundsOfTheFitStillHaveTheirSuspects(t *testing.T) {
	for _, n := range []int{64, 65, 100, 250} {
		points, heights := deckSeen(rand.New(rand.NewSource(int64(n))), n, 0.004, 1.5, 0)
		even, wild := make([]float64, n), make([]float64, n)
		for i := range heights {
			wild[i] = 9000 * math.Sin(1e6*heights[i])
		}
		for _, readingError := range []float64{0, 0.001} {
			assert.Empty(t, fitted(t, points, even, readingError).Suspects())
			m := fitted(t, points, wild, readingError)
			assert.LessOrEqual(t, m.Unevenness, mostUnevenness)
			assert.NotPanics(t, func() { m.Suspects() })
		}
		even[7] = 0.100
		suspects := fitted(t, points, even, 0.001).Suspects()
		if assert.Len(t, suspects, 1, "one reading of %d a decimetre off", n) {
			assert.Equal(t, 7, suspects[0].Reading)
			assert.InDelta(t, 0, suspects[0].Expected, 0.001)
		}
	}
}
