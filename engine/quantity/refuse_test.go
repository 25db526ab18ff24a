// What can't be read, and what the person is told.
package quantity_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/quantity"
)

func TestWhatCannotBeReadSaysWhy(t *testing.T) {
	for _, c := range []struct {
		text string
		d    Dimension
		code string
	}{
		{"", Length, CodeEmpty}, {"   ", Length, CodeEmpty}, {"\u200b", Length, CodeEmpty},
		{strings.Repeat("1", 65), Number, CodeLong},
		{"nan", Length, CodeNumber}, {"NaN mm", Length, CodeNumber}, {"inf", Length, CodeNumber}, {"-Infinity m", Length, CodeNumber},
		{"0x10 mm", Length, CodeUnit}, {"mm", Length, CodeNumber}, {"about 5 mm", Length, CodeNumber}, {"--5 mm", Length, CodeNumber}, {"$5", Money, CodeNumber},
		{"1e999", Number, CodeRange}, {"1e999 m", Length, CodeRange}, {"1e300 km", Length, CodeRange}, {"-1e300 km", Length, CodeRange}, {"1e-400 m", Length, CodeRange},
		{"1/0 in", Length, CodeNumber}, {"1 9/8 in", Length, CodeNumber}, {"1:0", Number, CodeNumber}, {"0/0", Number, CodeNumber},
		{"1,200 mm", Length, CodeAmbiguous}, {"12,500", Number, CodeAmbiguous}, {"-1,200 mm", Length, CodeAmbiguous}, {"1 ft 1,200 in", Length, CodeAmbiguous},
		{"1,20.5 mm", Length, CodeNumber}, {"1.2.3 m", Length, CodeNumber}, {"12.34,567.8 m", Length, CodeNumber}, {"1,2,3 m", Length, CodeNumber}, {"0,500,000 mm", Length, CodeNumber},
		{"12", Length, CodeNoUnit}, {"3/8", Length, CodeNoUnit}, {"20", Temperature, CodeNoUnit},
		{"3 × 4", Number, CodeUnit}, {"2 × 500 mm", Length, CodeUnit}, {"2*500 mm", Length, CodeUnit}, {"1·500 mm", Length, CodeUnit}, {"5 furlong", Length, CodeUnit}, {"20°", Temperature, CodeUnit}, {"5 mm wide", Length, CodeUnit}, {"2 ton", Mass, CodeUnit},
		{"5 lb", Length, CodeDimension}, {"5 L", Mass, CodeDimension}, {"5 m", Area, CodeDimension}, {"3 %", Money, CodeDimension},
		{"40 lb/ft²", Pressure, CodeDimension}, {"5 °C/h", Temperature, CodeDimension}, {"5 mm", Number, CodeDimension}, {"5 °C", Mass, CodeDimension},
		{"7 in 5 ft", Length, CodeParts}, {"5 ft 14 in", Length, CodeParts}, {"5 ft 5 ft", Length, CodeParts}, {"3 m 20", Length, CodeParts}, {"5 7 in", Length, CodeParts},
		{"68 °F 5 °F", Temperature, CodeParts}, {"10-12 mm", Length, CodeParts}, {"1'200", Length, CodeParts}, {"1'200 mm", Length, CodeParts}, {"5 lb 200 g", Mass, CodeParts},
		{"-300 °C", Temperature, CodeRange}, {"-1 K", Temperature, CodeRange},
		{"1:30", Length, CodeNumber}, {"1:75", Time, CodeNumber}, {"1:3:", Time, CodeNumber}, {"1:2:3", Number, CodeNumber}, {"1:30 min", Time, CodeNumber}, {":", Number, CodeNumber},
		{"5 ft2 in", Length, CodeDimension}, {"5 kg/0 m", Mass.Over(Length), CodeUnit}, {"5 km^99", Length.Power(99), CodeRange}, {"5 km^999", Length, CodeUnit}, {"5 km^99 km^99", Length, CodeUnit},
		{"5 /", Number, CodeUnit}, {"5 (", Length, CodeUnit}, {"5 mm)", Length, CodeUnit}, {"\xff\xfe", Length, CodeNumber}, {"5 \xff", Length, CodeUnit},
	} {
		t.Run(c.text, func(t *testing.T) {
			si, err := Read(c.text, c.d)
			require.Error(t, err)
			var told *Error
			require.ErrorAs(t, err, &told)
			assert.Zero(t, si)
			assert.Equal(t, c.code, told.Code, told.Error())
			assert.Equal(t, c.text, told.Given)
			assert.Empty(t, told.Field)
			assert.NotEmpty(t, told.Message)
			assert.NotEmpty(t, told.Remedy)
		})
	}
}

func TestTheWordsOfAnError(t *testing.T) {
	for _, c := range []struct {
		text  string
		d     Dimension
		words string
	}{
		{"12", Length, "“12” has no unit; what is wanted is length. Write “12 mm” or “12 in”."},
		{"300", Coverage, "“300” has no unit; what is wanted is coverage. Write “300 m²/L” or “300 sq ft/gal”."},
		{"14", Number.Over(Area), "“14” has no unit; what is wanted is number per area. Write “14 per m²”."},
		{"1,200 mm", Length, "“1,200 mm” can mean 1.200 or 1200. Write “1200 mm” or “1.200 mm”."},
		{"5 lb", Length, "“lb” is a unit of mass; what is wanted is length. Write it like “9.5 mm” or “3/8 in”."},
		{"5 furlong", Length, "“furlong” is not a unit known here. Write it like “9.5 mm” or “3/8 in”."},
		{"nan", Temperature, "“nan” does not give a number where one belongs. Write it like “20 °C” or “68 °F”."},
		{"1e999 m", Length, "“1e999 m” is too large to work with. Check the number and its unit."},
		{"-300 °C", Temperature, "“-300 °C” is below absolute zero. Write it like “20 °C” or “68 °F”."},
		{"10-12 mm", Length, "“10-12 mm” reads like a range; a single quantity is wanted. Write it like “9.5 mm” or “3/8 in”."},
		{"", Mass, "Nothing was given. Write it like “25 kg” or “50 lb”."},
	} {
		_, err := Read(c.text, c.d)
		assert.EqualError(t, err, c.words)
	}
}

func TestAnErrorNamesItsFieldOnceTheCallerFillsItIn(t *testing.T) {
	_, err := Read("12", Length)
	var told *Error
	require.ErrorAs(t, err, &told)
	told.Field = "Width"
	assert.EqualError(t, told, "Width: “12” has no unit; what is wanted is length. Write “12 mm” or “12 in”.")
}

func TestAnUnknownColumnUnitIsAnError(t *testing.T) {
	_, err := ReadIn("12", Length, "furlong")
	assert.ErrorContains(t, err, "furlong")
	_, err = ReadIn("12", Length, "kg")
	assert.ErrorContains(t, err, "unit of mass")
}
