// What people type, and what it comes to.
package quantity_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/quantity"
)

const (
	inch = 0.0254
	foot = 0.3048
	lb   = 0.45359237
	gal  = 231 * inch * inch * inch
)

var typed = []struct {
	text string
	d    Dimension
	si   float64
}{
	{"3/8 in", Length, 0.375 * inch},
	{`3/8"`, Length, 0.375 * inch},
	{"1 3/8 in", Length, 1.375 * inch},
	{"1-3/8 in", Length, 1.375 * inch},
	{"⅜ in", Length, 0.375 * inch},
	{"1½ in.", Length, 1.5 * inch},
	{"1⁄2 inch", Length, 0.5 * inch},
	{`5' 7 1/2"`, Length, 67.5 * inch},
	{`5'-7 1/2"`, Length, 67.5 * inch},
	{`5' - 7 1/2"`, Length, 67.5 * inch},
	{"5’ 7½”", Length, 67.5 * inch},
	{"5′7½″", Length, 67.5 * inch},
	{"5' 7''", Length, 67 * inch},
	{"5 ft 7 in", Length, 67 * inch},
	{"5 ft. 7 in.", Length, 67 * inch},
	{"5 ft, 7 in", Length, 67 * inch},
	{"5ft7in", Length, 67 * inch},
	{"5ft7 in", Length, 67 * inch},
	{"5'7", Length, 67 * inch},
	{"5 ft 7", Length, 67 * inch},
	{"10'", Length, 10 * foot},
	{"10 feet", Length, 10 * foot},
	{`-3/8"`, Length, -0.375 * inch},
	{`−1' 2"`, Length, -14 * inch},
	{"9.5 mm", Length, 0.0095},
	{"9 mm", Length, 0.009},
	{"0.009 m", Length, 0.009},
	{"9,5mm", Length, 0.0095},
	{"1,2 m", Length, 1.2},
	{"1,25 m", Length, 1.25},
	{"1,2345 m", Length, 1.2345},
	{"0,375 m", Length, 0.375},
	{"1.200 m", Length, 1.2},
	{"1.200,5 mm", Length, 1.2005},
	{"1,200.5 mm", Length, 1.2005},
	{"1.234.567 mm", Length, 1234.567},
	{"1,234,567 mm", Length, 1234.567},
	{"12 500 mm", Length, 12.5},
	{"12\u202f500,5\u00a0mm", Length, 12.5005},
	{".5 m", Length, 0.5},
	{"1e3 mm", Length, 1},
	{"+4 mm", Length, 0.004},
	{"3 m 20 cm", Length, 3.2},
	{"200 µm", Length, 0.0002},
	{"200 μm", Length, 0.0002},
	{"20 mil", Length, 0.02 * inch},
	{"2 L/m²", Length, 0.002},
	{"3 Mm", Length, 0.003},
	{"6 IN", Length, 6 * inch},

	{"12.5 m²", Area, 12.5},
	{"12.5 m2", Area, 12.5},
	{"12.5 m^2", Area, 12.5},
	{"12.5 sqm", Area, 12.5},
	{"12.5 square metres", Area, 12.5},
	{"135 sq ft", Area, 135 * foot * foot},
	{"135 sq. ft.", Area, 135 * foot * foot},
	{"135 sqft", Area, 135 * foot * foot},
	{"135 ft²", Area, 135 * foot * foot},
	{"135 SF", Area, 135 * foot * foot},

	{"4.8 L", Volume, 0.0048},
	{"4.8 l", Volume, 0.0048},
	{"4,8 litres", Volume, 0.0048},
	{"250 mL", Volume, 0.00025},
	{"250 ml", Volume, 0.00025},
	{"250 ML", Volume, 0.00025},
	{"0.2 m³", Volume, 0.2},
	{"4.5 qt", Volume, 4.5 * gal / 4},
	{"1 qt 3 fl oz", Volume, 35 * gal / 128},
	{"3 fl. oz.", Volume, 3 * gal / 128},
	{"2 gal", Volume, 2 * gal},
	{"2 US gal", Volume, 2 * gal},
	{"2 imp gal", Volume, 0.00909218},
	{"3 cu ft", Volume, 3 * foot * foot * foot},

	{"5 kg", Mass, 5},
	{"5 Kg", Mass, 5},
	{"50 lb", Mass, 50 * lb},
	{"50 lbs", Mass, 50 * lb},
	{"40 lb 8 oz", Mass, 40.5 * lb},
	{"1.5 t", Mass, 1500},

	{"2 h 30 min", Time, 9000},
	{"2h30", Time, 9000},
	{"1:30", Time, 5400},
	{"1:30 h", Time, 5400},
	{"0:20:30", Time, 1230},
	{"90 s", Time, 90},
	{"20 mins", Time, 1200},
	{"28 d", Time, 28 * 86400},
	{"1 day 6 hours", Time, 108000},

	{"68 °F", Temperature, 293.15},
	{"68F", Temperature, 293.15},
	{"68 deg F", Temperature, 293.15},
	{"68º F", Temperature, 293.15},
	{"20 C", Temperature, 293.15},
	{"20 ℃", Temperature, 293.15},
	{"−5 °C", Temperature, 268.15},
	{"293.15 K", Temperature, 293.15},
	{"5 °F", TemperatureDifference, 25.0 / 9},
	{"3 °C", TemperatureDifference, 3},
	{"3 K", TemperatureDifference, 3},

	{"75 %", Number, 0.75},
	{"75%", Number, 0.75},
	{"75 percent", Number, 0.75},
	{"75 per cent", Number, 0.75},
	{"1:3", Number, 1.0 / 3},
	{"3 : 1", Number, 3},
	{"1/3", Number, 1.0 / 3},
	{"14", Number, 14},
	{"1/4 in per ft", Number, 0.25 / 12},
	{"5 mm/m", Number, 0.005},
	{"12.50", Money, 12.5},
	{"12,50", Money, 12.5},

	{"2 m/s", Speed, 2},
	{"9 km/h", Speed, 2.5},
	{"5 mph", Speed, 5 * 0.44704},
	{"1.5 kPa", Pressure, 1500},
	{"25 MPa", Pressure, 25e6},
	{"25 N/mm²", Pressure, 25e6},
	{"200 psi", Pressure, 200 * lb * 9.80665 / (inch * inch)},
	{"40 psf", Pressure, 40 * lb * 9.80665 / (foot * foot)},
	{"2000 kg/m³", Density, 2000},
	{"94 lb/ft³", Density, 94 * lb / (foot * foot * foot)},
	{"94 pcf", Density, 94 * lb / (foot * foot * foot)},
	{"20 L/min", Flow, 0.02 / 60},
	{"1 kg/m²/h", EvaporationRate, 1.0 / 3600},
	{"1 kg/m2 h", EvaporationRate, 1.0 / 3600},
	{"1 kg/(m²·h)", EvaporationRate, 1.0 / 3600},
	{"0.2 lb/ft²/h", EvaporationRate, 0.2 * lb / (foot * foot * 3600)},
	{"3 lb/(1000 ft2 24 h)", EvaporationRate, 3 * lb / (1000 * foot * foot * 86400)},
	{"3 lb / 1000 sq ft / 24 h", EvaporationRate, 3 * lb / (1000 * foot * foot * 86400)},
	{"3 lb per 1000 sq ft per 24 h", EvaporationRate, 3 * lb / (1000 * foot * foot * 86400)},
	{"1.5 kg/m²", MassPerArea, 1.5},
	{"0.3 lb/ft²", MassPerArea, 0.3 * lb / (foot * foot)},
	{"8 m²/L", Coverage, 8000},
	{"300 sq ft/gal", Coverage, 300 * foot * foot / gal},
	{"300 sq ft per gallon", Coverage, 300 * foot * foot / gal},
	{"0.55 L/kg", Yield, 0.00055},
	{"5 m²/kg", AreaPerMass, 5},
	{"14 per m²", Number.Over(Area), 14},
	{"12.50 /m²", Money.Over(Area), 12.5},
	{"3 kg m⁴/s²", Mass.Times(Length.Power(4)).Over(Time.Power(2)), 3},
}

func TestWhatPeopleTypeIsRead(t *testing.T) {
	for _, c := range typed {
		t.Run(c.text, func(t *testing.T) {
			si, err := Read(c.text, c.d)
			require.NoError(t, err)
			assert.InEpsilon(t, c.si, si, 1e-14)
		})
	}
}

func TestZeroIsZeroWithoutASign(t *testing.T) {
	si, err := Read("-0 mm", Length)
	require.NoError(t, err)
	assert.Equal(t, "0 mm", Write(si, Length, Metric))
	assert.False(t, math.Signbit(si))
}

func TestOneLengthInTwoUnitsIsOneNumber(t *testing.T) {
	for _, pair := range [][2]string{
		{"9 mm", "0.009 m"}, {"3/8 in", "9.525 mm"}, {"1/8 in", "3.175 mm"}, {"10 ft", "3048 mm"}, {`5' 7 1/2"`, "67.5 in"}, {"1.7145 m", `67 1/2"`},
	} {
		one, err := Read(pair[0], Length)
		require.NoError(t, err)
		other, err := Read(pair[1], Length)
		require.NoError(t, err)
		assert.Equal(t, one, other, "%s and %s", pair[0], pair[1])
	}
}

func TestABareNumberTakesTheColumnsUnit(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		d          Dimension
		si         float64
	}{
		{"12", "mm", Length, 0.012}, {"3/8", "in", Length, 0.375 * inch}, {"1 3/8", "in", Length, 1.375 * inch}, {"12,5", "mm", Length, 0.0125},
		{"9 mm", "in", Length, 0.009}, {"75", "%", Number, 0.75}, {"1:3", "%", Number, 1.0 / 3}, {"20", "°C", Temperature, 293.15},
		{"5 ft 7", "m", Length, 67 * inch}, {"3", "", Number, 3}, {"-4", "mm", Length, -0.004},
	} {
		si, err := ReadIn(c.text, c.d, c.unit)
		require.NoError(t, err, c.text)
		assert.InEpsilon(t, c.si, si, 1e-14, c.text)
	}
}
