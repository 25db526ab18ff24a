package reference

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
)

// wavingDeck is smooth ground read with some error: the likelihood is then a long ridge on which unevenness and reach go together.
func wavingDeck(r *rand.Rand, n int, readingError float64) deckFor {
	d := deckFor{noise: readingError * readingError, sloped: true}
	for range n {
		p := floor.Point{X: 8 * r.Float64(), Y: 6 * r.Float64()}
		d.points = append(d.points, p)
		d.heights = append(d.heights, 0.004*math.Sin(1.3*p.X+0.4)+0.003*math.Cos(1.7*p.Y)+0.002*p.X+0.001*r.NormFloat64())
	}
	return d
}

// A dense scan in steps of a tenth stands for the summit, as for the other decks.
func TestTheFitClimbsTheRidgeOfASmoothDeck(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for _, n := range []int{6, 9, 16, 30, 60} {
		for _, readingError := range []float64{0.0005, 0.001, 0.003} {
			d := wavingDeck(r, n, readingError)
			m, err := survey.Fit(d.points, d.heights, readingError, survey.Options{})
			require.NoError(t, err)
			require.True(t, m.Sloped)
			score := func(logUnevenness, logReach float64) float64 {
				d.covariance = plainCovariance(survey.Matern32, math.Exp(logUnevenness), math.Exp(logReach))
				return d.likelihood(t) + belief(logUnevenness, logReach)
			}
			best := math.Inf(-1)
			for u := math.Log(0.0003); u < math.Log(0.03); u += 0.1 {
				for v := math.Log(0.15); v < math.Log(15); v += 0.1 {
					best = math.Max(best, score(u, v))
				}
			}
			assert.Less(t, best-score(math.Log(m.Unevenness), math.Log(m.Reach)), 0.01, "%d readings, error %g m", n, readingError)
		}
	}
}
