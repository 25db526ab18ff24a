package engine

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
)

// drawing is SVG path data (W3C SVG 2, 9.3) in millimetres, y downwards as on a board, to the tenth of a millimetre: nothing that an eye could miss,
// and a tenth of the bytes that the spots would be for the page to read.
type drawing struct {
	text []byte
	x, y int64 // the pen, tenths of a millimetre
}

// drawn is the path through each line's spots, closed or open.
func drawn(lines [][]floor.Point, closed bool) string {
	spots := 0
	for _, line := range lines {
		spots += len(line)
	}
	d := drawing{text: make([]byte, 0, 12*spots)}
	for _, line := range lines {
		for i, p := range line {
			if i == 0 {
				d.move('m', p)
			} else {
				d.move(' ', p)
			}
		}
		if closed && len(line) > 0 {
			d.text = append(d.text, 'z')
			d.x, d.y = tenths(line[0].X), tenths(-line[0].Y)
		}
	}
	return string(d.text)
}

// move goes on to a spot, from where the pen is: after an m the spots are joined.
func (d *drawing) move(how byte, p floor.Point) {
	x, y := tenths(p.X), tenths(-p.Y)
	d.text = append(d.text, how)
	d.number(x - d.x)
	d.text = append(d.text, ' ')
	d.number(y - d.y)
	d.x, d.y = x, y
}

// number writes tenths of a millimetre.
func (d *drawing) number(n int64) {
	if n < 0 {
		d.text = append(d.text, '-')
		n = -n
	}
	d.text = strconv.AppendInt(d.text, n/10, 10)
	if n%10 != 0 {
		d.text = append(d.text, '.', byte('0'+n%10))
	}
}

func tenths(metres float64) int64 { return int64(math.Round(metres * 1e4)) }

// toTenths rounds a spot that is only looked at to the tenth of a millimetre.
func toTenths(p floor.Point) floor.Point {
	return floor.Point{X: float64(tenths(p.X)) / 1e4, Y: float64(tenths(p.Y)) / 1e4}
}
