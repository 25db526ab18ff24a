package engine

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func TestEverySpotOfTheDemoSaysWhatItsReadingSays(t *testing.T) {
	job, book := DemoJob("demo"), ShippedRulebook()
	ground := GroundOf(job, book)
	room := MakePlan(job, book).Rooms[0]
	seen := 0
	for _, reading := range room.Readings {
		spot := ground.Spot(room.ID, reading.At)
		if !spot.Poured {
			continue
		}
		seen++
		assert.Equal(t, reading.Depth, spot.Depth.Text)
		assert.InDelta(t, spot.Depth.SI, math.Abs(spot.Deck.SI-spot.Plane.SI), 1e-9)
	}
	assert.Greater(t, seen, 10)
}

func TestASpotBesideTheFloorSaysNothing(t *testing.T) {
	ground := GroundOf(DemoJob("demo"), ShippedRulebook())
	for _, at := range []floor.Point{{X: -1, Y: -1}, {X: math.NaN(), Y: 0}, {X: math.Inf(1), Y: 0}} {
		assert.False(t, ground.Spot("room-1", at).Poured)
	}
	assert.False(t, ground.Spot("no such room", floor.Point{X: 1, Y: 1}).Poured)
}

func TestASectionThroughThinnestAndDeepestMeetsBoth(t *testing.T) {
	job, book := DemoJob("demo"), ShippedRulebook()
	room := MakePlan(job, book).Rooms[0]
	depths := room.Pour.Depths
	section := GroundOf(job, book).Section(room.ID, depths.LeastAt, depths.GreatestAt)
	require.NotNil(t, section.Least)
	assert.InDelta(t, depths.Least.SI, section.Least.Depth.SI, 1e-6)
	assert.InDelta(t, depths.Greatest.SI, section.Greatest.Depth.SI, 1e-6)
	require.NotEmpty(t, section.Lifts)
	for _, stretch := range section.Decks {
		for _, p := range stretch {
			assert.GreaterOrEqual(t, p.Y, -1e-12)
			assert.LessOrEqual(t, p.Y, section.High)
		}
	}
	assert.LessOrEqual(t, len(section.Stations), sectionSteps+1)
}

func TestASectionOfNothingIsEmpty(t *testing.T) {
	ground := GroundOf(DemoJob("demo"), ShippedRulebook())
	spot := floor.Point{X: 1, Y: 1}
	for _, section := range []SectionPlan{
		ground.Section("room-1", spot, spot), ground.Section("no such room", spot, floor.Point{}), ground.Section("room-1", spot, floor.Point{X: math.NaN()}),
		GroundOf(NewJob("j", "metric"), ShippedRulebook()).Section("room-1", spot, floor.Point{}),
	} {
		assert.Nil(t, section.Least)
		assert.Empty(t, section.Decks)
	}
}
