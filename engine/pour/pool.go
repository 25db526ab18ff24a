package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// pool gives equal points equal numbers, and finds the points that lie on a side, by squares of a grid.
type pool struct {
	points []floor.Point
	square float64
	filed  map[[2]int][]int
}

func newPool(square float64) *pool { return &pool{square: square, filed: map[[2]int][]int{}} }

func (p *pool) add(at floor.Point) int {
	p.points = append(p.points, at)
	return len(p.points) - 1
}

func (p *pool) key(at floor.Point) [2]int {
	return [2]int{int(math.Floor(at.X / p.square)), int(math.Floor(at.Y / p.square))}
}

// id is the number of the point within rounding of at, which is filed if it is new. It is filed under every square that it touches.
func (p *pool) id(at floor.Point) int {
	for _, known := range p.filed[p.key(at)] {
		if q := p.points[known]; math.Abs(q.X-at.X) < same && math.Abs(q.Y-at.Y) < same {
			return known
		}
	}
	id := p.add(at)
	low, high := p.key(floor.Point{X: at.X - same, Y: at.Y - same}), p.key(floor.Point{X: at.X + same, Y: at.Y + same})
	for x := low[0]; x <= high[0]; x++ {
		for y := low[1]; y <= high[1]; y++ {
			key := [2]int{x, y}
			p.filed[key] = append(p.filed[key], id)
		}
	}
	return id
}

// hang puts into a convex piece's ring the points of other pieces that lie on its sides, with the depth there.
func (p *pool) hang(ring []int, piece []spot) ([]int, []float64) {
	nearby := p.within(extent(piece))
	type hung struct {
		id    int
		t     float64
		depth float64
	}
	full, depths := make([]int, 0, len(ring)+4), make([]float64, 0, len(ring)+4)
	var on []hung
	add := func(id int, depth float64) {
		if len(full) == 0 || full[len(full)-1] != id {
			full, depths = append(full, id), append(depths, depth)
		}
	}
	for i, from := range ring {
		next := (i + 1) % len(ring)
		to := ring[next]
		add(from, piece[i].depth)
		a, b := p.points[from], p.points[to]
		long := apart(a, b)
		on = on[:0]
		for _, id := range nearby {
			q := p.points[id]
			if math.Abs(turn(a, b, q)) >= same*long {
				continue
			}
			t := ((q.X-a.X)*(b.X-a.X) + (q.Y-a.Y)*(b.Y-a.Y)) / (long * long)
			if t > 0 && t < 1 && !slices.Contains(ring, id) {
				on = append(on, hung{id, t, piece[i].depth + t*(piece[next].depth-piece[i].depth)})
			}
		}
		slices.SortFunc(on, func(a, b hung) int { return cmp.Compare(a.t, b.t) })
		for _, h := range on {
			add(h.id, h.depth)
		}
	}
	for len(full) > 1 && full[0] == full[len(full)-1] {
		full, depths = full[:len(full)-1], depths[:len(depths)-1]
	}
	return full, depths
}

// within lists the points filed under the squares between two corners.
func (p *pool) within(low, high floor.Point) []int {
	from, to := p.key(low), p.key(high)
	if from == to {
		return p.filed[from]
	}
	list := []int{}
	for i := from[0]; i <= to[0]; i++ {
		for j := from[1]; j <= to[1]; j++ {
			list = append(list, p.filed[[2]int{i, j}]...)
		}
	}
	return list
}
