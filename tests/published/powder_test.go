// Densities of water and cement as they are printed.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lowspot/engine/climate"
)

// Tanaka et al. 2001, Metrologia 38:301 (formula as recalled, document not at hand); IAPWS-97 by Debian python3-iapws; Kell 1975, in J. Res. NIST 97:335
// (PMC4909168) with the denominator 1 + 16.879850e-3 t, because 16.897850e-3 as printed there gives 997.936 at 20 °C; Bettin and Spieweck, ITS-90,
// printed in IP App. G (reproduction).
func TestDensityOfWater(t *testing.T) {
	for _, row := range []struct{ temperature, density float64 }{
		{0, 999.8428}, {10, 999.7027}, {20, 998.2067}, {30, 995.6488}, // Tanaka
		{10, 999.7015}, {20, 998.2061}, // IAPWS-97
		{0, 999.8395}, {20, 998.2041}, // Kell
		{0, 999.8395}, {20, 998.2031}, // Bettin and Spieweck
	} {
		assert.InDelta(t, row.density, climate.WaterDensity(celsius(row.temperature)), 0.005, "%v °C", row.temperature)
	}
}

// Recomputed: 998.2067 kg/m³ and a US quart of 57.75 in³.
func TestAUSQuartOfWaterAtTwentyDegrees(t *testing.T) {
	const quart, pound = 57.75 * inches * inches * inches, 0.45359237
	assert.InDelta(t, 2.0826, climate.WaterDensity(celsius(20))*quart/pound, 1e-4)
}
