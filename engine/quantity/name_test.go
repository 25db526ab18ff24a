package quantity_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "lowspot/engine/quantity"
)

func TestDimensionsHaveNames(t *testing.T) {
	for _, c := range []struct {
		d    Dimension
		name string
	}{
		{Number, "number"}, {Length, "length"}, {Temperature, "temperature"}, {TemperatureDifference, "temperature difference"},
		{Volume.Over(Mass), "yield"}, {Area.Over(Volume), "coverage"}, {Mass.Over(Area), "mass per area"}, {Mass.Over(Area).Over(Time), "evaporation rate"},
		{Length.Over(Time.Power(2)), "length per time squared"}, {Money.Over(Area), "money per area"}, {Number.Over(Area), "number per area"},
		{Length.Power(4), "length to the power 4"}, {Mass.Times(Length), "mass times length"}, {Money.Over(Mass.Times(Length)), "money per mass and length"},
		{Time.Power(-3), "number per time cubed"}, {TemperatureDifference.Over(Time), "temperature difference per time"},
	} {
		assert.Equal(t, c.name, c.d.Name())
	}
}

func TestEveryNameIsReadBack(t *testing.T) {
	for length := -4; length <= 4; length++ {
		for mass := -2; mass <= 2; mass++ {
			for time := -3; time <= 3; time++ {
				for other := -1; other <= 1; other++ {
					d := Length.Power(length).Times(Mass.Power(mass)).Times(Time.Power(time)).Times(TemperatureDifference.Power(other)).Times(Money.Power(-other))
					again, ok := DimensionNamed(d.Name())
					assert.True(t, ok, d.Name())
					assert.Equal(t, d, again, d.Name())
				}
			}
		}
	}
	for _, d := range dimensions {
		again, ok := DimensionNamed(d.Name())
		assert.True(t, ok, d.Name())
		assert.Equal(t, d, again, d.Name())
	}
}

func TestUnknownNamesAreRefused(t *testing.T) {
	for _, name := range []string{"", "weight", "length per", "length per weight", "length to the power x", "length to the power 200", "Length", " per area"} {
		_, ok := DimensionNamed(name)
		assert.False(t, ok, name)
	}
}

func TestAProductWithATemperatureIsNoPoint(t *testing.T) {
	assert.Equal(t, TemperatureDifference, Temperature.Times(Number))
	assert.Equal(t, Number, Temperature.Over(Temperature))
}

func TestExponentsStopWhereTheyWouldWrap(t *testing.T) {
	assert.Equal(t, int8(127), Length.Power(1<<40).Length)
	assert.Equal(t, int8(-127), Length.Power(100).Times(Length.Power(100)).Power(-9).Length)
}
