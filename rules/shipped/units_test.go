package shipped_test

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// The other system's unit for each that the shipped rules are written in.
var otherUnit = map[string]string{
	"mm": "in", "cm": "in", "m": "ft", "in": "mm", "ft": "m", "m²": "sq ft", "sq ft": "m²", "L": "gal", "gal": "L", "qt": "L", "mL": "fl oz",
	"kg": "lb", "lb": "kg", "°C": "°F", "°F": "°C", "m/s": "mph", "mph": "m/s", "kg/m²": "lb/ft²", "lb/ft²": "kg/m²", "kg/m³": "lb/ft³",
	"kPa": "psi", "MPa": "psi", "psi": "kPa", "h": "min", "min": "h", "d": "h", "mil": "mm",
}

// Whether a rule says mm(10) or the same in inches, nothing that comes of it may change.
func TestAShippedRuleWrittenInTheOtherUnitsComesToTheSame(t *testing.T) {
	book, _ := book(t)
	rewritten := 0
	for i := range book.Rules {
		r := &book.Rules[i]
		literals := r.Literals()
		for n := len(literals) - 1; n >= 0; n-- { // from the back, so that the places in front stay
			l := literals[n]
			other, has := otherUnit[l.Unit]
			if !has {
				continue
			}
			unit, known := quantity.UnitNamed(l.Unit)
			require.True(t, known, l.Unit)
			si, err := quantity.ReadIn(l.Shown, unit.Dimension, l.Unit)
			require.NoError(t, err, "%s: %s", r.Name, l.Shown)
			in, known := quantity.UnitNamed(other)
			require.True(t, known, other)
			number := in.From(si)
			if unit.Dimension == quantity.Temperature && !strings.HasPrefix(l.Text, "celsius(") && !strings.HasPrefix(l.Text, "fahrenheit(") {
				number = in.From(si) - in.From(unit.SI(0)) // a difference, not a point on the scale
			}
			text, failed := r.Rewrite(l.Field, l.From, strconv.FormatFloat(number, 'f', -1, 64)+" "+other)
			require.Nil(t, failed, "%s: %s", r.Name, l.Shown)
			switch l.Field {
			case "value":
				r.Value = text
			case "applies":
				r.Applies = text
			case "holds":
				r.Holds = text
			}
			rewritten++
		}
	}
	assert.Greater(t, rewritten, 150)
	var vocabulary rules.Vocabulary
	for _, w := range engine.Vocabulary() {
		vocabulary = append(vocabulary, w.Word)
	}
	compiled, errors := rules.Compile(book, vocabulary)
	require.Empty(t, errors)
	for _, e := range compiled.Examples() {
		assert.True(t, e.Passed, "%s: %s gives %s", e.Rule, e.Text, e.Got)
	}
}
