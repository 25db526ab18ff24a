// Package climate is the moist air over a floor: saturation pressure, dew point, wet bulb, and how fast a fresh surface dries.
// Temperatures are in kelvin, pressures in pascal, relative humidity a fraction from 0 to 1, speeds in metres a second, unless a name says otherwise.
//
// Formulas: ASHRAE Handbook of Fundamentals 2017, chapter 1, with the saturation pressure of Hyland and Wexler 1983 (constants as recalled,
// document not at hand; the values they give are held against the printed tables).
package climate

import "lowspot/engine/steady"

const (
	zeroCelsius = 273.15
	triplePoint = 273.16 // K; below it the saturation pressure is that over ice
	coldest     = 173.15 // K; the formulas hold from -100 °C
	hottest     = 473.15 // K; to 200 °C
)

// SaturationPressure is the pressure of water vapour in saturated air, Pa: equations 5 (over ice) and 6 (over water).
func SaturationPressure(t float64) (float64, error) {
	if err := inRange("temperature", t); err != nil {
		return 0, err
	}
	return saturation(t), nil
}

func saturation(t float64) float64 {
	if t < triplePoint {
		return steady.Exp(-5.6745359e3/t + 6.3925247 - 9.677843e-3*t + 6.2215701e-7*t*t + 2.0747825e-9*t*t*t - 9.484024e-13*t*t*t*t + 4.1635019*steady.Log(t))
	}
	return steady.Exp(-5.8002206e3/t + 1.3914993 - 4.8640239e-2*t + 4.1764768e-5*t*t - 1.4452093e-8*t*t*t + 6.5459673*steady.Log(t))
}

// VapourPressure is that of air at a temperature and relative humidity, Pa: equation 22.
func VapourPressure(t, humidity float64) (float64, error) {
	if err := air(t, humidity); err != nil {
		return 0, err
	}
	return humidity * saturation(t), nil
}

// StandardPressure is that of the standard atmosphere at an altitude in metres, Pa: equation 3, from -5 to 11 km.
func StandardPressure(altitude float64) (float64, error) {
	if !(altitude >= -5000 && altitude <= 11000) {
		return 0, refuse("altitude", number(altitude)+" m", "Give the height above sea level, between -5000 m and 11000 m.")
	}
	return 101325 * steady.Pow(1-2.25577e-5*altitude, 5.2559), nil
}
