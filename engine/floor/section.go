// A floor cut upright along a line: the deck under it as the surface has it, exact at every triangle's side.
package floor

import "sort"

// Profile is an unbroken stretch of a section: Along are metres from the line's start, rising, Deck the deck's height at each. Between them it is straight.
type Profile struct {
	Along []float64
	Deck  []float64
}

// sameSpot is the length below which two ends of neighbouring pieces are one, metres: far below what a tape reads.
const sameSpot = 1e-6

// Section cuts some cells along the line from one spot to another. Where the line leaves the floor and comes back there is more than one stretch.
func Section(cells []Cell, from, to Point) []Profile {
	if stretches := sectionOnTheLeft(cells, from, to); len(stretches) > 0 {
		return stretches
	}
	// Along an outer wall the floor lies on one hand only.
	return turnedRound(sectionOnTheLeft(cells, to, from), Distance(from, to))
}

// piece is what the line cuts of one cell.
type piece struct{ from, to, deckFrom, deckTo float64 }

func sectionOnTheLeft(cells []Cell, from, to Point) []Profile {
	length := Distance(from, to)
	if !(length > sameSpot) {
		return nil
	}
	line := LineOf(from, to)
	var pieces []piece
	for _, cell := range cells {
		if cut, some := cell.cutAlong(line, length); some {
			pieces = append(pieces, cut)
		}
	}
	sort.Slice(pieces, func(i, j int) bool { return pieces[i].from < pieces[j].from })
	return joinPieces(pieces)
}

// cutAlong is the line's way through a cell. A corner on the line counts as left of it, so that a side on the line belongs to one cell only.
func (c Cell) cutAlong(line Line, length float64) (piece, bool) {
	var along, deck [2]float64
	found := 0
	n := len(c.Corners)
	for i, j := n-1, 0; j < n; i, j = j, j+1 {
		p, q := c.Corners[i], c.Corners[j]
		leftP, leftQ := line.left(p), line.left(q)
		if (leftP >= 0) == (leftQ >= 0) || found == 2 {
			continue
		}
		share := leftP / (leftP - leftQ)
		at := Point{p.X + share*(q.X-p.X), p.Y + share*(q.Y-p.Y)}
		along[found] = (at.X-line.From.X)*line.Ahead.X + (at.Y-line.From.Y)*line.Ahead.Y
		deck[found] = c.Heights[i] + share*(c.Heights[j]-c.Heights[i])
		found++
	}
	if found < 2 {
		return piece{}, false
	}
	if along[0] > along[1] {
		along[0], along[1], deck[0], deck[1] = along[1], along[0], deck[1], deck[0]
	}
	return piece{along[0], along[1], deck[0], deck[1]}.within(length)
}

// left is how far a spot lies left of the line, metres.
func (l Line) left(p Point) float64 {
	return l.Ahead.X*(p.Y-l.From.Y) - l.Ahead.Y*(p.X-l.From.X)
}

// within shortens a piece to the line's own length.
func (p piece) within(length float64) (piece, bool) {
	if p.to-p.from <= 0 || p.to <= 0 || p.from >= length {
		return piece{}, false
	}
	slope := (p.deckTo - p.deckFrom) / (p.to - p.from)
	if p.from < 0 {
		p.deckFrom, p.from = p.deckFrom-slope*p.from, 0
	}
	if p.to > length {
		p.deckTo, p.to = p.deckTo+slope*(length-p.to), length
	}
	return p, true
}

// joinPieces puts pieces end to end.
func joinPieces(pieces []piece) []Profile {
	var stretches []Profile
	for _, p := range pieces {
		if p.to-p.from < sameSpot {
			continue
		}
		last := len(stretches) - 1
		if last < 0 || p.from > stretches[last].end()+sameSpot {
			stretches = append(stretches, Profile{Along: []float64{p.from}, Deck: []float64{p.deckFrom}})
			last++
		}
		stretches[last].Along = append(stretches[last].Along, p.to)
		stretches[last].Deck = append(stretches[last].Deck, p.deckTo)
	}
	return stretches
}

func (p Profile) end() float64 { return p.Along[len(p.Along)-1] }

// At is the deck's height on the line; false beyond the stretch.
func (p Profile) At(along float64) (float64, bool) {
	j := sort.SearchFloat64s(p.Along, along)
	if j == len(p.Along) || along < p.Along[0] {
		return 0, false
	}
	if p.Along[j] == along {
		return p.Deck[j], true
	}
	share := (along - p.Along[j-1]) / (p.Along[j] - p.Along[j-1])
	return p.Deck[j-1] + share*(p.Deck[j]-p.Deck[j-1]), true
}

// turnedRound reads stretches from the line's other end.
func turnedRound(stretches []Profile, length float64) []Profile {
	var turned []Profile
	for i := len(stretches) - 1; i >= 0; i-- {
		var p Profile
		for j := len(stretches[i].Along) - 1; j >= 0; j-- {
			p.Along = append(p.Along, length-stretches[i].Along[j])
			p.Deck = append(p.Deck, stretches[i].Deck[j])
		}
		turned = append(turned, p)
	}
	return turned
}
