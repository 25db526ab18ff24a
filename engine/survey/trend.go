package survey

import (
	"math"

	"lowspot/engine/floor"
)

// leastSloped is how many readings it takes to tell a slope from unevenness; narrowest is how wide across they must lie to their length.
// Own choice: below either the trend is a constant, and a slope counts as unevenness, which widens the doubt rather than hiding it.
const leastSloped, narrowest = 6, 0.1

// slopes tells whether the readings carry a plane as their trend.
func slopes(points []floor.Point) bool {
	if len(points) < leastSloped {
		return false
	}
	xx, xy, yy := scatter(points)
	half, turn := (xx+yy)/2, math.Sqrt((xx-yy)*(xx-yy)/4+xy*xy)
	return half-turn > narrowest*narrowest*(half+turn)
}

func middle(points []floor.Point) (p floor.Point) {
	n := float64(len(points))
	for _, q := range points {
		p.X, p.Y = p.X+q.X/n, p.Y+q.Y/n
	}
	return p
}

// scatter is the mean products of the places about their middle.
func scatter(points []floor.Point) (xx, xy, yy float64) {
	m := middle(points)
	n := float64(len(points))
	for _, p := range points {
		dx, dy := p.X-m.X, p.Y-m.Y
		xx, xy, yy = xx+dx*dx/n, xy+dx*dy/n, yy+dy*dy/n
	}
	return
}

// trend is the functions that the mean height is made of: one, and the place about a middle where it slopes, in units near one.
type trend struct {
	origin floor.Point
	scale  float64
	terms  int
}

func trendOver(points []floor.Point, sloped bool) trend {
	t := trend{origin: middle(points), scale: 1, terms: 1}
	if sloped {
		xx, _, yy := scatter(points)
		if xx+yy > 0 {
			t.scale = math.Sqrt(xx + yy)
		}
		t.terms = 3
	}
	return t
}

// at gives the terms at p; those past the trend's number are zero.
func (t trend) at(p floor.Point) [3]float64 {
	if t.terms == 1 {
		return [3]float64{1, 0, 0}
	}
	return [3]float64{1, (p.X - t.origin.X) / t.scale, (p.Y - t.origin.Y) / t.scale}
}
