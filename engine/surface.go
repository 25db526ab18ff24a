package engine

import (
	"lowspot/engine/floor"
)

// beyondWalls is how far outside the walls the surface's box reaches, metres.
const beyondWalls = 1.0

// surfaceOf makes the deck's surface: every reading as read, and the outline's corners from the readings round about.
func surfaceOf(s *site) (*floor.Surface, []floor.Merge) {
	height := heightNear(s.points, s.heights)
	corners := s.outline.Outer
	points := append(append(make([]floor.Point, 0, len(s.points)+len(corners)), s.points...), corners...)
	heights := append(make([]float64, 0, len(points)), s.heights...)
	walls := make([][2]int, len(corners))
	for i, corner := range corners {
		heights = append(heights, heightAtCorner(s, corner, height))
		walls[i] = [2]int{len(s.points) + i, len(s.points) + (i+1)%len(corners)}
	}
	return floor.Triangulate(points, heights, walls, beyondWalls, height)
}

// heightAtCorner takes a reading that was taken in the very corner as it is.
func heightAtCorner(s *site, corner floor.Point, height func(floor.Point) float64) float64 {
	const same = 1e-6 // metres
	for i, p := range s.points {
		if floor.Distance(p, corner) < same {
			return s.heights[i]
		}
	}
	return height(corner)
}

// heightNear tells the deck's height where nobody has measured: the readings' own trend (a plane by least squares), bent to the readings
// near the spot, each counting by the inverse square of its distance. Common practice for filling in between spot heights.
func heightNear(points []floor.Point, heights []float64) func(floor.Point) float64 {
	trend := floor.TrendOf(points, heights)
	return func(p floor.Point) float64 {
		sum, weights := 0.0, 0.0
		for i, q := range points {
			dx, dy := q.X-p.X, q.Y-p.Y
			weight := 1 / (dx*dx + dy*dy + 1e-12)
			sum += weight * (heights[i] - trend.At(q))
			weights += weight
		}
		if weights == 0 {
			return 0
		}
		return trend.At(p) + sum/weights
	}
}
