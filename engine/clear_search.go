package engine

// Trying one lever: options one by one, quantities on a grid of values that a person would type.

import (
	"math"
	"sort"

	"lowspot/engine/quantity"
)

// pull tries a lever. Done is false where the runs were used up before it was tried to its end.
func (c *clearing) pull(l lever) (remedies []Remedy, done bool) {
	if l.unit == nil {
		for _, o := range l.options {
			if r, ok := c.remedy(l, o.to, o.sets); ok {
				remedies = append(remedies, r)
			}
		}
		return remedies, c.runs > 0
	}
	for _, direction := range []float64{1, -1} {
		if r, ok := c.nearest(l, direction); ok {
			remedies = append(remedies, r)
		}
	}
	return remedies, c.runs > 0
}

// farthest is how many steps of the grid are tried: 1, 2, 4 and so on up to this.
const farthest = 1024

// nearest goes from the present value in one direction, in ever longer strides until the check holds, then halves the last stride.
func (c *clearing) nearest(l lever, direction float64) (Remedy, bool) {
	start := l.start(direction)
	at := func(n int) (string, bool) {
		value := (start + direction*float64(n)) * l.step
		si := l.unit.SI(value)
		if si < l.least || si > l.most {
			return "", false
		}
		return writeStep(value, l.step, l.unit.Symbol), true
	}
	fails, holds := -1, 0
	for n := 0; ; n = max(1, 2*n) {
		typed, inside := at(n)
		if !inside || n > farthest || c.runs <= 0 {
			return Remedy{}, false
		}
		if c.holds(c.try(l.sets(typed))) {
			holds = n
			break
		}
		fails = n
	}
	for holds-fails > 1 {
		middle := (holds + fails) / 2
		typed, _ := at(middle)
		if c.holds(c.try(l.sets(typed))) {
			holds = middle
		} else {
			fails = middle
		}
	}
	typed, _ := at(holds)
	return c.remedy(l, typed, l.sets(typed))
}

// start is the first value of the grid beyond the present one, in steps.
func (l *lever) start(direction float64) float64 {
	present := l.unit.From(l.present) / l.step
	const hair = 1e-6
	if direction > 0 {
		return math.Floor(present+hair) + 1
	}
	return math.Ceil(present-hair) - 1
}

// writeStep writes a value of the grid: sixteenths as fractions of an inch, the rest as decimals.
func writeStep(value, step float64, unit string) string {
	if unit == "in" && step == 1.0/16 {
		return quantity.Write(value*0.0254, quantity.Length, quantity.US)
	}
	u, _ := quantity.UnitNamed(unit)
	if unit == "" {
		return quantity.Write(value, quantity.Number, quantity.Metric)
	}
	return quantity.WriteIn(u.SI(math.Round(value/step)*step), unit)
}

// sortRemedies puts what a person decides first, and of those what costs least: fewest checks broken by it, fewest bags.
func sortRemedies(list []Remedy) {
	order := map[string]int{SortDecided: 0, SortMeasured: 1, SortSheet: 2}
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		switch {
		case a.Sort != b.Sort:
			return order[a.Sort] < order[b.Sort]
		case len(a.Effect.Broken) != len(b.Effect.Broken):
			return len(a.Effect.Broken) < len(b.Effect.Broken)
		}
		return a.Effect.BagsAfter < b.Effect.BagsAfter
	})
}
