package floor

import (
	"math"
	"slices"
)

// Contour is the lines of one depth, joined end to end; a closed line repeats its first spot.
type Contour struct {
	Depth float64
	Lines [][]Point
}

// Band is the ground whose depth lies between two values, as convex polygons that tile it.
type Band struct {
	From, To float64
	Polygons [][]Point
}

// ContoursOf draws the lines of the given depths over some cells.
func ContoursOf(cells []Cell, plane Plane, depths []float64) []Contour {
	contours := make([]Contour, len(depths))
	joiners := make([]joiner, len(depths))
	var at []float64
	for _, cell := range cells {
		var least, greatest float64
		at, least, greatest = depthsAt(at[:0], cell, plane)
		for k, depth := range depths {
			if depth <= least || depth > greatest {
				continue
			}
			if from, to, some := crossing(cell.Corners, at, depth); some {
				joiners[k].add(from, to)
			}
		}
	}
	for k, depth := range depths {
		contours[k] = Contour{depth, joiners[k].lines()}
	}
	return contours
}

// crossing is where one depth's line enters and leaves a cell. A corner exactly at the depth counts as deeper, so that the line through a
// corner is drawn once.
func crossing(corners []Point, depths []float64, depth float64) (from, to Point, some bool) {
	found := 0
	for i := range corners {
		j := (i + 1) % len(corners)
		if (depths[i] >= depth) == (depths[j] >= depth) {
			continue
		}
		share := (depth - depths[i]) / (depths[j] - depths[i])
		p := Point{corners[i].X + share*(corners[j].X-corners[i].X), corners[i].Y + share*(corners[j].Y-corners[i].Y)}
		if found == 0 {
			from = p
		} else {
			to = p
		}
		found++
	}
	return from, to, found == 2
}

// joiner joins segments into lines by their ends, which agree to a micrometre.
type joiner struct {
	segments []segment
	places   map[[2]int64]int // numbers the places where segments end
}

type segment struct {
	ends   [2]Point
	places [2]int
}

func (j *joiner) add(from, to Point) {
	s := segment{ends: [2]Point{from, to}, places: [2]int{j.place(from), j.place(to)}}
	if s.places[0] != s.places[1] {
		j.segments = append(j.segments, s)
	}
}

func (j *joiner) place(p Point) int {
	key := [2]int64{int64(math.Floor(p.X*1e6 + 0.5)), int64(math.Floor(p.Y*1e6 + 0.5))}
	number, known := j.places[key]
	if !known {
		if j.places == nil {
			j.places = map[[2]int64]int{}
		}
		number = len(j.places)
		j.places[key] = number
	}
	return number
}

// lines follows every segment both ways until its line ends or closes.
func (j *joiner) lines() [][]Point {
	t := tracer{joiner: j, from: make([]int, len(j.places)+1), at: make([]int, 2*len(j.segments)), used: make([]bool, len(j.segments))}
	t.sort()
	lines := [][]Point{}
	for i, s := range j.segments {
		if t.used[i] {
			continue
		}
		t.used[i] = true
		line, end := t.follow([]Point{s.ends[0], s.ends[1]}, s.places[1])
		if end != s.places[0] {
			slices.Reverse(line)
			line, _ = t.follow(line, s.places[0])
		}
		lines = append(lines, line)
	}
	return lines
}

// tracer follows segments from place to place: those that end at place k are at[from[k]:from[k+1]].
type tracer struct {
	*joiner
	from, at []int
	used     []bool
}

// sort puts the segments to their places, in the order in which they came.
func (t *tracer) sort() {
	for _, s := range t.segments {
		t.from[s.places[0]]++
		t.from[s.places[1]]++
	}
	sum := 0
	for k, count := range t.from {
		t.from[k] = sum
		sum += count
	}
	filled := append([]int(nil), t.from...)
	for i, s := range t.segments {
		for _, place := range s.places {
			t.at[filled[place]] = i
			filled[place]++
		}
	}
}

// follow draws the line on from a place, and tells the place where it ends.
func (t *tracer) follow(line []Point, place int) ([]Point, int) {
	for {
		next := -1
		for _, i := range t.at[t.from[place]:t.from[place+1]] {
			if !t.used[i] {
				next = i
				break
			}
		}
		if next < 0 {
			return line, place
		}
		t.used[next] = true
		s := &t.segments[next]
		far := 0
		if s.places[0] == place {
			far = 1
		}
		line = append(line, s.ends[far])
		place = s.places[far]
	}
}

// BandsOf fills the ground between neighbouring depths: one band fewer than depths.
func BandsOf(cells []Cell, plane Plane, depths []float64) []Band {
	bands := make([]Band, len(depths)-1)
	for k := range bands {
		bands[k] = Band{From: depths[k], To: depths[k+1], Polygons: [][]Point{}}
	}
	var at []float64
	var cut depthCutter
	for _, cell := range cells {
		var least, greatest float64
		at, least, greatest = depthsAt(at[:0], cell, plane)
		for k := range bands {
			band := &bands[k]
			if greatest < band.From || least > band.To || (least == band.To && greatest > band.To) {
				continue
			}
			if polygon := cut.between(cell.Corners, at, band.From, band.To); len(polygon) >= 3 {
				band.Polygons = append(band.Polygons, cut.kept.keep(polygon))
			}
			if greatest <= band.To {
				break
			}
		}
	}
	return bands
}

// depthsAt appends the depths at a cell's corners, and tells the least and the greatest of them.
func depthsAt(at []float64, cell Cell, plane Plane) (depths []float64, least, greatest float64) {
	least, greatest = math.Inf(1), math.Inf(-1)
	for i, p := range cell.Corners {
		depth := plane.At(p) - cell.Heights[i]
		at = append(at, depth)
		if depth < least {
			least = depth
		}
		if depth > greatest {
			greatest = depth
		}
	}
	return at, least, greatest
}

// depthCutter keeps its work space from one cell to the next.
type depthCutter struct {
	points, nextPoints []Point
	values, nextValues []float64
	kept               shelf[Point]
}

// between clips a cell to the depths between from and to. What it gives holds until the next cell.
func (c *depthCutter) between(corners []Point, depths []float64, from, to float64) []Point {
	c.points, c.values = deeper(c.points[:0], c.values[:0], corners, depths, from, 1)
	c.nextPoints, c.nextValues = deeper(c.nextPoints[:0], c.nextValues[:0], c.points, c.values, to, -1)
	return c.nextPoints
}

// deeper appends to points and values what is at least as deep as a value, or with sign -1 at most.
func deeper(points []Point, values []float64, corners []Point, depths []float64, value, sign float64) ([]Point, []float64) {
	for i := range corners {
		j := i + 1
		if j == len(corners) {
			j = 0
		}
		a, b := sign*(depths[i]-value), sign*(depths[j]-value)
		if a >= 0 {
			points, values = append(points, corners[i]), append(values, depths[i])
		}
		if (a > 0 && b < 0) || (a < 0 && b > 0) {
			share := a / (a - b)
			points = append(points, Point{corners[i].X + share*(corners[j].X-corners[i].X), corners[i].Y + share*(corners[j].Y-corners[i].Y)})
			values = append(values, value)
		}
	}
	return points, values
}
