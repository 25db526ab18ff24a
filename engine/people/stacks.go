package people

import (
	"math"

	"lowspot/engine/quantity"
)

// gravity turns a mass into its weight, m/s²: the standard value.
const gravity = 9.80665

// Stacks is how bags may stand on a deck. Load is the pressure under one stack of all bags.
type Stacks struct {
	Load    float64 `json:"load"`    // Pa
	Exceeds bool    `json:"exceeds"` // it is more than the deck is meant to carry
	Highest int     `json:"highest"` // bags that one stack may have; 0 where even one is too many
	Stacks  int     `json:"stacks"`  // stacks that all bags then make; 0 where even one bag is too many
	Area    float64 `json:"area"`    // m² that they take
}

// Stack holds bags (mass kg each) on a footprint (m²) against what a deck is meant to carry evenly, Pa. It takes the footprint's own load alone, which is the careful
// side: a stack near a wall or over a beam bends a deck less. An engineer goes first.
func Stack(bags int, mass, footprint, allowed float64) (Stacks, error) {
	switch {
	case bags < 0 || bags > 1e6:
		return Stacks{}, refuse("bags", whole(bags), "There are up to a million bags.", "Give the whole bags to store.")
	case !(mass > 0 && mass <= 1000):
		return Stacks{}, refuse("sheet.bag_mass", kilograms(mass), "A bag weighs more than nothing and up to 1000 kg.", "It is printed on the bag.")
	case !(footprint >= 0.01 && footprint <= 100):
		return Stacks{}, refuse("stack.footprint", quantity.Write(footprint, quantity.Area, quantity.Metric), "A stack stands on 0.01 m² to 100 m².", "A bag lies on about 0.24 m², a pallet on 0.96 m².")
	case !(allowed > 0 && allowed <= 1e6):
		return Stacks{}, refuse("deck.load", quantity.Write(allowed, quantity.Pressure, quantity.Metric), "A deck carries more than nothing.", "40 psf (1.9 kPa) is usual in homes.")
	}
	each := mass * gravity / footprint
	s := Stacks{Load: float64(bags) * each, Highest: int(math.Min(1e6, math.Floor(allowed/each+1e-9)))}
	s.Exceeds = s.Load > allowed*(1+1e-9)
	if s.Highest > 0 {
		s.Stacks = (bags + s.Highest - 1) / s.Highest
		s.Area = float64(s.Stacks) * footprint
	}
	return s, nil
}
