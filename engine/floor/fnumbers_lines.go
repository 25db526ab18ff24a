// Finding lines of readings that F-numbers can be worked out for: straight, 12 in or 300 mm apart, long enough.
package floor

import (
	"math"
	"sort"
)

// offPlace is how far a reading may lie from where its line wants it, metres: what a mark on a tape gives or takes.
const offPlace = 0.010

// fSpacings are the distances between readings that F-numbers take, metres.
var fSpacings = [...]float64{foot, 0.3}

// FLines finds every straight line of twelve readings or more at 12 in or at 300 mm, as indexes in order along it, each line once and as long as it goes.
func FLines(points []Point) [][]int {
	grid := byCell(points)
	var lines [][]int
	for _, spacing := range fSpacings {
		for i := range points {
			for _, j := range grid.ring(points, i, spacing) {
				if line := grid.lineFrom(points, i, j, spacing); len(line) >= leastFReadings && !alreadyIn(lines, line) {
					lines = append(lines, line)
				}
			}
		}
	}
	return lines
}

// alreadyIn tells whether two neighbours of a line already are neighbours of one of the lines.
func alreadyIn(lines [][]int, line []int) bool {
	for _, other := range lines {
		for k := 1; k < len(other); k++ {
			if (other[k-1] == line[0] && other[k] == line[1]) || (other[k] == line[0] && other[k-1] == line[1]) {
				return true
			}
		}
	}
	return false
}

// cellGrid finds readings by place.
type cellGrid map[[2]int][]int

const gridCell = 0.25 // metres

func cellAt(p Point) [2]int {
	return [2]int{int(math.Floor(p.X / gridCell)), int(math.Floor(p.Y / gridCell))}
}

func byCell(points []Point) cellGrid {
	grid := cellGrid{}
	for i, p := range points {
		grid[cellAt(p)] = append(grid[cellAt(p)], i)
	}
	return grid
}

// around lists the readings within a distance of a spot, in their own order.
func (g cellGrid) around(points []Point, p Point, distance float64) []int {
	low, high := cellAt(Point{p.X - distance, p.Y - distance}), cellAt(Point{p.X + distance, p.Y + distance})
	var found []int
	for x := low[0]; x <= high[0]; x++ {
		for y := low[1]; y <= high[1]; y++ {
			for _, i := range g[[2]int{x, y}] {
				if Distance(points[i], p) <= distance {
					found = append(found, i)
				}
			}
		}
	}
	sort.Ints(found)
	return found
}

// ring lists the readings one spacing from a reading, to the half of a millimetre that LineFNumbers asks for on the whole line.
func (g cellGrid) ring(points []Point, i int, spacing float64) []int {
	var found []int
	for _, j := range g.around(points, points[i], spacing+offPlace) {
		if Distance(points[i], points[j]) >= spacing-offPlace {
			found = append(found, j)
		}
	}
	return found
}

// lineFrom goes on from two readings as far as there are readings; nil where the line could have started earlier.
func (g cellGrid) lineFrom(points []Point, i, j int, spacing float64) []int {
	length := Distance(points[i], points[j])
	dx, dy := spacing*(points[j].X-points[i].X)/length, spacing*(points[j].Y-points[i].Y)/length
	if _, earlier := g.nearest(points, Point{points[i].X - dx, points[i].Y - dy}); earlier {
		return nil
	}
	line := []int{i, j}
	for {
		last := points[line[len(line)-1]]
		next, found := g.nearest(points, Point{last.X + dx, last.Y + dy})
		if !found {
			return line
		}
		line = append(line, next)
		// The direction settles as the line grows.
		whole := Distance(points[i], points[next])
		dx, dy = spacing*(points[next].X-points[i].X)/whole, spacing*(points[next].Y-points[i].Y)/whole
	}
}

func (g cellGrid) nearest(points []Point, p Point) (int, bool) {
	best, near := -1, offPlace
	for _, i := range g.around(points, p, offPlace) {
		if d := Distance(points[i], p); d <= near {
			best, near = i, d
		}
	}
	return best, best >= 0
}
