// What the published documents say of units, against what the reader makes of them.
package published

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

// reads is what one spelling of a quantity comes to, in SI base units.
func reads(t *testing.T, text string, d quantity.Dimension) float64 {
	t.Helper()
	si, err := quantity.Read(text, d)
	require.NoError(t, err)
	return si
}

// Exact values. Inch: NIST SP 811, value as recalled, document not at hand. Cubic inch, pound, pint, quart, gallon and imperial gallon: a table
// derived from NIST Handbook 44, Appendix C. The pint, quart and gallon are 1/8, 1/4 and 1 of 231 in³.
func TestExactUnits(t *testing.T) {
	for _, c := range []struct {
		text string
		d    quantity.Dimension
		unit string
		is   float64
	}{
		{"1 in", quantity.Length, "mm", 25.4},
		{"1 in³", quantity.Volume, "mL", 16.387064},
		{"1 lb", quantity.Mass, "g", 453.59237},
		{"1 lb", quantity.Mass, "kg", 0.45359237},
		{"1 gal", quantity.Volume, "cu in", 231},
		{"1 imp gal", quantity.Volume, "L", 4.54609},
		{"1 L/m²", quantity.Length, "mm", 1},
	} {
		unit, ok := quantity.UnitNamed(c.unit)
		require.True(t, ok, c.unit)
		assert.InEpsilon(t, c.is, unit.From(reads(t, c.text, c.d)), 1e-15, "%s in %s", c.text, c.unit)
	}
}

// The same table prints the US measures to six decimals of a millilitre.
func TestUSMeasures(t *testing.T) {
	assert.InDelta(t, 473.176473e-6, reads(t, "1 pt", quantity.Volume), 5e-13)
	assert.InDelta(t, 946.352946e-6, reads(t, "1 qt", quantity.Volume), 5e-13)
	assert.InDelta(t, 3785.411784e-6, reads(t, "1 gal", quantity.Volume), 5e-13)
}

// 1.0 US gal against 1.0 imperial gal: 3.785411784 and 4.54609 L; the one must never be read as the other.
func TestImperialGallonsAreNotUSGallons(t *testing.T) {
	assert.InDelta(t, 1.200950, reads(t, "1 imp gal", quantity.Volume)/reads(t, "1 US gal", quantity.Volume), 5e-7)
	assert.Equal(t, reads(t, "1 US gal", quantity.Volume), reads(t, "1 gal", quantity.Volume))
}

// Recomputed from the exact pound, inch and standard gravity: psi is lbf/in².
func TestPoundsPerSquareInch(t *testing.T) {
	assert.InEpsilon(t, 6894.757293, reads(t, "1 psi", quantity.Pressure), 1e-9)
	assert.InEpsilon(t, 144, reads(t, "1 psi", quantity.Pressure)/reads(t, "1 psf", quantity.Pressure), 1e-14)
	// The pull-off target of ICRI and ACI practice, value as recalled, document not at hand: 200 psi is 1.379 MPa.
	assert.InDelta(t, 1.379, reads(t, "200 psi", quantity.Pressure)/1e6, 5e-4)
	// EN 13813:2002, value as recalled, document not at hand, states classes in N/mm², which are MPa.
	assert.Equal(t, reads(t, "25 MPa", quantity.Pressure), reads(t, "25 N/mm²", quantity.Pressure))
}

// Recomputed from 0.45359237 kg a pound: 51 lb and NIOSH's 23 kg are two constants, not one.
func TestLoadConstants(t *testing.T) {
	pound, _ := quantity.UnitNamed("lb")
	assert.InDelta(t, 23.1332, reads(t, "51 lb", quantity.Mass), 5e-5)
	assert.InDelta(t, 50.7063, pound.From(reads(t, "23 kg", quantity.Mass)), 5e-5)
}

// The limits that flatness rules are written in (ANSI A108.02, ASTM F710), recomputed from 1 in = 25.4 mm.
func TestTheInchesOfFlatnessRules(t *testing.T) {
	for text, millimetres := range map[string]float64{
		"1/4 in": 6.35, "1/8 in": 3.175, "1/16 in": 1.5875, "3/16 in": 4.7625, "3/8 in": 9.525, "1/2 in": 12.7, "10 ft": 3048, "24 in": 609.6, "4.57 in": 116.078, "12.5 in": 317.5,
	} {
		assert.Equal(t, millimetres/1000, reads(t, text, quantity.Length), text)
	}
	// 1/32 in, the lippage example of ANSI A108.02 §4.3.7, lies below what is shown, not below what is read.
	assert.InDelta(t, 0.79375e-3, reads(t, "1/32 in", quantity.Length), 1e-18)
}

// ACI 305R's cracking threshold of 0.20 lb/ft²/h (reproduction) is 0.9765 kg/m²/h, not 1.0: 4.882428 kg/m²/h to the lb/ft²/h.
func TestEvaporationRates(t *testing.T) {
	metric, _ := quantity.UnitNamed("kg/m²/h")
	assert.InDelta(t, 0.9765, metric.From(reads(t, "0.20 lb/ft²/h", quantity.EvaporationRate)), 1e-4)
	assert.InDelta(t, 4.882428, metric.From(reads(t, "1 lb/ft²/h", quantity.EvaporationRate)), 5e-7)
}

// ASTM F1869's unit (value as recalled, document not at hand): 1 lb/(1000 ft²·24 h) is 56.51 µg/(s·m²).
func TestVapourEmissionRate(t *testing.T) {
	for _, text := range []string{"1 lb/(1000 ft2 24 h)", "1 lb/(1000 ft²·24 h)", "1 lb per 1000 sq ft per 24 h"} {
		assert.InDelta(t, 56.51e-9, reads(t, text, quantity.EvaporationRate), 0.005e-9, text)
	}
}

// A layer's volume is area times depth: 1 mm over 1 m² is a litre, 3 mm over 10 m² are 30.
func TestVolumeOfALayer(t *testing.T) {
	assert.InEpsilon(t, 0.001, reads(t, "1 mm", quantity.Length)*reads(t, "1 m²", quantity.Area), 1e-15)
	assert.InEpsilon(t, 0.030, reads(t, "3 mm", quantity.Length)*reads(t, "10 m²", quantity.Area), 1e-15)
}

// The bore of the flow ring of ASTM C1708 and EN 12706 (30 mm × 50 mm, values as recalled, documents not at hand) holds 35.343 mL.
func TestFlowRingVolume(t *testing.T) {
	bore, height := reads(t, "30 mm", quantity.Length), reads(t, "50 mm", quantity.Length)
	assert.InDelta(t, 35.343e-6, math.Pi/4*bore*bore*height, 1e-9)
}

// PCA wording (secondary): a 94 lb bag of cement is one loose cubic foot, 1505.7 kg/m³.
func TestLooseCement(t *testing.T) {
	assert.InEpsilon(t, 1505.7, reads(t, "94 lb/ft³", quantity.Density), 1e-3)
}

// ISO 8502-4's margins over the dew point (value as recalled, document not at hand) are two, not one: 3 °C is 5.4 °F, 5 °F is 2.78 °C.
func TestDewPointMarginsAreTwo(t *testing.T) {
	assert.InDelta(t, reads(t, "5.4 °F", quantity.TemperatureDifference), reads(t, "3 °C", quantity.TemperatureDifference), 1e-12)
	assert.InDelta(t, 2.78, reads(t, "5 °F", quantity.TemperatureDifference), 0.005)
}

// Points on the scale: ACI 301's 95 °F at discharge is 35 °C; ACI 306's 40 °F is 4.4 °C, which the metric text rounds to 5 (reproductions).
func TestTemperaturesArePoints(t *testing.T) {
	assert.InDelta(t, 308.15, reads(t, "95 °F", quantity.Temperature), 1e-12)
	assert.InDelta(t, reads(t, "95 °F", quantity.Temperature), reads(t, "35 °C", quantity.Temperature), 1e-12)
	assert.InDelta(t, 4.44, reads(t, "40 °F", quantity.Temperature)-273.15, 0.005)
	assert.InDelta(t, reads(t, "-40 °C", quantity.Temperature), reads(t, "-40 °F", quantity.Temperature), 1e-12)
}
