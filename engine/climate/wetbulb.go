// How much water air holds, and the temperature of a wet surface in it.
package climate

// vapourRatio is the mass of a mole of water over that of dry air.
const vapourRatio = 0.621945

// HumidityRatio is kilograms of vapour to a kilogram of dry air at a total pressure: equation 20.
func HumidityRatio(t, humidity, pressure float64) (float64, error) {
	vapour, err := VapourPressure(t, humidity)
	if err != nil {
		return 0, err
	}
	if !(pressure > vapour && pressure <= 1e7) {
		return 0, refuse("air pressure", number(pressure)+" Pa", "Give the pressure of the air at the place, near 101325 Pa at sea level.")
	}
	return ratioAt(vapour, pressure), nil
}

func ratioAt(vapour, pressure float64) float64 { return vapourRatio * vapour / (pressure - vapour) }

// WetBulb is the thermodynamic wet-bulb temperature, K: the one at which equation 33 (over water) or 35 (over ice) gives the air's humidity ratio.
func WetBulb(t, humidity, pressure float64) (float64, error) {
	ratio, err := HumidityRatio(t, humidity, pressure)
	if err != nil {
		return 0, err
	}
	if saturation(t) >= pressure {
		return 0, refuse("air temperature", number(t-zeroCelsius)+" °C", "Give a temperature below the boiling point at that pressure.")
	}
	return between(coldest, t, func(wet float64) bool { return ratioOf(t, wet, pressure) < ratio }), nil
}

// RatioOfWetBulb is the humidity ratio of air from its dry-bulb and wet-bulb temperatures; zero where the wet bulb is lower than dry air's.
func RatioOfWetBulb(t, wet, pressure float64) (float64, error) {
	if err := inRange("air temperature", t); err != nil {
		return 0, err
	}
	if !(wet >= coldest && wet <= t) {
		return 0, refuse("wet-bulb temperature", number(wet-zeroCelsius)+" °C", "It is never above the dry-bulb temperature; read both again.")
	}
	if !(pressure > saturation(t) && pressure <= 1e7) {
		return 0, refuse("air pressure", number(pressure)+" Pa", "Give the pressure of the air at the place, near 101325 Pa at sea level.")
	}
	return max(ratioOf(t, wet, pressure), 0), nil
}

func ratioOf(t, wet, pressure float64) float64 {
	saturated := ratioAt(saturation(wet), pressure)
	t, wet = t-zeroCelsius, wet-zeroCelsius
	if wet >= 0 {
		return ((2501-2.326*wet)*saturated - 1.006*(t-wet)) / (2501 + 1.86*t - 4.186*wet)
	}
	return ((2830-0.24*wet)*saturated - 1.006*(t-wet)) / (2830 + 1.86*t - 2.1*wet)
}

// HumidityOf is the relative humidity of air at a temperature whose humidity ratio is known, as a fraction.
func HumidityOf(ratio, t, pressure float64) (float64, error) {
	if err := inRange("air temperature", t); err != nil {
		return 0, err
	}
	vapour := pressure * ratio / (vapourRatio + ratio)
	if !(ratio >= 0) || !(pressure > 0) || !(vapour <= saturation(t)) {
		return 0, refuse("humidity ratio", number(ratio), "It lies between zero and that of saturated air.")
	}
	return vapour / saturation(t), nil
}
