package pour

import "math"

// wedge is a triangle of floor with the depth of the pour and some value, linear over it, at each corner.
type wedge struct {
	value [3]float64
	depth [3]float64
	area  float64
}

func (m *mesh) wedge(t int, rank []float64) *wedge {
	tri := &m.triangles[t]
	return &wedge{[3]float64{rank[tri.corner[0]], rank[tri.corner[1]], rank[tri.corner[2]]}, tri.depth, tri.area}
}

func (w *wedge) volume() float64 { return w.area * (w.depth[0] + w.depth[1] + w.depth[2]) / 3 }

// above is the volume of the part whose value is above a level, m³.
func (w *wedge) above(level float64) float64 {
	a, b, c := w.value[0] > level, w.value[1] > level, w.value[2] > level
	switch {
	case a && b && c:
		return w.volume()
	case !(a || b || c):
		return 0
	case a != b && a != c:
		return w.tip(0, 1, 2, level, a)
	case b != c && b != a:
		return w.tip(1, 2, 0, level, b)
	}
	return w.tip(2, 0, 1, level, c)
}

// tip is the volume above a level that parts corner i, above it or not, from the other two.
func (w *wedge) tip(i, b, c int, level float64, above bool) float64 {
	from, depth := w.value[i], w.depth[i]
	tb, tc := (level-from)/(w.value[b]-from), (level-from)/(w.value[c]-from)
	volume := w.area * tb * tc * (depth + (tb*(w.depth[b]-depth)+tc*(w.depth[c]-depth))/3)
	if above {
		return volume
	}
	return w.volume() - volume
}

// levelWith finds the level between low and high above which the volume lies exactly, where volumeAbove falls from too much at low to nothing at high:
// by false position kept honest with halving (the Illinois rule). It is −Inf where even at low there isn't enough.
func levelWith(volume, low, high float64, volumeAbove func(float64) float64) float64 {
	over, under := volume, volume-volumeAbove(low) // what is missing at high, and at low (below zero: too much)
	if under >= 0 {
		return math.Inf(-1)
	}
	for range 200 {
		level := low + (high-low)*under/(under-over)
		if !(level > low && level < high) {
			level = (low + high) / 2
		}
		missing := volume - volumeAbove(level)
		if math.Abs(missing) <= 1e-10*volume || high-low < 1e-14*(1+math.Abs(low)) {
			return level
		}
		if missing > 0 {
			high, over, under = level, missing, under/2
		} else {
			low, under, over = level, missing, over/2
		}
	}
	return (low + high) / 2
}
