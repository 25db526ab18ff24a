package takeoff

import "sort"

// Load is one journey: how many packs of each line go along, in the lines' order, and what they weigh, kg.
type Load struct {
	Packs []int   `json:"packs"`
	Mass  float64 `json:"mass"`
}

// MostLoads is how many journeys are worked out.
const MostLoads = 10_000

// Loads shares whole packs out over journeys that each take a mass (kg): by hand, by barrow or by vehicle. The heaviest packs go first, and
// every journey takes of the others what still fits.
func Loads(lines []Line, capacity float64) ([]Load, error) {
	left, order := make([]int, len(lines)), make([]int, 0, len(lines))
	for i, line := range lines {
		if line.Packs == 0 {
			continue
		}
		if !(packMass(line) <= capacity) {
			return nil, refuse(line.Item, number(packMass(line))+" kg", "One pack is heavier than a journey takes.", "Carry it otherwise, or part it.")
		}
		left[i] = line.Packs
		order = append(order, i)
	}
	sort.SliceStable(order, func(a, b int) bool { return packMass(lines[order[a]]) > packMass(lines[order[b]]) })
	var loads []Load
	for remaining(left) {
		if len(loads) == MostLoads {
			return nil, refuse("capacity", number(capacity)+" kg", "That is more than ten thousand journeys.", "Give what one journey takes.")
		}
		loads = append(loads, load(lines, order, left, capacity))
	}
	return loads, nil
}

func packMass(l Line) float64 { return l.Mass / float64(l.Packs) }

func remaining(left []int) bool {
	for _, packs := range left {
		if packs > 0 {
			return true
		}
	}
	return false
}

// load fills one journey and takes what it carries off what is left.
func load(lines []Line, order, left []int, capacity float64) Load {
	const hair = 1e-9
	l := Load{Packs: make([]int, len(lines))}
	for _, i := range order {
		mass, packs := packMass(lines[i]), left[i]
		if mass > 0 {
			packs = min(packs, int((capacity-l.Mass)/mass+hair))
		}
		l.Packs[i] = packs
		l.Mass += float64(packs) * mass
		left[i] -= packs
	}
	return l
}
