package floor

import (
	"math"
	"sort"
)

// Region is some ground cut into convex pieces (trapezoids with level tops and bottoms, or triangles), counter-clockwise.
type Region []Ring

// RegionOf cuts an outline into convex pieces.
func RegionOf(o Outline) Region {
	return cut(o.Rings(), func(inside []bool) bool { return pouredIn(inside) })
}

// RegionsOf cuts an outline's ground among areas that lie over it: the first region is what no area covers, then one for each area. Where
// areas lie on each other, the later one has the ground.
func RegionsOf(o Outline, areas []Ring) []Region {
	rings := append(o.Rings(), areas...)
	outlines := len(o.Holes) + 1
	regions := make([]Region, len(areas)+1)
	for k := range regions {
		regions[k] = cut(rings, func(inside []bool) bool {
			return pouredIn(inside[:outlines]) && uppermost(inside[outlines:]) == k
		})
	}
	return regions
}

// pouredIn says whether a spot in these rings, the outer one first, is poured.
func pouredIn(inside []bool) bool {
	for _, hole := range inside[1:] {
		if hole {
			return false
		}
	}
	return inside[0]
}

func uppermost(inside []bool) int {
	for k := len(inside); k > 0; k-- {
		if inside[k-1] {
			return k
		}
	}
	return 0
}

// Area is the region's area, square metres.
func (g Region) Area() float64 {
	area := 0.0
	for _, piece := range g {
		area += piece.Area()
	}
	return area
}

// Centroid is the middle of the region's ground.
func (g Region) Centroid() Point {
	area, x, y := 0.0, 0.0, 0.0
	for _, piece := range g {
		for i := 1; i+1 < len(piece); i++ {
			a, b, c := piece[0], piece[i], piece[i+1]
			part := ((b.X-a.X)*(c.Y-a.Y) - (c.X-a.X)*(b.Y-a.Y)) / 2
			area += part
			x += part * (a.X + b.X + c.X) / 3
			y += part * (a.Y + b.Y + c.Y) / 3
		}
	}
	if area == 0 {
		return Point{}
	}
	return Point{x / area, y / area}
}

// side is one wall that isn't level, from its lower end up.
type side struct {
	low, high Point
	ring      int
}

func (s side) at(y float64) float64 {
	if y <= s.low.Y {
		return s.low.X
	}
	if y >= s.high.Y {
		return s.high.X
	}
	return s.low.X + (s.high.X-s.low.X)*(y-s.low.Y)/(s.high.Y-s.low.Y)
}

// slab is a piece under construction between two sides.
type slab struct{ left, right int }

// cut sweeps level lines up through every corner and crossing; between two lines the sides don't cross, so that what stands between
// neighbours is a trapezoid. Trapezoids of the same two sides grow together.
func cut(rings []Ring, wanted func(inside []bool) bool) Region {
	sides := sidesOf(rings)
	levels := levelsOf(rings, sides)
	growing := map[slab]float64{}
	var region Region
	for k := 0; k < len(levels); k++ {
		var standing []slab
		if k+1 < len(levels) {
			standing = between(sides, levels[k], levels[k+1], len(rings), wanted)
		}
		still := make(map[slab]bool, len(standing))
		for _, s := range standing {
			still[s] = true
		}
		for _, s := range inOrder(growing) {
			if !still[s] {
				region = appendPiece(region, sides[s.left], sides[s.right], growing[s], levels[k])
				delete(growing, s)
			}
		}
		for _, s := range standing {
			if _, grows := growing[s]; !grows {
				growing[s] = levels[k]
			}
		}
	}
	return region
}

func inOrder(growing map[slab]float64) []slab {
	list := make([]slab, 0, len(growing))
	for s := range growing {
		list = append(list, s)
	}
	sort.Slice(list, func(i, j int) bool {
		if list[i].left != list[j].left {
			return list[i].left < list[j].left
		}
		return list[i].right < list[j].right
	})
	return list
}

func sidesOf(rings []Ring) []side {
	var sides []side
	for k, ring := range rings {
		for i := range ring {
			a, b := ring[i], ring.corner(i+1)
			switch {
			case a.Y < b.Y:
				sides = append(sides, side{a, b, k})
			case a.Y > b.Y:
				sides = append(sides, side{b, a, k})
			}
		}
	}
	return sides
}

// levelsOf lists the heights in plan of all corners and crossings, once each.
func levelsOf(rings []Ring, sides []side) []float64 {
	var ys []float64
	for _, ring := range rings {
		for _, p := range ring {
			ys = append(ys, p.Y)
		}
	}
	for i, a := range sides {
		for _, b := range sides[:i] {
			if a.ring == b.ring {
				continue
			}
			if at, meet := crossingOf(a.low, a.high, b.low, b.high); meet {
				ys = append(ys, at.Y)
			}
		}
	}
	sort.Float64s(ys)
	kept := ys[:0]
	for _, y := range ys {
		if len(kept) == 0 || y > kept[len(kept)-1] {
			kept = append(kept, y)
		}
	}
	return kept
}

// between lists the wanted ground between two levels from left to right, neighbours grown together.
func between(sides []side, low, high float64, rings int, wanted func([]bool) bool) []slab {
	middle := low + (high-low)/2
	var across []int
	for i, s := range sides {
		if s.low.Y <= low && s.high.Y >= high {
			across = append(across, i)
		}
	}
	sort.SliceStable(across, func(i, j int) bool { return sides[across[i]].at(middle) < sides[across[j]].at(middle) })
	inside := make([]bool, rings)
	var list []slab
	for k := 0; k+1 < len(across); k++ {
		inside[sides[across[k]].ring] = !inside[sides[across[k]].ring]
		if !wanted(inside) {
			continue
		}
		if n := len(list); n > 0 && list[n-1].right == across[k] {
			list[n-1].right = across[k+1]
			continue
		}
		list = append(list, slab{across[k], across[k+1]})
	}
	return list
}

// thinnest is the least width of a piece worth keeping, metres; sides that lie on each other make thinner ones.
const thinnest = 1e-12

func appendPiece(region Region, left, right side, low, high float64) Region {
	bottomLeft, bottomRight := left.at(low), right.at(low)
	topLeft, topRight := left.at(high), right.at(high)
	if math.Max(bottomRight-bottomLeft, topRight-topLeft) < thinnest {
		return region
	}
	piece := Ring{{bottomLeft, low}}
	if bottomRight-bottomLeft >= thinnest {
		piece = append(piece, Point{bottomRight, low})
	}
	piece = append(piece, Point{topRight, high})
	if topRight-topLeft >= thinnest {
		piece = append(piece, Point{topLeft, high})
	}
	return append(region, piece)
}

// crossingOf finds where two sides cross or touch.
func crossingOf(a, b, c, d Point) (Point, bool) {
	sa, sb, sc, sd := turn(c, d, a), turn(c, d, b), turn(a, b, c), turn(a, b, d)
	if (sa > 0 && sb > 0) || (sa < 0 && sb < 0) || (sc > 0 && sd > 0) || (sc < 0 && sd < 0) || sa == sb {
		return Point{}, false
	}
	return toward(a, b, sa/(sa-sb)), true
}
