package takeoff

import (
	"math"

	"lowspot/engine/quantity"
)

// Line is one thing to buy. Need and Pack are in SI base units of the dimension; Because tells step by step where the need comes from.
type Line struct {
	Item      string             `json:"item"`
	Need      float64            `json:"need"`
	Dimension quantity.Dimension `json:"-"`
	Pack      float64            `json:"pack"`     // what one pack holds
	Packs     int                `json:"packs"`    // whole packs
	Leftover  float64            `json:"leftover"` // what stays over when the need is met
	Mass      float64            `json:"mass"`     // kg, of all packs
	Because   []string           `json:"because"`
}

// MostPacks is how many packs of one thing a job may take.
const MostPacks = 1_000_000

// NewLine rounds a need up to whole packs. PackMass is what one pack weighs, kg. A hair over a whole pack is the arithmetic's, not the floor's.
func NewLine(item string, need float64, d quantity.Dimension, pack, packMass float64, because ...string) (Line, error) {
	switch {
	case !(need >= 0):
		return Line{}, refuse(item, quantity.Write(need, d, quantity.Metric), "How much is needed isn't known.", "Answer what the floor still lacks.")
	case !(pack > 0) || math.IsInf(pack, 1):
		return Line{}, refuse(item, quantity.Write(pack, d, quantity.Metric), "One pack must hold something.", "Give what one pack holds, as its label says.")
	case !(packMass >= 0) || math.IsInf(packMass, 1):
		return Line{}, refuse(item, quantity.Write(packMass, quantity.Mass, quantity.Metric), "A pack can't weigh that.", "Give what one pack weighs.")
	}
	const hair = 1e-9
	packs := math.Ceil(need/pack - hair)
	if packs > MostPacks {
		return Line{}, refuse(item, quantity.Write(need, d, quantity.Metric), "That is more than a million packs.", "Check the unit of the pack and of the need.")
	}
	packs = max(packs, 0)
	return Line{Item: item, Need: need, Dimension: d, Pack: pack, Packs: int(packs), Leftover: max(packs*pack-need, 0), Mass: packs * packMass, Because: because}, nil
}
