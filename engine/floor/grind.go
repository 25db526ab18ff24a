// What cutting the high spots saves: the curve of pour saved against height cut, with the area and the material that it means, in all and for each spot.
package floor

import (
	"math"
	"sort"
)

// GrindArea is one kind of deck: its cells, the least depth of pour over it, and the most that may be cut off it, metres.
type GrindArea struct {
	Cells []Cell
	Least float64
	Most  float64
}

// HighSpot is one piece of ground to cut.
type HighSpot struct {
	At     Point   `json:"at"`     // where the most comes off
	Height float64 `json:"height"` // what comes off there, metres
	Area   float64 `json:"area"`   // m²
	Volume float64 `json:"volume"` // m³ of deck that comes off
}

// Cut is one step of the curve: the finish plane goes down by Height and what then stands too high is cut.
type Cut struct {
	Height float64    `json:"height"` // metres
	Plane  Plane      `json:"plane"`  // the finish plane afterwards
	Saved  float64    `json:"saved"`  // m³ of pour
	Area   float64    `json:"area"`   // m² to cut
	Volume float64    `json:"volume"` // m³ to cut
	Spots  []HighSpot `json:"spots"`  // the most volume first
}

// mostCuts is how many steps a curve has at most.
const mostCuts = 60

// Grinding is the curve in steps of height, up to where an area would lose more than it may, or 60 steps. The plane keeps its tilt; cut so that every least depth is
// kept, the pour saved is the height times the floor's area, less what is filled again where the deck was cut.
func Grinding(areas []GrindArea, plane Plane, step float64) ([]Cut, error) {
	if !finite(step) || step <= 0 {
		return nil, &Error{Code: "grind-step", Message: "The curve of grinding needs a step above zero.", Remedy: "Give a step such as 1 mm."}
	}
	floorArea, most := 0.0, math.Inf(1)
	for _, area := range areas {
		if !finite(area.Least) || !(area.Most >= 0) {
			return nil, &Error{Code: "grind-limit", Message: "A deck's least depth or the most that may be cut off it isn't a number of zero or more.", Remedy: "Give both; zero where nothing may be cut."}
		}
		depths := DepthsOf(area.Cells, plane)
		if depths.Area == 0 {
			continue
		}
		floorArea += depths.Area
		most = math.Min(most, area.Most+depths.Least-area.Least)
	}
	cuts := []Cut{}
	if floorArea == 0 {
		return cuts, nil
	}
	already := cutTo(areas, plane, 0).Volume
	for i := 1; i <= mostCuts; i++ {
		height := float64(i) * step
		if height > most+sameHeight {
			break
		}
		cut := cutTo(areas, plane, height)
		cut.Saved = height*floorArea + already - cut.Volume
		cuts = append(cuts, cut)
	}
	return cuts, nil
}

// cutTo finds what stands too high once the plane has gone down by a height.
func cutTo(areas []GrindArea, plane Plane, height float64) Cut {
	cut := Cut{Height: height, Plane: Plane{plane.A, plane.B, plane.C - height}, Spots: []HighSpot{}}
	for _, spot := range joinSpots(proudPieces(areas, plane, height)) {
		cut.Area += spot.Area
		cut.Volume += spot.Volume
		cut.Spots = append(cut.Spots, spot)
	}
	sort.SliceStable(cut.Spots, func(i, j int) bool { return cut.Spots[i].Volume > cut.Spots[j].Volume })
	return cut
}

// proud is one flat piece of ground that stands too high.
type proud struct {
	corners   Ring
	low, high Point
	spot      HighSpot
}

func proudPieces(areas []GrindArea, plane Plane, height float64) []proud {
	var pieces []proud
	var depths []float64
	for _, area := range areas {
		for _, cell := range area.Cells {
			depths = depths[:0]
			for i, p := range cell.Corners {
				depths = append(depths, plane.At(p)-cell.Heights[i])
			}
			corners, values := deeper(nil, nil, cell.Corners, depths, area.Least+height, -1)
			if piece, some := newProud(corners, values, area.Least+height); some {
				pieces = append(pieces, piece)
			}
		}
	}
	return pieces
}

// newProud measures a piece; what is thinner than a nanometre or smaller than a square millimetre isn't cut.
func newProud(corners []Point, depths []float64, wanted float64) (proud, bool) {
	piece := proud{corners: corners}
	for i, p := range corners {
		if cut := wanted - depths[i]; cut > piece.spot.Height {
			piece.spot.Height, piece.spot.At = cut, p
		}
	}
	if len(corners) < 3 || piece.spot.Height < sameHeight {
		return piece, false
	}
	for i := 1; i+1 < len(corners); i++ {
		area := Ring{corners[0], corners[i], corners[i+1]}.Area()
		piece.spot.Area += area
		piece.spot.Volume += area * (wanted - (depths[0]+depths[i]+depths[i+1])/3)
	}
	piece.low, piece.high = Bounds(corners)
	return piece, piece.spot.Area > 1e-6
}
