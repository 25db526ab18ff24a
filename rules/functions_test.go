package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lowspot/engine/quantity"
)

func TestEveryUnitFunctionStandsForAUnit(t *testing.T) {
	for _, n := range append(unitNames, otherUnitNames...) {
		assert.Contains(t, unitByName, n.name)
	}
	for name, si := range map[string]float64{"mm": 0.01, "inch": 0.254, "litres": 0.01, "qt": 0.00946352946, "kg": 10, "lb": 4.5359237, "minutes": 600, "percent": 0.1,
		"celsius": 283.15, "fahrenheit": 10.0/1.8 + 273.15 - 32/1.8, "kelvin": 10, "fahrenheit_degrees": 10 / 1.8, "sqft": 0.09290304 * 10, "psi": 68947.57293168361} {
		assert.InEpsilon(t, si, unitByName[name].SI(10), 1e-12, name)
	}
	assert.Equal(t, quantity.TemperatureDifference, unitByName["kelvin"].Dimension)
	assert.Equal(t, quantity.Temperature, unitByName["celsius"].Dimension)
}

func TestTheHelpsCallsCanBeWrittenInARule(t *testing.T) {
	known := map[string]string{"a": "job.bags", "b": "crew.people", "c": "1", "step": "2", "word": "job.bags", "...": "3"}
	for _, f := range Functions() {
		assert.NotEmpty(t, f.Help)
		for _, call := range strings.Split(f.Call, " or ") {
			written := strings.NewReplacer("(a", "("+known["a"], "[a", "["+known["a"], ", b", ", "+known["b"], "> c", "> 1", "step", "2", "(word", "(job.bags", "...", "3").Replace(call)
			book, _ := Parse("figure it\n kind: truth\n value: " + written + " == " + written + "\n")
			_, errors := Compile(book, words())
			assert.Empty(t, errors, written)
		}
	}
}
