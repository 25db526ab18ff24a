// What is measured on a whole outline, keep-outs taken out.
package floor

// Area is the floor's area without its keep-outs, m².
func (o Outline) Area() float64 {
	area := o.Outer.Area()
	for _, hole := range o.Holes {
		area -= hole.Area()
	}
	return area
}

// Centroid is the balance point of the floor without its keep-outs.
func (o Outline) Centroid() Point {
	x, y, area := o.Outer.moments()
	if area < 0 {
		x, y, area = -x, -y, -area
	}
	for _, hole := range o.Holes {
		hx, hy, taken := hole.moments()
		if taken < 0 {
			hx, hy, taken = -hx, -hy, -taken
		}
		x, y, area = x-hx, y-hy, area-taken
	}
	if area <= 0 {
		return o.Outer.Centroid()
	}
	return Point{x / area, y / area}
}

// Contains tells whether p is floor: in the outer ring and in no keep-out. A spot on a wall or on the edge of a keep-out is floor.
func (o Outline) Contains(p Point) bool {
	if !o.Outer.Contains(p) {
		return false
	}
	for _, hole := range o.Holes {
		if _, _, off := hole.NearestWall(p); off > touching && hole.Contains(p) {
			return false
		}
	}
	return true
}

// Rings are all rings of the outline, the outer one first.
func (o Outline) Rings() []Ring { return append([]Ring{o.Outer}, o.Holes...) }

// Perimeter is the length of the walls and of the keep-outs' edges, metres: everywhere the pour meets something upright.
func (o Outline) Perimeter() float64 {
	length := 0.0
	for _, ring := range o.Rings() {
		length += ring.Perimeter()
	}
	return length
}
