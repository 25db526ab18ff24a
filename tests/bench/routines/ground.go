package main

import (
	"math/rand"

	"lowspot/engine/floor"
	"lowspot/tests/bench/measure"
)

// ground is so many readings, scattered over 8 m by 6 m: a deck that falls by about 1 % one way, with 5 mm of bumps.
func ground(readings int) floor.Ground {
	random := rand.New(rand.NewSource(5))
	var g floor.Ground
	for range readings {
		p := floor.Point{X: 8 * random.Float64(), Y: 6 * random.Float64()}
		g.Points = append(g.Points, p)
		g.Heights = append(g.Heights, 0.008*p.X-0.004*p.Y+0.005*random.Float64())
		g.Least = append(g.Least, 0.003)
	}
	return g
}

// plane is the finish plane of least volume. The slope limit is wide enough not to count, so that the reference solves the same linear programme.
func plane(readings int) measure.Side {
	g := ground(readings)
	centroid := floor.Point{X: 4, Y: 3}
	targets := make([]float64, readings)
	for i := range targets {
		targets[i] = g.Heights[i] + g.Least[i]
	}
	var finish floor.Finish
	return measure.Side{
		Input: map[string]any{"points": pairs(g.Points), "targets": targets, "centroid": pairs([]floor.Point{centroid})[0]},
		Run: func() {
			var err error
			if finish, err = floor.LeastVolume(g, 0.05, centroid); err != nil {
				panic(err)
			}
		},
		Result: func() float64 { return finish.Plane.At(centroid) },
	}
}

// triangles is the surface through the readings: the Delaunay triangles of the readings and of the box round them.
func triangles(readings int) measure.Side {
	g := ground(readings)
	const margin = 1.0
	low, high := floor.Bounds(g.Points)
	low, high = floor.Point{X: low.X - margin, Y: low.Y - margin}, floor.Point{X: high.X + margin, Y: high.Y + margin}
	box := []floor.Point{low, {X: high.X, Y: low.Y}, high, {X: low.X, Y: high.Y}}
	var surface *floor.Surface
	return measure.Side{
		Input: map[string]any{"points": pairs(append(box, g.Points...))},
		Run: func() {
			surface, _ = floor.Triangulate(g.Points, g.Heights, nil, margin, func(floor.Point) float64 { return 0 })
		},
		Result: func() float64 { return perimeters(surface) },
	}
}

// perimeters adds up the triangles' perimeters: no other triangulation of scattered points comes to the same.
func perimeters(s *floor.Surface) float64 {
	sum := 0.0
	for _, t := range s.Triangles {
		for k := range t {
			sum += floor.Distance(s.Points[t[k]], s.Points[t[(k+1)%3]])
		}
	}
	return sum
}

func pairs(points []floor.Point) [][2]float64 {
	list := make([][2]float64, len(points))
	for i, p := range points {
		list[i] = [2]float64{p.X, p.Y}
	}
	return list
}
