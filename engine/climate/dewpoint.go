package climate

import (
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/engine/steady"
)

// The two customary margins of a surface over the dew point, K: 3 °C and 5 °F, which are not one (ISO 8502-4:2017; numbers as recalled, document
// not at hand).
const (
	MarginMetric = 3.0
	MarginUS     = 5 / 1.8
)

// DewPoint is the temperature to which air must cool for dew, or below 0 °C frost, to form on a surface, K.
func DewPoint(a Air) (float64, error) {
	if err := a.check(); err != nil {
		return 0, err
	}
	vapour := a.Humidity * SaturationPressure(a.Temperature)
	const driest = ZeroCelsius - 100
	if vapour < SaturationPressure(driest) {
		return 0, refuse("air.humidity", strconv.FormatFloat(100*a.Humidity, 'g', 4, 64)+" %", "Air as dry as this has no dew point.", "Read the hygrometer again.")
	}
	return risingRoot(driest, a.Temperature, func(t float64) float64 { return SaturationPressure(t) - vapour }), nil
}

// DewMargin is how far a surface (K) is above the dew point of the air, K; below zero it gets wet.
func DewMargin(surface float64, a Air) (float64, error) {
	if err := checkTemperature("deck.temperature", surface); err != nil {
		return 0, err
	}
	dew, err := DewPoint(a)
	return surface - dew, err
}

// GreatestHumidity is how humid air of a temperature (K) may be for the margin (K) over its dew point to hold at a surface (K), a share of 1.
func GreatestHumidity(surface, air, margin float64) (float64, error) {
	if err := checkTemperature("deck.temperature", surface); err != nil {
		return 0, err
	}
	if err := checkTemperature("air.temperature", air); err != nil {
		return 0, err
	}
	if !(margin >= 0 && margin <= 20) {
		return 0, refuse("dew_margin", quantity.WriteIn(margin, "K"), "The margin over the dew point lies between 0 and 20 degrees.", "3 °C is customary.")
	}
	return min(SaturationPressure(surface-margin)/SaturationPressure(air), 1), nil
}

// Magnus is a pair of constants of Magnus' formula for the dew point, A without unit, B in °C. It serves as a check on the other formula.
type Magnus struct{ A, B float64 }

// The two pairs in use. Their errors are stated as below 0.4 % and 0.35 °C; the attributions to Alduchov and Eskridge 1996 and to the WMO are as
// recalled, documents not at hand.
var (
	MagnusAE96 = Magnus{17.625, 243.04}
	MagnusWMO  = Magnus{17.62, 243.12}
)

// DewPointCelsius is the dew point of air at a temperature (°C) and a humidity above zero (share of 1), °C.
func (m Magnus) DewPointCelsius(celsius, humidity float64) float64 {
	gamma := steady.Log(humidity) + m.A*celsius/(m.B+celsius)
	return m.B * gamma / (m.A - gamma)
}
