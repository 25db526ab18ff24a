package deck

import (
	"strconv"

	"lowspot/engine/quantity"
)

// Filler is how a patch powder is mixed: parts by volume, and the two densities that tell how much the mix fills. The bag goes first.
type Filler struct {
	Powder float64 `json:"powder"` // parts of loose powder
	Water  float64 `json:"water"`  // parts of water
	Loose  float64 `json:"loose"`  // density of the loose powder, kg/m³
	Grain  float64 `json:"grain"`  // density of its grains, kg/m³
}

// UsualFiller is two parts of powder to one of water, common practice. Loose is that of portland cement, 94 lb/ft³ (US convention, one bag a cubic foot, PCA wording,
// secondary); handling makes it anything from 830 to 1650, so weigh where it matters. Grain is that of portland cement, specific gravity 3.15.
var UsualFiller = Filler{Powder: 2, Water: 1, Loose: 94 * 0.45359237 / (squareFoot * 0.3048), Grain: 3150}

// Mix is what fills a volume: powder by measure (m³) and by mass (kg), and water (m³).
type Mix struct {
	Volume float64 `json:"volume"`
	Powder float64 `json:"powder"`
	Mass   float64 `json:"mass"`
	Water  float64 `json:"water"`
}

// waterDensity is that of mixing water, kg/m³, near enough for a bucket.
const waterDensity = 1000

// MixFor is the mix that fills a volume, m³: the water and the powder's grains fill it, the air between the grains doesn't (method of absolute volumes).
func (f Filler) MixFor(volume float64) (Mix, error) {
	if !from0(volume) || volume > 1000 {
		return Mix{}, refuse("patch.volume", quantity.Write(volume, quantity.Volume, quantity.Metric), "The volume lies between 0 and 1000 m³.", "Joints take length × gap × depth.")
	}
	if !above0(f.Powder) || !above0(f.Water) || f.Powder > 100*f.Water || f.Water > 100*f.Powder {
		return Mix{}, refuse("patch.powder_to_water", number(f.Powder)+":"+number(f.Water), "Powder and water need a part each.", "2:1 by volume is usual; the bag goes first.")
	}
	if !(f.Loose >= 200 && f.Loose < f.Grain && f.Grain <= 10000) {
		return Mix{}, refuse("patch.density", quantity.Write(f.Loose, quantity.Density, quantity.Metric), "Loose powder weighs less than its grains, and more than 200 kg/m³.", "Cement has 1500 kg/m³ loose and 3150 kg/m³ in the grain.")
	}
	part := volume / (f.Water + f.Powder*f.Loose/f.Grain)
	m := Mix{Volume: volume, Powder: part * f.Powder, Water: part * f.Water}
	m.Mass = m.Powder * f.Loose
	return m, nil
}

// Weight is what the mix weighs, kg.
func (m Mix) Weight() float64 { return m.Mass + m.Water*waterDensity }

// JointVolume is what filling joints takes, m³: length × gap × depth, and a share more that stays on the tools.
func JointVolume(joints, gap, depth, waste float64) (float64, error) {
	if !from0(joints) || joints > 1e6 || !(gap >= 0 && gap <= 0.1) || !(depth >= 0 && depth <= 0.5) || !(waste >= 0 && waste <= 1) {
		return 0, refuse("joints", length(joints)+", "+length(gap)+" wide, "+length(depth)+" deep", "A joint is up to 100 mm wide and 500 mm deep; waste is up to 100 %.", "Measure a few joints and take the mean.")
	}
	return joints * gap * depth * (1 + waste), nil
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', 4, 64) }
