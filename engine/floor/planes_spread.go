// How far the readings spread in plan, which decides what tilt they can speak for.
package floor

import "lowspot/engine/steady"

// oneLine is how far off a line readings may lie and still count as on it: a millimetre, which no tape places better.
const oneLine = 0.001

// spread is the rank of the readings' places (0 one spot, 1 on a line, 2 over an area) and the line that they lie on, with a direction of length 1.
type spread struct {
	rank int
	from Point
	x, y float64
}

func (g Ground) spread() spread {
	s := spread{from: g.Points[0]}
	end := g.furthest(s.from)
	length := steady.Hypot(end.X-s.from.X, end.Y-s.from.Y)
	if length <= oneLine {
		return s
	}
	s.rank, s.x, s.y = 1, (end.X-s.from.X)/length, (end.Y-s.from.Y)/length
	for _, p := range g.Points {
		if off := s.x*(p.Y-s.from.Y) - s.y*(p.X-s.from.X); off > oneLine || off < -oneLine {
			s.rank = 2
			break
		}
	}
	return s
}

// furthest is the first of the points that lie furthest from a spot.
func (g Ground) furthest(from Point) Point {
	best, far := from, 0.0
	for _, p := range g.Points {
		if d := (p.X-from.X)*(p.X-from.X) + (p.Y-from.Y)*(p.Y-from.Y); d > far {
			best, far = p, d
		}
	}
	return best
}

// place is where a spot counts: itself, or its foot on the line.
func (s spread) place(p Point) Point {
	if s.rank > 1 {
		return p
	}
	along := (p.X-s.from.X)*s.x + (p.Y-s.from.Y)*s.y
	return Point{s.from.X + along*s.x, s.from.Y + along*s.y}
}

// placed is the ground with its points where they count.
func (s spread) placed(g Ground) Ground {
	if s.rank > 1 {
		return g
	}
	points := make([]Point, len(g.Points))
	for i, p := range g.Points {
		points[i] = s.place(p)
	}
	return Ground{points, g.Heights, g.Least}
}

// tilt is the part of a slope that the readings can speak for: all of it, or what runs along the line.
func (s spread) tilt(a, b float64) (float64, float64) {
	if s.rank > 1 {
		return a, b
	}
	along := a*s.x + b*s.y
	return along * s.x, along * s.y
}
