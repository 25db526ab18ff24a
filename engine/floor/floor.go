// Package floor is the geometry of a room: its outline, the deck's surface from the readings, the finish plane over it, and the exact volume,
// depths and contours between the two. All lengths are metres, areas square metres, volumes cubic metres; x and y are in plan, heights go up.
package floor

// Point is a spot in plan, metres.
type Point struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

// Ring is a closed polygon; the last corner joins the first, which is not repeated. Either orientation.
type Ring []Point

// Outline is a room in plan: one outer ring, and holes where nothing is poured (keep-outs).
type Outline struct {
	Outer Ring   `json:"outer"`
	Holes []Ring `json:"holes"`
}

// Surface is the deck as a triangulated height field: Heights[i] belongs to Points[i]; Triangles index both, counter-clockwise.
type Surface struct {
	Points    []Point
	Heights   []float64
	Triangles [][3]int
}

// Plane is a flat plane z = A·x + B·y + C: slopes without unit, C in metres.
type Plane struct {
	A float64 `json:"a"`
	B float64 `json:"b"`
	C float64 `json:"c"`
}

// At is the plane's height over p, metres.
func (l Plane) At(p Point) float64 { return l.A*p.X + l.B*p.Y + l.C }
