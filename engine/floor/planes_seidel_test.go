// Seidel's randomised incremental linear programme, the oracle for the plane of least volume: R. Seidel, "Small-dimensional linear programming
// and convex hulls made easy", Discrete & Computational Geometry 6 (1991), 423-434. It shares nothing with the active set under test.
package floor

import (
	"math"
	"math/rand"
)

// half is the half space n·v ≥ t in up to three unknowns.
type half struct {
	n [3]float64
	t float64
}

// seidel minimises cost·v over the halves in the first d unknowns, bounded to a box. It reports false where nothing meets them all.
func seidel(halves []half, cost [3]float64, d int, box float64, rng *rand.Rand) ([3]float64, bool) {
	if d == 1 {
		low, high := -box, box
		for _, h := range halves {
			switch {
			case h.n[0] > 1e-12:
				low = math.Max(low, h.t/h.n[0])
			case h.n[0] < -1e-12:
				high = math.Min(high, h.t/h.n[0])
			case h.t > 1e-9:
				return [3]float64{}, false
			}
		}
		if low > high+1e-9 {
			return [3]float64{}, false
		}
		if cost[0] >= 0 {
			return [3]float64{low}, true
		}
		return [3]float64{high}, true
	}
	var v [3]float64
	for k := 0; k < d; k++ {
		v[k] = box
		if cost[k] > 0 {
			v[k] = -box
		}
	}
	order := rng.Perm(len(halves))
	for seen, i := range order {
		h := halves[i]
		if h.n[0]*v[0]+h.n[1]*v[1]+h.n[2]*v[2] >= h.t-1e-12 {
			continue
		}
		// The optimum lies on h: put the unknown of its largest factor in terms of the others and solve there.
		out := 0
		for k := 1; k < d; k++ {
			if math.Abs(h.n[k]) > math.Abs(h.n[out]) {
				out = k
			}
		}
		if math.Abs(h.n[out]) < 1e-12 {
			return v, false
		}
		var below []half
		for _, j := range order[:seen] {
			below = append(below, onto(halves[j], h, out, d))
		}
		for _, sign := range []float64{1, -1} {
			side := half{t: -box}
			side.n[out] = sign
			below = append(below, onto(side, h, out, d))
		}
		lowerCost := onto(half{n: cost}, h, out, d).n
		w, ok := seidel(below, lowerCost, d-1, box, rng)
		if !ok {
			return v, false
		}
		v = [3]float64{}
		rest, m := h.t, 0
		for k := 0; k < d; k++ {
			if k == out {
				continue
			}
			v[k] = w[m]
			rest -= h.n[k] * w[m]
			m++
		}
		v[out] = rest / h.n[out]
	}
	return v, true
}

// onto is a half space cut by the plane h·v = t, with one unknown eliminated.
func onto(a, h half, out, d int) half {
	factor := a.n[out] / h.n[out]
	cut := half{t: a.t - factor*h.t}
	m := 0
	for k := 0; k < d; k++ {
		if k != out {
			cut.n[m] = a.n[k] - factor*h.n[k]
			m++
		}
	}
	return cut
}

// seidelHeight is the least height at the centroid; the round slope limit stands as a polygon of many sides drawn outside (or inside) the circle.
func seidelHeight(g Ground, slopeLimit float64, centroid Point, sides int, inside bool, pin *pinned, rng *rand.Rand) (float64, bool) {
	var halves []half
	for i, p := range g.Points {
		halves = append(halves, half{[3]float64{p.X - centroid.X, p.Y - centroid.Y, 1}, g.Heights[i] + g.Least[i]})
	}
	limit := slopeLimit
	if inside {
		limit *= math.Cos(math.Pi / float64(sides))
	}
	for k := 0; k < sides; k++ {
		angle := 2 * math.Pi * float64(k) / float64(sides)
		halves = append(halves, half{[3]float64{-math.Cos(angle), -math.Sin(angle), 0}, -limit})
	}
	if pin != nil {
		x, y := pin.at.X-centroid.X, pin.at.Y-centroid.Y
		halves = append(halves, half{[3]float64{x, y, 1}, pin.height}, half{[3]float64{-x, -y, -1}, -pin.height})
	}
	v, ok := seidel(halves, [3]float64{0, 0, 1}, 3, 100, rng)
	return v[2], ok
}
