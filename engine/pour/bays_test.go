package pour

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// hurried is a demand whose wet edge is short for a wide front.
func hurried(wetEdge float64) Demand {
	pace := usual
	pace.WetEdge = wetEdge
	return Demand{Mix: bag, Bucket: Bucket{37e-3, 0.25}, Step: LitreMark, Strip: 0.5, Most: Crew{3, 1, 4, 0}, Pace: pace}
}

func TestAFloorThatOnePourCanDoIsOneBay(t *testing.T) {
	room := testRooms[2]
	bays, err := Bays(Room{room.outline, room.exits, cellsOf(t, room.outline)}, hurried(600))
	require.NoError(t, err)
	require.Len(t, bays, 1)
	assert.Empty(t, bays[0].Dams)
}

func TestBaysAreDammedWhereTheCrewCannotKeepTheEdge(t *testing.T) {
	outlines := map[string]floor.Outline{
		"wide hall":               {Outer: box(0, 0, 12, 8)},
		"wide hall with a column": {Outer: box(0, 0, 12, 8), Holes: []floor.Ring{box(5.8, 3, 0.6, 0.6)}},
		"two rooms through a gap": {Outer: corners(0, 0, 6, 0, 6, 2, 7, 2, 7, 0, 13, 0, 13, 7, 7, 7, 7, 3.2, 6, 3.2, 6, 7, 0, 7)},
	}
	for name, outline := range outlines {
		t.Run(name, func(t *testing.T) {
			room := Room{outline, []floor.Point{{X: 0, Y: 3}}, cellsOf(t, outline)}
			bays, err := Bays(room, hurried(620))
			require.NoError(t, err)
			require.Greater(t, len(bays), 1)
			area, volume := 0.0, 0.0
			for _, b := range bays {
				area += b.Area
				volume += b.Volume
				assert.True(t, b.Timeline.Kept)
				assert.LessOrEqual(t, b.Timeline.LongestWait, 620.0)
				assert.InEpsilon(t, outlineArea(b.Room.Outline), b.Area, 1e-6)
				assert.GreaterOrEqual(t, b.Station, usual.Station)
				for _, dam := range b.Dams {
					assert.LessOrEqual(t, dam.Length, 8.0)
				}
				wellFormed(t, b.Timeline, usual)
			}
			assert.InEpsilon(t, outlineArea(outline), area, 1e-9)
			assert.InEpsilon(t, roomVolume(t, room.Cells), volume, 1e-9)
			assert.Equal(t, room.Exits, bays[len(bays)-1].Room.Exits, "the bay at the door comes last")
		})
	}
}

func TestTheDamStandsInTheGapBetweenTwoRooms(t *testing.T) {
	dumbbell := floor.Outline{Outer: corners(0, 0, 6, 0, 6, 2, 7, 2, 7, 0, 13, 0, 13, 7, 7, 7, 7, 3.2, 6, 3.2, 6, 7, 0, 7)}
	line, found := shortestDam(dumbbell)
	require.True(t, found)
	assert.InDelta(t, 1.2, line.length, 1e-9)
}

func TestADamLeavesOutTheKeepOutItMeets(t *testing.T) {
	hall := floor.Outline{Outer: box(0, 0, 12, 4), Holes: []floor.Ring{box(5.5, 1, 1, 2)}}
	line, found := shortestDam(hall)
	require.True(t, found)
	assert.InDelta(t, 2, line.length, 1e-9)
	assert.Len(t, line.dams, 2)
	a, b := cutRoom(Room{hall, []floor.Point{{X: 0, Y: 2}}, cellsOf(t, hall)}, line)
	assert.InDelta(t, outlineArea(hall), outlineArea(a.Outline)+outlineArea(b.Outline), 1e-9)
}

func TestWhereNothingHelpsThatIsSaid(t *testing.T) {
	hall := floor.Outline{Outer: box(0, 0, 12, 8)}
	_, err := Bays(Room{hall, []floor.Point{{X: 0, Y: 3}}, cellsOf(t, hall)}, hurried(20))
	assert.ErrorContains(t, err, "take more hands, mixers or buckets, or a product with longer times")
}
