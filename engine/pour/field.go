package pour

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// Field is the walking distance from the nearest exit at the nodes of a square grid over a room, by fast marching: round corners and keep-outs,
// not through them.
type Field struct {
	origin     floor.Point // of node (0, 0)
	step       float64
	across, up int
	marks      []uint8
	distance   []float64 // m; +Inf where no way leads
}

// What is known of a node. The outermost nodes all round are never inside, so that a node inside always has four neighbours.
const (
	inside = 1 << iota
	settled
	shutRight // a wall stands between the node and the one to its right
	shutLeft
	shutUp
	shutDown
	shutAny = shutRight | shutLeft | shutUp | shutDown
)

// finestStep and coarsestStep bound a field's grid, m.
const finestStep, coarsestStep = 0.025, 0.25

// StepFor is a grid step, m, of about twenty thousand nodes over an outline, no finer than 25 mm.
func StepFor(outline floor.Outline) float64 {
	low, high := bounds(outline.Outer)
	step := math.Sqrt((high.X - low.X) * (high.Y - low.Y) / 20000)
	return math.Max(finestStep, math.Min(coarsestStep, step))
}

// Walk measures the walking distance from the nearest of the exits over a grid of the given step, m. Exits on a wall or just outside one are
// taken at the nearest point of the outline.
func Walk(outline floor.Outline, exits []floor.Point, step float64) (*Field, error) {
	if len(exits) == 0 {
		return nil, refuse("exit", "none", "mark the door that the crew leaves by")
	}
	f, err := newField(outline, step)
	if err != nil {
		return nil, err
	}
	m := newMarch(f)
	for _, exit := range exits {
		if err := m.source(outline, exit); err != nil {
			return nil, err
		}
	}
	m.run()
	return f, nil
}

// At is the walking distance to p, m; +Inf where no way leads.
func (f *Field) At(p floor.Point) float64 {
	gx, gy := (p.X-f.origin.X)/f.step, (p.Y-f.origin.Y)/f.step
	i, j := int(math.Floor(gx)), int(math.Floor(gy))
	fx, fy := gx-float64(i), gy-float64(j)
	sum, weight := 0.0, 0.0
	add := func(i, j int, w float64) {
		if i < 0 || j < 0 || i >= f.across || j >= f.up {
			return
		}
		if d := f.distance[j*f.across+i]; d < math.MaxFloat64 {
			sum += w * d
			weight += w
		}
	}
	add(i, j, (1-fx)*(1-fy))
	add(i+1, j, fx*(1-fy))
	add(i, j+1, (1-fx)*fy)
	add(i+1, j+1, fx*fy)
	if weight > 1e-9 {
		return sum / weight
	}
	return f.nearest(p, i, j)
}

// nearest is the distance by way of the best reached node within three steps, for points in a corner that no node fits.
func (f *Field) nearest(p floor.Point, i, j int) float64 {
	best := math.Inf(1)
	for b := max(0, j-2); b <= min(f.up-1, j+3); b++ {
		for a := max(0, i-2); a <= min(f.across-1, i+3); a++ {
			node := f.node(a, b)
			best = math.Min(best, f.distance[b*f.across+a]+steady.Hypot(node.X-p.X, node.Y-p.Y))
		}
	}
	return best
}

// Farthest is the reached node farthest from the exits, and its distance.
func (f *Field) Farthest() (floor.Point, float64) {
	best, at := -1.0, 0
	for n, d := range f.distance {
		if d < math.MaxFloat64 && d > best {
			best, at = d, n
		}
	}
	return f.node(at%f.across, at/f.across), best
}

// Unreached is the floor that no way leads to from any exit: its area, m², and one point in it.
func (f *Field) Unreached() (float64, floor.Point) {
	count, at := 0, -1
	for n, d := range f.distance {
		if f.marks[n]&inside != 0 && d > math.MaxFloat64 {
			count++
			if at < 0 {
				at = n
			}
		}
	}
	if at < 0 {
		return 0, floor.Point{}
	}
	return float64(count) * f.step * f.step, f.node(at%f.across, at/f.across)
}

func (f *Field) node(i, j int) floor.Point {
	return floor.Point{X: f.origin.X + float64(i)*f.step, Y: f.origin.Y + float64(j)*f.step}
}

func newField(outline floor.Outline, step float64) (*Field, error) {
	if len(outline.Outer) < 3 {
		return nil, refuse("outline", number(float64(len(outline.Outer)), 0)+" corners", "give at least three")
	}
	if !(step >= 0.001 && step <= 10) {
		return nil, refuse("grid step", number(step, 4)+" m", "give 0.001 m to 10 m")
	}
	low, high := bounds(outline.Outer)
	wide, deep := (high.X-low.X)/step, (high.Y-low.Y)/step
	if !(wide*deep <= 4e6) || !positive(wide) || !positive(deep) {
		return nil, refuse("outline", number(high.X-low.X, 2)+" m × "+number(high.Y-low.Y, 2)+" m", "give a room that a grid of 4 million nodes covers")
	}
	// Nodes sit half a step off the outline's own corners, where walls drawn to the step won't run through them.
	f := &Field{origin: floor.Point{X: low.X - step/2, Y: low.Y - step/2}, step: step, across: int(math.Ceil(wide)) + 2, up: int(math.Ceil(deep)) + 2}
	nodes := f.across * f.up
	f.marks, f.distance = make([]uint8, nodes), make([]float64, nodes)
	for n := range f.distance {
		f.distance[n] = math.Inf(1)
	}
	f.fill(outline)
	return f, nil
}

// fill finds which nodes are floor, and between which neighbours a wall stands, from where the outline's edges cross the grid's lines.
func (f *Field) fill(outline floor.Outline) {
	crossings := make([][]float64, f.up)
	columns := make([][]float64, f.across)
	for _, e := range edgesOf(outline) {
		f.cross(e.a.X, e.a.Y, e.b.X, e.b.Y, f.origin.Y, crossings)
		f.cross(e.a.Y, e.a.X, e.b.Y, e.b.X, f.origin.X, columns)
	}
	for j, xs := range crossings {
		sortFloats(xs)
		for c := 0; c+1 < len(xs); c += 2 {
			first := max(0, int(math.Ceil((xs[c]-f.origin.X)/f.step)))
			for i := first; i < f.across-1 && f.origin.X+float64(i)*f.step < xs[c+1]; i++ {
				f.marks[j*f.across+i] |= inside
			}
		}
		for _, x := range xs {
			if i := int(math.Floor((x - f.origin.X) / f.step)); i >= 0 && i < f.across {
				f.shut(i, j, shutRight)
				f.shut(i+1, j, shutLeft)
			}
		}
	}
	for i, ys := range columns {
		for _, y := range ys {
			if j := int(math.Floor((y - f.origin.Y) / f.step)); j >= 0 && j < f.up {
				f.shut(i, j, shutUp)
				f.shut(i, j+1, shutDown)
			}
		}
	}
}

// shut marks a wall on one hand of a node, where there is such a node.
func (f *Field) shut(i, j int, side uint8) {
	if i < f.across && j < f.up {
		f.marks[j*f.across+i] |= side
	}
}

// cross adds, for each grid line between two heights, where the edge crosses it.
func (f *Field) cross(ax, ay, bx, by, origin float64, lines [][]float64) {
	if ay > by {
		ax, ay, bx, by = bx, by, ax, ay
	}
	first := max(0, int(math.Ceil((ay-origin)/f.step)))
	for n := first; n < len(lines); n++ {
		at := origin + float64(n)*f.step
		if at >= by {
			return
		}
		lines[n] = append(lines[n], ax+(bx-ax)*(at-ay)/(by-ay))
	}
}
