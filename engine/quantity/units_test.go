package quantity_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/quantity"
)

func TestEveryUnitOfferedIsReadByEverySpelling(t *testing.T) {
	for _, d := range dimensions {
		for _, u := range Units(d) {
			for _, spelling := range append([]string{u.Symbol}, u.Spellings...) {
				if spelling == "" || d == Money {
					continue
				}
				si, err := Read("5 "+spelling, d)
				require.NoError(t, err, spelling)
				assert.InEpsilon(t, 5*u.Factor+u.Offset, si, 1e-14, spelling)
				assert.InEpsilon(t, 5, u.From(u.SI(5)), 1e-12, spelling)
			}
		}
	}
}

func TestUnitsAreOfTheirDimension(t *testing.T) {
	for _, d := range dimensions {
		for _, u := range Units(d) {
			assert.Equal(t, d, u.Dimension, u.Symbol)
		}
	}
	for _, d := range dimensions[1:8] {
		assert.NotEmpty(t, Units(d), d.Name())
	}
	assert.Empty(t, Units(Length.Power(9)))
}

func TestATemperatureDifferenceHasNoOffset(t *testing.T) {
	for _, u := range Units(TemperatureDifference) {
		assert.Zero(t, u.Offset, u.Symbol)
	}
	u, ok := UnitNamed("°F")
	assert.True(t, ok)
	assert.Equal(t, Temperature, u.Dimension)
}

func TestASpellingFindsItsUnit(t *testing.T) {
	for spelling, symbol := range map[string]string{"inches": "in", `"`: "in", "LBS": "lb", "litre": "L", "US gal": "gal", "psi": "psi", "kg/m²/h": "kg/m²/h", "": "", "f": "°F", "Mg": "t", "mg": "mg"} {
		u, ok := UnitNamed(spelling)
		assert.True(t, ok, spelling)
		assert.Equal(t, symbol, u.Symbol)
	}
	for _, unknown := range []string{"furlong", "MG", "ton", "m/", "/", "()", "m²²x", "5", "0 m", "sq", "sq kg x"} {
		_, ok := UnitNamed(unknown)
		assert.False(t, ok, unknown)
	}
}

func TestAnErrorsExamplesWork(t *testing.T) {
	for _, d := range dimensions {
		_, err := Read("?", d)
		examples := strings.Split(err.Error(), "Write it like ")[1]
		for _, piece := range strings.Split(examples, "“")[1:] {
			example, _, _ := strings.Cut(piece, "”")
			_, err := Read(example, d)
			assert.NoError(t, err, d.Name())
		}
	}
}
