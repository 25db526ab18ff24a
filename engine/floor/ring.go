// What is measured on one ring: its area, its walls, and whether a spot lies in it.
package floor

import (
	"math"

	"lowspot/engine/steady"
)

// Rectangle is the ring of a room of the given length along x and width along y, metres, from the origin counter-clockwise.
func Rectangle(length, width float64) Ring {
	return Ring{{0, 0}, {length, 0}, {length, width}, {0, width}}
}

// Area is the ring's area, m², whichever way it runs.
func (r Ring) Area() float64 { return math.Abs(r.SignedArea()) }

// SignedArea is the ring's area, m²: above zero when it runs counter-clockwise, below when clockwise.
func (r Ring) SignedArea() float64 {
	sum := 0.0
	for i := 1; i+1 < len(r); i++ {
		sum += turn(r[0], r[i], r[i+1])
	}
	return sum / 2
}

// Perimeter is the length of all walls, metres.
func (r Ring) Perimeter() float64 {
	sum := 0.0
	for i := range r {
		sum += r.WallLength(i)
	}
	return sum
}

// Centroid is the balance point of the ring's area; the mean of its corners where it has no area.
func (r Ring) Centroid() Point {
	x, y, area := r.moments()
	if area != 0 {
		return Point{x / area, y / area}
	}
	n := float64(len(r))
	for _, p := range r {
		x, y = x+p.X/n, y+p.Y/n
	}
	return Point{x, y}
}

// moments are the integrals of x and y over the ring, and its signed area.
func (r Ring) moments() (x, y, area float64) {
	for i := 1; i+1 < len(r); i++ {
		part := turn(r[0], r[i], r[i+1]) / 2
		x += part * (r[0].X + r[i].X + r[i+1].X) / 3
		y += part * (r[0].Y + r[i].Y + r[i+1].Y) / 3
		area += part
	}
	return x, y, area
}

// Contains tells whether p lies in the ring; a spot on a wall does.
func (r Ring) Contains(p Point) bool {
	inside := false
	for i := range r {
		a, b := r.Wall(i)
		if onSegment(p, a, b) {
			return true
		}
		if (a.Y > p.Y) != (b.Y > p.Y) && (turn(a, b, p) > 0) == (b.Y > a.Y) {
			inside = !inside
		}
	}
	return inside
}

// Wall gives the two ends of wall i, which runs from corner i to the next.
func (r Ring) Wall(i int) (from, to Point) {
	return r[i], r.corner(i + 1)
}

// corner is corner i, counted on round the ring past the last one.
func (r Ring) corner(i int) Point { return r[i%len(r)] }

// WallLength is the length of wall i, metres.
func (r Ring) WallLength(i int) float64 {
	a, b := r.Wall(i)
	return Distance(a, b)
}

// PointAlong is the spot on wall i at a distance from its first corner, metres.
func (r Ring) PointAlong(i int, distance float64) Point {
	a, b := r.Wall(i)
	length := Distance(a, b)
	if length == 0 {
		return a
	}
	return toward(a, b, distance/length)
}

// NearestWall finds the wall nearest to p, how far along it from its first corner the nearest spot lies, and how far off p is, metres.
// The first of equals is taken; a ring without corners gives wall -1.
func (r Ring) NearestWall(p Point) (wall int, along, off float64) {
	wall, off = -1, math.Inf(1)
	for i := range r {
		a, b := r.Wall(i)
		q := nearestOn(a, b, p)
		if d := Distance(p, q); d < off {
			wall, along, off = i, Distance(a, q), d
		}
	}
	return wall, along, off
}

// Bounds are the corners of the upright rectangle round some points; the origin twice where there are none.
func Bounds(points []Point) (low, high Point) {
	if len(points) == 0 {
		return low, high
	}
	low, high = points[0], points[0]
	for _, p := range points[1:] {
		low = Point{math.Min(low.X, p.X), math.Min(low.Y, p.Y)}
		high = Point{math.Max(high.X, p.X), math.Max(high.Y, p.Y)}
	}
	return low, high
}

// Distance is how far two points lie apart, metres.
func Distance(a, b Point) float64 { return steady.Hypot(a.X-b.X, a.Y-b.Y) }

// turn is twice the signed area of the triangle abc, m²: above zero when c lies to the left of the way from a to b.
func turn(a, b, c Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }

// toward is the spot a share t of the way from a to b.
func toward(a, b Point, t float64) Point { return Point{a.X + t*(b.X-a.X), a.Y + t*(b.Y-a.Y)} }

// nearestOn is the spot of the wall from a to b that is nearest to p.
func nearestOn(a, b, p Point) Point {
	dx, dy := b.X-a.X, b.Y-a.Y
	length := dx*dx + dy*dy
	if length == 0 {
		return a
	}
	t := ((p.X-a.X)*dx + (p.Y-a.Y)*dy) / length
	if t <= 0 {
		return a
	}
	if t >= 1 {
		return b
	}
	return toward(a, b, t)
}

// Against moves the ring's corners that lie within a distance of another ring onto it: onto its nearest corner if one is in reach, or a thread
// of floor would stay behind it, else onto its nearest wall.
func (r Ring) Against(walls Ring, within float64) Ring {
	moved := append(Ring{}, r...)
	for i, p := range r {
		onWall, offWall := p, within
		onCorner, offCorner := p, within
		for w := range walls {
			from, to := walls.Wall(w)
			if off := Distance(from, p); off < offCorner {
				onCorner, offCorner = from, off
			}
			on := nearestOn(from, to, p)
			if off := Distance(on, p); off < offWall {
				onWall, offWall = on, off
			}
		}
		moved[i] = onWall
		if offCorner < within {
			moved[i] = onCorner
		}
	}
	return moved
}
