package pour

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func at(seconds float64) *float64 { return &seconds }

// happenedBy plays a timeline up to a moment, everything late by some seconds.
func happenedBy(line Timeline, now, late float64) []Actual {
	taps := map[int]*Actual{}
	for _, k := range line.Tasks {
		a := taps[k.Batch]
		if a == nil {
			a = &Actual{Batch: k.Batch}
			taps[k.Batch] = a
		}
		switch {
		case k.Kind == TaskWater && k.Start+late <= now:
			a.Started = at(k.Start + late)
		case k.Kind == TaskCarry && k.Start+late <= now:
			a.Carried = at(k.Start + late)
		case k.Kind == TaskPour && k.End+late <= now:
			a.Poured = at(k.End + late)
		case k.Kind == TaskReturn && k.End+late <= now:
			a.Done = at(k.End + late)
		}
	}
	actual := []Actual{}
	for b := 1; b <= len(taps); b++ {
		actual = append(actual, *taps[b])
	}
	return actual
}

func TestAPourThatRunsToPlanIsReplannedAsItWas(t *testing.T) {
	loads, crew := lane(10), Crew{2, 1, 3, 0}
	planned, err := Clock(loads, crew, usual)
	require.NoError(t, err)
	for _, now := range []float64{0, 100, 300, 700, 1500, planned.Finish - 1} {
		line, err := Replan(loads, crew, usual, happenedBy(planned, now, 0), now)
		require.NoError(t, err)
		wellFormed(t, line, usual)
		assert.InDelta(t, planned.Finish, line.Finish, 31, "at %v s", now)
		for _, k := range line.Tasks {
			if k.Kind != TaskRest {
				assert.GreaterOrEqual(t, k.Start, now-1e-6, "batch %d %s is still to do", k.Batch, k.Kind)
			}
		}
	}
}

func TestALateBatchMovesTheRest(t *testing.T) {
	loads, crew := lane(10), Crew{2, 1, 3, 0}
	planned, err := Clock(loads, crew, usual)
	require.NoError(t, err)
	line, err := Replan(loads, crew, usual, happenedBy(planned, 1000, 200), 1000)
	require.NoError(t, err)
	wellFormed(t, line, usual)
	assert.Greater(t, line.Finish, planned.Finish+100)
	assert.Less(t, line.Finish, planned.Finish+300)
}

func TestASkippedBatchIsLeftOut(t *testing.T) {
	loads, crew := lane(6), Crew{2, 1, 3, 0}
	line, err := Replan(loads, crew, usual, []Actual{{Batch: 3, Skipped: true}}, 0)
	require.NoError(t, err)
	for _, k := range line.Tasks {
		assert.NotEqual(t, 3, k.Batch)
	}
	for _, w := range line.Waits {
		assert.True(t, w.From != 3 && w.To != 3)
	}
}

func TestWhenAllIsDownNothingIsLeft(t *testing.T) {
	loads, crew := lane(3), Crew{2, 1, 3, 0}
	planned, err := Clock(loads, crew, usual)
	require.NoError(t, err)
	line, err := Replan(loads, crew, usual, happenedBy(planned, 1e5, 0), 1e5)
	require.NoError(t, err)
	assert.Empty(t, line.Tasks)
	assert.InDelta(t, planned.LongestWait, line.LongestWait, 1e-6)
	assert.True(t, line.Kept)
}

func TestTapsOutOfOrderAreRefused(t *testing.T) {
	_, err := Replan(lane(3), Crew{2, 1, 3, 0}, usual, []Actual{{Batch: 2, Started: at(50), Poured: at(20)}}, 100)
	assert.EqualError(t, err, "batch 2: tapped at 20 s; started, carried, poured and done come in that order and not after now, 100 s")
	_, err = Replan(lane(3), Crew{2, 1, 3, 0}, usual, []Actual{{Batch: 4}}, 100)
	assert.ErrorContains(t, err, "batches 1 to 3")
	_, err = Replan(lane(3), Crew{0, 1, 3, 0}, usual, nil, 100)
	assert.ErrorContains(t, err, "people: 0; give 1 to 8")
}

// A crew that has more in hand than it is said to have is taken as it is.
func TestBucketsInUseCountWhateverTheCrewSays(t *testing.T) {
	started := []Actual{}
	for b := 1; b <= 4; b++ {
		started = append(started, Actual{Batch: b, Started: at(0)})
	}
	line, err := Replan(lane(8), Crew{1, 1, 2, 0}, usual, started, 60)
	require.NoError(t, err)
	wellFormed(t, line, usual)
	assert.Equal(t, 4, line.Crew.People)
}
