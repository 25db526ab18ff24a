package survey

import (
	"math"
	"slices"

	"lowspot/engine/floor"
)

// grid is the floor as square cells along its longest wall, so that turning the room turns the cells with it.
type grid struct {
	origin        floor.Point
	along         floor.Point // the unit vector of the columns' count
	step          float64
	columns, rows int
	cells         []cell
}

type cell struct {
	column, row int
	key         int // counts the columns, with room in each row for every difference of two
	at          floor.Point
	area        float64 // of floor in the cell, m²
}

// emptiest is the most cells that the box round the floor may have for each one asked for.
const emptiest = 16

// gridOver cuts an outline into about so many cells.
func gridOver(o floor.Outline, cells int) (*grid, error) {
	if err := o.Check(); err != nil {
		return nil, err
	}
	g := &grid{along: longestWall(o.Outer)}
	rings := g.turned(o)
	low, high := floor.Bounds(rings[0])
	g.origin = low
	width, height := high.X-low.X, high.Y-low.Y
	g.step = math.Sqrt(math.Max(o.Area(), width*height/emptiest) / float64(cells))
	if rows := math.Round(height / g.step); rows > 0 {
		g.step = height / rows // so that a plain room is cut evenly
	}
	g.columns, g.rows = int(math.Ceil(width/g.step-1e-9)), int(math.Ceil(height/g.step-1e-9))
	areas := g.areas(rings)
	for row := range g.rows {
		for column := range g.columns {
			if area := areas[row*g.columns+column]; area > 0 {
				g.cells = append(g.cells, cell{column, row, row*(2*g.columns-1) + column, g.middleOf(column, row), area})
			}
		}
	}
	return g, nil
}

func longestWall(r floor.Ring) floor.Point {
	best, along := 0.0, floor.Point{X: 1}
	for i := range r {
		a, b := r.Wall(i)
		if d := floor.Distance(a, b); d > best*(1+1e-9) {
			best, along = d, floor.Point{X: (b.X - a.X) / d, Y: (b.Y - a.Y) / d}
		}
	}
	return along
}

func (g *grid) turned(o floor.Outline) []floor.Ring {
	rings := make([]floor.Ring, 0, len(o.Holes)+1)
	for _, ring := range o.Rings() {
		turned := make(floor.Ring, len(ring))
		for i, p := range ring {
			turned[i] = floor.Point{X: p.X*g.along.X + p.Y*g.along.Y, Y: p.Y*g.along.X - p.X*g.along.Y}
		}
		rings = append(rings, turned)
	}
	return rings
}

// spot is the place that lies so many steps along and across.
func (g *grid) spot(columns, rows float64) floor.Point {
	x, y := g.origin.X+columns*g.step, g.origin.Y+rows*g.step
	return floor.Point{X: x*g.along.X - y*g.along.Y, Y: x*g.along.Y + y*g.along.X}
}

func (g *grid) middleOf(column, row int) floor.Point {
	return g.spot(float64(column)+0.5, float64(row)+0.5)
}

// areas lays level strips through the rings and adds up the floor that each cell has of them. Strips end at rows and at corners, so between
// two walls each is a trapezoid, whose area is its middle length times its thickness: exact, but for how a slanting end falls to the cells.
func (g *grid) areas(rings []floor.Ring) []float64 {
	areas := make([]float64, g.columns*g.rows)
	ends := g.stripEnds(rings)
	for i, end := range ends[1:] {
		thick := end - ends[i]
		y := ends[i] + thick/2
		row := min(max(int((y-g.origin.Y)/g.step), 0), g.rows-1)
		walls := crossings(rings, y)
		for k := 0; k+1 < len(walls); k += 2 {
			g.lay(areas[row*g.columns:][:g.columns], (walls[k]-g.origin.X)/g.step, (walls[k+1]-g.origin.X)/g.step, thick*g.step)
		}
	}
	return areas
}

// stripEnds are the levels of all corners and of four lines a row, in order.
func (g *grid) stripEnds(rings []floor.Ring) []float64 {
	var ends []float64
	for quarter := range 4*g.rows + 1 {
		ends = append(ends, g.origin.Y+float64(quarter)*g.step/4)
	}
	for _, ring := range rings {
		for _, p := range ring {
			ends = append(ends, p.Y)
		}
	}
	slices.Sort(ends)
	return ends
}

// lay adds a strip from one place to another, in steps, to the cells it lies in.
func (g *grid) lay(row []float64, from, to, area float64) {
	for column := max(int(from), 0); column < g.columns && float64(column) < to; column++ {
		left, right := math.Max(from, float64(column)), math.Min(to, float64(column+1))
		if right > left {
			row[column] += (right - left) * area
		}
	}
}

// crossings are where the level line at y meets walls, in order: in and out of the floor by turns.
func crossings(rings []floor.Ring, y float64) []float64 {
	var at []float64
	for _, ring := range rings {
		for i := range ring {
			a, b := ring.Wall(i)
			if (a.Y > y) == (b.Y > y) {
				continue
			}
			x := a.X + (y-a.Y)/(b.Y-a.Y)*(b.X-a.X)
			k := len(at)
			for at = append(at, x); k > 0 && at[k-1] > x; k-- {
				at[k] = at[k-1]
			}
			at[k] = x
		}
	}
	return at
}

// lags is the covariance of two cells by how far their keys lie apart: one line for each number of rows, from all columns left to all right.
func (g *grid) lags(covariance Covariance) []float64 {
	line := 2*g.columns - 1
	table := make([]float64, line*g.rows)
	for row := range g.rows {
		for column := range g.columns {
			c := covariance(g.step * math.Sqrt(float64(column*column+row*row)))
			middle := row*line + g.columns - 1
			table[middle+column], table[middle-column] = c, c
		}
	}
	return table
}

// lag looks two cells up in the table by their keys.
func (g *grid) lag(table []float64, a, b int) float64 {
	apart := a - b
	if apart < 0 {
		apart = -apart
	}
	return table[apart+g.columns-1]
}
