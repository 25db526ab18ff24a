// Package survey tells how sure the surface is. Between the readings the deck is a random field about a plane: universal kriging, with a
// covariance fitted to the readings by likelihood. From it come heights where nobody has measured, the doubt in the volume and in the bag
// count, the spot where one more reading helps most, and readings that don't fit the rest. Lengths are metres, volumes cubic metres.
//
// Universal kriging is as in the handbooks of geostatistics (Cressie, Statistics for Spatial Data, sec. 3.4; from memory).
package survey

import (
	"math"
	"sync"

	"lowspot/engine/floor"
)

// The sizes beyond which the work goes over to fewer readings, so that a keystroke stays a keystroke. Own choice, by measurement.
const (
	mostNear   = 40  // readings that are all used for the doubt at one spot
	mostWhole  = 200 // readings that are all used for the height of one spot
	nearby     = 48  // readings round about a spot that are used beyond that
	few        = 20  // readings round about a spot that are used for the doubt there
	mostJoined = 400 // readings that the volume's doubt rests on; more are merged with their neighbours
)

// Options leave the fitting to the package where they are zero.
type Options struct {
	Kind       Kind
	Unevenness float64 // standard deviation of the deck about its trend, metres; fitted where zero
	Reach      float64 // the covariance's range parameter, metres; fitted where zero
}

// Model is what the readings tell of the deck, and how surely.
type Model struct {
	Kind         Kind
	Unevenness   float64 // standard deviation of the deck about its trend, metres
	Reach        float64 // the covariance's range parameter, metres
	ReadingError float64 // standard deviation of one reading, metres
	Sloped       bool    // the trend is a plane, not a constant

	points     []floor.Point
	heights    []float64
	noise      []float64   // variance of each reading
	slope      floor.Plane // of the trend, by least squares
	covariance Covariance
	options    Options
	whole      func() *System // of all readings, merged where they are many; worked out when first wanted
}

// Fit makes the model of some readings; readingError is the standard deviation of one height, metres. The error is an *Error.
func Fit(points []floor.Point, heights []float64, readingError float64, options Options) (*Model, error) {
	if err := check(points, heights, readingError, options); err != nil {
		return nil, err
	}
	m := &Model{
		Kind: options.Kind, Unevenness: options.Unevenness, Reach: options.Reach, ReadingError: readingError,
		Sloped: slopes(points), options: options,
		points: append([]floor.Point{}, points...), heights: append([]float64{}, heights...), noise: noiseOf(points, readingError),
	}
	if m.Sloped {
		m.slope = floor.TrendOf(points, heights)
	}
	if options.Unevenness == 0 || options.Reach == 0 {
		m.fit()
	}
	m.covariance = CovarianceOf(m.Kind, m.Unevenness, m.Reach)
	m.whole = sync.OnceValue(m.joined)
	return m, nil
}

// At is the deck's likeliest height at a spot.
func (m *Model) At(p floor.Point) float64 {
	return m.around(p, mostWhole, nearby).Height(p)
}

// Deviation is the standard deviation of the deck's height at a spot. Where there are many readings, those far behind nearer ones, which tell
// next to nothing, are left out.
func (m *Model) Deviation(p floor.Point) float64 {
	_, variance := m.around(p, mostNear, few).Estimate(p)
	return math.Sqrt(variance)
}

// sharedError stands for the error of readings said to be exact where several lie on one spot, which they can't all be: 0.01 mm.
const sharedError, sharedWithin = 1e-5, 1e-3

func noiseOf(points []floor.Point, readingError float64) []float64 {
	noise := make([]float64, len(points))
	for i := range noise {
		noise[i] = readingError * readingError
	}
	if readingError >= sharedError {
		return noise
	}
	for i, p := range points {
		for j := range i {
			if floor.Distance(p, points[j]) < sharedWithin {
				noise[i], noise[j] = sharedError*sharedError, sharedError*sharedError
			}
		}
	}
	return noise
}

// few readings don't tell a slope well, so that of all is taken off before some are solved for with a constant as their trend.
func (m *Model) some(chosen []int, at floor.Point) *System {
	points, heights, noise := make([]floor.Point, len(chosen)), make([]float64, len(chosen)), make([]float64, len(chosen))
	for k, i := range chosen {
		points[k], heights[k], noise[k] = m.points[i], m.heights[i]-m.slopeFrom(at, m.points[i]), m.noise[i]
	}
	return mustSolve(points, heights, noise, m.covariance, false)
}

// slopeFrom is by how much the trend of all readings is higher at q than at p.
func (m *Model) slopeFrom(p, q floor.Point) float64 {
	return m.slope.A*(q.X-p.X) + m.slope.B*(q.Y-p.Y)
}

// mustSolve is for covariances of this package and checked readings, with which solving can't fail.
func mustSolve(points []floor.Point, heights, noise []float64, c Covariance, sloped bool) *System {
	s, err := Solve(points, heights, noise, c, sloped)
	if err != nil {
		s, err = Solve(points, heights, noise, c, false)
	}
	if err != nil {
		panic(err)
	}
	return s
}
