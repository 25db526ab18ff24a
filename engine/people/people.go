// Package people is what the work does to those who do it: lifting, dust, what an old floor may hold, and the deck under the stacked bags. Its figures
// are the usual ones; local codes, the product's own sheet and licensed practice go first.
package people

import "lowspot/engine/quantity"

func refuse(field, given, message, remedy string) error {
	return &quantity.Error{Code: quantity.CodeRange, Field: field, Given: given, Message: message, Remedy: remedy}
}
