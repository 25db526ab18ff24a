// How fast a fresh surface loses water. Two published forms, each in metric and US units with constants rounded on their own, are kept apart: they
// differ from each other by several per cent, and the method itself by up to 40 % from what is measured (Hover 2020, abstract).
package climate

import "lowspot/engine/steady"

// The rates at which plastic shrinkage is looked after. 0.20 lb/ft²/h is not 1.0 kg/m²/h but 0.976.
const (
	CautionKilogramsSquareMetreHour = 0.5  // FHWA-HRT-05-038 chapter 5
	ActionKilogramsSquareMetreHour  = 1.0  // FHWA-HRT-05-038 chapter 5
	CrackingPoundsSquareFootHour    = 0.20 // ACI 305R, widely quoted
)

// KilogramsSquareMetreOfPoundSquareFoot turns lb/ft² into kg/m².
const KilogramsSquareMetreOfPoundSquareFoot = 0.45359237 / (0.3048 * 0.3048)

// UnoMetric is Uno 1998 (ACI Materials Journal 95-M34) in °C and km/h, kg/m²/h. Too high where the surface is much warmer than the air.
func UnoMetric(surfaceCelsius, airCelsius, humidity, windKilometresHour float64) float64 {
	return 5 * (steady.Pow(surfaceCelsius+18, 2.5) - humidity*steady.Pow(airCelsius+18, 2.5)) * (windKilometresHour + 4) * 1e-6
}

// UnoUS is the same paper's form in °F and mph, lb/ft²/h (as recalled, document not at hand).
func UnoUS(surfaceFahrenheit, airFahrenheit, humidity, windMilesHour float64) float64 {
	return (steady.Pow(surfaceFahrenheit, 2.5) - humidity*steady.Pow(airFahrenheit, 2.5)) * (1 + 0.4*windMilesHour) * 1e-6
}

// MenzelMetric is Menzel's form in kPa and km/h, kg/m²/h (as recalled, document not at hand). The pressures are those of saturated air at the
// surface's and at the air's temperature.
func MenzelMetric(surfaceKilopascal, airKilopascal, humidity, windKilometresHour float64) float64 {
	return 0.315 * (surfaceKilopascal - humidity*airKilopascal) * (0.253 + 0.060*windKilometresHour)
}

// MenzelUS is Menzel's form in psi (not inches of mercury, which would double it) and mph, lb/ft²/h (as recalled, document not at hand).
func MenzelUS(surfacePsi, airPsi, humidity, windMilesHour float64) float64 {
	return 0.44 * (surfacePsi - humidity*airPsi) * (0.253 + 0.096*windMilesHour)
}

// Evaporation is the rate at which water leaves a wet surface, kg/(m²·s), by Menzel's metric form, which holds for warm surfaces in cold air too.
// Below zero the air gives up water to the surface. Wind in m/s.
func Evaporation(surface, t, humidity, wind float64) (float64, error) {
	if err := inRange("surface temperature", surface); err != nil {
		return 0, err
	}
	if err := air(t, humidity); err != nil {
		return 0, err
	}
	if !(wind >= 0 && wind <= 100) {
		return 0, refuse("air speed", number(wind)+" m/s", "Give a speed between 0 and 100 m/s, as measured just over the floor.")
	}
	return MenzelMetric(saturation(surface)/1000, saturation(t)/1000, humidity, wind*3.6) / 3600, nil
}
