package floor

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestANewFloorBelowItsNeighbourHasAStepToo(t *testing.T) {
	down := StepAt(0, 0.010)
	assert.InDelta(t, -0.010, down.Height, 1e-12)
	assert.Equal(t, StepBevel, down.Class)
	assert.Positive(t, down.Run)
}

func TestADoorLeafKeepsItsClearanceOrIsTrimmed(t *testing.T) {
	clear := LeafOver(0.040, 0.025, 0.010)
	assert.InDelta(t, 0.015, clear.Clearance, 1e-12)
	assert.Zero(t, clear.Trim)
	fouls := LeafOver(0.020, 0.025, 0.010)
	assert.InDelta(t, -0.005, fouls.Clearance, 1e-12)
	assert.InDelta(t, 0.015, fouls.Trim, 1e-12)
}

func TestAFlangeIsExtendedByWhatTheFloorRisesOverIt(t *testing.T) {
	assert.InDelta(t, 0.012, Extension(0.030, 0.018), 1e-12)
	assert.InDelta(t, -0.006, Extension(0.012, 0.018), 1e-12, "it stands proud")
}

func TestAStairThatCannotBeIsRefused(t *testing.T) {
	for _, bad := range [][]float64{nil, {0}, {0.18, math.NaN()}} {
		_, err := FlightAfter(bad, 0, 0)
		assert.Error(t, err)
	}
	_, err := FlightAfter([]float64{0.18}, 0.2, 0)
	assert.ErrorContains(t, err, "Riser 1")
	_, err = FlightAfter([]float64{0.18}, math.NaN(), 0)
	assert.Error(t, err)
	one, err := FlightAfter([]float64{0.18}, 0.01, 0.02)
	require.NoError(t, err)
	assert.InDelta(t, 0.19, one.Risers[0], 1e-12, "one riser meets both floors")
}
