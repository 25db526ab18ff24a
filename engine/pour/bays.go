package pour

import (
	"math"

	"lowspot/engine/floor"
)

// Demand is all that a pour is planned from besides the room.
type Demand struct {
	Mix    Mix     `json:"mix"`
	Bucket Bucket  `json:"bucket"`
	Step   float64 `json:"step"`  // m³, a mark of the water measure
	Strip  float64 `json:"strip"` // m, the narrowest patch
	Most   Crew    `json:"most"`  // who and what can be had
	Pace   Pace    `json:"pace"`
}

// Bay is a part of the floor with a pour of its own.
type Bay struct {
	Room     Room     `json:"room"`
	Dams     []Dam    `json:"dams"` // to be set before it is poured
	Area     float64  `json:"area"`
	Volume   float64  `json:"volume"`
	Batches  []Batch  `json:"batches"`
	Sequence Sequence `json:"sequence"`
	Timeline Timeline `json:"timeline"`
	Station  float64  `json:"station"` // m from the bay's way out to where it is mixed
}

// Dam is a straight stop across the floor.
type Dam struct {
	From   floor.Point `json:"from"`
	To     floor.Point `json:"to"`
	Length float64     `json:"length"` // m
}

// mostBays is where splitting ends: beyond it another product or another crew is the better answer.
const mostBays = 12

// Bays plans the floor as one pour where the crew that can be had keeps the flow time and the wet edge, and otherwise dams it off at the shortest
// lines into bays that do, in the order in which they are poured: none is walked on to reach a later one.
func Bays(room Room, d Demand) ([]Bay, error) {
	whole, err := planBay(room, d, d.Pace.Station)
	if err != nil {
		return nil, err
	}
	bays := []Bay{whole}
	for {
		worst := worstBay(bays)
		if worst < 0 {
			return bays, nil
		}
		if len(bays) == mostBays {
			return nil, refuse("crew", "even in "+number(mostBays, 0)+" bays an edge waits "+minutes(bays[worst].Timeline.LongestWait)+" or a batch is "+
				minutes(bays[worst].Timeline.OldestFlow)+" old when it is down", "take more hands, mixers or buckets, or a product with longer times")
		}
		parts, err := splitBay(room, bays[worst], d)
		if err != nil {
			return nil, err
		}
		bays = append(bays[:worst], append(parts, bays[worst+1:]...)...)
	}
}

// worstBay is the bay over its limits whose edges wait longest; −1 where all are kept.
func worstBay(bays []Bay) int {
	worst := -1
	for i, b := range bays {
		if !b.Timeline.Kept && (worst < 0 || b.Timeline.LongestWait > bays[worst].Timeline.LongestWait) {
			worst = i
		}
	}
	return worst
}

func planBay(room Room, d Demand, station float64) (Bay, error) {
	b := Bay{Room: room, Dams: []Dam{}, Station: station}
	for i, c := range room.Cells {
		if err := checkCell(i, c); err != nil {
			return b, err
		}
		area, volume := c.measure()
		b.Area += area
		b.Volume += volume
	}
	var err error
	if b.Batches, err = Batches(b.Volume, d.Mix, d.Bucket, d.Step); err != nil {
		return b, err
	}
	if b.Sequence, err = Order(room, Volumes(b.Batches), d.Strip); err != nil {
		return b, err
	}
	loads, err := Loads(b.Batches, b.Sequence)
	if err != nil {
		return b, err
	}
	pace := d.Pace
	pace.Station = station
	b.Timeline, err = FewestHands(loads, d.Most, pace)
	return b, err
}

// Volume is what the room takes, m³.
func (r Room) Volume() float64 {
	sum := 0.0
	for _, c := range r.Cells {
		_, volume := c.measure()
		sum += volume
	}
	return sum
}

// measure is a cell's area, m², and volume, m³.
func (c Cell) measure() (area, volume float64) {
	piece := spots(c)
	for i := 1; i+1 < len(piece); i++ {
		part := turn(piece[0].Point, piece[i].Point, piece[i+1].Point) / 2
		area += part
		volume += part * (piece[0].depth + piece[i].depth + piece[i+1].depth) / 3
	}
	return area, volume
}

// splitBay dams a bay off along its shortest line that leaves a fair share on either side, and plans both parts: the one farther in comes first.
func splitBay(room Room, b Bay, d Demand) ([]Bay, error) {
	line, found := shortestDam(b.Room.Outline)
	if !found {
		return nil, refuse("crew", "an edge waits "+minutes(b.Timeline.LongestWait)+", and there is no line to dam the floor at", "take more hands, mixers or buckets")
	}
	inner, outer := cutRoom(b.Room, line)
	if len(outer.Exits) == 0 {
		inner, outer = outer, inner
	}
	stations := []float64{b.Station, b.Station}
	if len(inner.Exits) == 0 {
		gate := middleOf(line.dams)
		inner.Exits = []floor.Point{gate}
		field, err := Walk(room.Outline, room.Exits, StepFor(room.Outline))
		if err != nil {
			return nil, err
		}
		stations[0] = d.Pace.Station + field.At(gate)
	}
	parts := []Bay{}
	for i, r := range []Room{inner, outer} {
		if !(r.Volume() > 1e-9) {
			continue // a lift that covers the low ground alone may end before the dam
		}
		part, err := planBay(r, d, stations[i])
		if err != nil {
			return nil, err
		}
		if i == 0 {
			part.Dams = append(append(part.Dams, b.Dams...), line.dams...)
		}
		parts = append(parts, part)
	}
	return parts, nil
}

// middleOf is the middle of the longest of the dams in a line.
func middleOf(dams []Dam) floor.Point {
	best := dams[0]
	for _, d := range dams {
		if d.Length > best.Length {
			best = d
		}
	}
	return floor.Point{X: (best.From.X + best.To.X) / 2, Y: (best.From.Y + best.To.Y) / 2}
}

// cutRoom parts a room along a line across it.
func cutRoom(room Room, line damLine) (a, b Room) {
	outer := counterClockwise(room.Outline.Outer)
	a.Outline.Outer, b.Outline.Outer = splitRing(outer, line)
	for _, hole := range room.Outline.Holes {
		left, right := clipRing(hole, line.to, line.from), clipRing(hole, line.from, line.to)
		if len(left) > 2 && within(a.Outline.Outer, middle(left)) {
			a.Outline.Holes = append(a.Outline.Holes, left)
		} else if len(left) > 2 {
			b.Outline.Holes = append(b.Outline.Holes, left)
		}
		if len(right) > 2 && within(a.Outline.Outer, middle(right)) {
			a.Outline.Holes = append(a.Outline.Holes, right)
		} else if len(right) > 2 {
			b.Outline.Holes = append(b.Outline.Holes, right)
		}
	}
	long := apart(line.from, line.to)
	for _, c := range room.Cells {
		below, above := halve(spots(c), func(s spot) float64 { return turn(line.from, line.to, s.Point) / long })
		for _, piece := range [][]spot{below, above} {
			if len(piece) < 3 {
				continue
			}
			if cell, at := cellOf(piece); within(a.Outline.Outer, at) {
				a.Cells = append(a.Cells, cell)
			} else {
				b.Cells = append(b.Cells, cell)
			}
		}
	}
	for _, exit := range room.Exits {
		if apart(nearestOn(a.Outline.Outer, exit), exit) <= apart(nearestOn(b.Outline.Outer, exit), exit) {
			a.Exits = append(a.Exits, exit)
		} else {
			b.Exits = append(b.Exits, exit)
		}
	}
	return a, b
}

func cellOf(piece []spot) (Cell, floor.Point) {
	c := Cell{}
	for _, s := range piece {
		c.Corners, c.Depths = append(c.Corners, s.Point), append(c.Depths, s.depth)
	}
	return c, middle(c.Corners)
}

// middle is the mean of a ring's corners.
func middle(ring floor.Ring) floor.Point {
	m := floor.Point{}
	for _, p := range ring {
		m.X, m.Y = m.X+p.X/float64(len(ring)), m.Y+p.Y/float64(len(ring))
	}
	return m
}

func counterClockwise(ring floor.Ring) floor.Ring {
	if signedArea(ring) >= 0 {
		return ring
	}
	turned := make(floor.Ring, len(ring))
	for i, p := range ring {
		turned[len(ring)-1-i] = p
	}
	return turned
}

// clipRing keeps what lies to the left of the line from a to b (the Sutherland–Hodgman way).
func clipRing(ring floor.Ring, a, b floor.Point) floor.Ring {
	out := floor.Ring{}
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		sp, sq := turn(a, b, p), turn(a, b, q)
		if sp >= 0 {
			out = append(out, p)
		}
		if (sp > 0 && sq < 0) || (sp < 0 && sq > 0) {
			t := sp / (sp - sq)
			out = append(out, floor.Point{X: p.X + t*(q.X-p.X), Y: p.Y + t*(q.Y-p.Y)})
		}
	}
	if math.Abs(signedArea(out)) < 1e-9 {
		return nil
	}
	return out
}
