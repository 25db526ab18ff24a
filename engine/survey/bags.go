package survey

import (
	"math"

	"lowspot/engine/steady"
)

// Bags is how many to buy for a chance of one in two, nine in ten, ninety-nine in a hundred that they are enough.
type Bags struct {
	Half, Ninety, NinetyNine int
	Spread                   float64 // standard deviation over mean of what is needed, all causes together
}

// BagsFor puts together what is in doubt: the volume (mean and standard deviation, m³), what a bag yields and how it is dosed (tolerances as
// shares, 0.03 for ±3 %, taken as two standard deviations: common practice for limits). The causes don't hang together, so their shares add
// in quadrature; what is needed can't fall below zero, so it is taken as lognormal with that mean and spread. Whole bags, rounded up.
// Rooms of one job are surveyed apart: their means add, and their deviations in quadrature.
func BagsFor(volumeMean, volumeDeviation, yieldTolerance, dosingTolerance, bagYield float64) (Bags, error) {
	switch {
	case !within(volumeMean, 0, 1e6) || !within(volumeDeviation, 0, 1e6):
		return Bags{}, &Error{"volume", -1, "The volume can't be " + number(volumeMean) + " ± " + number(volumeDeviation) + " m³.", "Check the readings and the plane."}
	case !within(yieldTolerance, 0, 1) || !within(dosingTolerance, 0, 1):
		return Bags{}, &Error{"tolerance", -1, "A tolerance must lie between 0 and 100 %.", "Give it as a share, such as 3 %."}
	case !within(bagYield, 1e-6, 1e6):
		return Bags{}, &Error{"yield", -1, "A bag can't yield " + number(bagYield) + " m³.", "Give the bag's yield from its sheet."}
	case volumeMean == 0:
		return Bags{}, nil
	}
	volume, yield, dosing := volumeDeviation/volumeMean, yieldTolerance/2, dosingTolerance/2
	spread := math.Sqrt(volume*volume + yield*yield + dosing*dosing)
	width := math.Sqrt(steady.Log(1 + spread*spread))
	middle := volumeMean / bagYield / math.Sqrt(1+spread*spread)
	return Bags{
		Half:       whole(middle),
		Ninety:     whole(middle * steady.Exp(z90*width)),
		NinetyNine: whole(middle * steady.Exp(z99*width)),
		Spread:     spread,
	}, nil
}

// whole rounds up, but not for a billionth of a bag.
func whole(bags float64) int { return int(math.Ceil(bags*(1-1e-9) - 1e-9)) }
