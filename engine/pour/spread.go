package pour

import "math"

// gravity as the published values have it, m/s².
const gravity = 9.81

// Ring is the flow ring that is filled with fresh mix and lifted off.
type Ring struct {
	Diameter float64 `json:"diameter"` // m, inside
	Height   float64 `json:"height"`   // m
}

// YieldStress is what the mix's resistance to flow comes to, Pa, from where a ringful came to rest: 225·density·g·V² / (128·π²·R⁵) with R half
// the spread's diameter. Roussel & Coussot 2005, J. Rheol. 49(3) 705, equation as recalled. For thin pastes of low yield stress the surface
// tension can't be neglected (Roussel, Stefani & Leroy 2005, Cem. Concr. Res. 35:817) and the result is only a comparison.
func YieldStress(ring Ring, density, spread float64) (float64, error) {
	switch {
	case !positive(ring.Diameter) || !positive(ring.Height):
		return 0, refuse("ring", number(ring.Diameter*1000, 1)+" mm × "+number(ring.Height*1000, 1)+" mm", "give the ring's inside diameter and height")
	case !positive(density):
		return 0, refuse("density", number(density, 0)+" kg/m³", "give the fresh mix's density, such as 2000 kg/m³")
	case !(spread > ring.Diameter) || !positive(spread):
		return 0, refuse("spread", number(spread*1000, 1)+" mm", "it can't be less than the ring's own "+number(ring.Diameter*1000, 1)+" mm")
	}
	volume := math.Pi / 4 * ring.Diameter * ring.Diameter * ring.Height
	radius := spread / 2
	squared := radius * radius
	return 225 / (128 * math.Pi * math.Pi) * density * gravity * volume * volume / (squared * squared * radius), nil
}

// StopDepth is the depth, m, at which a layer of the mix comes to rest on a slope (rise over run, small): yield stress / (density·g·slope), the
// textbook Bingham layer.
func StopDepth(yieldStress, density, slope float64) (float64, error) {
	if !positive(yieldStress) || !positive(density) || !positive(slope) {
		return 0, refuse("slope", "yield stress "+number(yieldStress, 3)+" Pa, density "+number(density, 0)+" kg/m³, slope "+number(slope*100, 2)+" %",
			"all three must be above zero")
	}
	return yieldStress / (density * gravity * slope), nil
}

// The outcomes of a flow-ring test.
const (
	SpreadKept  = "kept"
	SpreadShort = "short"
	SpreadLong  = "long"
)

// SpreadResult is a measured spread against the sheet's, with what to do about it.
type SpreadResult struct {
	Outcome string  `json:"outcome"`
	Margin  float64 `json:"margin"` // m to the nearer limit; below zero when outside
	Says    string  `json:"says"`
}

// CheckSpread holds a measured spread against the sheet's least and most, all m.
func CheckSpread(measured, low, high float64) (SpreadResult, error) {
	if !positive(low) || !positive(high) || low > high {
		return SpreadResult{}, refuse("spread range", number(low*1000, 1)+" to "+number(high*1000, 1)+" mm", "give the sheet's least and most spread, the least first")
	}
	if !positive(measured) {
		return SpreadResult{}, refuse("spread", number(measured*1000, 1)+" mm", "give the diameter where the mix came to rest")
	}
	r := SpreadResult{Outcome: SpreadKept, Margin: math.Min(measured-low, high-measured), Says: "The spread is within the sheet's range."}
	switch {
	case measured < low:
		r.Outcome = SpreadShort
		r.Says = "The mix is too stiff: check the water measure, the mixing time and how old the batch is. Don't pass the sheet's most water to make up for it."
	case measured > high:
		r.Outcome = SpreadLong
		r.Says = "The mix is too thin: too much water weakens it and lets it settle out. Measure the next batch's water again, and don't pour this one."
	}
	return r, nil
}
