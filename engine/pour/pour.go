// Package pour plans the pour itself: batches of whole bags with their water, the order in which they go over the floor, the crew's clock
// against the wet edge, how setting follows temperature, and the run sheet. Everything is SI: metres, cubic metres, kilograms, seconds,
// kelvin. Nothing here reads a clock; whoever calls says when the pour starts.
package pour

import "strconv"

// ZeroCelsius is 0 °C in kelvin.
const ZeroCelsius = 273.15

// Refusal is an error for the person who must act: which entry can't be used, what was given, and what would work.
type Refusal struct {
	Field string `json:"field"`
	Given string `json:"given"`
	Works string `json:"works"`
}

func (r *Refusal) Error() string { return r.Field + ": " + r.Given + "; " + r.Works }

func refuse(field, given, works string) error { return &Refusal{field, given, works} }

// number writes x with up to the given number of decimals and no trailing zeros.
func number(x float64, decimals int) string {
	text := strconv.FormatFloat(x, 'f', decimals, 64)
	if decimals > 0 {
		for text[len(text)-1] == '0' {
			text = text[:len(text)-1]
		}
		if text[len(text)-1] == '.' {
			text = text[:len(text)-1]
		}
	}
	if text == "-0" {
		return "0"
	}
	return text
}

func litres(volume float64) string { return number(volume*1000, 2) + " L" }

func celsius(temperature float64) string { return number(temperature-ZeroCelsius, 1) + " °C" }

func minutes(seconds float64) string { return number(seconds/60, 1) + " min" }

// positive tells whether x is a usable quantity above zero: not zero, negative, infinite or NaN.
func positive(x float64) bool { return x > 0 && x <= 1e300 }
