package pour

import (
	"cmp"
	"math"
	"slices"

	"lowspot/engine/floor"
)

// Room is the floor of one pour: its outline, the points in its doors that the crew may leave by, and the pour over it in convex cells.
type Room struct {
	Outline floor.Outline `json:"outline"`
	Exits   []floor.Point `json:"exits"`
	Cells   []Cell        `json:"cells"`
}

// Sequence is the pour in order: one patch of floor a batch. Exits are the ones used, by their place in the room's list.
type Sequence struct {
	Patches    []Patch `json:"patches"`
	Exits      []int   `json:"exits"`
	LongestGap int     `json:"longestGap"` // the most batches between an edge's being laid and its being met
}

// Patch is the floor that one batch covers.
type Patch struct {
	Batch      int          `json:"batch"`  // from 1
	Volume     float64      `json:"volume"` // m³
	Area       float64      `json:"area"`   // m²
	Polygons   []floor.Ring `json:"polygons"`
	Label      floor.Point  `json:"label"`      // a point in the patch to number it at
	Distance   float64      `json:"distance"`   // m to walk from the exit, mean over the patch
	Exit       int          `json:"exit"`       // the nearest of the exits used
	Neighbours []Neighbour  `json:"neighbours"` // by batch
}

// Neighbour is a patch that shares an edge.
type Neighbour struct {
	Batch  int     `json:"batch"`
	Length float64 `json:"length"` // m
}

// leans are how strongly the order leans towards one single front that starts at the farthest point: 0 is by distance from the exit alone, which
// starts in every far corner at once.
var leans = []float64{0, 0.85}

// Order gives every batch its patch of floor. Floor is ranked by walking distance from the exit less a share of the walking distance from the farthest
// point; what ranks higher is poured earlier. Whatever that share below one, the floor not yet poured always hangs together with the exit: one
// step along the shortest way out lowers the rank. Arms, and the two sides of an island, are poured in turn so that the longest wait of any edge is
// least, and the ways out and shares are tried against each other for the same. A patch no narrower than strip (m) is kept where the front is
// long by pouring along it.
func Order(room Room, volumes []float64, strip float64) (Sequence, error) {
	m, volumes, err := prepare(room, volumes)
	if err != nil {
		return Sequence{}, err
	}
	if !(strip >= 0 && strip < 1e3) {
		return Sequence{}, refuse("strip", number(strip, 3)+" m", "give the narrowest patch to pour, such as 0.5 m, or 0 for any")
	}
	rankings := []ranking{}
	var cut error // why the floor can't be left by the last set of exits tried, which is all of them
	for _, exits := range waysOut(len(room.Exits)) {
		ways, err := newWays(room, m, exits)
		if cut = err; err != nil {
			continue
		}
		for _, lean := range leans {
			rankings = append(rankings, ways.ranking(m, volumes, lean, strip))
		}
	}
	if cut != nil {
		return Sequence{}, cut
	}
	s := leastWait(m, rankings, len(volumes))
	if err := checkVolumes(s, volumes); err != nil {
		return Sequence{}, err
	}
	return s, nil
}

// leastWait draws the most promising ranking, and every other that may yet turn out to wait less.
func leastWait(m *mesh, rankings []ranking, count int) Sequence {
	slices.SortStableFunc(rankings, func(a, b ranking) int {
		return cmp.Or(cmp.Compare(a.longest, b.longest), cmp.Compare(a.places, b.places))
	})
	best := rankings[0].draw(m, count)
	for _, r := range rankings[1:] {
		if r.least >= best.LongestGap || r.longest > 2*best.LongestGap {
			continue
		}
		if s := r.draw(m, count); s.LongestGap < best.LongestGap {
			best = s
		}
	}
	return best
}

// prepare builds the mesh, some thousand triangles whatever the room, and scales the batches to the volume of the cells exactly.
func prepare(room Room, volumes []float64) (*mesh, []float64, error) {
	if len(room.Exits) == 0 {
		return nil, nil, refuse("exit", "none", "mark the door that the crew leaves by")
	}
	if len(room.Exits) > 6 {
		return nil, nil, refuse("exit", number(float64(len(room.Exits)), 0)+" of them", "mark six at the most")
	}
	if len(room.Cells) == 0 || len(room.Outline.Outer) < 3 {
		return nil, nil, refuse("floor", "nothing to pour", "give the outline and the pour over it")
	}
	m, err := newMesh(room.Cells, squareFor(room.Outline))
	if err != nil {
		return nil, nil, err
	}
	sum, floorVolume := 0.0, m.volume()
	for i, v := range volumes {
		if !positive(v) {
			return nil, nil, refuse("batch "+number(float64(i+1), 0), litres(v), "give every batch a volume above zero")
		}
		sum += v
	}
	if !(math.Abs(sum-floorVolume) <= 1e-6*floorVolume) {
		return nil, nil, refuse("batches", litres(sum)+" in all, where the floor takes "+litres(floorVolume), "make batches of the floor's volume")
	}
	scaled := make([]float64, len(volumes))
	for i, v := range volumes {
		scaled[i] = v * floorVolume / sum
	}
	return m, scaled, nil
}

func squareFor(outline floor.Outline) float64 {
	low, high := bounds(outline.Outer)
	wide, deep := high.X-low.X, high.Y-low.Y
	return math.Max(0.1, math.Max(math.Sqrt(wide*deep/300), math.Max(wide, deep)/300))
}

// waysOut lists the sets of exits to try: each alone, and all together.
func waysOut(count int) [][]int {
	sets, all := [][]int{}, []int{}
	for i := range count {
		sets, all = append(sets, []int{i}), append(all, i)
	}
	if count > 1 {
		sets = append(sets, all)
	}
	return sets
}

func checkVolumes(s Sequence, volumes []float64) error {
	for i, p := range s.Patches {
		if math.Abs(p.Volume-volumes[i]) > 1e-6*volumes[i] {
			return refuse("batch "+number(float64(i+1), 0), "its patch takes "+litres(p.Volume)+" of "+litres(volumes[i]), "check the floor's cells: they may overlap or leave gaps")
		}
	}
	return nil
}

// ways are the walking distances that an order is ranked by, at the mesh's points.
type ways struct {
	exits      []int
	fromExit   []float64
	fromFar    []float64
	exitFields []*Field // one an exit
}

func newWays(room Room, m *mesh, exits []int) (*ways, error) {
	w := &ways{exits: exits}
	step := StepFor(room.Outline)
	points := []floor.Point{}
	for _, e := range exits {
		points = append(points, room.Exits[e])
	}
	near, err := Walk(room.Outline, points, step)
	if err != nil {
		return nil, err
	}
	var cut []int
	if w.fromExit, cut = m.walks(near); len(cut) > 0 {
		return nil, cutOff(near, m.points[cut[0]])
	}
	if w.fromFar, err = farWalks(room.Outline, m, near, w.fromExit, step); err != nil {
		return nil, err
	}
	for _, p := range points {
		if len(points) == 1 {
			w.exitFields = []*Field{near}
			break
		}
		field, err := Walk(room.Outline, []floor.Point{p}, step)
		if err != nil {
			return nil, err
		}
		w.exitFields = append(w.exitFields, field)
	}
	return w, nil
}

// farWalks is the walking distance of the mesh's points from the point farthest from the exits; where doors serve parts of the floor that don't hang
// together, from the farthest of each.
func farWalks(outline floor.Outline, m *mesh, near *Field, fromExit []float64, step float64) ([]float64, error) {
	first, _ := near.Farthest()
	starts := []floor.Point{first}
	for {
		away, err := Walk(outline, starts, step)
		if err != nil {
			return nil, err
		}
		walks, cut := m.walks(away)
		if len(cut) == 0 {
			return walks, nil
		}
		farthest := cut[0]
		for _, i := range cut {
			if fromExit[i] > fromExit[farthest] {
				farthest = i
			}
		}
		if len(starts) > 6 {
			return nil, cutOff(near, m.points[farthest])
		}
		starts = append(starts, m.points[farthest])
	}
}

// slit is the most floor, m², that may lie out of the grid's reach: the gap between a wall and what stands nearly against it. No foot fits there; the
// mix finds its own way.
const slit = 0.02

// walks are the walking distances at the mesh's points, a slit's from the floor next to it; cut are the points of floor that no way leads to.
func (m *mesh) walks(f *Field) (walks []float64, cut []int) {
	walks = make([]float64, len(m.points))
	for i, p := range m.points {
		if walks[i] = f.At(p); walks[i] > math.MaxFloat64 {
			cut = append(cut, i)
		}
	}
	if len(cut) == 0 || m.areaAbout(cut) > slit {
		return walks, cut
	}
	reached := slices.Clone(walks)
	for _, i := range cut {
		for k, d := range reached {
			if d < math.MaxFloat64 {
				walks[i] = math.Min(walks[i], d+apart(m.points[i], m.points[k]))
			}
		}
	}
	return walks, nil
}

// areaAbout is the area of the triangles with a corner at any of some points.
func (m *mesh) areaAbout(points []int) float64 {
	area := 0.0
	for _, t := range m.triangles {
		for _, corner := range t.corner {
			if _, found := slices.BinarySearch(points, corner); found {
				area += t.area
				break
			}
		}
	}
	return area
}

func cutOff(near *Field, p floor.Point) error {
	area, at := near.Unreached()
	if area == 0 {
		at = p
	}
	return refuse("exit", "no way leads from it to the floor about ("+number(at.X, 2)+" m, "+number(at.Y, 2)+" m), "+number(area, 2)+" m²",
		"mark a door there too, or plan that part as a room of its own")
}

// joining is the width of a feature (a pipe, a corner) that the front passes without counting as two, m.
const joining = 0.5

// ranking is one order of the floor, worked out as far as it takes to compare it with others.
type ranking struct {
	ways            *ways
	rank            []float64
	rows            []row
	least           int // the wait can't be shorter, in batches
	longest, places int // what it is likely to come to
}

func (w *ways) ranking(m *mesh, volumes []float64, lean, strip float64) ranking {
	rank := make([]float64, len(m.points))
	for i, p := range m.points {
		// In a corner that only one node of the grid reaches, distance is flat; the slight tilt lets every triangle be cut.
		rank[i] = w.fromExit[i] - lean*w.fromFar[i] + 1e-6*(0.6*p.X+0.8*p.Y)
	}
	chains := findChains(m, rank, joining)
	c := interleave(chains, volumes)
	rows := m.planRows(rank, chains, c.shares, strip)
	return ranking{w, rank, rows.rows, c.longest, max(c.longest, rows.longest), c.places + rows.places}
}

// draw works out the patches.
func (r ranking) draw(m *mesh, count int) Sequence {
	s := Sequence{Patches: m.patches(m.lay(r.rank, r.rows, r.ways.fromExit), count, r.ways.fromExit), Exits: r.ways.exits}
	for i := range s.Patches {
		p := &s.Patches[i]
		for _, n := range p.Neighbours {
			s.LongestGap = max(s.LongestGap, n.Batch-p.Batch)
		}
		nearest := math.Inf(1)
		for e, f := range r.ways.exitFields {
			if d := f.At(p.Label); d < nearest {
				nearest, p.Exit = d, r.ways.exits[e]
			}
		}
	}
	return s
}
