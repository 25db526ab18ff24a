package main

import (
	"lowspot/engine/floor"
	"lowspot/engine/pour"
	"lowspot/tests/bench/measure"
)

// march is the walking distance from the exit over a grid of three by two, so many nodes long.
func march(across int) measure.Side {
	const length, width = 12.0, 8.0
	step := length / float64(across)
	outline := floor.Outline{Outer: floor.Rectangle(length, width)}
	var field *pour.Field
	return measure.Side{
		Input: map[string]any{"across": across, "up": across * 2 / 3, "step": step, "from": across / 4},
		Run: func() {
			var err error
			if field, err = pour.Walk(outline, []floor.Point{{X: length / 4, Y: 0}}, step); err != nil {
				panic(err)
			}
		},
		Result: func() float64 { _, distance := field.Farthest(); return distance },
	}
}

// hall is the pour of a plain room of so many square metres.
func hall(area int) measure.Side {
	return poured(floor.Outline{Outer: floor.Rectangle(float64(area)/6, 6)})
}

// roundIsland is the pour of 58 m² in two arms round an island.
func roundIsland(int) measure.Side {
	ell := floor.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 4}, {X: 6, Y: 4}, {X: 6, Y: 7}, {X: 0, Y: 7}}
	island := floor.Ring{{X: 2, Y: 2}, {X: 4, Y: 2}, {X: 4, Y: 3}, {X: 2, Y: 3}}
	return poured(floor.Outline{Outer: ell, Holes: []floor.Ring{island}})
}

// The leveller and the crew are of common practice: two bags a batch, three minutes of mixing, two of rest.
var (
	leveller = pour.Mix{BagMass: 25, Yield: 0.55e-3, WaterLow: 4.8e-3 / 25, WaterHigh: 5.2e-3 / 25, Water: 5e-3 / 25}
	bucket   = pour.Bucket{Volume: 37e-3, HeadRoom: 0.25}
	crew     = pour.Crew{People: 3, Mixers: 1, Buckets: 4}
	pace     = pour.Pace{Water: 30, Powder: 30, Mix: 150, Rest: 120, Pour: 60, Agitate: 60, Speed: 1, Station: 5, Flow: 20 * 60, WetEdge: 10 * 60}
)

// poured is the order over the floor and the crew's clock, for a floor with one reading a square metre.
func poured(outline floor.Outline) measure.Side {
	room := pour.Room{Outline: outline, Exits: []floor.Point{{X: 0, Y: 1}}, Cells: pourOver(outline)}
	volume := 0.0
	for _, c := range room.Cells {
		volume += volumeOf(c)
	}
	batches, err := pour.Batches(volume, leveller, bucket, pour.LitreMark)
	if err != nil {
		panic(err)
	}
	var line pour.Timeline
	return measure.Side{
		Run: func() {
			sequence, err := pour.Order(room, pour.Volumes(batches), 0.5)
			if err != nil {
				panic(err)
			}
			loads, err := pour.Loads(batches, sequence)
			if err != nil {
				panic(err)
			}
			if line, err = pour.Clock(loads, crew, pace); err != nil {
				panic(err)
			}
		},
		Result: func() float64 { return line.Finish },
	}
}

// pourOver is a pour of about 10 mm over an uneven deck.
func pourOver(outline floor.Outline) []pour.Cell {
	g := ground(int(outline.Area()))
	for i, p := range g.Points {
		g.Points[i] = floor.Point{X: p.X * 10 / 8, Y: p.Y * 7 / 6}
		g.Heights[i] -= 0.008*p.X - 0.004*p.Y
	}
	surface, _ := floor.Triangulate(g.Points, g.Heights, nil, 4, func(floor.Point) float64 { return 0.0025 })
	return pour.CellsUnder(floor.CellsOf(surface, floor.RegionOf(outline)), floor.Plane{C: 0.0125})
}

// volumeOf is a flat cell's area times the mean depth of its triangles.
func volumeOf(c pour.Cell) float64 {
	sum := 0.0
	for i := 2; i < len(c.Corners); i++ {
		area := floor.Ring{c.Corners[0], c.Corners[i-1], c.Corners[i]}.SignedArea()
		sum += area * (c.Depths[0] + c.Depths[i-1] + c.Depths[i]) / 3
	}
	return sum
}
