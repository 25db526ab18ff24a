package survey

import (
	"math"

	"lowspot/engine/floor"
)

// candidates is about how many spots are weighed up for the next reading.
const candidates = 400

// Next is the spot where one more reading narrows the volume most.
type Next struct {
	At       floor.Point
	Before   float64 // standard deviation of the volume now, m³
	After    float64 // and with a reading there
	Bags     float64 // by how much it narrows what one would buy to have enough nine times in ten
	Enough   bool    // that is less than the share of a bag asked for
	Possible bool    // there is a spot at all
}

// NextReading weighs up spots all over the floor by how much variance a reading there takes away: the squared covariance of its height with
// the volume over the variance of what would be read. That needs no reading, only its place. bagYield is m³; share is of a bag.
func (v *Volume) NextReading(bagYield, share float64) (Next, error) {
	if !(bagYield > 0) || math.IsInf(bagYield, 0) || !within(share, 0, 1e6) {
		return Next{}, &Error{"yield", -1, "A bag can't yield " + number(bagYield) + " m³.", "Give the bag's yield from its sheet."}
	}
	next := Next{Before: v.Deviation, After: v.Deviation}
	best := 0.0
	for _, c := range v.candidates() {
		if gain := v.gain(c); gain > best*(1+1e-9) {
			best, next.At, next.Possible = gain, c.at, true
		}
	}
	next.After = math.Sqrt(positive(v.variance-best) + v.bends)
	next.Bags = z90 * (next.Before - next.After) / bagYield
	next.Enough = next.Bags < share
	return next, nil
}

// candidates are cells that a staff can stand in, evenly thinned.
func (v *Volume) candidates() []cell {
	stride := max(int(math.Round(math.Sqrt(float64(len(v.grid.cells))/candidates))), 1)
	var spots []cell
	for _, c := range v.grid.cells {
		if c.column%stride == stride/2 && c.row%stride == stride/2 && v.outline.Contains(c.at) {
			spots = append(spots, c)
		}
	}
	if spots == nil {
		return v.grid.cells
	}
	return spots
}

// gain is the variance that a reading in the cell would take away.
func (v *Volume) gain(c cell) float64 {
	s := v.model.whole()
	seen := s.viewOf(s.factor.forward(s.seenFrom(c.at)), s.trend.at(c.at))
	error2 := v.model.ReadingError * v.model.ReadingError
	variance := s.variance + s.shared(&seen, &seen)
	if variance <= s.variance*1e-9 {
		return 0
	}
	shared := s.shared(&v.view, &seen) + v.facing(c.key, len(v.keys))
	return shared * shared / (variance + error2)
}
