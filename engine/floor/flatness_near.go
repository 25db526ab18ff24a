// The exact heights along a line near one place, and the largest gap on it.
package floor

import (
	"math"
	"sort"
)

// nearby is what of a surface and an outline an edge can reach from one place.
type nearby struct {
	centre    Point
	radius    float64
	surface   *Surface
	outline   Outline
	triangles [][3]int
	edge      edge
}

func newNearby(surface *Surface, outline Outline, centre Point, radius float64) *nearby {
	n := &nearby{centre: centre, radius: radius, surface: surface, outline: outline}
	for _, t := range surface.Triangles {
		low, high := Bounds([]Point{surface.Points[t[0]], surface.Points[t[1]], surface.Points[t[2]]})
		if low.X <= centre.X+radius && high.X >= centre.X-radius && low.Y <= centre.Y+radius && high.Y >= centre.Y-radius {
			n.triangles = append(n.triangles, t)
		}
	}
	return n
}

// stretch is a part of a line over one triangle: its two ends and their heights.
type stretch struct{ from, to, fromHeight, toHeight float64 }

// gapOn is the line with the largest gap above the bar on it (zero where there is none), sampled at every crease of the surface, one edge's length from each, and on a spacing between.
func (n *nearby) gapOn(line edgeLine, length, between, bar float64) edgeLine {
	line.depth = 0
	n.edge.length = length
	across := func(p Point) Point {
		x, y := p.X-line.through.X, p.Y-line.through.Y
		return Point{x*line.x + y*line.y, y*line.x - x*line.y}
	}
	stretches := n.stretches(across)
	middle := across(n.centre).X
	for _, piece := range piecesInside(n.outline.seen(across), 0) {
		piece = [2]float64{math.Max(piece[0], middle-n.radius), math.Min(piece[1], middle+n.radius)}
		eachStretchRun(stretches, piece, func(creases, heights []float64) {
			along, sampled := resample(creases, heights, length, between)
			for from := 0; from < len(along); {
				gap, next := n.edge.block(along, sampled, from, bar)
				if gap.Depth > bar {
					bar = gap.Depth
					line.depth, line.from, line.at, line.to = gap.Depth, along[gap.From], along[gap.At], along[gap.To]
				}
				from = next
			}
		})
	}
	return line
}

// stretches are the line's parts over the triangles, in order along it.
func (n *nearby) stretches(across func(Point) Point) []stretch {
	var found []stretch
	for _, t := range n.triangles {
		corners := [3]Point{across(n.surface.Points[t[0]]), across(n.surface.Points[t[1]]), across(n.surface.Points[t[2]])}
		from, to, crossed := triangleSpan(corners, 0)
		if !crossed || to-from <= reach {
			continue
		}
		plane, ok := planeOver(corners, [3]float64{n.surface.Heights[t[0]], n.surface.Heights[t[1]], n.surface.Heights[t[2]]})
		if ok {
			found = append(found, stretch{from, to, plane.A*from + plane.C, plane.A*to + plane.C})
		}
	}
	sort.Slice(found, func(i, j int) bool {
		if found[i].from != found[j].from {
			return found[i].from < found[j].from
		}
		return found[i].to < found[j].to
	})
	return found
}

// eachStretchRun hands over the creases of every unbroken run of stretches within a piece of the line.
func eachStretchRun(stretches []stretch, piece [2]float64, use func(creases, heights []float64)) {
	var creases, heights []float64
	flush := func() {
		if len(creases) > 2 {
			use(creases, heights)
		}
		creases, heights = creases[:0], heights[:0]
	}
	for _, s := range stretches {
		slope := (s.toHeight - s.fromHeight) / (s.to - s.from)
		from, to := s.from, s.to
		if from < piece[0] {
			from = piece[0]
		}
		if to > piece[1] {
			to = piece[1]
		}
		if n := len(creases); n > 0 {
			if to <= creases[n-1]+reach {
				continue
			}
			if from > creases[n-1]+1e-6 {
				flush()
			}
		}
		if to-from <= reach {
			continue
		}
		if len(creases) == 0 {
			creases, heights = append(creases, from), append(heights, s.fromHeight+slope*(from-s.from))
		}
		creases, heights = append(creases, to), append(heights, s.fromHeight+slope*(to-s.from))
	}
	flush()
}

// resample adds places between the creases: one edge's length before and after each, and others on a spacing.
func resample(creases, heights []float64, length, between float64) (along, sampled []float64) {
	first, last := creases[0], creases[len(creases)-1]
	along = append(along, creases...)
	for _, u := range creases {
		along = append(along, u-length, u+length)
	}
	for u := first + between; u < last; u += between {
		along = append(along, u)
	}
	sort.Float64s(along)
	kept, k := 0, 0
	for _, u := range along {
		if u < first || u > last || (kept > 0 && u-along[kept-1] <= reach) {
			continue
		}
		for k+2 < len(creases) && creases[k+1] < u {
			k++
		}
		share := (u - creases[k]) / (creases[k+1] - creases[k])
		along[kept] = u
		sampled = append(sampled, heights[k]+share*(heights[k+1]-heights[k]))
		kept++
	}
	return along[:kept], sampled
}
