package survey

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// System is the equations of universal kriging solved for some readings and a covariance.
//
// With K the readings' covariances and errors, F their trend terms, L·Lᵗ = K, G = L⁻¹F: the trend is (GᵗG)⁻¹GᵗL⁻¹z; the height at p is
// f·trend + c·K⁻¹(z − F·trend); its variance C(0) − |v|² + uᵗ(GᵗG)⁻¹u, where v = L⁻¹c and u = f − Gᵗv.
type System struct {
	points     []floor.Point
	covariance Covariance
	variance   float64 // of a height before any reading
	trend      trend
	factor     factor      // of K
	carried    [][]float64 // the columns of G
	normal     factor      // of GᵗG
	level      float64     // taken off all heights
	slope      []float64   // the trend's coefficients
	pull       []float64   // K⁻¹(z − F·trend)
	misfit     float64     // (z − F·trend)ᵗ K⁻¹ (z − F·trend)
}

// Solve sets up and solves. noise is the variance of each reading's error, square metres, or empty; sloped asks for a plane as the trend in
// place of a constant. With a constant trend the covariance may be any constant less a variogram, as long as it stays positive definite.
// The error is an *Error.
func Solve(points []floor.Point, heights, noise []float64, covariance Covariance, sloped bool) (*System, error) {
	n := len(points)
	if n == 0 || len(heights) != n || (len(noise) != 0 && len(noise) != n) {
		return nil, &Error{"uneven-lists", -1, "There are no readings, or not as many heights as places.", "Give each place its height."}
	}
	matrix := make([]float64, n*n)
	for i, p := range points {
		for j, q := range points[:i+1] {
			matrix[i*n+j] = covariance(floor.Distance(p, q))
		}
		if len(noise) > 0 {
			matrix[i*n+i] += noise[i]
		}
	}
	return solve(points, heights, matrix, covariance, sloped)
}

// solve takes the matrix K, of which it uses the lower triangle.
func solve(points []floor.Point, heights, matrix []float64, covariance Covariance, sloped bool) (*System, error) {
	s := &System{points: points, covariance: covariance, variance: covariance(0), trend: trendOver(points, sloped)}
	var ok bool
	if s.factor, ok = factorFirmly(matrix, len(points)); !ok {
		return nil, &Error{"covariance", -1, "The covariance isn't positive definite for these places.", "Use another covariance."}
	}
	s.carryTrend()
	if s.normal, ok = factorOf(s.products(), s.trend.terms); !ok {
		return nil, &Error{"trend", -1, "The readings lie too nearly on one line to carry a plane.", "Use a constant trend."}
	}
	s.take(heights)
	return s, nil
}

// factorFirmly lets readings that say nearly the same thing differ by the least error with which the equations can be solved.
func factorFirmly(matrix []float64, n int) (factor, bool) {
	for _, slack := range []float64{0, 1e-13, 1e-11, 1e-9} {
		work := append([]float64{}, matrix...)
		for i := range n {
			work[i*n+i] *= 1 + slack
		}
		if f, ok := factorOf(work, n); ok {
			return f, true
		}
	}
	return factor{}, false
}

func (s *System) carryTrend() {
	s.carried = make([][]float64, s.trend.terms)
	for k := range s.carried {
		s.carried[k] = make([]float64, len(s.points))
	}
	for i, p := range s.points {
		terms := s.trend.at(p)
		for k := range s.carried {
			s.carried[k][i] = terms[k]
		}
	}
	for _, column := range s.carried {
		s.factor.forward(column)
	}
}

// products is GᵗG.
func (s *System) products() []float64 {
	n := s.trend.terms
	m := make([]float64, n*n)
	for i := range n {
		for j := range n {
			m[i*n+j] = dot(s.carried[i], s.carried[j])
		}
	}
	return m
}

// take works out the trend and the pull of each reading. The heights' own mean is taken off first, for the sake of the last digits.
func (s *System) take(heights []float64) {
	s.level = mean(heights)
	rest := make([]float64, len(heights))
	for i, h := range heights {
		rest[i] = h - s.level
	}
	s.factor.forward(rest)
	s.slope = make([]float64, s.trend.terms)
	for k, column := range s.carried {
		s.slope[k] = dot(column, rest)
	}
	s.normal.backward(s.normal.forward(s.slope))
	for k, column := range s.carried {
		for i, g := range column {
			rest[i] -= s.slope[k] * g
		}
	}
	s.misfit = dot(rest, rest)
	s.pull = s.factor.backward(rest)
}

func mean(values []float64) float64 {
	sum := 0.0
	for _, v := range values {
		sum += v
	}
	return sum / float64(len(values))
}

// Height is the likeliest height at p.
func (s *System) Height(p floor.Point) float64 {
	height := s.trendAt(p)
	for i, q := range s.points {
		height += s.pull[i] * s.covariance(floor.Distance(p, q))
	}
	return height
}

func (s *System) trendAt(p floor.Point) float64 {
	height := s.level
	for k, term := range s.trend.at(p) {
		if k < s.trend.terms {
			height += s.slope[k] * term
		}
	}
	return height
}

// Estimate is the likeliest height at p and its variance, square metres; the error of a further reading there isn't in it.
func (s *System) Estimate(p floor.Point) (height, variance float64) {
	seen := s.seenFrom(p)
	height = s.trendAt(p) + dot(seen, s.pull)
	view := s.viewOf(s.factor.forward(seen), s.trend.at(p))
	return height, positive(s.variance + s.shared(&view, &view))
}

// Weights are the readings' weights in the height at p; they add up to one.
func (s *System) Weights(p floor.Point) []float64 {
	view := s.viewOf(s.factor.forward(s.seenFrom(p)), s.trend.at(p))
	back := s.normal.backward(append([]float64{}, view.rest[:s.trend.terms]...))
	weights := view.seen
	for k, column := range s.carried {
		for i, g := range column {
			weights[i] += back[k] * g
		}
	}
	return s.factor.backward(weights)
}

// seenFrom is the covariances of the readings with the height at p.
func (s *System) seenFrom(p floor.Point) []float64 {
	seen := make([]float64, len(s.points))
	for i, q := range s.points {
		seen[i] = s.covariance(floor.Distance(p, q))
	}
	return seen
}

// view is what the readings tell of one height, or of a sum of heights: v = L⁻¹c, and u = f − Gᵗv put through the factor of GᵗG.
type view struct {
	seen []float64
	rest [3]float64
}

// viewOf takes v and f.
func (s *System) viewOf(seen []float64, terms [3]float64) view {
	w := view{seen: seen, rest: terms}
	for k, column := range s.carried {
		w.rest[k] -= dot(column, seen)
	}
	s.normal.forward(w.rest[:s.trend.terms])
	return w
}

// shared is what the readings change in the covariance of two heights or sums of heights.
func (s *System) shared(a, b *view) float64 {
	sum := -dot(a.seen, b.seen)
	for k := range s.trend.terms {
		sum += a.rest[k] * b.rest[k]
	}
	return sum
}

// likelihood is the logarithm of the restricted likelihood of the readings, less its constant (Patterson & Thompson 1971; from memory).
func (s *System) likelihood() float64 {
	sum := -s.misfit / 2
	for _, d := range append(s.factor.diagonal(), s.normal.diagonal()...) {
		sum -= steady.Log(d)
	}
	return sum
}

func positive(x float64) float64 { return math.Max(x, 0) }
