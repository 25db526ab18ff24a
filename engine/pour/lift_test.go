package pour

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// slope is a floor of 4 m by 3 m whose pour is 10 mm deep at one end and 70 mm at the other.
func slope() []Cell {
	return []Cell{{Corners: box(0, 0, 4, 3), Depths: []float64{0.010, 0.070, 0.070, 0.010}}}
}

func TestLiftsTogetherAreThePour(t *testing.T) {
	lower := floor.Lift{Below: 0.030, From: 0.033}
	top := floor.Lift{Below: 0, Whole: true}
	bottom, over := CellsOfLift(slope(), lower, nil), CellsOfLift(slope(), top, &lower)
	below, above := Room{Cells: bottom}.Volume(), Room{Cells: over}.Volume()
	assert.InDelta(t, 4*3*0.040, below+above, 1e-12)
	// By hand: from 33 mm on the lower lift is depth less 30 mm, 3 mm to 40 mm over the last 37/60 of 4 m.
	assert.InDelta(t, 3*4*(37.0/60)*(0.003+0.040)/2, below, 1e-12)
	for _, c := range over {
		for _, depth := range c.Depths {
			assert.LessOrEqual(t, depth, 0.033+1e-9, "over the lower lift 30 mm, and beside its dam 33")
		}
	}
}

// The clock's properties hold for every lift: nothing used twice at once, no batch before its mixing ends, more hands never slower.
func TestTheClockHoldsOverEveryLift(t *testing.T) {
	outline := floor.Outline{Outer: box(0, 0, 4, 3)}
	lower := floor.Lift{Below: 0.030, From: 0.033}
	top := floor.Lift{Below: 0, Whole: true}
	for name, cells := range map[string][]Cell{"lower": CellsOfLift(slope(), lower, nil), "last": CellsOfLift(slope(), top, &lower)} {
		t.Run(name, func(t *testing.T) {
			room := Room{Outline: outline, Exits: []floor.Point{{X: 0, Y: 1.5}}, Cells: cells}
			batches, err := Batches(room.Volume(), bag, Bucket{37e-3, 0.25}, LitreMark)
			require.NoError(t, err)
			sequence, err := Order(room, Volumes(batches), 0.25)
			require.NoError(t, err)
			for i, patch := range sequence.Patches {
				assert.InEpsilon(t, batches[i].Volume, patch.Volume, 1e-6)
			}
			loads, err := Loads(batches, sequence)
			require.NoError(t, err)
			before := 0.0
			for people := 1; people <= 3; people++ {
				timeline, err := Clock(loads, Crew{people, 1, 3, 0}, usual)
				require.NoError(t, err)
				wellFormed(t, timeline, usual)
				if people > 1 {
					assert.LessOrEqual(t, timeline.Finish, before+1e-6)
				}
				before = timeline.Finish
			}
		})
	}
}
