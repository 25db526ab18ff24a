package pour

import "lowspot/engine/floor"

// CellsUnder is the pour between a deck's cells and a finish plane. Where the deck stands above the plane the pour's depth is zero, and the cell is parted
// where it meets the plane.
func CellsUnder(cells []floor.Cell, plane floor.Plane) []Cell {
	pour := make([]Cell, 0, len(cells))
	for _, c := range cells {
		piece := make([]spot, len(c.Corners))
		for i, p := range c.Corners {
			piece[i] = spot{p, plane.At(p) - c.Heights[i]}
		}
		dry, wet := halve(piece, func(s spot) float64 { return s.depth })
		for i := range dry {
			dry[i].depth = 0
		}
		for _, part := range [][]spot{wet, dry} {
			if len(part) > 2 {
				cell, _ := cellOf(part)
				pour = append(pour, cell)
			}
		}
	}
	return pour
}
