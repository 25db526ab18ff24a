// What a plan shows.
package quantity_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	. "lowspot/engine/quantity"
)

func TestWhatIsShown(t *testing.T) {
	for _, c := range []struct {
		si         float64
		d          Dimension
		metric, us string
	}{
		{0, Length, "0 mm", "0 in"},
		{0.009525, Length, "9.5 mm", "3/8 in"},
		{-0.008, Length, "-8 mm", "-5/16 in"},
		{0.1, Length, "100 mm", "3 15/16 in"},
		{0.2346, Length, "235 mm", "9 1/4 in"},
		{0.99996, Length, "1 m", "3' 3 3/8\""},
		{0.3048, Length, "305 mm", "1' 0\""},
		{0.3051, Length, "305 mm", "1' 0\""},
		{0.3066, Length, "307 mm", "1' 0 1/16\""},
		{1.7145, Length, "1.714 m", "5' 7 1/2\""},
		{12.345, Length, "12.35 m", "40' 6\""},
		{40000, Length, "40000 m", "131234 ft"},
		{1e-9, Length, "0 mm", "0 in"},
		{-1e-9, Length, "0 mm", "0 in"},
		{7.5, Area, "7.5 m²", "80.7 sq ft"},
		{1234.5, Area, "1234.5 m²", "13288 sq ft"},
		{35.343e-6, Volume, "35.3 mL", "1.2 fl oz"},
		{0.0045, Volume, "4.5 L", "4.76 qt"},
		{0.12, Volume, "120 L", "31.7 gal"},
		{1.25, Volume, "1.25 m³", "44.1 cu ft"},
		{22.6796185, Mass, "22.68 kg", "50 lb"},
		{250, Mass, "250 kg", "551.2 lb"},
		{0.3, Mass, "300 g", "10.6 oz"},
		{0, Time, "0 s", "0 s"},
		{45.25, Time, "45.2 s", "45.2 s"},
		{90, Time, "1 min 30 s", "1 min 30 s"},
		{1200, Time, "20 min", "20 min"},
		{3599.7, Time, "1 h", "1 h"},
		{9000, Time, "2 h 30 min", "2 h 30 min"},
		{-9000, Time, "-2 h 30 min", "-2 h 30 min"},
		{72 * 3600, Time, "72 h", "72 h"},
		{28.25 * 86400, Time, "28 d 6 h", "28 d 6 h"},
		{293.15, Temperature, "20 °C", "68 °F"},
		{291.45, Temperature, "18.3 °C", "64.9 °F"},
		{3, TemperatureDifference, "3 °C", "5.4 °F"},
		{2.5, Speed, "9 km/h", "5.6 mph"},
		{1915.21, Pressure, "1.915 kPa", "40 psf"},
		{1.379e6, Pressure, "1.379 MPa", "200 psi"},
		{900, Force, "900 N", "202.3 lbf"},
		{2000, Density, "2000 kg/m³", "124.9 lb/ft³"},
		{0.02 / 60, Flow, "20 L/min", "5.283 gal/min"},
		{1.0 / 3600, EvaporationRate, "1 kg/m²/h", "0.2048 lb/ft²/h"},
		{3 * 0.45359237 / (1000 * 0.09290304 * 86400), EvaporationRate, "14.65 g/(m² 24 h)", "3 lb/(1000 ft² 24 h)"}, // a slab, by calcium chloride
		{1.5, MassPerArea, "1.5 kg/m²", "0.3072 lb/ft²"},
		{8000, Coverage, "8 m²/L", "326 sq ft/gal"},
		{0.00055, Yield, "0.55 L/kg", "0.00881 ft³/lb"},
		{5, AreaPerMass, "5 m²/kg", "24.41 sq ft/lb"},
		{1.0 / 3, Number, "0.3333", "0.3333"},
		{12345.6, Number, "12346", "12346"},
		{12.5, Money, "12.50", "12.50"},
		{-0.001, Money, "0.00", "0.00"},
		{1.867, Number.Over(Area), "1.867 per m²", "1.867 per m²"},
		{2.5e-7, Length.Power(4), "2.5e-07 m⁴", "2.5e-07 m⁴"},
		{2, Mass.Times(Length).Over(Area.Times(Time)), "2 kg/(m s)", "2 kg/(m s)"},
		{math.NaN(), Length, "—", "—"},
		{math.Inf(-1), Time, "—", "—"},
		{2e15, Length, "2e+15 m", "2e+15 m"},
	} {
		assert.Equal(t, c.metric, Write(c.si, c.d, Metric), "%g %s", c.si, c.d.Name())
		assert.Equal(t, c.us, Write(c.si, c.d, US), "%g %s", c.si, c.d.Name())
	}
}

func TestWhatIsShownInAGivenUnit(t *testing.T) {
	for _, c := range []struct {
		si         float64
		unit, text string
	}{
		{0.0095, "mm", "9.5 mm"}, {0.009525, "in", "0.375 in"}, {1.7145, "ft", "5.625 ft"}, {293.15, "°F", "68 °F"}, {0.75, "%", "75 %"}, {0.75, "", "0.75"},
		{56.51e-9, "lb/(1000 ft2 24 h)", "1.00001 lb/(1000 ft2 24 h)"}, {1, "sq ft", "10.7639 sq ft"}, {0, "mm", "0 mm"},
		{1, "furlong", "—"}, {math.NaN(), "mm", "—"}, {math.MaxFloat64, "mm", "—"},
	} {
		assert.Equal(t, c.text, WriteIn(c.si, c.unit))
	}
}
