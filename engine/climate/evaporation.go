// How fast a fresh surface loses water. Two published forms, each in metric and US units with constants rounded on their own, are kept apart: they
// differ from one another by several per cent, and the method itself by up to 40 % from what is measured (Hover 2020, abstract).
package climate

import (
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/engine/steady"
)

// The rates to act on, kg/(m²·s).
const (
	EvaporationCaution = 0.5 / 3600                                   // FHWA-HRT-05-038 ch. 5
	EvaporationAction  = 1.0 / 3600                                   // FHWA-HRT-05-038 ch. 5
	EvaporationACI     = 0.20 * 0.45359237 / (0.3048 * 0.3048) / 3600 // 0.20 lb/(ft² h): ACI 305R, widely quoted; 0.976 kg/(m² h), not 1.0
)

// UnoMetric is Uno 1998 (ACI Materials Journal 95-M34), °C and km/h in, kg/(m² h) out. Too high where the surface is much warmer than the air.
func UnoMetric(surfaceCelsius, airCelsius, humidity, kilometresPerHour float64) float64 {
	return 5 * (steady.Pow(surfaceCelsius+18, 2.5) - humidity*steady.Pow(airCelsius+18, 2.5)) * (kilometresPerHour + 4) * 1e-6
}

// UnoUS is the same paper's US form (as recalled, document not at hand), °F and mph in, lb/(ft² h) out; 4 % above the metric one at usual wind.
func UnoUS(surfaceFahrenheit, airFahrenheit, humidity, milesPerHour float64) float64 {
	return (steady.Pow(surfaceFahrenheit, 2.5) - humidity*steady.Pow(airFahrenheit, 2.5)) * (1 + 0.4*milesPerHour) * 1e-6
}

// MenzelMetric is Menzel's form (as recalled, document not at hand): saturation pressures at the surface and in the air in kPa, km/h in, kg/(m² h) out.
func MenzelMetric(surfaceKilopascal, airKilopascal, humidity, kilometresPerHour float64) float64 {
	return 0.315 * (surfaceKilopascal - humidity*airKilopascal) * (0.253 + 0.060*kilometresPerHour)
}

// MenzelUS is its US form (as recalled, document not at hand): saturation pressures in psi, never in inches of mercury, mph in, lb/(ft² h) out.
func MenzelUS(surfacePSI, airPSI, humidity, milesPerHour float64) float64 {
	return 0.44 * (surfacePSI - humidity*airPSI) * (0.253 + 0.096*milesPerHour)
}

// greatestWind that a closed or open building site is asked about, m/s.
const greatestWind = 30

// Evaporation is how fast a fresh surface (K) dries in moving air (m/s), kg/(m²·s), by Uno's metric form; zero where the air gives it water instead.
func Evaporation(surface float64, a Air, wind float64) (float64, error) {
	if err := a.checkOver(surface); err != nil {
		return 0, err
	}
	if !(wind >= 0 && wind <= greatestWind) {
		return 0, refuse("air.speed", quantity.WriteIn(wind, "m/s"), "The draught over a floor lies between 0 and 30 m/s.", "Give the speed just over the floor.")
	}
	return max(UnoMetric(surface-ZeroCelsius, a.Temperature-ZeroCelsius, a.Humidity, wind*3.6)/3600, 0), nil
}

// checkOver refuses a frozen surface, which doesn't dry, and air too cold for the formula.
func (a Air) checkOver(surface float64) error {
	if err := a.check(); err != nil {
		return err
	}
	if a.Temperature < ZeroCelsius-18 {
		return refuse("air.temperature", quantity.WriteIn(a.Temperature, "°C"), "The estimate of drying begins at −18 °C.", "Warm the room first.")
	}
	if !(surface >= ZeroCelsius && surface <= warmest) {
		return refuse("deck.temperature", quantity.WriteIn(surface, "°C"), "A fresh surface lies between 0 °C and 60 °C.", "Check the thermometer and the unit.")
	}
	return nil
}

// GreatestWind is the draught (m/s) in which a fresh surface (K) dries just at a rate (kg/(m²·s)).
func GreatestWind(surface float64, a Air, rate float64) (float64, error) {
	if err := a.checkOver(surface); err != nil {
		return 0, err
	}
	if !(rate > 0 && rate <= 1) {
		return 0, refuse("evaporation_limit", strconv.FormatFloat(rate*3600, 'g', 4, 64)+" kg/m²/h", "The limit must be above zero.", "1 kg/m²/h is customary.")
	}
	still, _ := Evaporation(surface, a, 0)
	if still > rate {
		return 0, refuse("air.speed", "", "The floor dries too fast even in still air.", "Cool the mix or the deck, or raise the humidity.")
	}
	moving, _ := Evaporation(surface, a, 1) // the rate rises in a straight line
	if moving == still {
		return greatestWind, nil
	}
	return min((rate-still)/(moving-still), greatestWind), nil
}
