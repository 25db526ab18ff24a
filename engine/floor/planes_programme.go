// A dual active set for the plane that is lowest at the origin: three constraints carry a trial plane; the most violated constraint enters and the
// one that leaves keeps the multipliers positive; the round slope limit is met by adding the tangent at the slope that passes it.
package floor

import (
	"math"

	"lowspot/engine/steady"
)

// constraint is x·a + y·b + w·c ≥ t. A reading has w = 1, the tangent to a slope limit w = 0.
type constraint struct{ x, y, w, t float64 }

// programme is: least c such that every constraint holds and hypot(a, b) ≤ slopeLimit. The constraints are the ground's points, counted from zero, and
// then the others. Places count from the origin and heights from the top, where rounding is smallest.
type programme struct {
	ground     Ground
	origin     Point
	top        float64
	others     []constraint
	basis      [3]int
	slopeLimit float64
}

const (
	violated   = 1e-11 // how far a constraint must be broken to count, metres
	manyPasses = 60    // passes by the worst violation; from then on by the first, which can't go round in circles (Bland's rule)
	mostPasses = 5000
	sampled    = 16   // one constraint in so many is looked at until none of those is broken; then all are
	roundness  = 1e-9 // how closely the tangents follow the round slope limit; the last sliver is shortened off
)

// row is one constraint.
func (p *programme) row(i int) constraint {
	if n := len(p.ground.Points); i >= n {
		return p.others[i-n]
	}
	at := p.ground.Points[i]
	return constraint{at.X - p.origin.X, at.Y - p.origin.Y, 1, p.ground.target(i) - p.top}
}

func (p *programme) add(row constraint) int {
	p.others = append(p.others, row)
	return len(p.ground.Points) + len(p.others) - 1
}

// pin adds the equality that the plane meets a height, as two constraints.
func (p *programme) pin(pin pinned) {
	x, y, t := pin.at.X-p.origin.X, pin.at.Y-p.origin.Y, pin.height-p.top
	p.add(constraint{x, y, 1, t})
	p.add(constraint{-x, -y, -1, -t})
}

// solve returns the slopes of the lowest plane at the origin, starting from one reading and two tangents either side of its direction.
func (p *programme) solve(first int) (a, b float64) {
	start := p.row(first)
	x, y := start.x, start.y
	length := steady.Hypot(x, y)
	if length == 0 {
		x, y, length = 1, 0, 1
	}
	x, y = x/length, y/length
	p.basis = [3]int{first, p.tangent((x-y)*math.Sqrt2/2, (x+y)*math.Sqrt2/2), p.tangent((x+y)*math.Sqrt2/2, (y-x)*math.Sqrt2/2)}
	stride := sampled
	for pass := 0; pass < mostPasses; pass++ {
		var c float64
		a, b, c = p.vertex()
		entering := p.broken(a, b, c, stride, pass >= manyPasses)
		if entering < 0 && stride > 1 {
			stride = 1
			continue
		}
		if entering < 0 {
			slope := steady.Hypot(a, b)
			if slope <= p.slopeLimit*(1+roundness) {
				break
			}
			entering = p.tangent(a/slope, b/slope)
		}
		if !p.exchange(entering) {
			break
		}
	}
	return a, b
}

// tangent adds the constraint that the slope along a direction of length 1 stays within the limit.
func (p *programme) tangent(x, y float64) int {
	return p.add(constraint{-x, -y, 0, -p.slopeLimit})
}

// vertex is the plane on which the three constraints of the basis hold exactly.
func (p *programme) vertex() (a, b, c float64) {
	r, s, t := p.row(p.basis[0]), p.row(p.basis[1]), p.row(p.basis[2])
	det := determinant(r.x, r.y, r.w, s.x, s.y, s.w, t.x, t.y, t.w)
	return determinant(r.t, r.y, r.w, s.t, s.y, s.w, t.t, t.y, t.w) / det,
		determinant(r.x, r.t, r.w, s.x, s.t, s.w, t.x, t.t, t.w) / det,
		determinant(r.x, r.y, r.t, s.x, s.y, s.t, t.x, t.y, t.t) / det
}

// broken is the constraint that the plane breaks worst, or the first that it breaks; -1 where it keeps them all. Of the points it looks at one in so many.
func (p *programme) broken(a, b, c float64, stride int, first bool) int {
	worst, found := -violated, -1
	height := c + p.top - a*p.origin.X - b*p.origin.Y
	points, heights, least := p.ground.Points, p.ground.Heights, p.ground.Least
	for i := 0; i < len(points); i += stride {
		if slack := a*points[i].X + b*points[i].Y + height - heights[i] - least[i]; slack < worst && !p.carries(i) {
			worst, found = slack, i
			if first {
				return i
			}
		}
	}
	for k, row := range p.others {
		if slack := row.x*a + row.y*b + row.w*c - row.t; slack < worst && !p.carries(len(points)+k) {
			worst, found = slack, len(points)+k
			if first {
				return found
			}
		}
	}
	return found
}

func (p *programme) carries(i int) bool {
	return i == p.basis[0] || i == p.basis[1] || i == p.basis[2]
}

// exchange brings a constraint into the basis in place of the one whose multiplier reaches zero first. The multipliers say how much of the
// origin's weight each constraint carries. It reports false where nothing may leave: then no plane keeps them all.
func (p *programme) exchange(entering int) bool {
	weights := p.carried(constraint{w: 1})
	shares := p.carried(p.row(entering))
	leaving, least := -1, math.Inf(1)
	for i := range p.basis {
		if shares[i] <= 1e-12 {
			continue
		}
		ratio := weights[i] / shares[i]
		if ratio < least || (ratio == least && p.basis[i] < p.basis[leaving]) {
			leaving, least = i, ratio
		}
	}
	if leaving < 0 {
		return false
	}
	p.basis[leaving] = entering
	return true
}

// carried writes a row as a sum of the basis rows: the three factors.
func (p *programme) carried(row constraint) [3]float64 {
	r, s, t := p.row(p.basis[0]), p.row(p.basis[1]), p.row(p.basis[2])
	det := determinant(r.x, s.x, t.x, r.y, s.y, t.y, r.w, s.w, t.w)
	return [3]float64{
		determinant(row.x, s.x, t.x, row.y, s.y, t.y, row.w, s.w, t.w) / det,
		determinant(r.x, row.x, t.x, r.y, row.y, t.y, r.w, row.w, t.w) / det,
		determinant(r.x, s.x, row.x, r.y, s.y, row.y, r.w, s.w, row.w) / det,
	}
}

func determinant(a, b, c, d, e, f, g, h, i float64) float64 {
	return a*(e*i-f*h) - b*(d*i-f*g) + c*(d*h-e*g)
}
