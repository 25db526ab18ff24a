// Heights all round the new floor: what each door, stair, flange and drain gets from it. Every height is metres above the same datum.
package floor

import (
	"math"
	"strconv"
)

// StepClass is what a change in level at a door asks for.
type StepClass string

// The classes of ADA Standards §303: up to 1/4 in may stay upright; up to 1/2 in takes a bevel no steeper than 1:2; more takes a ramp.
const (
	StepFlush StepClass = "flush" // nothing to do: 1/4 in or less, upright
	StepBevel StepClass = "bevel"
	StepRamp  StepClass = "ramp"
)

const (
	uprightMost  = inch / 4 // ADA Standards §303.2
	bevelMost    = inch / 2 // ADA Standards §303.3
	bevelSlope   = 2.0      // run to rise, ADA Standards §303.3
	rampSlope    = 12.0     // run to rise, ADA Standards §405.2, as recalled, document not at hand
	sameHeight   = 1e-9     // metres: rounding, far below what a tape reads
	riserSpread  = 3 * inch / 8
	riserHighest = 7.75 * inch
)

// Step is the change in level at a door.
type Step struct {
	Height   float64   `json:"height"` // finished floor less the floor beyond, metres; below zero the new floor is lower
	Class    StepClass `json:"class"`
	Run      float64   `json:"run"`      // length of the bevel or ramp that takes up the whole height, metres; zero where none is needed
	LeastRun float64   `json:"leastRun"` // of the bevel where 1/4 in of the height stays upright; the same as Run for a ramp
}

// StepAt compares the finished floor at a door with the floor beyond it.
func StepAt(finished, beyond float64) Step {
	step := Step{Height: finished - beyond}
	rise := math.Abs(step.Height)
	switch {
	case rise <= uprightMost+sameHeight:
		step.Class = StepFlush
	case rise <= bevelMost+sameHeight:
		step.Class, step.Run, step.LeastRun = StepBevel, bevelSlope*rise, bevelSlope*(rise-uprightMost)
	default:
		step.Class, step.Run, step.LeastRun = StepRamp, rampSlope*rise, rampSlope*rise
	}
	return step
}

// Leaf is how a door leaf clears the finished floor.
type Leaf struct {
	Clearance float64 `json:"clearance"` // underside of the leaf less the finished floor, metres; below zero the leaf fouls it
	Trim      float64 `json:"trim"`      // to take off the leaf so that the wanted clearance is there, metres
}

// LeafOver says what a door leaf has left over the finished floor, and what to take off for a wanted clearance.
func LeafOver(underside, finished, wanted float64) Leaf {
	leaf := Leaf{Clearance: underside - finished}
	if short := wanted - leaf.Clearance; short > sameHeight {
		leaf.Trim = short
	}
	return leaf
}

// Extension is what a flange, drain or pipe collar needs so that its top meets the finished floor: metres to add; below zero it stands proud by that
// much. Codes give no height over the finished floor; a flange on it, or 1/4 in above, is common practice.
func Extension(finished, top float64) float64 { return finished - top }

// Flight is a stair's risers once the floor at its foot or head has changed.
type Flight struct {
	Risers    []float64 `json:"risers"`    // metres, from the foot up
	Variation float64   `json:"variation"` // highest less lowest
	Uniform   bool      `json:"uniform"`   // within 3/8 in: IBC §1009.3.1, IRC R311.7.5.1
	Low       bool      `json:"low"`       // no riser above 7 3/4 in: IRC R311.7.5.1
}

// FlightAfter changes a flight's risers: raising the floor at the foot takes from the first riser, raising the one at the head adds to the last.
func FlightAfter(risers []float64, footRaised, headRaised float64) (Flight, error) {
	if len(risers) == 0 {
		return Flight{}, &Error{Code: "no-risers", Message: "The stair has no risers.", Remedy: "Give the height of every riser, from the foot up."}
	}
	if !finite(footRaised, headRaised) {
		return Flight{}, &Error{Code: "floor-raised", Message: "By how much the floor rises isn't a number.", Remedy: "Give how much the finished floor rises at the stair."}
	}
	f := Flight{Risers: append([]float64{}, risers...)}
	f.Risers[0] -= footRaised
	f.Risers[len(risers)-1] += headRaised
	low, high := f.Risers[0], f.Risers[0]
	for i, r := range f.Risers {
		if !finite(r) || r <= 0 {
			return Flight{}, &Error{Code: "riser-height", Message: "Riser " + strconv.Itoa(i+1) + " has no height above the floor.", Remedy: "Check the risers and how much the floor rises."}
		}
		low, high = math.Min(low, r), math.Max(high, r)
	}
	f.Variation = high - low
	f.Uniform = f.Variation <= riserSpread+sameHeight
	f.Low = high <= riserHighest+sameHeight
	return f, nil
}
