// The flat plane of least volume. Volume = area × (plane at the area's centroid) − a constant, so the plane wanted is the one that is lowest at
// the centroid while it keeps the least depth over every point and no slope passes the limit: a linear programme in three unknowns.
package floor

import "lowspot/engine/steady"

// standing is how near a plane must come to a reading's least depth to be said to stand on it: a tenth of a millimetre.
const standing = 1e-4

// LeastVolume is the plane z = ax + by + c of least volume over the ground, no steeper than the slope limit. The centroid is that of the area to
// be poured. Readings on one line say nothing of the ground beside it, so there the plane tilts along the line only; a single spot gives a level
// plane. Where a level plane needs no more than any other, it is the level one.
func LeastVolume(ground Ground, slopeLimit float64, centroid Point) (Finish, error) {
	if err := ground.check(); err != nil {
		return Finish{}, err
	}
	if !finite(slopeLimit) || slopeLimit < 0 {
		return Finish{}, badSlope()
	}
	if !finite(centroid.X, centroid.Y) {
		return Finish{}, &Error{Code: "centroid", Message: "The poured area has no centroid.", Remedy: "Give the room an outline with an area."}
	}
	return ground.lowestAt(centroid, slopeLimit, nil), nil
}

// ThroughPoint is the plane of least volume through a given height at one spot, such as a door's. A slope limit of zero makes it level. Where no
// plane through that height keeps every least depth, it is the one that misses by least, and Shortfall says by how much the height must rise.
func ThroughPoint(ground Ground, slopeLimit float64, centroid, at Point, height float64) (Finish, error) {
	if !finite(height, at.X, at.Y, centroid.X, centroid.Y) {
		return Finish{}, &Error{Code: "plane-height", Message: "The height or the spot that the finish plane must meet isn't a number.", Remedy: "Give the height of the floor beyond the door.", At: at}
	}
	lowest, err := LeastVolume(ground, slopeLimit, at)
	if err != nil {
		return Finish{}, err
	}
	// A hair over the lowest height that keeps every depth leaves the programme room to turn; the plane is then put where it was asked for.
	meet := max(height, lowest.Plane.At(at)+hair)
	f := ground.lowestAt(centroid, slopeLimit, &pinned{at, meet})
	return ground.finish(through(at, height, f.Plane.A, f.Plane.B), f.Carriers), nil
}

// pinned is a height that a plane must meet.
type pinned struct {
	at     Point
	height float64
}

// lowestAt is the plane that is lowest at the centroid, through the pin where there is one.
func (g Ground) lowestAt(centroid Point, slopeLimit float64, pin *pinned) Finish {
	highest := g.highest()
	top := g.target(highest)
	level := Plane{C: top}
	if pin != nil {
		level.C = pin.height
	}
	spread := g.spread()
	if spread.rank == 0 || slopeLimit == 0 {
		return g.finish(level, g.touching(level, []int{highest}))
	}
	aim := spread.place(centroid)
	programme := programme{ground: spread.placed(g), origin: aim, top: top, slopeLimit: slopeLimit}
	if pin != nil {
		programme.pin(pinned{spread.place(pin.at), pin.height})
	}
	a, b := spread.tilt(programme.solve(highest))
	a, b = within(slopeLimit, a, b)
	if pin != nil {
		plane := through(pin.at, pin.height, a, b)
		return g.finish(plane, g.touching(plane, programme.basis[:]))
	}
	plane := g.lowered(a, b)
	if plane.At(aim) >= top-tight {
		return standingOn(level, []int{highest})
	}
	return standingOn(plane, g.touching(plane, programme.basis[:]))
}

// lowered is the lowest plane of the given slopes that keeps every least depth.
func (g Ground) lowered(a, b float64) Plane {
	plane := Plane{A: a, B: b}
	lift := g.target(0) - plane.At(g.Points[0])
	for i, p := range g.Points {
		if need := g.target(i) - a*p.X - b*p.Y; need > lift {
			lift = need
		}
	}
	plane.C = lift
	return plane
}

// touching keeps those of the candidates that are points and that the plane stands on.
func (g Ground) touching(plane Plane, candidates []int) []int {
	kept := []int{}
	for _, i := range candidates {
		if i < len(g.Points) && plane.At(g.Points[i])-g.target(i) < standing {
			kept = append(kept, i)
		}
	}
	return kept
}

// within shortens a slope to the limit.
func within(limit, a, b float64) (float64, float64) {
	slope := steady.Hypot(a, b)
	if slope <= limit {
		return a, b
	}
	return a * limit / slope, b * limit / slope
}
