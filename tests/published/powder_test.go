// Densities of water and cement as they are printed.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/climate"
	"lowspot/engine/deck"
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

// US convention, one 94 lb bag a cubic foot, PCA wording (secondary): 1505.7 kg/m³, "1506". Handling makes it anything from 830 to 1650, a spread of 2:1.
func TestTheFillerIsReckonedWithLooseCement(t *testing.T) {
	assert.InEpsilon(t, 1505.7, deck.UsualFiller.Loose, 1e-3)
	assert.Greater(t, deck.UsualFiller.Loose, 830.0)
	assert.Less(t, deck.UsualFiller.Loose, 1650.0)
}

// Recomputed: mass over density. Two parts of loose cement to one of water fill the water and the grains.
func TestTheAbsoluteVolumeOfABagOfCement(t *testing.T) {
	const cubicFoot = 0.028316846592
	assert.InDelta(t, 0.4782, 94/(3.15*62.4), 1e-4)
	assert.InDelta(t, 0.4780, 94/(3.15*62.43), 1e-4)
	mix, err := deck.UsualFiller.MixFor(cubicFoot)
	require.NoError(t, err)
	grains := mix.Mass / deck.UsualFiller.Grain
	assert.InDelta(t, 0.4780, grains/mix.Powder, 1e-4, "of a cubic foot of loose cement")
	assert.InDelta(t, cubicFoot, grains+mix.Water, 1e-12)
}
