package floor

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const (
	left  = math.Pi / 2
	right = -math.Pi / 2
)

func TestARoomWalkedRoundWithSquareCornersComesOutExact(t *testing.T) {
	ring, closing, err := WalkRound([]Leg{{4, left}, {3, left}, {4, left}, {3, left}})
	require.NoError(t, err)
	assert.Equal(t, Rectangle(4, 3), ring)
	assert.Zero(t, closing.Error)

	ring, _, err = WalkRound([]Leg{{4, left}, {2, left}, {2, right}, {1, left}, {2, left}, {3, left}})
	require.NoError(t, err)
	assert.Equal(t, Ring{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 3}, {0, 3}}, ring)
}

func TestTheLastTurnIsNotNeeded(t *testing.T) {
	ring, _, err := WalkRound([]Leg{{4, left}, {3, left}, {4, left}, {3, 0}})
	require.NoError(t, err)
	assert.Equal(t, Rectangle(4, 3), ring)
}

func TestTheClosingErrorIsSharedOutByLength(t *testing.T) {
	ring, closing, err := WalkRound([]Leg{{4.01, left}, {3, left}, {4, left}, {3, left}})
	require.NoError(t, err)
	assert.InDelta(t, 0.01, closing.Error, 1e-12)
	assert.InDelta(t, 14.01, closing.Perimeter, 1e-12)
	assert.InDelta(t, 1401, closing.OneIn, 1e-6)
	assert.InDelta(t, 4.01-0.01*4.01/14.01, ring[1].X, 1e-12)
	assert.InDelta(t, ring[1].X-0.01*3/14.01, ring[2].X, 1e-12, "a wall square to the gap takes its share as well")
	assert.InDelta(t, 0, ring[3].X-0.01*3/14.01, 1e-12, "the last wall ends at the start")
}

func TestASplayedBayCloses(t *testing.T) {
	const eighth = math.Pi / 4
	ring, closing, err := WalkRound([]Leg{{3, left}, {2, eighth}, {math.Sqrt2, eighth}, {1, eighth}, {math.Sqrt2, eighth}, {2, left}})
	require.NoError(t, err)
	assert.Less(t, closing.Error, 1e-9)
	assert.InDelta(t, 3*2+1*(3+1)/2.0, ring.Area(), 1e-9)
}

func TestAnOpenWalkNamesTheWallsToCheck(t *testing.T) {
	_, closing, err := WalkRound([]Leg{{4, left}, {3, left}, {3, left}, {3, left}})
	var bad *Error
	require.True(t, errors.As(err, &bad))
	assert.Equal(t, "does-not-close", bad.Code)
	assert.Equal(t, "The walk ends 1.000 m from where it began, 1 in 13 of its length.", bad.Message)
	assert.Equal(t, "Check the lengths of walls 1, 3, and every turn.", bad.Remedy)
	assert.InDelta(t, 1, bad.At.X, 1e-12)
	assert.InDelta(t, 1, closing.Error, 1e-12, "the closing is told with the error, to be shown")
}

func TestWallsThatCantBeWalkedAreRefused(t *testing.T) {
	for name, legs := range map[string][]Leg{
		"two walls":       {{4, left}, {4, left}},
		"nothing long":    {{4, left}, {0, left}, {4, left}},
		"backwards":       {{4, left}, {-3, left}, {4, left}},
		"not a number":    {{4, left}, {math.NaN(), left}, {4, left}},
		"turn not known":  {{4, math.Inf(1)}, {3, left}, {4, left}},
		"round and round": {{4, 1e19}, {3, left}, {4, left}, {3, left}},
		"out of town":     {{4e5, left}, {3, left}, {4e5, left}, {3, left}},
	} {
		ring, _, err := WalkRound(legs)
		var bad *Error
		require.True(t, errors.As(err, &bad), name)
		assert.NotEmpty(t, bad.Remedy, name)
		assert.Nil(t, ring, name)
	}
}

func FuzzWalk(f *testing.F) {
	f.Add(4.0, left, 3.0, left, 4.0, left, 3.0)
	f.Add(4.0, right, 3.0, right, 4.0, right, 3.02)
	f.Add(1.0, 2*math.Pi/3, 1.0, 2*math.Pi/3, 1.0, 0.0, 1e-3)
	f.Add(1e-300, 1e300, 3.0, -1e-9, 4.0, 0.1, 3.0)
	f.Fuzz(func(t *testing.T, a, turnA, b, turnB, c, turnC, d float64) {
		ring, closing, err := WalkRound([]Leg{{a, turnA}, {b, turnB}, {c, turnC}, {d, 0}})
		if err != nil {
			return
		}
		assert.LessOrEqual(t, closing.Error, ClosingLimit*closing.Perimeter)
		assert.LessOrEqual(t, math.Abs(ring.Perimeter()-closing.Perimeter), 2*closing.Error+1e-9*closing.Perimeter, "sharing the gap out moves no more than the gap")
	})
}
