// The survey's equations against gonum's dense linear algebra: kriging solved directly as one bordered system, and the fit against
// a dense search over a likelihood written out anew.
package reference

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
)

func matern(h, deviation, reach float64) float64 {
	x := math.Sqrt(3) * h / reach
	return deviation * deviation * (1 + x) * math.Exp(-x)
}

func away(a, b floor.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// surveyed makes a gently waving deck with a fall, read with errors.
func surveyed(r *rand.Rand, n int) ([]floor.Point, []float64) {
	points, heights := scattered(r, n), make([]float64, n)
	for i, p := range points {
		heights[i] = 0.004*math.Sin(1.3*p.X+0.4) + 0.003*math.Cos(1.7*p.Y) + 0.002*p.X + 0.001*r.NormFloat64()
	}
	return points, heights
}

// bordered is the kriging system of readings with errors and a plane as the trend: covariances, and three rows and columns of trend terms.
func bordered(points []floor.Point, deviation, reach, readingError float64) *mat.Dense {
	n := len(points)
	a := mat.NewDense(n+3, n+3, nil)
	for i, p := range points {
		for j, q := range points {
			a.Set(i, j, matern(away(p, q), deviation, reach))
		}
		a.Set(i, i, deviation*deviation+readingError*readingError)
		for k, term := range []float64{1, p.X, p.Y} {
			a.Set(i, n+k, term)
			a.Set(n+k, i, term)
		}
	}
	return a
}

// facing is the right-hand side for the sum of some spots' heights, each with its weight.
func facing(points, spots []floor.Point, weight, deviation, reach float64) *mat.VecDense {
	n := len(points)
	b := mat.NewVecDense(n+3, nil)
	for _, p := range spots {
		for i, q := range points {
			b.SetVec(i, b.AtVec(i)+weight*matern(away(p, q), deviation, reach))
		}
		for k, term := range []float64{1, p.X, p.Y} {
			b.SetVec(n+k, b.AtVec(n+k)+weight*term)
		}
	}
	return b
}

func TestHeightsAndDoubtsAgainstABorderedSystem(t *testing.T) {
	const deviation, reach, readingError = 0.004, 1.4, 0.001
	r := rand.New(rand.NewSource(1))
	for _, n := range []int{6, 12, 38} {
		points, heights := surveyed(r, n)
		m, err := survey.Fit(points, heights, readingError, survey.Options{Unevenness: deviation, Reach: reach})
		require.NoError(t, err)
		require.True(t, m.Sloped)
		a := bordered(points, deviation, reach, readingError)
		for range 50 {
			at := floor.Point{X: 10*r.Float64() - 1, Y: 8*r.Float64() - 1}
			b := facing(points, []floor.Point{at}, 1, deviation, reach)
			var w mat.VecDense
			require.NoError(t, w.SolveVec(a, b))
			height := 0.0
			for i, z := range heights {
				height += w.AtVec(i) * z
			}
			assert.InDelta(t, height, m.At(at), 1e-12)
			assert.InDelta(t, math.Sqrt(deviation*deviation-mat.Dot(&w, b)), m.Deviation(at), 1e-11)
		}
	}
}

// The volume's deviation against the same sum over a finer grid: 0.1 m squares of a room of 6 m by 4 m, all of it poured.
func TestVolumesDoubtAgainstABorderedSystem(t *testing.T) {
	const deviation, reach, readingError, step = 0.004, 1.4, 0.001, 0.1
	var spots []floor.Point
	for x := step / 2; x < 6; x += step {
		for y := step / 2; y < 4; y += step {
			spots = append(spots, floor.Point{X: x, Y: y})
		}
	}
	before := 0.0
	for _, p := range spots {
		for _, q := range spots {
			before += step * step * step * step * matern(away(p, q), deviation, reach)
		}
	}
	r := rand.New(rand.NewSource(2))
	for _, n := range []int{6, 15, 60} {
		points, heights := surveyed(r, n)
		m, err := survey.Fit(points, heights, readingError, survey.Options{Unevenness: deviation, Reach: reach})
		require.NoError(t, err)
		b := facing(points, spots, step*step, deviation, reach)
		var w mat.VecDense
		require.NoError(t, w.SolveVec(bordered(points, deviation, reach, readingError), b))
		integral := 0.0
		for i, z := range heights {
			integral += w.AtVec(i) * z
		}
		v, err := survey.VolumeOf(m, floor.Outline{Outer: floor.Rectangle(6, 4)}, floor.Plane{C: 0.5})
		require.NoError(t, err)
		assert.InDelta(t, 24*0.5-integral, v.Mean, 24e-6, "a micrometre over the floor")
		assert.InEpsilon(t, math.Sqrt(before-mat.Dot(&w, b)), v.Deviation, 0.005)
	}
}

// score is the restricted likelihood times the belief that package survey states: unevenness about 4 mm within a factor of e, reach about
// 1.5 m within a factor of 2. At is the logarithms of unevenness and reach.
func score(points []floor.Point, heights []float64, readingError float64, at []float64) float64 {
	n := len(points)
	covariances, trend := mat.NewSymDense(n, nil), mat.NewDense(n, 3, nil)
	deviation, reach := math.Exp(at[0]), math.Exp(at[1])
	for i, p := range points {
		for j := i; j < n; j++ {
			covariances.SetSym(i, j, matern(away(p, points[j]), deviation, reach))
		}
		covariances.SetSym(i, i, deviation*deviation+readingError*readingError)
		trend.SetRow(i, []float64{1, p.X, p.Y})
	}
	var k mat.Cholesky
	if !k.Factorize(covariances) {
		return math.Inf(-1)
	}
	var solved, normal mat.Dense
	_ = k.SolveTo(&solved, trend)
	normal.Mul(trend.T(), &solved)
	z := mat.NewVecDense(n, heights)
	var pulled, side, coefficients, fit, rest, last mat.VecDense
	_ = k.SolveVecTo(&pulled, z)
	side.MulVec(trend.T(), &pulled)
	_ = coefficients.SolveVec(&normal, &side)
	fit.MulVec(trend, &coefficients)
	rest.SubVec(z, &fit)
	_ = k.SolveVecTo(&last, &rest)
	logNormal, _ := mat.LogDet(&normal)
	u, v := (at[0] - math.Log(0.004)), (at[1]-math.Log(1.5))/math.Ln2
	return -(k.LogDet()+logNormal+mat.Dot(&rest, &last))/2 - u*u/2 - v*v/2
}

func TestFitAgainstADenseSearch(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for _, n := range []int{6, 9, 16, 30, 60} {
		points, heights := surveyed(r, n)
		for _, readingError := range []float64{0.0005, 0.001, 0.003} {
			m, err := survey.Fit(points, heights, readingError, survey.Options{})
			require.NoError(t, err)
			require.True(t, m.Sloped)
			found := []float64{math.Log(m.Unevenness), math.Log(m.Reach)}
			best := densest(points, heights, readingError)
			assert.GreaterOrEqual(t, score(points, heights, readingError, found), best-0.01, "%d readings, error %g m: found %v", n, readingError, found)
		}
	}
}

// densest is the best score from 0.3 to 30 mm and from 0.15 to 15 m, in steps of a tenth of the logarithm.
func densest(points []floor.Point, heights []float64, readingError float64) float64 {
	best := math.Inf(-1)
	for u := range 47 {
		for v := range 47 {
			best = max(best, score(points, heights, readingError, []float64{math.Log(0.0003) + 0.1*float64(u), math.Log(0.15) + 0.1*float64(v)}))
		}
	}
	return best
}
