package survey

import (
	"math"

	"lowspot/engine/steady"
)

// Kind is the shape of a covariance.
type Kind int

// The shapes: Matérn's of smoothness 3/2, a field with slopes as decks have them, is the one to use; the exponential is rougher.
const (
	Matern32 Kind = iota
	Exponential
)

// Covariance is that of the heights of two spots a distance apart, metres in, square metres out.
type Covariance func(distance float64) float64

// CovarianceOf has the given standard deviation and range parameter: σ²(1 + √3 h/r) e^(−√3 h/r), or σ² e^(−h/r).
func CovarianceOf(kind Kind, deviation, reach float64) Covariance {
	sill := deviation * deviation
	if kind == Exponential {
		return func(h float64) float64 { return sill * decay(h/reach) }
	}
	scale := math.Sqrt(3) / reach
	return func(h float64) float64 { return sill * (1 + h*scale) * decay(h*scale) }
}

// The table behind decay: e^(−k/8) up to where it no longer counts beside one.
const decayStep, decayEnd = 0.125, 40.0

var decays = func() (table [int(decayEnd/decayStep) + 1]float64) {
	for k := range table {
		table[k] = steady.Exp(-float64(k) * decayStep)
	}
	return
}()

// decay is e^(−x) for x from zero up, to the last bits, and zero beyond 40: most of a fit is spent here.
func decay(x float64) float64 {
	if x >= decayEnd {
		return 0
	}
	k := int(x * (1 / decayStep))
	r := x - float64(k)*decayStep
	// The series of e^(−r) for r below 1/8: the term left out is below 2e-16.
	series := 1 - r*(1-r*(1./2-r*(1./6-r*(1./24-r*(1./120-r*(1./720-r*(1./5040-r*(1./40320-r*(1./362880)))))))))
	return decays[k] * series
}
