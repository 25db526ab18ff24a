// Printed values of moist air: saturation, humidity ratio, dew point, wet bulb, the standard atmosphere, and the margin over the dew point.
package published

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/climate"
	"lowspot/engine/quantity"
)

// ASHRAE Fundamentals 2017 ch. 1 Table 3, as cited in psychrolib tests/test_psychrolib_si.py and test_psychrolib_ip.py, commit 3066345d.
func TestSaturationPressureOfASHRAETable3(t *testing.T) {
	for temperature, pascal := range map[float64]float64{5: 872.6, 25: 3169.7, 50: 12351.3, 100: 101418.0, -5: 401.74} {
		assert.InEpsilon(t, pascal, climate.SaturationPressure(celsius(temperature)), 3e-4, "%v °C", temperature)
	}
	for temperature, psi := range map[float64]float64{41: 0.12656, 77: 0.45973, 122: 1.79140, 23: 0.058268} {
		assert.InEpsilon(t, psi, inPSI(climate.SaturationPressure(fahrenheit(temperature))), 3e-4, "%v °F", temperature)
	}
}

func inPSI(pascal float64) float64 {
	psi, _ := quantity.UnitNamed("psi")
	return psi.From(pascal)
}

// ASHRAE Fundamentals 2017 ch. 1 Table 2, in psychrolib's tests; the ideal-gas formula is 0.4 % to 0.6 % below the table, 1 % at most.
func TestHumidityRatioAtSaturationOfASHRAETable2(t *testing.T) {
	for temperature, ratio := range map[float64]float64{5: 0.005425, 25: 0.020173, 50: 0.086863} {
		got, err := climate.HumidityRatio(climate.Air{Temperature: celsius(temperature), Humidity: 1}, climate.StandardPressure)
		require.NoError(t, err)
		assert.InEpsilon(t, ratio, got, 0.01, "%v °C", temperature)
		assert.Less(t, got, ratio, "an ideal gas holds a little less")
	}
}

// ASHRAE Fundamentals ch. 1 Example 1, in psychrolib's tests, which remark "not great agreement": psychrolib 1.1.1 itself gives a ratio of 0.00640, as here,
// one in the last digit printed.
func TestAnAspiratedPsychrometerOfASHRAEExample1(t *testing.T) {
	air, err := climate.AirFromWetBulb(celsius(40), celsius(20), climate.StandardPressure)
	require.NoError(t, err)
	dew, err := climate.DewPoint(air)
	require.NoError(t, err)
	ratio, err := climate.HumidityRatio(air, climate.StandardPressure)
	require.NoError(t, err)
	assert.InDelta(t, 7, dew-climate.ZeroCelsius, 0.5)
	assert.InDelta(t, 0.0065, ratio, 1e-4)
	assert.InDelta(t, 0.14, air.Humidity, 0.005)
}

// psychrolib's tests, commit 3066345d.
func TestWetBulbOfCoolMoistAir(t *testing.T) {
	wet, err := climate.WetBulb(climate.Air{Temperature: celsius(7), Humidity: 0.61}, 100000)
	require.NoError(t, err)
	assert.InEpsilon(t, 3.92667, wet-climate.ZeroCelsius, 1e-3)
}

// ASHRAE Fundamentals ch. 1 Table 1, in psychrolib's tests.
func TestPressureOfTheStandardAtmosphere(t *testing.T) {
	for altitude, pascal := range map[float64]float64{0: 101325, 500: 95461, 1000: 89875} {
		assert.InDelta(t, pascal, climate.AtmosphericPressure(altitude), 1, "%v m", altitude)
	}
}

// Recomputed: the saturation line of Wagner and Pruss 2002; psychrolib 1.1.1; Magnus' formula with each pair of constants. Any two agree within 0.03 °C.
func TestDewPointsByFourFormulas(t *testing.T) {
	for _, row := range []struct{ temperature, humidity, wagner, psychrolib, ae96, wmo float64 }{
		{5, 0.90, 3.499, 3.498, 3.496, 3.495},
		{15, 0.60, 7.308, 7.307, 7.297, 7.292},
		{20, 0.65, 13.228, 13.227, 13.221, 13.217},
		{23, 0.50, 12.029, 12.028, 12.020, 12.014},
		{25, 0.60, 16.702, 16.701, 16.698, 16.693},
		{30, 0.55, 19.977, 19.976, 19.977, 19.972},
		{35, 0.40, 19.386, 19.385, 19.392, 19.384},
	} {
		dew, err := climate.DewPoint(climate.Air{Temperature: celsius(row.temperature), Humidity: row.humidity})
		require.NoError(t, err)
		assert.InDelta(t, row.wagner, dew-climate.ZeroCelsius, 0.03)
		assert.InDelta(t, row.psychrolib, dew-climate.ZeroCelsius, 0.001, "the same formula to the digits given")
		assert.InDelta(t, row.ae96, climate.MagnusAE96.DewPointCelsius(row.temperature, row.humidity), 0.001)
		assert.InDelta(t, row.wmo, climate.MagnusWMO.DewPointCelsius(row.temperature, row.humidity), 0.001)
	}
}

// Recomputed: Wagner and Pruss 2002; psychrolib in US units agrees to 0.01 °F on the second and last.
func TestDewPointsInFahrenheit(t *testing.T) {
	for _, row := range []struct{ temperature, humidity, dew float64 }{{50, 0.80, 44.08}, {70, 0.50, 50.53}, {75, 0.50, 55.12}, {80, 0.70, 69.34}} {
		air := climate.Air{Temperature: fahrenheit(row.temperature), Humidity: row.humidity}
		dew, err := climate.DewPoint(air)
		require.NoError(t, err)
		assert.InDelta(t, row.dew, toFahrenheit(dew), 0.03)
	}
	magnus := climate.MagnusWMO.DewPointCelsius((70-32)/1.8, 0.5)*1.8 + 32
	assert.InDelta(t, 50.53-0.031, magnus, 0.005, "Magnus is 0.031 °F low here")
}

// The rule r = 10^(4221/(t+459.4) − 4221/(d+459.4) + 2), as read in a WGN-TV weather column (wgntv.com/weather/what-is-the-dew-point-2).
func TestDewPointAgainstTheWeatherColumnsRule(t *testing.T) {
	const temperature, percent = 70, 50
	rule := 4221/(4221/(temperature+459.4)+2-math.Log10(percent)) - 459.4
	assert.InDelta(t, 50.74, rule, 0.01)
	dew, err := climate.DewPoint(climate.Air{Temperature: fahrenheit(temperature), Humidity: percent / 100.0})
	require.NoError(t, err)
	assert.InDelta(t, rule, toFahrenheit(dew), 0.25)
}

// ISO 8502-4:2017, the numbers as recalled, document not at hand: 3 °C or 5 °F, which are not one margin.
func TestTheTwoMarginsOverTheDewPoint(t *testing.T) {
	assert.Equal(t, 3.0, climate.MarginMetric)
	assert.InDelta(t, 5.4, climate.MarginMetric*1.8, 0.005)
	assert.InDelta(t, 2.78, climate.MarginUS, 0.005)
	assert.InDelta(t, 0.22, climate.MarginMetric-climate.MarginUS, 0.005)

	air := climate.Air{Temperature: celsius(20), Humidity: 0.65}
	dew, err := climate.DewPoint(air)
	require.NoError(t, err)
	margin, err := climate.DewMargin(dew+2.9, air)
	require.NoError(t, err)
	assert.Greater(t, margin, climate.MarginUS, "a surface 2.9 °C above the dew point passes in Fahrenheit")
	assert.Less(t, margin, climate.MarginMetric, "and fails in Celsius")
}

// The dew points of Wagner and Pruss' saturation line turned round: how humid air may be for its dew point to lie there.
func TestTheHumidityOfAPublishedDewPoint(t *testing.T) {
	for _, row := range []struct{ air, dew, humidity float64 }{{15, 7.308, 0.60}, {20, 13.228, 0.65}, {25, 16.702, 0.60}, {30, 19.977, 0.55}} {
		most, err := climate.GreatestHumidity(celsius(row.dew+3), celsius(row.air), climate.MarginMetric)
		require.NoError(t, err)
		assert.InDelta(t, row.humidity, most, 5e-4, "%v °C", row.dew)
	}
}
