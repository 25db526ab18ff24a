package survey

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func TestCellsHoldTheFloorAndNothingElse(t *testing.T) {
	for _, o := range []floor.Outline{
		room,
		lShaped,
		{Outer: floor.Ring{{X: 0, Y: 0}, {X: 4, Y: 0}, {X: 0, Y: 3}}},
		{Outer: floor.Rectangle(60, 0.3)},
		turnedOutline(floor.Outline{Outer: floor.Ring{{X: 0, Y: 0}, {X: 30, Y: 0}, {X: 30, Y: 30}, {X: 29.9, Y: 30}, {X: 29.9, Y: 0.1}, {X: 0, Y: 0.1}}}, 1.1),
	} {
		g, err := gridOver(o, 900)
		require.NoError(t, err)
		assert.LessOrEqual(t, g.columns*g.rows, 3*900*emptiest)
		area, x, y := 0.0, 0.0, 0.0
		for _, c := range g.cells {
			assert.LessOrEqual(t, c.area, g.step*g.step*1.02)
			area, x, y = area+c.area, x+c.area*c.at.X, y+c.area*c.at.Y
		}
		assert.InDelta(t, o.Area(), area, 1e-9*o.Area())
		middle := o.Centroid()
		assert.InDelta(t, middle.X, x/area, g.step/4)
		assert.InDelta(t, middle.Y, y/area, g.step/4)
	}
}
