package pour

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func TestAFloorThatCannotBeOrderedIsRefusedInWords(t *testing.T) {
	square := floor.Outline{Outer: box(0, 0, 4, 4)}
	door := []floor.Point{{X: 2, Y: 0}}
	flat := func(depth float64, ring floor.Ring) []Cell {
		return []Cell{{Corners: ring, Depths: []float64{depth, depth, depth, depth}}}
	}
	for words, room := range map[string]Room{
		"mark the door":                         {square, nil, flat(0.01, box(0, 0, 4, 4))},
		"nothing to pour":                       {square, door, nil},
		"raise the finish plane":                {square, door, flat(-0.01, box(0, 0, 4, 4))},
		"give three corners or more":            {square, door, []Cell{{Corners: box(0, 0, 4, 4)}}},
		"no way leads from it to the floor":     {square, door, flat(0.01, box(8, 0, 4, 4))},
		"lies off the floor":                    {square, []floor.Point{{X: 20, Y: 0}}, flat(0.01, box(0, 0, 4, 4))},
		"make batches of the floor's volume":    {square, door, flat(0.02, box(0, 0, 4, 4))},
		"no way leads":                          {floor.Outline{Outer: box(0, 0, 4, 4), Holes: []floor.Ring{box(0, 2, 4, 0.1)}}, door, append(flat(0.01, box(0, 0, 4, 2)), flat(0.01, box(0, 2.1, 4, 2))...)},
		"raise the finish plane until the pour": {square, door, flat(math.NaN(), box(0, 0, 4, 4))},
	} {
		_, err := Order(room, []float64{0.08, 0.08}, 0.5)
		assert.ErrorContains(t, err, words)
	}
	_, err := Order(Room{square, door, flat(0.01, box(0, 0, 4, 4))}, []float64{0.08, -0.08}, 0)
	assert.ErrorContains(t, err, "batch 2")
	_, err = Order(Room{square, door, flat(0.01, box(0, 0, 4, 4))}, []float64{0.16}, math.NaN())
	assert.ErrorContains(t, err, "strip")
}

func TestOneBatchTakesTheWholeFloor(t *testing.T) {
	outline := floor.Outline{Outer: box(0, 0, 1.5, 1), Holes: []floor.Ring{box(0.5, 0.4, 0.2, 0.2)}}
	cells := cellsOf(t, outline)
	s, err := Order(Room{outline, []floor.Point{{X: 0, Y: 0.5}}, cells}, []float64{roomVolume(t, cells)}, 0.5)
	require.NoError(t, err)
	require.Len(t, s.Patches, 1)
	assert.InDelta(t, 1.46, s.Patches[0].Area, 1e-9)
	assert.Len(t, s.Patches[0].Polygons, 2, "the wall's ring and the keep-out's")
	assert.Empty(t, s.Patches[0].Neighbours)
}

// Where the pour thins out to nothing the floor there belongs to a patch all the same.
func TestBareHighSpotsBelongToAPatch(t *testing.T) {
	outline := floor.Outline{Outer: box(0, 0, 6, 4)}
	cells := []Cell{
		{Corners: box(0, 0, 2, 4), Depths: []float64{0.01, 0, 0, 0.01}},
		{Corners: box(2, 0, 2, 4), Depths: []float64{0, 0, 0, 0}},
		{Corners: box(4, 0, 2, 4), Depths: []float64{0, 0.01, 0.01, 0}},
	}
	volumes := batchesOf(roomVolume(t, cells), 0.0275)
	s, err := Order(Room{outline, []floor.Point{{X: 6, Y: 2}}, cells}, volumes, 0)
	require.NoError(t, err)
	area := 0.0
	for _, p := range s.Patches {
		area += p.Area
	}
	assert.InDelta(t, 24, area, 1e-6)
	eachPointInOnePatch(t, outline, s)
}

func TestTheSameFloorGivesTheSameBytes(t *testing.T) {
	room := testRooms[6]
	cells := cellsOf(t, room.outline)
	volumes := batchesOf(roomVolume(t, cells), 0.0275)
	texts := []string{}
	for range 3 {
		s, err := Order(Room{room.outline, room.exits, cells}, volumes, 0.5)
		require.NoError(t, err)
		text, err := json.Marshal(s)
		require.NoError(t, err)
		texts = append(texts, string(text))
	}
	assert.Equal(t, texts[0], texts[1])
	assert.Equal(t, texts[0], texts[2])
}

// FuzzReplan taps at any times: what comes back is a refusal or a plan that holds together.
func FuzzReplan(f *testing.F) {
	f.Add(uint8(2), uint8(3), 100.0, 0.0, 50.0, 90.0, true)
	f.Add(uint8(1), uint8(1), 1000.0, 0.0, 0.0, 0.0, false)
	f.Fuzz(func(t *testing.T, people, buckets uint8, now, started, carried, poured float64, skipped bool) {
		loads := lane(6)
		actual := []Actual{{Batch: 1, Started: &started, Carried: &carried, Poured: &poured}, {Batch: 2, Started: &started, Carried: &carried},
			{Batch: 4, Started: &started, Skipped: skipped}, {Batch: 5, Skipped: skipped}}
		line, err := Replan(loads, Crew{int(people), 1, int(buckets), 0}, usual, actual, now)
		if err != nil {
			return
		}
		wellFormed(t, line, usual)
		for _, k := range line.Tasks {
			require.True(t, k.Kind == TaskRest || k.Start >= now-1e-6)
		}
	})
}
