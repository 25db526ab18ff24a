package deck

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
)

const (
	fromWalls = 1.0  // m: outer tests stand about this far off the walls, common practice after ASTM F2170's "within 1 m of each exterior wall"
	mostSpots = 1000 // tests on one deck
	gridSteps = 61   // spots that are looked at along the longer side; odd, so that one row runs through the middle
)

// TestSpots places moisture tests on a deck: the first in the middle, each further one as far as it can be from those before, all of them about 1 m or more
// off the walls, less in narrow rooms. Outer ones so come to the corners, where slabs dry last. The same outline gives the same spots.
// Keep clear of pipes and cables by what is known on site.
func TestSpots(o floor.Outline, count int) ([]floor.Point, error) {
	if count < 0 || count > mostSpots {
		return nil, refuse("tests", strconv.Itoa(count), "A deck has up to 1000 tests.", "Use the number that its area needs.")
	}
	if err := o.Check(); err != nil {
		return nil, err
	}
	candidates := candidatesIn(o)
	if len(candidates) == 0 || count == 0 {
		return nil, nil
	}
	middle := middleOf(candidates, o.Centroid())
	return spread(offTheWalls(candidates), middle, count), nil
}

// candidate is a spot with its distance from the nearest wall or keep-out, m.
type candidate struct {
	at    floor.Point
	clear float64
}

// candidatesIn is a grid of spots on the floor, and its centroid where that is floor.
func candidatesIn(o floor.Outline) (all []candidate) {
	low, high := floor.Bounds(o.Outer)
	step := math.Max(high.X-low.X, high.Y-low.Y) / gridSteps
	columns, rows := oddCells(high.X-low.X, step), oddCells(high.Y-low.Y, step)
	add := func(p floor.Point) {
		if o.Contains(p) {
			all = append(all, candidate{p, clearance(o, p)})
		}
	}
	add(o.Centroid())
	for j := 0; j < rows; j++ {
		for i := 0; i < columns; i++ {
			add(floor.Point{X: low.X + (high.X-low.X)*(float64(i)+0.5)/float64(columns), Y: low.Y + (high.Y-low.Y)*(float64(j)+0.5)/float64(rows)})
		}
	}
	return all
}

func oddCells(side, step float64) int { return int(math.Round(side/step))/2*2 + 1 }

func clearance(o floor.Outline, p floor.Point) float64 {
	least := math.Inf(1)
	for _, ring := range o.Rings() {
		if _, _, off := ring.NearestWall(p); off < least {
			least = off
		}
	}
	return least
}

// middleOf is the spot that is farthest from all walls; of those about as far, the one nearest to the centroid.
func middleOf(all []candidate, centroid floor.Point) floor.Point {
	most := mostClear(all)
	best, off := all[0].at, math.Inf(1)
	for _, c := range all {
		if d := floor.Distance(c.at, centroid); c.clear >= 0.9*most && d < off {
			best, off = c.at, d
		}
	}
	return best
}

func mostClear(all []candidate) float64 {
	most := 0.0
	for _, c := range all {
		if c.clear > most {
			most = c.clear
		}
	}
	return most
}

// offTheWalls leaves out what is too near to a wall: 1 m, or half of what a narrow room has.
func offTheWalls(all []candidate) (kept []candidate) {
	least := math.Min(fromWalls, mostClear(all)/2)
	for _, c := range all {
		if c.clear >= least {
			kept = append(kept, c)
		}
	}
	return kept
}

// spread takes the first spot and then, over and over, the candidate whose nearest spot is farthest off; the first of equals.
func spread(all []candidate, first floor.Point, count int) []floor.Point {
	nearest := make([]float64, len(all))
	for i := range nearest {
		nearest[i] = math.Inf(1)
	}
	spots := []floor.Point{first}
	for len(spots) < count {
		best, most := 0, -1.0
		for i, c := range all {
			if d := floor.Distance(c.at, spots[len(spots)-1]); d < nearest[i] {
				nearest[i] = d
			}
			if nearest[i] > most+1e-9 {
				best, most = i, nearest[i]
			}
		}
		spots = append(spots, all[best].at)
	}
	return spots
}
