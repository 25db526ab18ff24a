// Where the readings end before the walls do, the surface needs heights at the walls themselves: spots of support.
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
