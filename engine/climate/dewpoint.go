// Dew: when a cold deck gets wet from the air over it.
package climate

// The two customary margins of a surface over the dew point (ISO 8502-4:2017; numbers as recalled, document not at hand). They are not one margin:
// 5 °F is 2.78 °C.
const (
	MarginOf3Celsius    = 3.0       // K
	MarginOf5Fahrenheit = 5.0 / 1.8 // K
)

// DewPoint is the temperature to which air must cool for dew (below 0 °C, frost) to form, K. Air without any vapour has none.
func DewPoint(t, humidity float64) (float64, error) {
	pressure, err := VapourPressure(t, humidity)
	if err != nil {
		return 0, err
	}
	if pressure < saturation(coldest) {
		return 0, refuse("relative humidity", number(100*humidity)+" %", "Air this dry has no dew point; give what the hygrometer shows.")
	}
	return between(coldest, t, func(dew float64) bool { return saturation(dew) < pressure }), nil
}

// DewMargin is how far a surface is above the dew point of the air, K; below zero it is wet.
func DewMargin(surface, t, humidity float64) (float64, error) {
	if err := inRange("surface temperature", surface); err != nil {
		return 0, err
	}
	dew, err := DewPoint(t, humidity)
	return surface - dew, err
}

// between halves an interval until it is as small as numbers go. Low holds below the answer, and no longer above it.
func between(low, high float64, below func(float64) bool) float64 {
	for range 64 {
		middle := low + (high-low)/2
		if below(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}
