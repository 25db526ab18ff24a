// Dust: what a task asks of those who do it.
package people_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/people"
)

func TestARespiratorGoesByTheHoursOfTheShiftAndByThePlace(t *testing.T) {
	task, known := DustTaskNamed("grinder-shroud")
	require.True(t, known)
	for _, row := range []struct {
		hours   float64
		indoors bool
		factor  int
	}{{4, true, 0}, {4.01, true, 10}, {8, false, 0}, {0, true, 0}} {
		factor, err := task.Factor(row.hours*3600, row.indoors)
		require.NoError(t, err)
		assert.Equal(t, row.factor, factor, "%+v", row)
	}
	for _, hours := range []float64{-1, 25, math.NaN()} {
		_, err := task.Factor(hours*3600, true)
		assert.ErrorContains(t, err, "A shift has up to 24 hours.")
	}
}

func TestEveryDustTaskNamesItsControlAndSource(t *testing.T) {
	seen := map[string]bool{}
	for _, task := range DustTasks {
		assert.NotEmpty(t, task.Control)
		assert.Contains(t, task.Source, "29 CFR 1926.1153 Table 1")
		assert.False(t, seen[task.ID], task.ID)
		seen[task.ID] = true
		assert.LessOrEqual(t, task.Outdoors.Short, task.Outdoors.Long)
		assert.LessOrEqual(t, task.Indoors.Short, task.Indoors.Long)
		assert.LessOrEqual(t, task.Outdoors.Long, task.Indoors.Long, "indoors is never the easier place")
	}
	_, known := DustTaskNamed("sweeping")
	assert.False(t, known)
}

func TestNoCollectorForAWheelThatCannotBe(t *testing.T) {
	for _, wheel := range []float64{0, -1, 5, math.NaN()} {
		_, err := Airflow(wheel)
		assert.ErrorContains(t, err, "A wheel is between 20 mm and 1 m across.")
	}
}
