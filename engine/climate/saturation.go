package climate

import (
	"math"

	"lowspot/engine/steady"
)

// triplePoint of water, K: below it vapour is held against ice.
const triplePoint = 273.16

// SaturationPressure is the pressure of water vapour over ice or water, Pa, from -100 °C to 200 °C: Hyland and Wexler, ASHRAE Fundamentals 2017
// ch. 1 eq. 5 and 6 (constants as recalled, document not at hand; the values are held against its tables). NaN beyond.
func SaturationPressure(t float64) float64 {
	switch {
	case !(t >= ZeroCelsius-100 && t <= ZeroCelsius+200):
		return math.NaN()
	case t < triplePoint:
		return steady.Exp(-5.6745359e3/t + 6.3925247 - 9.677843e-3*t + 6.2215701e-7*t*t + 2.0747825e-9*t*t*t - 9.484024e-13*t*t*t*t + 4.1635019*steady.Log(t))
	}
	return steady.Exp(-5.8002206e3/t + 1.3914993 - 4.8640239e-2*t + 4.1764768e-5*t*t - 1.4452093e-8*t*t*t + 6.5459673*steady.Log(t))
}

// AtmosphericPressure is that of the standard atmosphere at an altitude (m) from -5 km to 11 km, Pa: ASHRAE Fundamentals 2017 ch. 1 eq. 3. NaN beyond.
func AtmosphericPressure(altitude float64) float64 {
	if !(altitude >= -5000 && altitude <= 11000) {
		return math.NaN()
	}
	return StandardPressure * steady.Pow(1-2.25577e-5*altitude, 5.2559)
}

// risingRoot halves the interval in which a rising function passes zero until no number lies between.
func risingRoot(low, high float64, f func(float64) float64) float64 {
	for range 64 {
		middle := low + (high-low)/2
		if f(middle) < 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}
