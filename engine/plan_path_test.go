package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lowspot/engine/floor"
)

func TestADrawingGoesFromSpotToSpotInMillimetresDownwards(t *testing.T) {
	corner := []floor.Point{{X: 0, Y: 0}, {X: 1, Y: 0}, {X: 1, Y: 0.12344}}
	apart := []floor.Point{{X: 2, Y: 1}, {X: 2, Y: 0.9999}}
	assert.Equal(t, "m0 0 1000 0 0 -123.4", drawn([][]floor.Point{corner}, false))
	assert.Equal(t, "m0 0 1000 0 0 -123.4zm2000 -1000 0 0.1z", drawn([][]floor.Point{corner, apart}, true))
	assert.Empty(t, drawn(nil, true))
}
