package climate

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func at(celsius float64) float64 { return celsius + ZeroCelsius }

func TestSaturatedAirHasItsDewPointAndWetBulbAtItsOwnTemperature(t *testing.T) {
	for c := -20.0; c <= 40; c += 2.5 {
		air := Air{at(c), 1}
		dew, err := DewPoint(air)
		require.NoError(t, err)
		assert.InDelta(t, at(c), dew, 1e-9)
		wet, err := WetBulb(air, StandardPressure)
		require.NoError(t, err)
		assert.InDelta(t, at(c), wet, 1e-6)
	}
}

func TestAWetAndADryThermometerGiveBackTheAirTheyWereReadIn(t *testing.T) {
	for _, humidity := range []float64{0.2, 0.5, 0.8, 1} {
		air := Air{at(22), humidity}
		wet, err := WetBulb(air, 95000)
		require.NoError(t, err)
		back, err := AirFromWetBulb(air.Temperature, wet, 95000)
		require.NoError(t, err)
		assert.InDelta(t, humidity, back.Humidity, 1e-6)
	}
}

func TestTheGreatestHumidityLeavesExactlyTheMargin(t *testing.T) {
	humidity, err := GreatestHumidity(at(14), at(20), MarginMetric)
	require.NoError(t, err)
	margin, err := DewMargin(at(14), Air{at(20), humidity})
	require.NoError(t, err)
	assert.InDelta(t, MarginMetric, margin, 1e-6)

	humidity, err = GreatestHumidity(at(25), at(20), MarginMetric)
	require.NoError(t, err)
	assert.Equal(t, 1.0, humidity, "a warm deck never gets dew")
}

func TestTheGreatestWindDriesTheFloorAtTheLimit(t *testing.T) {
	air := Air{at(25), 0.4}
	wind, err := GreatestWind(at(24), air, EvaporationCaution)
	require.NoError(t, err)
	rate, err := Evaporation(at(24), air, wind)
	require.NoError(t, err)
	assert.InDelta(t, EvaporationCaution, rate, 1e-12)
}

func TestAFloorThatDriesTooFastInStillAirIsRefusedInWords(t *testing.T) {
	_, err := GreatestWind(at(55), Air{at(50), 0.1}, EvaporationCaution)
	assert.EqualError(t, err, "air.speed: The floor dries too fast even in still air. Cool the mix or the deck, or raise the humidity.")
}

func TestAirThatGivesWaterToTheFloorDriesNothing(t *testing.T) {
	rate, err := Evaporation(at(10), Air{at(25), 0.9}, 2)
	require.NoError(t, err)
	assert.Zero(t, rate)
	wind, err := GreatestWind(at(10), Air{at(25), 0.9}, EvaporationCaution)
	require.NoError(t, err)
	assert.EqualValues(t, greatestWind, wind)
}

func TestWhatNoThermometerReadsIsRefused(t *testing.T) {
	for _, air := range []Air{{at(20), 1.01}, {at(20), -0.1}, {20, 0.5}, {at(90), 0.5}, {math.NaN(), 0.5}, {at(20), math.NaN()}, {math.Inf(1), 0.5}} {
		_, err := DewPoint(air)
		assert.Error(t, err, "%v", air)
		_, err = Evaporation(at(20), air, 1)
		assert.Error(t, err, "%v", air)
		_, err = WetBulb(air, StandardPressure)
		assert.Error(t, err, "%v", air)
	}
	for _, wind := range []float64{-1, 31, math.NaN(), math.Inf(1)} {
		_, err := Evaporation(at(20), Air{at(20), 0.5}, wind)
		assert.Error(t, err, "%v", wind)
	}
	_, err := Evaporation(at(-1), Air{at(20), 0.5}, 1)
	assert.Error(t, err)
	_, err = HumidityRatio(Air{at(20), 0.5}, 1013)
	assert.EqualError(t, err, "air.pressure: Air has between 50 kPa and 120 kPa. 101.325 kPa is the standard at sea level.")
	_, err = AirFromWetBulb(at(20), at(21), StandardPressure)
	assert.Error(t, err)
	_, err = AirFromWetBulb(at(40), at(5), StandardPressure)
	assert.Error(t, err, "drier than no water at all")
	_, err = GreatestHumidity(at(14), at(20), -1)
	assert.Error(t, err)
	_, err = GreatestWind(at(20), Air{at(20), 0.5}, 0)
	assert.Error(t, err)
}

func TestFormulasSayNothingBeyondTheirRange(t *testing.T) {
	assert.True(t, math.IsNaN(SaturationPressure(100)))
	assert.True(t, math.IsNaN(SaturationPressure(math.NaN())))
	assert.True(t, math.IsNaN(AtmosphericPressure(20000)))
	assert.True(t, math.IsNaN(WaterDensity(at(50))))
	assert.True(t, math.IsNaN(WaterDensity(at(-1))))
}
