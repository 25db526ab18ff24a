package floor

// Depths is the pour between a deck and a finish plane: volume in cubic metres, areas in square metres, depths in metres. Where the deck
// stands above the plane the pour's depth is zero and the ground counts as dry.
type Depths struct {
	Volume, Area, Dry float64
	Least, Greatest   float64 // of plane less deck over all the ground: Least is below zero where the deck stands proud
	LeastAt           Point
	GreatestAt        Point
}

// Mean is the volume over the poured area.
func (d Depths) Mean() float64 {
	if wet := d.Area - d.Dry; wet > 0 {
		return d.Volume / wet
	}
	return 0
}

// DepthsOf works out the pour over some cells, exactly: every cell is flat, and is split where it meets the plane.
func DepthsOf(cells []Cell, plane Plane) Depths {
	var d Depths
	first := true
	depths := make([]float64, 0, 8)
	for _, cell := range cells {
		depths = depths[:0]
		for i, p := range cell.Corners {
			depth := plane.At(p) - cell.Heights[i]
			depths = append(depths, depth)
			if first || depth < d.Least {
				d.Least, d.LeastAt = depth, p
			}
			if first || depth > d.Greatest {
				d.Greatest, d.GreatestAt = depth, p
			}
			first = false
		}
		area, dry, volume := cellDepths(cell.Corners, depths)
		d.Area += area
		d.Dry += dry
		d.Volume += volume
	}
	return d
}

// cellDepths fans a convex cell into triangles and adds up the part of each below the plane.
func cellDepths(corners []Point, depths []float64) (area, dry, volume float64) {
	for i := 1; i+1 < len(corners); i++ {
		a, b, c := corners[0], corners[i], corners[i+1]
		whole := ((b.X-a.X)*(c.Y-a.Y) - (c.X-a.X)*(b.Y-a.Y)) / 2
		wet, poured := triangleDepths(whole, depths[0], depths[i], depths[i+1])
		area += whole
		dry += whole - wet
		volume += poured
	}
	return
}

// triangleDepths gives a triangle's wet area and its volume, where depth runs straight between its corners. With one or two corners below
// zero, the triangle at the odd corner has the sides' shares cut off by the zero line: area × s·t, mean depth a third of its corner's.
func triangleDepths(area, a, b, c float64) (wet, volume float64) {
	if a >= 0 && b >= 0 && c >= 0 {
		return area, area * (a + b + c) / 3
	}
	if a <= 0 && b <= 0 && c <= 0 {
		return 0, 0
	}
	// Turn the odd one to the front.
	if (b > 0) != (a > 0) && (b > 0) != (c > 0) {
		a, b, c = b, c, a
	} else if (c > 0) != (a > 0) && (c > 0) != (b > 0) {
		a, b, c = c, a, b
	}
	cornerArea := area * (a / (a - b)) * (a / (a - c))
	cornerVolume := cornerArea * a / 3
	if a > 0 {
		return cornerArea, cornerVolume
	}
	return area - cornerArea, area*(a+b+c)/3 - cornerVolume
}
