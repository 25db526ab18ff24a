package floor

// TrendOf is the least-squares plane through some heights; level at their mean where the places lie on a line or are fewer than three.
func TrendOf(points []Point, heights []float64) Plane {
	n := float64(len(points))
	if n == 0 {
		return Plane{}
	}
	var mx, my, mz float64
	for i, p := range points {
		mx, my, mz = mx+p.X/n, my+p.Y/n, mz+heights[i]/n
	}
	var xx, xy, yy, xz, yz float64
	for i, p := range points {
		x, y, z := p.X-mx, p.Y-my, heights[i]-mz
		xx, xy, yy = xx+x*x, xy+x*y, yy+y*y
		xz, yz = xz+x*z, yz+y*z
	}
	// The determinant over the square of the trace is a quarter for a round spread and zero for a line.
	determinant, trace := xx*yy-xy*xy, xx+yy
	if determinant <= 1e-6*trace*trace {
		return Plane{C: mz}
	}
	a, b := (xz*yy-yz*xy)/determinant, (yz*xx-xz*xy)/determinant
	return Plane{A: a, B: b, C: mz - a*mx - b*my}
}
