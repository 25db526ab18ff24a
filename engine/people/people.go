// Package people is what the work does to those who do it: lifting, dust, what an old floor may hold, and the deck under the stacked bags. Its figures
// are the usual ones; local codes, the product's own sheet and licensed practice go first.
package people

import (
	"strconv"

	"lowspot/engine/quantity"
)

func refuse(field, given, message, remedy string) error {
	return &quantity.Error{Code: quantity.CodeRange, Field: field, Given: given, Message: message, Remedy: remedy}
}

func whole(n int) string { return strconv.Itoa(n) }

func kilograms(mass float64) string { return quantity.Write(mass, quantity.Mass, quantity.Metric) }

func metres(length float64) string { return quantity.Write(length, quantity.Length, quantity.Metric) }
