package deck

import (
	"math"

	"lowspot/engine/quantity"
)

// The pull-off test by ASTM C1583: a 2 in (50 mm) disk glued on, the core cut at least 1/2 in (10 mm) into the deck, pulled at 5 ± 2 psi/s. Values as recalled,
// document not at hand.
const (
	PullOffDisk      = 2 * inch
	PullOffCore      = inch / 2
	PullOffRate      = 5 * psi // Pa/s
	PullOffRateSlack = 2 * psi // Pa/s, either way
)

// PullOffTarget is the tensile strength that an ordinary deck should show, 200 psi (1.379 MPa): common practice, as recalled from ICRI and ACI guides.
const PullOffTarget = 200 * psi

// PullOff is the stress, Pa, at which a disk (diameter, m) came off under a force (N): load over π d²/4.
func PullOff(force, diameter float64) (float64, error) {
	if !from0(force) || force > 1e6 {
		return 0, refuse("pull_off.force", quantity.Write(force, quantity.Force, quantity.Metric), "The force lies between 0 and 1 MN.", "Read the gauge at the moment the disk came off.")
	}
	if !(diameter >= 0.01 && diameter <= 0.2) {
		return 0, refuse("pull_off.disk", length(diameter), "A disk is between 10 mm and 200 mm across.", "The usual one is 50 mm (2 in).")
	}
	return force / (math.Pi * diameter * diameter / 4), nil
}
