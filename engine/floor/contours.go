package floor

import "math"

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
		at = at[:0]
		for i, p := range cell.Corners {
			at = append(at, plane.At(p)-cell.Heights[i])
		}
		for k, depth := range depths {
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
	segments [][2]Point
	ends     map[[2]int64][]int
}

func endKey(p Point) [2]int64 {
	return [2]int64{int64(math.Round(p.X * 1e6)), int64(math.Round(p.Y * 1e6))}
}

func (j *joiner) add(from, to Point) {
	if endKey(from) == endKey(to) {
		return
	}
	if j.ends == nil {
		j.ends = map[[2]int64][]int{}
	}
	i := len(j.segments)
	j.segments = append(j.segments, [2]Point{from, to})
	j.ends[endKey(from)] = append(j.ends[endKey(from)], i)
	j.ends[endKey(to)] = append(j.ends[endKey(to)], i)
}

// lines follows every segment both ways until its line ends or closes.
func (j *joiner) lines() [][]Point {
	used := make([]bool, len(j.segments))
	lines := [][]Point{}
	for i := range j.segments {
		if used[i] {
			continue
		}
		used[i] = true
		line := j.follow([]Point{j.segments[i][0], j.segments[i][1]}, used)
		if endKey(line[0]) != endKey(line[len(line)-1]) {
			reverse(line)
			line = j.follow(line, used)
		}
		lines = append(lines, line)
	}
	return lines
}

func (j *joiner) follow(line []Point, used []bool) []Point {
	for {
		next := -1
		key := endKey(line[len(line)-1])
		for _, i := range j.ends[key] {
			if !used[i] {
				next = i
				break
			}
		}
		if next < 0 {
			return line
		}
		used[next] = true
		far := j.segments[next][0]
		if endKey(far) == key {
			far = j.segments[next][1]
		}
		line = append(line, far)
	}
}

func reverse(line []Point) {
	for a, b := 0, len(line)-1; a < b; a, b = a+1, b-1 {
		line[a], line[b] = line[b], line[a]
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
		at = at[:0]
		least, greatest := math.Inf(1), math.Inf(-1)
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
