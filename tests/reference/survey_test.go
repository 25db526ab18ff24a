// How sure the survey is, against the same equations set up whole and solved by a general-purpose library (gonum): the bordered system of
// universal kriging with its multipliers, readings really left out one by one, the double integral over the floor, the likelihood's summit.
package reference

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
)

// deckFor is what the reference is asked about: readings of a tilted, bumpy deck, and the covariance that they are solved with.
type deckFor struct {
	points     []floor.Point
	heights    []float64
	noise      float64 // variance of each reading, m²
	covariance func(float64) float64
	sloped     bool
}

func deckOf(r *rand.Rand, n int, kind survey.Kind, sloped bool) deckFor {
	d := deckFor{noise: 1e-6, sloped: sloped, covariance: plainCovariance(kind, 0.004, 1.3)}
	for range n {
		p := floor.Point{X: 8 * r.Float64(), Y: 5 * r.Float64()}
		d.points = append(d.points, p)
		d.heights = append(d.heights, 0.4+0.004*p.X-0.002*p.Y+0.004*math.Sin(2*p.X)*math.Cos(p.Y)+0.001*r.NormFloat64())
	}
	return d
}

// plainCovariance is the textbook's formula with the standard library's exponential.
func plainCovariance(kind survey.Kind, deviation, reach float64) func(float64) float64 {
	return func(h float64) float64 {
		if kind == survey.Exponential {
			return deviation * deviation * math.Exp(-h/reach)
		}
		x := math.Sqrt(3) * h / reach
		return deviation * deviation * (1 + x) * math.Exp(-x)
	}
}

func (d deckFor) terms(p floor.Point) []float64 {
	if d.sloped {
		return []float64{1, p.X, p.Y}
	}
	return []float64{1}
}

// bordered is the readings' covariances with the trend's terms as a border, whose solution carries the weights and the multipliers.
func (d deckFor) bordered() *mat.LU {
	n, terms := len(d.points), len(d.terms(floor.Point{}))
	a := mat.NewDense(n+terms, n+terms, nil)
	for i, p := range d.points {
		for j, q := range d.points {
			a.Set(i, j, d.covariance(math.Hypot(p.X-q.X, p.Y-q.Y)))
		}
		a.Set(i, i, d.covariance(0)+d.noise)
		for k, term := range d.terms(p) {
			a.Set(i, n+k, term)
			a.Set(n+k, i, term)
		}
	}
	var lu mat.LU
	lu.Factorize(a)
	return &lu
}

// sees is the right-hand side for a weighted sum of heights.
func (d deckFor) sees(spots []floor.Point, weights []float64) *mat.VecDense {
	n := len(d.points)
	b := mat.NewVecDense(n+len(d.terms(floor.Point{})), nil)
	for s, p := range spots {
		for i, q := range d.points {
			b.SetVec(i, b.AtVec(i)+weights[s]*d.covariance(math.Hypot(p.X-q.X, p.Y-q.Y)))
		}
		for k, term := range d.terms(p) {
			b.SetVec(n+k, b.AtVec(n+k)+weights[s]*term)
		}
	}
	return b
}

// sum solves for a weighted sum of heights: its estimate, its variance, the readings' weights.
func (d deckFor) sum(t *testing.T, lu *mat.LU, spots []floor.Point, weights []float64) (estimate, variance float64, shares []float64) {
	b := d.sees(spots, weights)
	var x mat.VecDense
	require.NoError(t, lu.SolveVecTo(&x, false, b))
	for i, h := range d.heights {
		shares = append(shares, x.AtVec(i))
		estimate += x.AtVec(i) * h
	}
	for i, p := range spots {
		for j, q := range spots {
			variance += weights[i] * weights[j] * d.covariance(math.Hypot(p.X-q.X, p.Y-q.Y))
		}
	}
	return estimate, variance - mat.Dot(&x, b), shares
}

func (d deckFor) solved(t *testing.T, kind survey.Kind) *survey.System {
	noise := make([]float64, len(d.points))
	for i := range noise {
		noise[i] = d.noise
	}
	s, err := survey.Solve(d.points, d.heights, noise, survey.CovarianceOf(kind, 0.004, 1.3), d.sloped)
	require.NoError(t, err)
	return s
}

func forEachDeck(t *testing.T, check func(t *testing.T, d deckFor, kind survey.Kind)) {
	for _, n := range []int{3, 6, 17, 60, 150} {
		for kind, name := range []string{survey.Matern32: "Matérn", survey.Exponential: "exponential"} {
			kind := survey.Kind(kind)
			for _, sloped := range []bool{false, true} {
				t.Run(fmt.Sprintf("%d readings, %s, sloped %v", n, name, sloped), func(t *testing.T) {
					check(t, deckOf(rand.New(rand.NewSource(int64(n))), n, kind, sloped), kind)
				})
			}
		}
	}
}

// Heights to a nanometre, variances to a hundred-millionth of the deck's own 16 mm².
func TestHeightsAndTheirDoubtAgreeWithTheBorderedSystem(t *testing.T) {
	forEachDeck(t, func(t *testing.T, d deckFor, kind survey.Kind) {
		s, lu := d.solved(t, kind), d.bordered()
		for _, at := range []floor.Point{{X: 0, Y: 0}, {X: 4, Y: 2.5}, {X: 8, Y: 5}, {X: -1, Y: 9}, d.points[1]} {
			height, variance, shares := d.sum(t, lu, []floor.Point{at}, []float64{1})
			gotHeight, gotVariance := s.Estimate(at)
			assert.InDelta(t, height, gotHeight, 1e-9)
			assert.InDelta(t, height, s.Height(at), 1e-9)
			assert.InDelta(t, variance, gotVariance, 1.6e-5*1e-8)
			for i, weight := range s.Weights(at) {
				assert.InDelta(t, shares[i], weight, 1e-8)
			}
		}
	})
}

func TestLeavingOneOutAgreesWithReallyLeavingItOut(t *testing.T) {
	forEachDeck(t, func(t *testing.T, d deckFor, kind survey.Kind) {
		if len(d.points) == 3 && d.sloped {
			return // two readings carry no plane
		}
		off, deviation := d.solved(t, kind).LeaveOneOut()
		for i := range d.points {
			rest := d
			rest.points, rest.heights = survey.Without(d.points, d.heights, i)
			expected, variance, _ := rest.sum(t, rest.bordered(), []floor.Point{d.points[i]}, []float64{1})
			assert.InDelta(t, d.heights[i]-expected, off[i], 1e-9)
			assert.InEpsilon(t, math.Sqrt(variance+d.noise), deviation[i], 1e-7)
		}
	})
}

// squares cuts the room of 8 m by 5 m into squares of a size.
func squares(size float64) (spots []floor.Point, areas []float64) {
	for y := size / 2; y < 5; y += size {
		for x := size / 2; x < 8; x += size {
			spots, areas = append(spots, floor.Point{X: x, Y: y}), append(areas, size*size)
		}
	}
	return spots, areas
}

// With the plane well above the deck the volume is area × plane less the integral of the height, whose variance is a double sum. Squares of
// 125 mm here, the package's own cells there: half a percent of the deviation between them.
func TestTheVolumesDoubtAgreesWithTheDoubleSum(t *testing.T) {
	spots, areas := squares(0.125)
	room := floor.Outline{Outer: floor.Rectangle(8, 5)}
	for _, n := range []int{3, 8, 25, 90} {
		d := deckOf(rand.New(rand.NewSource(int64(n))), n, survey.Matern32, n >= 8)
		m, err := survey.Fit(d.points, d.heights, math.Sqrt(d.noise), survey.Options{Unevenness: 0.004, Reach: 1.3})
		require.NoError(t, err)
		require.Equal(t, d.sloped, m.Sloped)
		v, err := survey.VolumeOf(m, room, floor.Plane{C: 1})
		require.NoError(t, err)
		integral, variance, _ := d.sum(t, d.bordered(), spots, areas)
		assert.InDelta(t, 40-integral, v.Mean, 1e-4, "a tenth of a litre in some 20 m³")
		assert.InEpsilon(t, math.Sqrt(variance), v.Deviation, 0.005, "%d readings", n)
	}
}

// belief is the prior that the package states: 4 mm within a factor e, 1.5 m within a factor 2.
func belief(logUnevenness, logReach float64) float64 {
	u := logUnevenness - math.Log(0.004)
	r := (logReach - math.Log(1.5)) / math.Log(2)
	return -u*u/2 - r*r/2
}

// likelihood is the logarithm of the restricted likelihood, with determinants and inverses as gonum takes them.
func (d deckFor) likelihood(t *testing.T) float64 {
	n, terms := len(d.points), len(d.terms(floor.Point{}))
	k, f, z := mat.NewSymDense(n, nil), mat.NewDense(n, terms, nil), mat.NewVecDense(n, d.heights)
	for i, p := range d.points {
		for j, q := range d.points {
			k.SetSym(i, j, d.covariance(math.Hypot(p.X-q.X, p.Y-q.Y)))
		}
		k.SetSym(i, i, d.covariance(0)+d.noise)
		f.SetRow(i, d.terms(p))
	}
	var whole mat.Cholesky
	require.True(t, whole.Factorize(k))
	var kf, normal mat.Dense
	var kz, fkz, trend, fit, rest, kRest mat.VecDense
	require.NoError(t, whole.SolveTo(&kf, f))
	normal.Mul(f.T(), &kf)
	require.NoError(t, whole.SolveVecTo(&kz, z))
	fkz.MulVec(f.T(), &kz)
	require.NoError(t, trend.SolveVec(&normal, &fkz))
	fit.MulVec(f, &trend)
	rest.SubVec(z, &fit)
	require.NoError(t, whole.SolveVecTo(&kRest, &rest))
	logNormal, _ := mat.LogDet(&normal)
	return -whole.LogDet()/2 - logNormal/2 - mat.Dot(&rest, &kRest)/2
}

// A plain scan of the whole range stands for the summit. The fit stops at steps of a twentieth, where the summit is flat to a few thousandths
// of a logarithm; a hundredth means odds of 1.01 to 1.
func TestTheFitStandsOnTheLikelihoodsSummit(t *testing.T) {
	for _, n := range []int{2, 3, 5, 9, 25, 60} {
		d := deckOf(rand.New(rand.NewSource(int64(40+n))), n, survey.Matern32, n >= 6)
		m, err := survey.Fit(d.points, d.heights, math.Sqrt(d.noise), survey.Options{})
		require.NoError(t, err)
		require.Equal(t, d.sloped, m.Sloped)
		score := func(logUnevenness, logReach float64) float64 {
			at := d
			at.covariance = plainCovariance(survey.Matern32, math.Exp(logUnevenness), math.Exp(logReach))
			return at.likelihood(t) + belief(logUnevenness, logReach)
		}
		ours, best := score(math.Log(m.Unevenness), math.Log(m.Reach)), math.Inf(-1)
		for u := math.Log(1e-4); u < math.Log(0.1); u += 0.1 {
			for r := math.Log(0.1); r < math.Log(30); r += 0.1 {
				best = math.Max(best, score(u, r))
			}
		}
		assert.Less(t, best-ours, 0.01, "%d readings: %.5f m, %.3f m", n, m.Unevenness, m.Reach)
	}
}
