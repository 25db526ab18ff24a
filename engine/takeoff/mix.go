// Which packs meet a need where a thing comes in several sizes.
package takeoff

import "math"

// Size is a pack that a thing comes in: what one holds, SI, and what one costs. Where nothing has a price only what is left over counts.
type Size struct {
	Holds float64
	Price Money
}

// mostMixed is how many packs of the larger size are tried with a smaller one.
const mostMixed = 10_000

// Mix gives how many packs of each size meet a need at the least cost; of equal ones those that leave least over, then the fewest. No more than two sizes
// are mixed: three on one list are three chances to take the wrong one off the shelf.
func Mix(need float64, sizes []Size) []int {
	best := mixture{cost: -1}
	for i, large := range sizes {
		try := func(of, j, rest int) {
			best.keep(mixture{
				cost: CostOf(large.Price, of) + CostOf(sizes[j].Price, rest), over: float64(of)*large.Holds + float64(rest)*sizes[j].Holds - need, packs: of + rest,
				large: i, small: j, of: of, rest: rest,
			}, need)
		}
		enough := wholePacks(need, large.Holds)
		try(enough, i, 0)
		for j, small := range sizes {
			if small.Holds >= large.Holds || enough > mostMixed {
				continue
			}
			for of := range enough {
				try(of, j, wholePacks(need-float64(of)*large.Holds, small.Holds))
			}
		}
	}
	counts := make([]int, len(sizes))
	if best.cost >= 0 {
		counts[best.large] += best.of
		counts[best.small] += best.rest
	}
	return counts
}

// mixture is so many packs of a size and the rest of another.
type mixture struct {
	cost                          Money // below zero: none yet
	over                          float64
	packs, large, small, of, rest int
}

// keep takes another mixture in place of this one where it is better.
func (m *mixture) keep(other mixture, need float64) {
	same := 1e-9 * need
	switch {
	case m.cost < 0, other.cost < m.cost:
	case other.cost > m.cost, other.over > m.over+same:
		return
	case other.over >= m.over-same && other.packs >= m.packs:
		return
	}
	*m = other
}

// CostOf is what so many packs cost; beyond all measure it is as good as never.
func CostOf(price Money, packs int) Money {
	if packs > 0 && price > MostMoney/Money(packs) {
		return MostMoney
	}
	return price * Money(packs)
}

// wholePacks is how many packs hold a need. A hair over a whole pack is the arithmetic's, not the floor's.
func wholePacks(need, holds float64) int {
	const hair = 1e-9
	packs := math.Ceil(need/holds - hair)
	if !(packs > 0) {
		return 0
	}
	if packs > MostPacks {
		return MostPacks
	}
	return int(packs)
}
