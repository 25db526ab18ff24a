// The largest gap under a straightedge laid anywhere on the deck, in any direction, without leaving the room: lines in 36 directions find the
// likely places, and a search round the best of them finds the gap itself.
package floor

import "math"

// Gap is the largest gap under a straightedge on a surface.
type Gap struct {
	Depth  float64 `json:"depth"`  // metres; zero on a floor that has none
	Length float64 `json:"length"` // of the straightedge, metres
	From   Point   `json:"from"`   // one support
	At     Point   `json:"at"`     // where the gap is
	To     Point   `json:"to"`     // the other support
}

const (
	edgeDirections = 36
	mostSamples    = 400000 // a direction; a floor of more than about 60 m across is searched on a wider grid
	likelyPlaces   = 12
)

// LargestGap finds the largest gap under a straightedge of a length on the surface within the outline. The surface must cover the outline; where it
// doesn't, no edge is laid.
func LargestGap(surface *Surface, outline Outline, length float64) (Gap, error) {
	if err := checkEdge(length); err != nil {
		return Gap{}, err
	}
	if gridStep(outline, length) > length/3 {
		return Gap{}, &Error{Code: "edge-too-short", Message: "The floor is too large to search it for gaps under an edge this short.", Remedy: "Take a longer edge, or split the room."}
	}
	best := Gap{Length: length}
	for _, place := range likelyGaps(surface, outline, length) {
		if gap := refineGap(surface, outline, place, length); gap.Depth > best.Depth {
			best = gap
		}
	}
	return best, nil
}

// edgeLine is where an edge lies: a line through a spot in a direction, and the gap found on it. Places along it count from the spot.
type edgeLine struct {
	through Point
	x, y    float64 // the direction, of length 1
	depth   float64
	from    float64
	at      float64
	to      float64
}

func (l edgeLine) point(along float64) Point {
	return Point{l.through.X + along*l.x, l.through.Y + along*l.y}
}

// shifted is the line moved sideways.
func (l edgeLine) shifted(aside float64) edgeLine {
	l.through = Point{l.through.X - aside*l.y, l.through.Y + aside*l.x}
	return l
}

// turned is the line turned about one of its spots.
func (l edgeLine) turned(about, angle float64) edgeLine {
	cos, sin := math.Cos(angle), math.Sin(angle)
	return edgeLine{through: l.point(about), x: l.x*cos - l.y*sin, y: l.x*sin + l.y*cos}
}

// gridStep is how far apart lines and samples lie when looking for likely places.
func gridStep(outline Outline, length float64) float64 {
	low, high := Bounds(outline.Outer)
	fine := math.Min(0.1, math.Max(0.02, length/20))
	return math.Max(fine, Distance(low, high)/math.Sqrt(mostSamples))
}

// refineGap moves and turns the edge about a likely place until nothing nearby is worse.
func refineGap(surface *Surface, outline Outline, place edgeLine, length float64) Gap {
	step := gridStep(outline, length)
	near := newNearby(surface, outline, place.point(place.at), 1.1*length+step)
	best := near.gapOn(place, length, length/20, 0)
	for aside := step; aside > 0.001; aside /= 2 {
		turn := math.Pi / edgeDirections * aside / step
		for improved := true; improved; {
			improved = false
			for _, try := range [...]edgeLine{
				best.shifted(aside), best.shifted(-aside), best.turned(best.at, turn), best.turned(best.at, -turn),
				best.turned(best.from, turn), best.turned(best.from, -turn), best.turned(best.to, turn), best.turned(best.to, -turn),
			} {
				if found := near.gapOn(try, length, length/20, best.depth*(1+1e-4)); found.depth > 0 {
					best, improved = found, true
				}
			}
		}
	}
	if fine := near.gapOn(best, length, length/200, best.depth); fine.depth > 0 {
		best = fine
	}
	return Gap{best.depth, length, best.point(best.from), best.point(best.at), best.point(best.to)}
}
