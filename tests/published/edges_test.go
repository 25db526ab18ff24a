// What codes print about the edges of a floor: changes in level at a door, and the risers of a stair that meets it.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// ADA/ABA §303.2, §303.3 and its Advisory; 1991 ADA Standards §4.5.2. The bevel's run follows from 1:2; the ramp's 1:12 (§405.2) is as recalled,
// document not at hand.
func TestChangesInLevelAtADoor(t *testing.T) {
	for _, at := range []struct {
		rise, run, leastRun float64 // inches
		class               floor.StepClass
	}{
		{0, 0, 0, floor.StepFlush},
		{1.0 / 4, 0, 0, floor.StepFlush},
		{5.0 / 16, 0.625, 0.125, floor.StepBevel},
		{1.0 / 2, 1.0, 0.5, floor.StepBevel},
		{9.0 / 16, 6.75, 6.75, floor.StepRamp},
		{1, 12, 12, floor.StepRamp},
	} {
		step := floor.StepAt(0.1+at.rise*inches, 0.1)
		assert.Equal(t, at.class, step.Class, "%v in", at.rise)
		assert.InDelta(t, at.run*inches, step.Run, 1e-9, "%v in", at.rise)
		assert.InDelta(t, at.leastRun*inches, step.LeastRun, 1e-9, "%v in", at.rise)
	}
}

// IBC §1009.3.1 and IRC R311.7.5.1 (reproductions): risers of one flight within 3/8 in, none over 7 3/4 in; the flights recomputed.
func TestRisersOnceTheLowerFloorIsRaised(t *testing.T) {
	flight := scaled([]float64{7.5, 7.5, 7.5, 7.5}, inches)
	for _, at := range []struct {
		raised, first, variation float64
		uniform                  bool
	}{{0.5, 7.0, 0.5, false}, {0.375, 7.125, 0.375, true}} {
		after, err := floor.FlightAfter(flight, at.raised*inches, 0)
		require.NoError(t, err)
		assert.InDelta(t, at.first*inches, after.Risers[0], 1e-9)
		assert.InDelta(t, at.variation*inches, after.Variation, 1e-9)
		assert.Equal(t, at.uniform, after.Uniform, "the floor rises by %v in", at.raised)
		assert.True(t, after.Low)
	}
	head, err := floor.FlightAfter(flight, 0, 0.375*inches)
	require.NoError(t, err)
	assert.True(t, head.Uniform)
	assert.False(t, head.Low, "7 7/8 in is over 7 3/4 in")
}
