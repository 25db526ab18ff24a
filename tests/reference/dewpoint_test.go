// Moist air against a general-purpose library, psychrolib (npm), which follows ASHRAE Fundamentals 2017 ch. 1.
package reference

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/climate"
)

type moistAir struct {
	Temperature float64 `json:"temperature"`
	Humidity    float64 `json:"humidity"`
	Pressure    float64 `json:"pressure"`
}

// roomsAir is every kind of air that a building site may have, and colder and hotter.
func roomsAir() (all []moistAir) {
	for temperature := -15.0; temperature <= 50; temperature += 2.5 {
		for humidity := 0.05; humidity < 1; humidity += 0.1 {
			for _, pressure := range []float64{climate.StandardPressure, 85000} {
				all = append(all, moistAir{temperature, humidity, pressure})
			}
		}
	}
	return all
}

// psychrolib stops its searches at 0.001 °C. Around freezing a wet bulb has two values, one with water on the sleeve and one with ice, 0.4 °C apart; which
// one a search meets is its own affair.
func TestMoistAirIsThatOfPsychrolib(t *testing.T) {
	asked := roomsAir()
	var answers []struct{ Saturation, DewPoint, WetBulb, Ratio float64 }
	ask(t, []string{"node", "--input-type=module", "-e", "import 'psychrolib'"}, []string{"node", "dewpoint.mjs"}, asked, &answers)
	require.Len(t, answers, len(asked))
	for i, want := range answers {
		air := climate.Air{Temperature: asked[i].Temperature + climate.ZeroCelsius, Humidity: asked[i].Humidity}
		assert.InEpsilon(t, want.Saturation, climate.SaturationPressure(air.Temperature), 1e-12, "%+v", asked[i])
		dew, err := climate.DewPoint(air)
		require.NoError(t, err)
		assert.InDelta(t, want.DewPoint, dew-climate.ZeroCelsius, 0.0015, "%+v", asked[i])
		ratio, err := climate.HumidityRatio(air, asked[i].Pressure)
		require.NoError(t, err)
		assert.InEpsilon(t, want.Ratio, ratio, 1e-12, "%+v", asked[i])
		wet, err := climate.WetBulb(air, asked[i].Pressure)
		require.NoError(t, err)
		if celsius := wet - climate.ZeroCelsius; math.Abs(celsius) > 0.4 {
			assert.InDelta(t, want.WetBulb, celsius, 0.0015, "%+v", asked[i])
		} else {
			assert.InDelta(t, want.WetBulb, celsius, 0.4, "%+v", asked[i])
		}
	}
}
