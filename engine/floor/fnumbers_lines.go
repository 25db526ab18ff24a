// Finding lines of readings that F-numbers can be worked out for: straight, 12 in or 300 mm apart, long enough.
package floor

import (
	"math"
	"sort"
)

// offPlace is how far a reading may lie from where its line wants it, metres: what a mark on a tape gives or takes.
const offPlace = 0.010

// mostFReadings is how many readings are looked through. More are a scanned cloud, which has a line in every direction.
const mostFReadings = 20_000

// fSpacings are the distances between readings that F-numbers take, metres.
var fSpacings = [...]float64{foot, 0.3}

// FLines finds every straight line of twelve readings or more at 12 in or at 300 mm, as indexes in order along it, each line once and as long as it goes.
// In more than 20,000 readings it looks for none; the error is an *Error.
func FLines(points []Point) ([][]int, error) {
	if len(points) > mostFReadings {
		return nil, &Error{Code: "f-too-many", Message: "In more than 20,000 readings no lines for F-numbers are looked for.", Remedy: "Take the F-number lines as a survey of their own."}
	}
	grid, known := byCell(points), pairs{}
	var lines [][]int
	for _, spacing := range fSpacings {
		for i := range points {
			for _, j := range grid.ring(points, i, spacing) {
				if line := grid.lineFrom(points, i, j, spacing); len(line) >= leastFReadings && !known.has(line[0], line[1]) {
					lines = append(lines, line)
					known.add(line)
				}
			}
		}
	}
	return lines, nil
}

// pairs are the neighbours on the lines so far.
type pairs map[[2]int]bool

func (p pairs) has(i, j int) bool { return p[[2]int{min(i, j), max(i, j)}] }

func (p pairs) add(line []int) {
	for k := 1; k < len(line); k++ {
		p[[2]int{min(line[k-1], line[k]), max(line[k-1], line[k])}] = true
	}
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
