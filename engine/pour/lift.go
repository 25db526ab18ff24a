package pour

import (
	"math"

	"lowspot/engine/floor"
)

// CellsOfLift is one lift out of a pour's cells: what lies between its top and the ground under it, which is the deck, or the lift poured before it
// (nil for the first) where that one lies. Ground that the lift doesn't reach keeps its cells with no depth, so that it can still be walked over.
func CellsOfLift(cells []Cell, lift floor.Lift, under *floor.Lift) []Cell {
	from, overlap := startOf(lift), math.Inf(1)
	if under != nil {
		overlap = startOf(*under)
	}
	list := make([]Cell, 0, len(cells))
	add := func(piece []spot, depth func(spot) float64) {
		if len(piece) < 3 {
			return
		}
		laid := make([]spot, len(piece))
		for i, s := range piece {
			laid[i] = spot{s.Point, math.Max(0, depth(s))}
		}
		cell, _ := cellOf(laid)
		list = append(list, cell)
	}
	for _, c := range cells {
		beside, reached := parted(spots(c), from)
		bare, over := parted(reached, overlap)
		add(beside, func(spot) float64 { return 0 })
		add(bare, func(s spot) float64 { return s.depth - lift.Below })
		add(over, func(spot) float64 { return under.Below - lift.Below })
	}
	return list
}

// startOf is the depth under the finish plane from which a lift covers the deck.
func startOf(lift floor.Lift) float64 {
	if lift.Whole {
		return math.Inf(-1)
	}
	return lift.From
}

// parted cuts a piece where the pour is so deep.
func parted(piece []spot, depth float64) (below, above []spot) {
	switch {
	case len(piece) == 0 || math.IsInf(depth, -1):
		return nil, piece
	case math.IsInf(depth, 1):
		return piece, nil
	}
	return halve(piece, func(s spot) float64 { return s.depth - depth })
}
