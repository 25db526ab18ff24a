// Height indicators: pins that are set to the finish height before the pour, in the low ground and clear of what must not be hit or hidden.
package floor

import (
	"math"
	"sort"
	"strconv"
)

// Indicator is one pin: where it stands and how high its head is over the deck.
type Indicator struct {
	At   Point   `json:"at"`
	Head float64 `json:"head"` // metres
}

// Pipe is something round that comes up through the floor or lies in it at one spot.
type Pipe struct {
	At     Point
	Radius float64
}

// Avoid is what indicators keep clear of besides the walls and keep-outs: pipes and drains, and areas such as heating.
type Avoid struct {
	Pipes []Pipe
	Areas []Ring
}

const (
	finestPitch    = 0.1   // metres between the spots that are looked at
	mostPitches    = 40000 // spots looked at; a larger floor is looked at more coarsely
	mostIndicators = 2000
	pitchesApart   = 8 // spots looked at from one indicator to the next
)

// Indicators sets the deepest spot first, then the deepest that is a spacing away from all set, until no clear spot is left. So they stand in the low
// ground, no two nearer than the spacing, and every clear spot has one within it. Clearance is how far they keep from walls, keep-outs, pipes and areas,
// metres. They come in walking order: to and fro in strips one spacing wide.
func Indicators(outline Outline, cells []Cell, plane Plane, spacing, clearance float64, avoid Avoid) ([]Indicator, error) {
	if !finite(spacing) || spacing <= 0 {
		return nil, &Error{Code: "indicator-spacing", Message: "Height indicators need a spacing above zero.", Remedy: "Give a spacing such as 1.2 m."}
	}
	if !finite(clearance) || clearance < 0 {
		return nil, &Error{Code: "indicator-clearance", Message: "The clearance of height indicators must be zero or more.", Remedy: "Give a clearance such as 150 mm."}
	}
	spots := wetSpots(cells, plane, indicatorPitch(outline, spacing))
	sort.Slice(spots, func(i, j int) bool { return spots[i].before(spots[j]) })
	set := []Indicator{}
	for _, spot := range spots {
		if farFromAll(spot.At, set, spacing) && avoid.clear(outline, spot.At, clearance) {
			set = append(set, spot)
		}
		if len(set) > mostIndicators {
			return nil, &Error{Code: "indicator-too-many", Message: "The floor would take more than " + strconv.Itoa(mostIndicators) + " height indicators.", Remedy: "Give a wider spacing."}
		}
	}
	walk(set, spacing)
	return set, nil
}

func indicatorPitch(outline Outline, spacing float64) float64 {
	low, high := Bounds(outline.Outer)
	return math.Max(math.Min(finestPitch, spacing/pitchesApart), math.Sqrt((high.X-low.X)*(high.Y-low.Y)/mostPitches))
}

// before puts deep ground first; equal depths go from the lower left. Depths within a micrometre count as equal.
func (i Indicator) before(other Indicator) bool {
	if a, b := math.Round(i.Head*1e6), math.Round(other.Head*1e6); a != b {
		return a > b
	}
	if i.At.Y != other.At.Y {
		return i.At.Y < other.At.Y
	}
	return i.At.X < other.At.X
}

// wetSpots are the spots of a square lattice that get any pour, with its depth there.
func wetSpots(cells []Cell, plane Plane, pitch float64) []Indicator {
	var spots []Indicator
	seen := map[[2]int]bool{}
	for _, cell := range cells {
		deck, ok := deckOf(cell)
		if !ok {
			continue
		}
		low, high := Bounds(cell.Corners)
		for row := int(math.Ceil(low.Y / pitch)); float64(row)*pitch <= high.Y; row++ {
			for column := int(math.Ceil(low.X / pitch)); float64(column)*pitch <= high.X; column++ {
				key, p := [2]int{column, row}, Point{float64(column) * pitch, float64(row) * pitch}
				if seen[key] || !Ring(cell.Corners).Contains(p) {
					continue
				}
				seen[key] = true
				if depth := plane.At(p) - deck.At(p); depth > 0 {
					spots = append(spots, Indicator{p, depth})
				}
			}
		}
	}
	return spots
}

// deckOf is the plane of a cell's deck, from the three corners that span the most.
func deckOf(cell Cell) (Plane, bool) {
	best, most := 1, 0.0
	for i := 1; i+1 < len(cell.Corners); i++ {
		if area := (Ring{cell.Corners[0], cell.Corners[i], cell.Corners[i+1]}).Area(); area > most {
			best, most = i, area
		}
	}
	if most == 0 {
		return Plane{}, false
	}
	return planeOver([3]Point{cell.Corners[0], cell.Corners[best], cell.Corners[best+1]}, [3]float64{cell.Heights[0], cell.Heights[best], cell.Heights[best+1]})
}

func farFromAll(p Point, set []Indicator, spacing float64) bool {
	for _, other := range set {
		if Distance(p, other.At) < spacing-touching {
			return false
		}
	}
	return true
}

// clear tells whether a spot keeps its distance from everything.
func (a Avoid) clear(outline Outline, p Point, clearance float64) bool {
	for _, ring := range outline.Rings() {
		if _, _, off := ring.NearestWall(p); off < clearance-touching {
			return false
		}
	}
	for _, pipe := range a.Pipes {
		if Distance(p, pipe.At) < pipe.Radius+clearance-touching {
			return false
		}
	}
	for _, area := range a.Areas {
		if _, _, off := area.NearestWall(p); off < clearance-touching || area.Contains(p) {
			return false
		}
	}
	return true
}

// walk sorts indicators into strips one spacing wide, walked to and fro.
func walk(set []Indicator, spacing float64) {
	if len(set) == 0 {
		return
	}
	lowest := set[0].At.Y
	for _, i := range set {
		lowest = math.Min(lowest, i.At.Y)
	}
	strip := func(i Indicator) int { return int(math.Floor((i.At.Y-lowest)/spacing + touching)) }
	sort.Slice(set, func(i, j int) bool {
		a, b := set[i], set[j]
		if strip(a) != strip(b) {
			return strip(a) < strip(b)
		}
		if a.At.X != b.At.X {
			return (a.At.X < b.At.X) == (strip(a)%2 == 0)
		}
		return a.At.Y < b.At.Y
	})
}
