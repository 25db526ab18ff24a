// Flatness under a straightedge: the largest gap below an edge that rests on two high points of the floor, measured upright between them. The edge
// doesn't bear beyond its supports (no cantilever), so the gap never exceeds that under the upper hull of what lies within the edge's length.
package floor

// ProfileGap is the largest gap on a line of readings; From, At and To count readings.
type ProfileGap struct {
	Depth float64 `json:"depth"` // metres
	From  int     `json:"from"`  // the reading under one support
	At    int     `json:"at"`    // the reading where the gap is
	To    int     `json:"to"`    // the reading under the other support
}

// reach is how far over its length an edge may reach for rounding's sake, metres.
const reach = 1e-9

// LargestProfileGap lays an edge anywhere along a line of readings: greatest of chord(r) − z(r) over p < r < q with q − p ≤ length. Of equal gaps it
// gives the first. Along are the readings' places in ascending order, heights theirs, all metres.
func LargestProfileGap(along, heights []float64, length float64) (ProfileGap, error) {
	if err := checkEdge(length); err != nil {
		return ProfileGap{}, err
	}
	if len(along) != len(heights) {
		return ProfileGap{}, &Error{Code: "readings-unequal", Message: "The line's places and heights aren't of the same number.", Remedy: "Give one height for every place."}
	}
	for i := range along {
		if !finite(along[i], heights[i]) || (i > 0 && along[i] <= along[i-1]) {
			return ProfileGap{}, &Error{Code: "line-order", Message: "The readings of a line must be numbers that go along it one after the other.", Remedy: "Put the readings in order and give each place once."}
		}
	}
	var best ProfileGap
	edge := edge{length: length}
	for from := 0; from < len(along); {
		gap, next := edge.block(along, heights, from, best.Depth)
		if gap.Depth > best.Depth {
			best = gap
		}
		from = next
	}
	return best, nil
}

func checkEdge(length float64) error {
	if !finite(length) || length <= 0 {
		return &Error{Code: "edge-length", Message: "A straightedge needs a length above zero.", Remedy: "Give the length that the standard states, such as 2 m or 10 ft."}
	}
	return nil
}

// edge is a straightedge at work; it keeps its scratch space between lines.
type edge struct {
	length float64
	hull   []int
}

// block tries every place of the edge that starts within one length of a reading, and says where the next block starts. Twice the length holds all
// of them, so where the hull over that shows no gap above the bar, none of them does.
func (e *edge) block(along, heights []float64, from int, bar float64) (best ProfileGap, next int) {
	end := lastWithin(along, from, from, e.length)
	next = end + 1
	if e.underHull(along, heights, from, lastWithin(along, from, end, 2*e.length)) <= bar {
		return best, next
	}
	for start := from; start < next; start++ {
		end = lastWithin(along, start, end, e.length)
		if gap := underEdge(along, heights, start, end); gap.Depth > bar {
			best, bar = gap, gap.Depth
		}
	}
	return best, next
}

// lastWithin is the last reading within a length of the one at start, looked for from a reading known to be.
func lastWithin(along []float64, start, known int, length float64) int {
	for known+1 < len(along) && along[known+1]-along[start] <= length+reach {
		known++
	}
	return known
}

// underEdge is the largest gap below an edge with one support at start: the other is where the edge lies steepest, or it would not clear what is between.
func underEdge(along, heights []float64, start, end int) (best ProfileGap) {
	to, run, rise := start, 0.0, 0.0
	for i := start + 1; i <= end; i++ {
		if u, z := along[i]-along[start], heights[i]-heights[start]; to == start || z*run > rise*u {
			to, run, rise = i, u, z
		}
	}
	for r := start + 1; r < to; r++ {
		if depth := heights[start] + rise/run*(along[r]-along[start]) - heights[r]; depth > best.Depth {
			best = ProfileGap{depth, start, r, to}
		}
	}
	return best
}

// underHull is the largest gap below the upper hull of the readings from first to last.
func (e *edge) underHull(along, heights []float64, first, last int) (worst float64) {
	hull := e.hull[:0]
	for i := first; i <= last; i++ {
		for n := len(hull); n >= 2; n = len(hull) {
			a, b := hull[n-2], hull[n-1]
			if (heights[b]-heights[a])*(along[i]-along[a]) > (heights[i]-heights[a])*(along[b]-along[a]) {
				break
			}
			hull = hull[:n-1]
		}
		hull = append(hull, i)
	}
	e.hull = hull
	for k := 1; k < len(hull); k++ {
		a, b := hull[k-1], hull[k]
		slope := (heights[b] - heights[a]) / (along[b] - along[a])
		for r := a + 1; r < b; r++ {
			if depth := heights[a] + slope*(along[r]-along[a]) - heights[r]; depth > worst {
				worst = depth
			}
		}
	}
	return worst
}
