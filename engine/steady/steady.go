// Package steady holds the few transcendental functions whose standard-library versions are written in assembly on some processors and so
// differ in the last bit between a native build and WebAssembly. A plan must be the same bytes on both; these use only the four operations,
// square roots and exact scaling, which every Go target rounds alike.
package steady

import "math"

const (
	ln2High = 6.93147180369123816490e-01 // ln 2 to 33 bits, so that a whole number times it is exact
	ln2Low  = 1.90821492927058770002e-10 // ln 2 minus ln2High
)

// Exp returns e**x within about one unit in the last place.
func Exp(x float64) float64 {
	switch {
	case math.IsNaN(x) || math.IsInf(x, 1):
		return x
	case x > 709.79:
		return math.Inf(1)
	case x < -745.2:
		return 0
	}
	doublings := math.Floor(x/math.Ln2 + 0.5)
	rest := (x - doublings*ln2High) - doublings*ln2Low
	// |rest| is at most ln 2 / 2, where thirteen terms of the series reach the last bit.
	sum := 1.0 / 6227020800
	for _, term := range inverseFactorials {
		sum = sum*rest + term
	}
	if doublings < -1021 || doublings > 1023 {
		return math.Ldexp(sum, int(doublings))
	}
	return sum * math.Float64frombits(uint64(1023+int64(doublings))<<52)
}

// inverseFactorials are 1/12! down to 1/0!.
var inverseFactorials = [...]float64{
	1.0 / 479001600, 1.0 / 39916800, 1.0 / 3628800, 1.0 / 362880, 1.0 / 40320, 1.0 / 5040, 1.0 / 720, 1.0 / 120, 1.0 / 24, 1.0 / 6, 0.5, 1, 1,
}

// Log returns the natural logarithm of x; NaN below zero.
func Log(x float64) float64 {
	switch {
	case math.IsNaN(x) || math.IsInf(x, 1):
		return x
	case x < 0:
		return math.NaN()
	case x == 0:
		return math.Inf(-1)
	}
	fraction, exponent := math.Frexp(x)
	if fraction < math.Sqrt2/2 {
		fraction *= 2
		exponent--
	}
	// ln f = 2 artanh s, where |s| is below 0.172 and twelve odd terms reach the last bit.
	s := (fraction - 1) / (fraction + 1)
	square := s * s
	sum := 0.0
	for n := 23.0; n > 1; n -= 2 {
		sum = square * (1/n + sum)
	}
	k := float64(exponent)
	return k*ln2High + (k*ln2Low + 2*s*(1+sum))
}

// Pow returns x**y for x above zero; zero to a positive power is zero; anything else below zero is NaN.
func Pow(x, y float64) float64 {
	switch {
	case y == 0:
		return 1
	case x == 0 && y > 0:
		return 0
	case x < 0:
		return math.NaN()
	}
	return Exp(y * Log(x))
}

// Hypot returns the length of the vector (x, y), metres in, metres out; rooms never reach the sizes where the squares overflow.
func Hypot(x, y float64) float64 { return math.Sqrt(x*x + y*y) }
