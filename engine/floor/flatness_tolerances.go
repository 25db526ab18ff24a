// The flatness that standards ask for, as figures: what may lie under a straightedge of what length, and who says so.
package floor

import (
	"math"
	"strconv"
)

const (
	inch = 0.0254
	foot = 0.3048
)

// Tolerance is one rule of flatness: the largest gap allowed under a straightedge, metres. A standard with two edges gives two tolerances, and both hold.
type Tolerance struct {
	Key    string  `json:"key"`
	Name   string  `json:"name"`
	Length float64 `json:"length"` // of the straightedge
	Limit  float64 `json:"limit"`  // the gap that is still allowed
	Source string  `json:"source"`
}

const (
	tileLarge = "ANSI A108.02, read in a reproduction; measured from the required plane"
	tileSmall = "ANSI A108.01 and A108.02, TCNA Handbook; 1/4 in in 10 ft read in an article, 1/16 in in 12 in as recalled, document not at hand"
	bs8204    = "BS 8204-1 and -2, read in a reproduction; a deviation below the edge, in contact with the floor"
	as1884    = "AS 1884:2021 §3.1.4, read in a reproduction"
	din18202  = "DIN 18202 Table 3, read in reproductions; between its lengths by straight lines, to the nearest millimetre"
)

// Tolerances lists the tolerances that the tool ships, in the order to show them.
func Tolerances() []Tolerance {
	list := []Tolerance{
		{"tile-large-10ft", "Tile with an edge of 15 in or more, over 10 ft", 10 * foot, inch / 8, tileLarge},
		{"tile-large-2ft", "Tile with an edge of 15 in or more, over 24 in", 2 * foot, inch / 16, tileLarge},
		{"tile-small-10ft", "Tile with all edges under 15 in, over 10 ft", 10 * foot, inch / 4, tileSmall},
		{"tile-small-1ft", "Tile with all edges under 15 in, over 12 in", foot, inch / 16, tileSmall},
		{"resilient-10ft", "Resilient flooring, over 10 ft", 10 * foot, 3 * inch / 16, "ASTM F710, as recalled, document not at hand"},
		{"bs8204-sr1", "BS 8204 SR1", 2, 0.003, bs8204},
		{"bs8204-sr2", "BS 8204 SR2", 2, 0.005, bs8204},
		{"bs8204-sr3", "BS 8204 SR3", 2, 0.010, bs8204},
		{"as1884-planeness", "AS 1884 planeness", 2, 0.004, as1884},
		{"as1884-abrupt", "AS 1884 abrupt deviation", 0.15, 0.0005, as1884},
	}
	for _, row := range []int{3, 4} {
		digit := string(rune('0' + row))
		for _, length := range []float64{0.1, 1, 2, 4, 10, 15} {
			limit, _ := DIN18202(row, length)
			metres := strconv.FormatFloat(length, 'f', -1, 64)
			list = append(list, Tolerance{"din18202-" + digit + "-" + metres + "m", "DIN 18202 row " + digit + ", over " + metres + " m", length, limit, din18202})
		}
	}
	return list
}

// dinLengths are the measuring distances of DIN 18202 Table 3, metres, with the limits of the rows for finished floors, millimetres.
var (
	dinLengths = [5]float64{0.1, 1, 4, 10, 15}
	dinRows    = map[int][5]float64{3: {2, 4, 10, 12, 15}, 4: {1, 3, 9, 12, 15}}
)

// DIN18202 is the limit of DIN 18202 Table 3 for a row (3 finished floors, 4 finished floors of stricter kind) over a distance between measuring points,
// metres: straight lines between the table's distances, rounded half up to whole millimetres; from 15 m on the limit stays.
func DIN18202(row int, distance float64) (limit float64, err error) {
	limits, known := dinRows[row]
	if !known {
		return 0, &Error{Code: "din-row", Message: "Only rows 3 and 4 of DIN 18202 Table 3 are for finished floors.", Remedy: "Choose row 3, or row 4 for the stricter limits."}
	}
	if !finite(distance) || distance < dinLengths[0] {
		return 0, &Error{Code: "din-distance", Message: "DIN 18202 Table 3 starts at 0.1 m between measuring points.", Remedy: "Give a distance of 0.1 m or more."}
	}
	millimetres := limits[4]
	for i := 1; i < len(dinLengths); i++ {
		if distance <= dinLengths[i] {
			share := (distance - dinLengths[i-1]) / (dinLengths[i] - dinLengths[i-1])
			millimetres = limits[i-1] + share*(limits[i]-limits[i-1])
			break
		}
	}
	// A hair more, so that what is exactly a half in decimals is not lost to rounding in binary.
	return math.Floor(millimetres+0.5+1e-9) / 1000, nil
}
