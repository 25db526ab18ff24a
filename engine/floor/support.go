// Where the readings end before the walls do, the surface needs heights at the walls themselves: spots of support, and a plain way to tell
// their heights where nothing better is at hand.
package floor

import "math"

// Support gives the spots where the outline needs heights, so that the surface covers it: every corner, and spots along the walls no further
// apart than spacing, metres (zero: corners only). A spot along a wall is left out where a reading lies within half the spacing of it: the
// reading tells more than any estimate. Walls are pairs of indexes into readings followed by support, one for each part of a wall in turn.
func Support(o Outline, readings []Point, spacing float64) (support []Point, walls [][2]int) {
	for _, ring := range o.Rings() {
		first := len(readings) + len(support)
		for i := range ring {
			a, b := ring.Wall(i)
			support = append(support, a)
			parts := 1.0
			if spacing > 0 {
				parts = math.Ceil(Distance(a, b)/spacing - 1e-9)
			}
			for k := 1.0; k < parts; k++ {
				if p := toward(a, b, k/parts); !anyNear(readings, p, spacing/2) {
					support = append(support, p)
				}
			}
		}
		last := len(readings) + len(support) - 1
		for i := first; i < last; i++ {
			walls = append(walls, [2]int{i, i + 1})
		}
		walls = append(walls, [2]int{last, first})
	}
	return support, walls
}

func anyNear(points []Point, p Point, reach float64) bool {
	for _, q := range points {
		if math.Abs(q.X-p.X) <= reach && math.Abs(q.Y-p.Y) <= reach && Distance(p, q) <= reach {
			return true
		}
	}
	return false
}

// Trend estimates the deck's height anywhere from the readings alone: the least-squares plane through three or more, level at their mean
// where there are fewer or all lie on one line, level at zero where there are none. It smooths: it doesn't go through the readings.
func Trend(points []Point, heights []float64) func(Point) float64 {
	plane := LeastSquares(points, heights)
	return plane.At
}

// LeastSquares is the plane with the least sum of squared heights between it and the readings (normal equations about the readings' centre).
// It is level at the mean height where the readings don't fix a slope: fewer than three, or all within a millimetre of one line.
func LeastSquares(points []Point, heights []float64) Plane {
	n := float64(len(points))
	if n == 0 {
		return Plane{}
	}
	var x, y, z float64
	for i, p := range points {
		x, y, z = x+p.X/n, y+p.Y/n, z+heights[i]/n
	}
	var xx, xy, yy, xz, yz float64
	for i, p := range points {
		dx, dy, dz := p.X-x, p.Y-y, heights[i]-z
		xx, xy, yy = xx+dx*dx, xy+dx*dy, yy+dy*dy
		xz, yz = xz+dx*dz, yz+dy*dz
	}
	// The determinant over the trace is about the mean square distance from the best line through the readings, times their number.
	determinant := xx*yy - xy*xy
	if determinant <= oneLine*oneLine*n*(xx+yy) {
		return Plane{C: z}
	}
	return through(Point{x, y}, z, (xz*yy-yz*xy)/determinant, (yz*xx-xz*xy)/determinant)
}
