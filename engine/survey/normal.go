package survey

import (
	"math"

	"lowspot/engine/steady"
)

// density is that of the standard normal distribution.
func density(x float64) float64 { return steady.Exp(-x*x/2) / math.Sqrt(2*math.Pi) }

// chance is that of a standard normal number below x: 1/2 + density · (x + x³/3 + x⁵/(3·5) + ...), to some 1e-15
// (Marsaglia 2004, J. Stat. Softw. 11(4); from memory).
func chance(x float64) float64 {
	if x < -8 {
		return 0
	}
	if x > 8 {
		return 1
	}
	term, sum := x, x
	for n := 3.0; sum+term != sum; n += 2 {
		term *= x * x / n
		sum += term
	}
	return 0.5 + sum*density(x)
}

// Standard normal numbers below which lie 90 % and 99 % of all.
const z90, z99 = 1.2815515655446004, 2.3263478740408408
