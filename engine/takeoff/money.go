// Package takeoff is the counter's arithmetic: what to buy in whole packs, what it weighs, and what it comes to in money that never touches a
// binary fraction.
package takeoff

import (
	"math/bits"
	"strconv"
	"strings"
)

// Money is an amount in a currency's smallest unit: 1250 is 12.50 in a currency of two digits.
type Money int64

// Rate is a share in millionths: 190 000 is 19 %, 88 750 is 8.875 %.
type Rate int64

// whole is the rate of 100 %.
const whole = 1_000_000

// The largest amount and rate that are worked with; beyond them nothing is sold here, and nothing can overflow.
const (
	MostMoney Money = 1e15
	MostRate  Rate  = 10 * whole
)

// Currency is a currency's code ("EUR") and how many digits its smallest unit has: 2, or 0 where there are no coins below the unit.
type Currency struct {
	Code   string `json:"code"`
	Digits int    `json:"digits"`
}

// share is m × over / under rounded to the nearest smallest unit, halves away from zero, so that a credit mirrors its bill.
// Over is not negative, under is above zero, and the result must fit.
func share(m Money, over, under int64) Money {
	magnitude, negative := uint64(m), m < 0
	if negative {
		magnitude = uint64(-m)
	}
	high, low := bits.Mul64(magnitude, uint64(over))
	low, carry := bits.Add64(low, uint64(under)/2, 0) // where under is odd, nothing lies on a half
	quotient, _ := bits.Div64(high+carry, low, uint64(under))
	if negative {
		return -Money(quotient)
	}
	return Money(quotient)
}

// Of is the rate's share of an amount.
func (r Rate) Of(m Money) Money { return share(m, int64(r), whole) }

// Within is the tax in an amount that includes it at the rate.
func (r Rate) Within(m Money) Money { return share(m, int64(r), whole+int64(r)) }

// Write gives an amount with the currency's digits and a point: "1234.50".
func (c Currency) Write(m Money) string {
	sign, text := "", strconv.FormatInt(int64(m), 10)
	if m < 0 {
		sign, text = "-", text[1:]
	}
	if c.Digits <= 0 {
		return sign + text
	}
	for len(text) <= c.Digits {
		text = "0" + text
	}
	point := len(text) - c.Digits
	return sign + text[:point] + "." + text[point:]
}

// Write gives a rate in per cent: "8.875 %".
func (r Rate) Write() string {
	text := Currency{Digits: 4}.Write(Money(r))
	return strings.TrimRight(strings.TrimRight(text, "0"), ".") + " %"
}
