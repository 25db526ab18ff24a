package pour

import "math"

// wedge is a triangle of floor with the depth of the pour and some value, linear over it, at each corner.
type wedge struct {
	value [3]float64
	depth [3]float64
	area  float64
}

func (m *mesh) wedge(t int, rank []float64) wedge {
	tri := &m.triangles[t]
	return wedge{[3]float64{rank[tri.corner[0]], rank[tri.corner[1]], rank[tri.corner[2]]}, tri.depth, tri.area}
}

func (w wedge) volume() float64 { return w.area * (w.depth[0] + w.depth[1] + w.depth[2]) / 3 }

// above is the volume of the part whose value is above a level, m³.
func (w wedge) above(level float64) float64 {
	over := 0
	for _, v := range w.value {
		if v > level {
			over++
		}
	}
	switch over {
	case 0:
		return 0
	case 3:
		return w.volume()
	case 1:
		return w.tip(level, true)
	}
	return w.volume() - w.tip(level, false)
}

// tip is the volume of the corner that alone lies above (or alone not above) a level: the triangle cut off along two sides.
func (w wedge) tip(level float64, above bool) float64 {
	i := 0
	for (w.value[i] > level) != above {
		i++
	}
	b, c := (i+1)%3, (i+2)%3
	tb, tc := (level-w.value[i])/(w.value[b]-w.value[i]), (level-w.value[i])/(w.value[c]-w.value[i])
	return w.area * tb * tc * (w.depth[i] + (tb*(w.depth[b]-w.depth[i])+tc*(w.depth[c]-w.depth[i]))/3)
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
		if math.Abs(missing) <= 1e-9*volume || high-low < 1e-14*(1+math.Abs(low)) {
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
