package deck

import (
	"math"
	"sort"

	"lowspot/engine/floor"
)

// Sheets is how a sheet deck lies: sheets of Length along x and Width along y in rows from the room's lower left corner, every other row shifted by half a
// sheet. Edge is the spacing of fasteners along joints and walls, Field that between them. Joists are Apart from each other across the sheets' length;
// zero is a sheet laid on another deck, which is fastened all over its field.
type Sheets struct {
	Length float64 `json:"length"`
	Width  float64 `json:"width"`
	Edge   float64 `json:"edge"`
	Field  float64 `json:"field"`
	Apart  float64 `json:"apart"`
}

// UsualSheets are 4 ft by 8 ft over joists at 16 in, fastened every 6 in at edges and 12 in between: common practice.
var UsualSheets = Sheets{Length: 96 * inch, Width: 48 * inch, Edge: 6 * inch, Field: 12 * inch, Apart: 16 * inch}

// Layout is what a sheet deck has: the length of its joints, how many sheets or parts of them lie in the room, and fasteners.
type Layout struct {
	Joints    float64 `json:"joints"` // m
	Pieces    int     `json:"pieces"`
	Fasteners int     `json:"fasteners"`
}

const (
	mostSheets  = 20_000
	mostLooks   = 1e8  // fasteners and sheets times walls
	besideAWall = 1e-6 // m: a joint is looked at on both of its sides, so that a wall is none
)

// LayOut lays sheets over an outline and counts. Joints that run along a wall are none.
func (s Sheets) LayOut(o floor.Outline) (Layout, error) {
	if err := s.check(); err != nil {
		return Layout{}, err
	}
	if err := o.Check(); err != nil {
		return Layout{}, err
	}
	low, high := floor.Bounds(o.Outer)
	area, walls := (high.X-low.X)*(high.Y-low.Y), 0
	for _, ring := range o.Rings() {
		walls += len(ring)
	}
	sheets, fasteners := area/(s.Length*s.Width), area/(s.Field*s.line())
	if sheets > mostSheets || (fasteners+8*sheets)*float64(walls) > mostLooks {
		return Layout{}, refuse("sheets", length(s.Length)+" × "+length(s.Width), "That would take more sheets or fasteners than can be counted.", "Check the sheet's size, the spacing and the room.")
	}
	l := layer{sheets: s, outline: o, low: low, high: high}
	l.lay()
	return l.layout, nil
}

// line is how far the lines of fasteners are apart: joists, or the field's own spacing.
func (s Sheets) line() float64 {
	if s.Apart > 0 {
		return s.Apart
	}
	return s.Field
}

func (s Sheets) check() error {
	for _, side := range []struct {
		field string
		value float64
	}{{"sheets.length", s.Length}, {"sheets.width", s.Width}, {"sheets.edge", s.Edge}, {"sheets.field", s.Field}} {
		if !(side.value >= 0.02 && side.value <= 20) {
			return refuse(side.field, length(side.value), "This lies between 20 mm and 20 m.", "A usual sheet is 1.2 m × 2.4 m (4 ft × 8 ft), fastened every 150 mm (6 in) at edges and 300 mm (12 in) between.")
		}
	}
	if s.Apart != 0 && !(s.Apart >= 0.1 && s.Apart <= 3) {
		return refuse("joists.spacing", length(s.Apart), "Joists stand 100 mm to 3 m apart.", "Measure from middle to middle: 400 mm and 16 in are usual.")
	}
	return nil
}

type layer struct {
	sheets    Sheets
	outline   floor.Outline
	low, high floor.Point
	layout    Layout
}

func (l *layer) lay() {
	s := l.sheets
	for _, ring := range l.outline.Rings() {
		for i := range ring {
			l.layout.Fasteners += spaced(ring.WallLength(i), s.Edge)
		}
	}
	for row := 0; ; row++ {
		bottom := l.low.Y + float64(row)*s.Width
		if bottom >= l.high.Y-besideAWall {
			return
		}
		if row > 0 {
			l.joint(true, bottom, l.low.X, l.high.X)
		}
		l.row(row, bottom, math.Min(bottom+s.Width, l.high.Y))
	}
}

// row lays one row of sheets and its joints upright to it.
func (l *layer) row(row int, bottom, top float64) {
	s := l.sheets
	left := l.low.X
	next := left + s.Length
	if row%2 == 1 {
		next = left + s.Length/2
	}
	for left < l.high.X-besideAWall {
		right := math.Min(next, l.high.X)
		if right < l.high.X-besideAWall {
			l.joint(false, right, bottom, top)
		}
		l.piece(left, right, bottom, top)
		left, next = right, right+s.Length
	}
}

// joint counts the part of a joint that has floor on both of its sides, and the fasteners along both sheets.
func (l *layer) joint(level bool, at, from, to float64) {
	before, after := l.inside(level, at-besideAWall, from, to), l.inside(level, at+besideAWall, from, to)
	for _, part := range common(before, after) {
		l.layout.Joints += part[1] - part[0]
		l.layout.Fasteners += 2 * spaced(part[1]-part[0], l.sheets.Edge)
	}
}

// spaced is how many fasteners a length takes with one at each end.
func spaced(run, spacing float64) int { return int(math.Ceil(run/spacing-1e-9)) + 1 }

// piece counts one sheet, if any of it is floor, and the fasteners between its edges.
func (l *layer) piece(left, right, bottom, top float64) {
	s := l.sheets
	if len(l.inside(true, (bottom+top)/2, left, right)) == 0 && len(l.inside(false, (left+right)/2, bottom, top)) == 0 {
		return
	}
	l.layout.Pieces++
	lines := s.line()
	for k := math.Floor((left-l.low.X)/lines+1e-9) + 1; l.low.X+k*lines < right-besideAWall; k++ {
		for y := bottom + s.Field; y < top-besideAWall; y += s.Field {
			if l.outline.Contains(floor.Point{X: l.low.X + k*lines, Y: y}) {
				l.layout.Fasteners++
			}
		}
	}
}

// inside are the parts of a level or upright line that are floor, by counting how often it crosses walls.
func (l *layer) inside(level bool, at, from, to float64) (parts [][2]float64) {
	var crossings []float64
	for _, ring := range l.outline.Rings() {
		for i := range ring {
			a, b := ring.Wall(i)
			if !level {
				a, b = floor.Point{X: a.Y, Y: a.X}, floor.Point{X: b.Y, Y: b.X}
			}
			if (a.Y > at) != (b.Y > at) {
				crossings = append(crossings, a.X+(b.X-a.X)*((at-a.Y)/(b.Y-a.Y)))
			}
		}
	}
	sort.Float64s(crossings)
	for i := 0; i+1 < len(crossings); i += 2 {
		if start, end := math.Max(from, crossings[i]), math.Min(to, crossings[i+1]); end > start+2*besideAWall {
			parts = append(parts, [2]float64{start, end})
		}
	}
	return parts
}

// common are the parts that two lists of parts share.
func common(a, b [][2]float64) (parts [][2]float64) {
	for _, p := range a {
		for _, q := range b {
			if start, end := math.Max(p[0], q[0]), math.Min(p[1], q[1]); end > start {
				parts = append(parts, [2]float64{start, end})
			}
		}
	}
	return parts
}
