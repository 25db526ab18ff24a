// How high the deck stands at a spot.
package floor

import "math"

// HeightAt is the deck's height at p, metres; false where p lies beyond the surface. It looks at every triangle: use a Finder for many spots.
func (s *Surface) HeightAt(p Point) (float64, bool) {
	for t := range s.Triangles {
		if height, inside := s.heightIn(t, p); inside {
			return height, true
		}
	}
	return 0, false
}

// heightIn is the height at p by triangle t; false where p lies outside it. A spot on a side lies in the triangles on both hands.
func (s *Surface) heightIn(t int, p Point) (float64, bool) {
	i, j, k := s.Triangles[t][0], s.Triangles[t][1], s.Triangles[t][2]
	a, b, c := s.Points[i], s.Points[j], s.Points[k]
	whole := turn(a, b, c)
	if whole <= 0 {
		return 0, false
	}
	shareA, shareB, shareC := turn(b, c, p)/whole, turn(c, a, p)/whole, turn(a, b, p)/whole
	if shareA < -rounding || shareB < -rounding || shareC < -rounding {
		return 0, false
	}
	return shareA*s.Heights[i] + shareB*s.Heights[j] + shareC*s.Heights[k], true
}

// rounding is how far outside a triangle a spot may seem to lie, as a share of its height, when it lies on a side.
const rounding = 1e-9

// Finder looks heights up quickly: the triangles of a surface by the squares of a grid.
type Finder struct {
	surface   *Surface
	low       Point
	square    float64
	columns   int
	triangles [][]int // of each square, row by row
}

// NewFinder sorts a surface's triangles into squares, about as many as there are triangles.
func NewFinder(s *Surface) *Finder {
	low, high := Bounds(s.Points)
	width, depth := high.X-low.X, high.Y-low.Y
	f := &Finder{surface: s, low: low, square: math.Sqrt(width * depth / float64(len(s.Triangles)+1))}
	longest := math.Max(width, depth) / 1000
	if f.square < longest {
		f.square = longest
	}
	if f.square == 0 {
		f.square = 1
	}
	f.columns = int(width/f.square) + 1
	f.triangles = make([][]int, f.columns*(int(depth/f.square)+1))
	for t, corners := range s.Triangles {
		from, to := Bounds([]Point{s.Points[corners[0]], s.Points[corners[1]], s.Points[corners[2]]})
		firstColumn, firstRow := f.squareOf(from)
		lastColumn, lastRow := f.squareOf(to)
		for row := firstRow; row <= lastRow; row++ {
			for column := firstColumn; column <= lastColumn; column++ {
				at := row*f.columns + column
				f.triangles[at] = append(f.triangles[at], t)
			}
		}
	}
	return f
}

func (f *Finder) squareOf(p Point) (column, row int) {
	return int(math.Floor((p.X - f.low.X) / f.square)), int(math.Floor((p.Y - f.low.Y) / f.square))
}

// HeightAt is the deck's height at p, metres; false where p lies beyond the surface.
func (f *Finder) HeightAt(p Point) (float64, bool) {
	column, row := f.squareOf(p)
	if column < 0 || column >= f.columns || row < 0 || row*f.columns >= len(f.triangles) {
		return 0, false
	}
	for _, t := range f.triangles[row*f.columns+column] {
		if height, inside := f.surface.heightIn(t, p); inside {
			return height, true
		}
	}
	return 0, false
}
