package floor

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIndicatorsStandInTheLowGroundClearOfEverything(t *testing.T) {
	rng := rand.New(rand.NewSource(9))
	room := Outline{Outer: Ring{{0, 0}, {6, 0}, {6, 2.5}, {3, 2.5}, {3, 5}, {0, 5}}, Holes: []Ring{{{1, 3}, {2, 3}, {2, 4}, {1, 4}}}}
	avoid := Avoid{Pipes: []Pipe{{Point{2, 1}, 0.05}}, Areas: []Ring{{{4, 0}, {6, 0}, {6, 1}, {4, 1}}}}
	for deck := 0; deck < 10; deck++ {
		s := meshed(6, 5, 8, 7, rng, roughDeck(rng))
		cells := CellsOf(&s, RegionOf(room))
		highest, _, _ := highestOf(cells)
		plane := Plane{C: highest + 0.003}
		set, err := Indicators(room, cells, plane, 1.2, 0.15, avoid)
		require.NoError(t, err)
		require.NotEmpty(t, set)
		deepest := 0.0
		for i, pin := range set {
			assert.True(t, room.Contains(pin.At))
			assert.True(t, avoid.clear(room, pin.At, 0.149))
			assert.InDelta(t, plane.At(pin.At)-heightAt(s, pin.At), pin.Head, 1e-9, "the head stands at the finish plane")
			deepest = math.Max(deepest, pin.Head)
			for _, other := range set[:i] {
				assert.GreaterOrEqual(t, Distance(pin.At, other.At), 1.2-1e-5)
			}
		}
		for spot := 0; spot < 300; spot++ {
			p := Point{0.1 * math.Round(60*rng.Float64()), 0.1 * math.Round(50*rng.Float64())}
			if !room.Contains(p) || !avoid.clear(room, p, 0.1501) {
				continue
			}
			depth := plane.At(p) - heightAt(s, p)
			assert.LessOrEqual(t, depth, deepest+1e-5, "the deepest clear spot has one")
			nearest := math.Inf(1)
			for _, pin := range set {
				nearest = math.Min(nearest, Distance(p, pin.At))
			}
			assert.LessOrEqual(t, nearest, 1.2+1e-5, "every clear spot has one within the spacing")
		}
		again, err := Indicators(room, cells, plane, 1.2, 0.15, avoid)
		require.NoError(t, err)
		assert.Equal(t, set, again)
	}
}

func TestIndicatorsAreWalkedToAndFro(t *testing.T) {
	set, err := Indicators(Outline{Outer: Rectangle(4, 3)}, wedge(0, 0), Plane{C: 0.010}, 1, 0, Avoid{})
	require.NoError(t, err)
	require.Len(t, set, 18)
	assert.Equal(t, Point{0, 0}, set[0].At)
	strip, there := 0, true
	for i := 1; i < len(set); i++ {
		if next := int(set[i].At.Y + 1e-9); next != strip {
			strip, there = next, !there
			continue
		}
		assert.Equal(t, there, set[i].At.X > set[i-1].At.X, "strip %d", strip)
	}
	assert.Equal(t, 2, strip)
}

func TestDryGroundAndNarrowRoomsGetNoIndicators(t *testing.T) {
	dry, err := Indicators(Outline{Outer: Rectangle(4, 3)}, wedge(0, 0), Plane{C: -0.01}, 1, 0, Avoid{})
	require.NoError(t, err)
	assert.Empty(t, dry)
	narrow, err := Indicators(Outline{Outer: Rectangle(4, 3)}, wedge(0, 0), Plane{C: 0.01}, 1, 1.6, Avoid{})
	require.NoError(t, err)
	assert.Empty(t, narrow)
	_, err = Indicators(Outline{}, nil, Plane{}, 0, 0, Avoid{})
	assert.ErrorContains(t, err, "spacing")
	_, err = Indicators(Outline{Outer: Rectangle(4, 3)}, wedge(0, 0), Plane{C: 0.01}, 0.001, 0, Avoid{})
	assert.ErrorContains(t, err, "wider spacing")
	_, err = Indicators(Outline{}, nil, Plane{}, 1, -1, Avoid{})
	assert.ErrorContains(t, err, "clearance")
}
