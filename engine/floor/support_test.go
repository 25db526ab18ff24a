package floor

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSupportStandsAtCornersAndAlongWallsNoFurtherApartThanAsked(t *testing.T) {
	o := Outline{Outer: Rectangle(4, 3), Holes: []Ring{upright(1, 1, 0.5, 0.5)}}
	support, walls := Support(o, nil, 0)
	assert.Equal(t, []Point{{0, 0}, {4, 0}, {4, 3}, {0, 3}, {1, 1}, {1.5, 1}, {1.5, 1.5}, {1, 1.5}}, support)
	assert.Equal(t, [][2]int{{0, 1}, {1, 2}, {2, 3}, {3, 0}, {4, 5}, {5, 6}, {6, 7}, {7, 4}}, walls)

	support, walls = Support(o, nil, 1)
	assert.Len(t, support, 4+3+2+3+2+4, "a wall of 4 m takes three spots 1 m apart, one of 3 m two")
	for _, wall := range walls {
		assert.LessOrEqual(t, Distance(support[wall[0]], support[wall[1]]), 1+1e-9)
	}
}

func TestAReadingBesideTheWallStandsInForSupport(t *testing.T) {
	readings := []Point{{2, 0.1}, {4, 3}}
	support, walls := Support(Outline{Outer: Rectangle(4, 3)}, readings, 2)
	assert.Equal(t, []Point{{0, 0}, {4, 0}, {4, 1.5}, {4, 3}, {2, 3}, {0, 3}, {0, 1.5}}, support, "corners stay, so that the floor is covered")
	assert.Equal(t, [2]int{2, 3}, walls[0], "indexes count on from the readings")
	assert.Equal(t, [2]int{8, 2}, walls[len(walls)-1])
}

func TestTheSurfaceOverItsSupportCoversTheFloorAndSaysEveryHeight(t *testing.T) {
	r := rand.New(rand.NewSource(8))
	deck := Plane{0.01, -0.02, 0.5}
	for n := range 6 {
		points := scattered(r, n, 4, 3)
		support, walls := Support(ell, points, 0.7)
		points = append(points, support...)
		surface, _ := Triangulate(points, planeHeights(points, deck), walls, 1, level(99))
		for range 200 {
			p := Point{4 * r.Float64(), 3 * r.Float64()}
			if !ell.Contains(p) {
				continue
			}
			height, some := surface.HeightAt(p)
			assert.True(t, some)
			assert.InDelta(t, deck.At(p), height, 1e-12, "%d readings, at %v", n, p)
		}
		for _, corner := range ell.Outer {
			height, some := surface.HeightAt(corner)
			assert.True(t, some)
			assert.InDelta(t, deck.At(corner), height, 1e-12)
		}
	}
	surface, _ := Triangulate(nil, nil, nil, 1, level(0))
	_, some := surface.HeightAt(Point{50, 0})
	assert.False(t, some, "beyond the surface nothing is known")
}
