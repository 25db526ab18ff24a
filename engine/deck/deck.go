// Package deck is what the pour lands on: joists that bend under it, slabs that give off water, sheets with joints to close. Everything is SI: metres,
// pascal, kilograms, seconds; loads on a floor are pressures.
package deck

import "lowspot/engine/quantity"

// Gravity turns a mass into its weight, m/s²: the standard value.
const Gravity = 9.80665

func refuse(field, given, message, remedy string) error {
	return &quantity.Error{Code: quantity.CodeRange, Field: field, Given: given, Message: message, Remedy: remedy}
}

// above0 tells whether x is a usable quantity above zero: not zero, negative, infinite or NaN.
func above0(x float64) bool { return x > 0 && x <= quantity.Greatest }

// from0 is above0 with zero allowed.
func from0(x float64) bool { return x == 0 || above0(x) }

// AddedLoad is what a layer weighs on the floor, Pa: thickness (m) × density (kg/m³) × gravity.
func AddedLoad(thickness, density float64) (float64, error) {
	if !from0(thickness) || thickness > 1 {
		return 0, refuse("thickness", quantity.Write(thickness, quantity.Length, quantity.Metric), "A layer is between 0 and 1 m thick.", "Give its mean depth, such as 12 mm or 1/2 in.")
	}
	if !above0(density) || density > 10000 {
		return 0, refuse("density", quantity.Write(density, quantity.Density, quantity.Metric), "No layer has this density.", "A set pour has about 2000 kg/m³ (125 lb/ft³).")
	}
	return thickness * density * Gravity, nil
}
