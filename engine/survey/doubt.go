package survey

import "lowspot/engine/floor"

// Doubt is a square of floor with the standard deviation of the deck's height in its middle, metres. Squares along walls reach past them.
type Doubt struct {
	Corners   [4]floor.Point
	At        floor.Point
	Deviation float64
}

// The fewest and the most squares that make a picture.
const leastSquares, mostSquares = 16, 4000

// DoubtsOver works out the doubt over the floor in about so many squares, for drawing: off the keystroke's path, when somebody looks at it.
// The outline's own *floor.Error comes back where it can't be used.
func (m *Model) DoubtsOver(o floor.Outline, squares int) ([]Doubt, error) {
	g, err := gridOver(o, min(max(squares, leastSquares), mostSquares))
	if err != nil {
		return nil, err
	}
	doubts := make([]Doubt, len(g.cells))
	for i, c := range g.cells {
		x, y := float64(c.column), float64(c.row)
		doubts[i] = Doubt{
			Corners:   [4]floor.Point{g.spot(x, y), g.spot(x+1, y), g.spot(x+1, y+1), g.spot(x, y+1)},
			At:        c.at,
			Deviation: m.Deviation(c.at),
		}
	}
	return doubts, nil
}
