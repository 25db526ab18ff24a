package survey

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// gridSeen is a bumpy deck read at every crossing of a regular grid over 8 m by 6 m.
func gridSeen(columns, rows int) (points []floor.Point, heights []float64) {
	r := rand.New(rand.NewSource(5))
	for i := range columns {
		for j := range rows {
			p := spot(8*float64(i)/float64(columns), 6*float64(j)/float64(rows))
			points = append(points, p)
			heights = append(heights, 0.003*math.Sin(2*p.X)*math.Cos(2*p.Y)+0.001*r.NormFloat64())
		}
	}
	return points, heights
}

// On a grid many readings are equally far from a spot; which of them are used must not hang on the last digits that turning changes.
func TestTurningAGridOfReadingsChangesNothing(t *testing.T) {
	outline := floor.Outline{Outer: floor.Rectangle(8, 6)}
	for _, n := range []int{12, 20, 40} {
		points, heights := gridSeen(n, n*3/4)
		turned := make([]floor.Point, len(points))
		move := func(p floor.Point) floor.Point {
			q := turnedSpot(p, 0.7)
			return spot(q.X+310, q.Y-120)
		}
		for i, p := range points {
			turned[i] = move(p)
		}
		before, after := fitted(t, points, heights, 0.001), fitted(t, turned, heights, 0.001)
		assert.InEpsilon(t, before.Unevenness, after.Unevenness, 1e-9)
		assert.InEpsilon(t, before.Reach, after.Reach, 1e-9)
		for x := 0.0; x <= 8; x += 0.4 {
			for y := 0.0; y <= 6; y += 0.4 {
				assert.InDelta(t, before.At(spot(x, y)), after.At(move(spot(x, y))), 1e-9)
				assert.InDelta(t, before.Deviation(spot(x, y)), after.Deviation(move(spot(x, y))), 1e-9)
			}
		}
		a, err := VolumeOf(before, outline, floor.Plane{C: 0.004})
		require.NoError(t, err)
		corners := make(floor.Ring, len(outline.Outer))
		for i, p := range outline.Outer {
			corners[i] = move(p)
		}
		b, err := VolumeOf(after, floor.Outline{Outer: corners}, floor.Plane{C: 0.004})
		require.NoError(t, err)
		assert.InDelta(t, a.Mean, b.Mean, 1e-9)
		assert.InDelta(t, a.Deviation, b.Deviation, 1e-9)
	}
}
