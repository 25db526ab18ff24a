package floor

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// wedge is a deck 4 m long and 3 m wide that falls evenly from one end to the other, as cells.
func wedge(high, low float64) []Cell {
	s := Surface{Points: []Point{{0, 0}, {4, 0}, {4, 3}, {0, 3}}, Heights: []float64{high, low, low, high}, Triangles: [][3]int{{0, 1, 2}, {0, 2, 3}}}
	return CellsOf(&s, RegionOf(Outline{Outer: Rectangle(4, 3)}))
}

var plainLifts = LiftLimits{Least: 0.003, Most: 0.030}

func TestAShallowFloorIsOneLift(t *testing.T) {
	lifts, err := Lifts(wedge(0, -0.020), Plane{C: 0.005}, plainLifts, plainLifts)
	require.NoError(t, err)
	require.Len(t, lifts, 1)
	assert.True(t, lifts[0].Whole)
	assert.InDelta(t, 12, lifts[0].Area, 1e-9)
	assert.InDelta(t, 12*0.015, lifts[0].Volume, 1e-12)
	assert.InDelta(t, 0.005, lifts[0].Least, 1e-12)
	assert.InDelta(t, 0.025, lifts[0].Greatest, 1e-12)
}

// 3 mm to 43 mm with 30 mm a lift: the lower lift's top is 27 mm down and it starts where the floor is 30 mm deep, 1.3 m from the low end.
func TestADeepEndIsFilledLevelFirst(t *testing.T) {
	lifts, err := Lifts(wedge(0, -0.040), Plane{C: 0.003}, plainLifts, plainLifts)
	require.NoError(t, err)
	require.Len(t, lifts, 2)
	first, last := lifts[0], lifts[1]
	assert.InDelta(t, 0.027, first.Below, 1e-12)
	assert.Zero(t, first.Top.A, "the fill ends level")
	assert.False(t, first.Whole)
	assert.InDelta(t, 1.3*3, first.Area, 1e-9)
	assert.InDelta(t, 1.3*3*(0.003+0.016)/2, first.Volume, 1e-12)
	assert.InDelta(t, 0.003, first.Least, 1e-12)
	assert.InDelta(t, 0.016, first.Greatest, 1e-12)
	require.Len(t, first.Edge, 1)
	for _, p := range first.Edge[0] {
		assert.InDelta(t, 2.7, p.X, 1e-9, "the dam stands 2.7 m from the high end")
	}
	assert.True(t, last.Whole)
	assert.InDelta(t, 0.003, last.Least, 1e-12)
	assert.InDelta(t, 0.030, last.Greatest, 1e-12)
	assert.InDelta(t, 12*0.023, first.Volume+last.Volume, 1e-12)
}

func TestADeepFloorTakesWholeLifts(t *testing.T) {
	lifts, err := Lifts(wedge(-0.070, -0.080), Plane{}, plainLifts, plainLifts)
	require.NoError(t, err)
	require.Len(t, lifts, 3)
	for _, lift := range lifts {
		assert.True(t, lift.Whole)
		assert.InDelta(t, 12, lift.Area, 1e-9)
		assert.LessOrEqual(t, lift.Greatest, 0.030+1e-12)
	}
	deep, err := Lifts(wedge(-0.070, -0.080), Plane{}, plainLifts, LiftLimits{Least: 0.015, Most: 0.075})
	require.NoError(t, err)
	assert.Len(t, deep, 2, "a lower lift with aggregate goes deeper")
}

func TestWhatCannotBeLiftedSaysWhy(t *testing.T) {
	for code, call := range map[string]func() error{
		"lift-too-thin": func() error { _, err := Lifts(wedge(0, -0.04), Plane{C: 0.001}, plainLifts, plainLifts); return err },
		"lift-no-room": func() error {
			_, err := Lifts(wedge(0, -0.04), Plane{C: 0.010}, LiftLimits{0.006, 0.010}, LiftLimits{0.006, 0.010})
			return err
		},
		"lift-limits": func() error {
			_, err := Lifts(wedge(0, -0.04), Plane{}, LiftLimits{0.01, 0.003}, plainLifts)
			return err
		},
		"lift-no-floor": func() error { _, err := Lifts(nil, Plane{}, plainLifts, plainLifts); return err },
		"lift-too-many": func() error { _, err := Lifts(wedge(0, -9), Plane{C: 0.003}, plainLifts, plainLifts); return err },
	} {
		var refused *Error
		require.ErrorAs(t, call(), &refused, code)
		assert.Equal(t, code, refused.Code)
	}
}

// On random decks every spot is filled by lifts that each keep their limits, and the volumes add up.
func TestEveryLiftKeepsItsLimitsEverywhere(t *testing.T) {
	rng := rand.New(rand.NewSource(6))
	for deck := 0; deck < 60; deck++ {
		s := meshed(4, 3, 5, 4, rng, func(p Point) float64 { return -0.06 * rng.Float64() * p.X / 4 })
		cells := CellsOf(&s, RegionOf(Outline{Outer: Rectangle(4, 3)}))
		highest, _, _ := highestOf(cells)
		plane := Plane{C: highest + 0.003 + 0.05*rng.Float64()*float64(deck%2)}
		lower := plainLifts
		if deck%3 == 0 {
			lower = LiftLimits{Least: 0.012, Most: 0.040}
		}
		lifts, err := Lifts(cells, plane, plainLifts, lower)
		require.NoError(t, err)
		total := 0.0
		for _, lift := range lifts {
			total += lift.Volume
		}
		assert.InDelta(t, DepthsOf(cells, plane).Volume, total, 1e-12)
		for spot := 0; spot < 200; spot++ {
			p := Point{4 * rng.Float64(), 3 * rng.Float64()}
			ground := heightAt(s, p)
			for i, lift := range lifts {
				limits := lower
				if i == len(lifts)-1 {
					limits = plainLifts
				}
				if !lift.Whole && plane.At(p)-heightAt(s, p) < lift.Below+lower.Least {
					continue
				}
				thickness := lift.Top.At(p) - ground
				assert.GreaterOrEqual(t, thickness, limits.Least-1e-9)
				assert.LessOrEqual(t, thickness, limits.Most+1e-9)
				assert.GreaterOrEqual(t, thickness, lift.Least-1e-9)
				assert.LessOrEqual(t, thickness, lift.Greatest+1e-9)
				ground = lift.Top.At(p)
			}
			assert.InDelta(t, plane.At(p), ground, 1e-12, "the last lift ends at the finish plane")
		}
	}
}

func FuzzLiftsFillThePourOrSayWhyNot(f *testing.F) {
	f.Add(0.0, -0.04, 0.003, 0.003, 0.03, 0.003, 0.03)
	f.Add(-0.07, -0.08, 0.0, 0.003, 0.03, 0.015, 0.075)
	f.Add(0.0, 0.0, 0.0, 0.0, 1e-9, 0.0, 1e-9)
	f.Fuzz(func(t *testing.T, high, low, height, least, most, lowerLeast, lowerMost float64) {
		for _, v := range []float64{high, low, height} {
			if !(v > -10 && v < 10) {
				return
			}
		}
		cells, plane := wedge(high, low), Plane{C: height}
		lifts, err := Lifts(cells, plane, LiftLimits{least, most}, LiftLimits{lowerLeast, lowerMost})
		if err != nil {
			var refused *Error
			require.ErrorAs(t, err, &refused)
			assert.NotEmpty(t, refused.Remedy)
			return
		}
		total := 0.0
		for _, lift := range lifts {
			total += lift.Volume
			assert.GreaterOrEqual(t, lift.Volume, -1e-9)
			assert.LessOrEqual(t, lift.Greatest, max(most, lowerMost)+1e-6)
		}
		assert.InDelta(t, DepthsOf(cells, plane).Volume, total, 1e-6)
	})
}
