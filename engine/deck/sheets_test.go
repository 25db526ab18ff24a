package deck

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func room(length, width float64) floor.Outline {
	return floor.Outline{Outer: floor.Rectangle(length, width)}
}

var metricSheets = Sheets{Length: 2.4, Width: 1.2, Edge: 0.15, Field: 0.3, Apart: 0.4}

func TestOneSheetHasNoJoint(t *testing.T) {
	l, err := metricSheets.LayOut(room(2.4, 1.2))
	require.NoError(t, err)
	// Edges: 17 + 9 + 17 + 9. Between: joists at 0.4, 0.8, 1.2, 1.6, 2.0, each with 0.3, 0.6, 0.9.
	assert.Equal(t, Layout{Joints: 0, Pieces: 1, Fasteners: 52 + 15}, l)
}

func TestTheJointsOfARoomAreThoseOfASketch(t *testing.T) {
	// 4.8 m by 2.4 m: two rows; the first of 2 sheets, the second of a half, a whole and a half.
	l, err := metricSheets.LayOut(room(4.8, 2.4))
	require.NoError(t, err)
	assert.InDelta(t, 4.8+1.2+2*1.2, l.Joints, 1e-5, "one joint along the room, one across the first row, two across the second")
	assert.Equal(t, 5, l.Pieces)
}

func TestJointsStopAtKeepOutsAndNooks(t *testing.T) {
	plain, err := metricSheets.LayOut(room(4.8, 2.4))
	require.NoError(t, err)
	island := room(4.8, 2.4)
	island.Holes = []floor.Ring{{{X: 0.2, Y: 1}, {X: 1, Y: 1}, {X: 1, Y: 1.4}, {X: 0.2, Y: 1.4}}}
	l, err := metricSheets.LayOut(island)
	require.NoError(t, err)
	assert.InDelta(t, plain.Joints-0.8, l.Joints, 1e-5)

	nook := floor.Outline{Outer: floor.Ring{{X: 0, Y: 0}, {X: 4.8, Y: 0}, {X: 4.8, Y: 1.2}, {X: 2.4, Y: 1.2}, {X: 2.4, Y: 2.4}, {X: 0, Y: 2.4}}}
	l, err = metricSheets.LayOut(nook)
	require.NoError(t, err)
	assert.InDelta(t, 2.4+1.2+1.2, l.Joints, 1e-5, "where the upper row ends at a wall there is no joint")
}

func TestASheetOnASheetIsFastenedAllOverItsField(t *testing.T) {
	overlay := metricSheets
	overlay.Apart, overlay.Field = 0, 0.2
	l, err := overlay.LayOut(room(2.4, 1.2))
	require.NoError(t, err)
	assert.Equal(t, 52+11*5, l.Fasteners)
}

func TestSheetsThatCannotBeCountedAreRefused(t *testing.T) {
	for _, spoil := range []func(*Sheets){
		func(s *Sheets) { s.Length = 0 }, func(s *Sheets) { s.Width = math.NaN() }, func(s *Sheets) { s.Edge = -1 },
		func(s *Sheets) { s.Field = 1e-9 }, func(s *Sheets) { s.Apart = -1 }, func(s *Sheets) { s.Length = math.Inf(1) },
	} {
		bad := metricSheets
		spoil(&bad)
		_, err := bad.LayOut(room(4, 3))
		assert.Error(t, err, "%+v", bad)
	}
	_, err := metricSheets.LayOut(room(900, 900))
	assert.ErrorContains(t, err, "more sheets or fasteners than can be counted")
	_, err = metricSheets.LayOut(floor.Outline{})
	assert.Error(t, err)
}

func TestFillingJointsTakesTwoPartsOfPowderToOneOfWater(t *testing.T) {
	volume, err := JointVolume(8.4, 0.003, 0.018, 0.1)
	require.NoError(t, err)
	assert.InDelta(t, 8.4*0.003*0.018*1.1, volume, 1e-12)
	mix, err := UsualFiller.MixFor(volume)
	require.NoError(t, err)
	assert.InDelta(t, 2, mix.Powder/mix.Water, 1e-12)
	assert.InDelta(t, volume, mix.Water+mix.Mass/UsualFiller.Grain, 1e-12, "water and grains fill it")
	assert.InDelta(t, mix.Mass+1000*mix.Water, mix.Weight(), 1e-12)
}

func TestMixesThatCannotBeAreRefused(t *testing.T) {
	for _, f := range []Filler{{}, {Powder: 2}, {Powder: 2, Water: math.NaN(), Loose: 1500, Grain: 3150}, {Powder: 2, Water: 1, Loose: 3500, Grain: 3150}, {Powder: 1e9, Water: 1, Loose: 1500, Grain: 3150}} {
		_, err := f.MixFor(0.001)
		assert.Error(t, err, "%+v", f)
	}
	_, err := UsualFiller.MixFor(math.NaN())
	assert.Error(t, err)
	_, err = JointVolume(10, 0.003, math.Inf(1), 0)
	assert.Error(t, err)
}

// In a rectangle the joints can be told without laying anything: rows − 1 along it, and in each row one less than its sheets across it.
func TestTheJointsOfAnyRectangleAreThoseOfTheSum(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for i := 0; i < 300; i++ {
		wide, deep := 0.5+9*r.Float64(), 0.5+9*r.Float64()
		l, err := metricSheets.LayOut(room(wide, deep))
		require.NoError(t, err)
		rows := int(math.Ceil(deep / 1.2))
		joints, pieces := float64(rows-1)*wide, 0
		for row := 0; row < rows; row++ {
			sheets := int(math.Ceil(wide / 2.4))
			if row%2 == 1 {
				sheets = 1 + int(math.Ceil(math.Max(0, wide-1.2)/2.4))
			}
			pieces += sheets
			joints += float64(sheets-1) * math.Min(1.2, deep-1.2*float64(row))
		}
		assert.InDelta(t, joints, l.Joints, 1e-9, "%v × %v", wide, deep)
		assert.Equal(t, pieces, l.Pieces, "%v × %v", wide, deep)
	}
}

func TestARoundHallWithTooFineSheetsIsRefusedRatherThanCountedForever(t *testing.T) {
	var hall floor.Outline
	for i := 0; i < 300; i++ {
		sin, cos := math.Sincos(float64(i) * math.Pi / 150)
		hall.Outer = append(hall.Outer, floor.Point{X: 40 * cos, Y: 40 * sin})
	}
	fine := Sheets{Length: 1, Width: 0.5, Edge: 0.02, Field: 0.02}
	_, err := fine.LayOut(hall)
	assert.ErrorContains(t, err, "more sheets or fasteners than can be counted")
	l, err := metricSheets.LayOut(hall)
	require.NoError(t, err)
	assert.Greater(t, float64(l.Pieces), math.Pi*40*40/2.88)
	spots, err := TestSpots(hall, 1000)
	require.NoError(t, err)
	assert.Len(t, spots, 1000)
}
