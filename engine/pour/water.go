package pour

import "math"

// The marks that a person can measure water to on site, m³.
const (
	LitreMark = 1e-4              // a tenth of a litre
	QuartMark = 9.46352946e-4 / 4 // a quarter of a US liquid quart, 57.75 in³
)

// Water is one batch's water as it is to be measured out.
type Water struct {
	Volume float64 `json:"volume"` // m³
	Low    float64 `json:"low"`    // the sheet's least for this batch
	High   float64 `json:"high"`   // its most
	Marks  int     `json:"marks"`  // how many marks of the measure; 0 when the amount lies between two
	Note   string  `json:"note"`   // why the measured amount isn't the nearest mark to the chosen one
}

// MeasureWater is the water for a batch's powder (kg) in marks of step m³, never outside the sheet's range.
func MeasureWater(powder float64, mix Mix, step float64) (Water, error) {
	switch {
	case !positive(powder):
		return Water{}, refuse("powder", number(powder, 3)+" kg", "give the batch's powder, above zero")
	case !positive(mix.WaterLow) || !positive(mix.WaterHigh) || mix.WaterLow > mix.WaterHigh:
		return Water{}, refuse("water range", perKilogram(mix.WaterLow)+" to "+perKilogram(mix.WaterHigh),
			"give the sheet's least and most water, the least first")
	case !(mix.Water >= mix.WaterLow*(1-1e-9) && mix.Water <= mix.WaterHigh*(1+1e-9)):
		return Water{}, refuse("water", perKilogram(mix.Water), "the sheet allows "+perKilogram(mix.WaterLow)+" to "+perKilogram(mix.WaterHigh))
	case !positive(step):
		return Water{}, refuse("measure", litres(step), "give what the measure is marked in, such as 0.1 L")
	}
	w := Water{Volume: mix.Water * powder, Low: mix.WaterLow * powder, High: mix.WaterHigh * powder}
	least, greatest := math.Ceil(w.Low/step-1e-9), math.Floor(w.High/step+1e-9)
	if least > greatest {
		w.Note = "No mark of " + litres(step) + " lies within the sheet's " + litres(w.Low) + " to " + litres(w.High) + ": weigh " +
			number(w.Volume*1000, 2) + " kg of water instead."
		return w, nil
	}
	nearest := math.Round(w.Volume / step)
	marks := math.Max(least, math.Min(greatest, nearest))
	if marks != nearest {
		w.Note = "The nearest mark, " + litres(nearest*step) + ", would leave the sheet's " + litres(w.Low) + " to " + litres(w.High) + "."
	}
	w.Marks, w.Volume = int(marks), marks*step
	return w, nil
}

func perKilogram(water float64) string { return number(water*1000, 3) + " L/kg" }
