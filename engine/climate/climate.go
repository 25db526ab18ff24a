// Package climate is the air over the floor: dew on a cold deck, and how fast the air dries a fresh surface. Temperatures are kelvin, pressures
// pascal, humidities a share of 1, speeds metres a second, unless a name says otherwise.
package climate

import (
	"strconv"

	"lowspot/engine/quantity"
)

// ZeroCelsius is 0 °C in kelvin.
const ZeroCelsius = 273.15

// StandardPressure is the pressure of the standard atmosphere at sea level, Pa.
const StandardPressure = 101325

// Air is the air in the room as it is measured: its temperature (K) and relative humidity (share of 1).
type Air struct {
	Temperature float64 `json:"temperature"`
	Humidity    float64 `json:"humidity"`
}

// The air that the formulas are asked about here; a building site has no other.
const (
	coldest = ZeroCelsius - 40
	warmest = ZeroCelsius + 60
)

func (a Air) check() error {
	if err := checkTemperature("air.temperature", a.Temperature); err != nil {
		return err
	}
	if !(a.Humidity >= 0 && a.Humidity <= 1) {
		return refuse("air.humidity", strconv.FormatFloat(100*a.Humidity, 'g', 4, 64)+" %", "Relative humidity lies between 0 % and 100 %.", "Read the hygrometer again.")
	}
	return nil
}

func checkTemperature(field string, t float64) error {
	if !(t >= coldest && t <= warmest) {
		return refuse(field, quantity.WriteIn(t, "°C"), "This is outside −40 °C to 60 °C.", "Check the thermometer and the unit.")
	}
	return nil
}

func refuse(field, given, message, remedy string) error {
	return &quantity.Error{Code: quantity.CodeRange, Field: field, Given: given, Message: message, Remedy: remedy}
}
