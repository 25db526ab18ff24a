// Reads a composed unit: "kg/m^2/h", "sq ft/gal", "lb/(1000 ft2 24 h)".
//
// Everything between one stroke and the next is below the line, so "kg/m2 h" is kilograms per square metre and hour, as people mean it.
// A whole number may stand before a unit ("24 h").
package quantity

import (
	"math"
	"strconv"
	"strings"
)

// compose works on cleaned text. The result has no symbol.
func compose(text string) (Unit, bool) {
	text = strings.TrimSpace(strings.ReplaceAll(text, "*", " "))
	if u, ok := lookup(text); ok {
		return u, true
	}
	groups := strings.Split(text, "/")
	result := unit("", Number, 1, 1)
	for i, group := range groups {
		if i == 0 && strings.TrimSpace(group) == "" && len(groups) > 1 {
			continue // "/m^2"
		}
		u, ok := multiply(unbracket(group, i > 0))
		if !ok {
			return Unit{}, false
		}
		if i == 0 {
			result = result.times(u, 1)
		} else {
			result = result.times(u, -1)
		}
	}
	return result, usable(result)
}

func usable(u Unit) bool {
	return u.Factor > 0 && !math.IsInf(u.Factor, 0) && !math.IsNaN(u.Factor)
}

func unbracket(group string, below bool) string {
	group = strings.TrimSpace(group)
	if inner, ok := strings.CutPrefix(group, "("); ok && below {
		if inner, ok = strings.CutSuffix(inner, ")"); ok {
			return inner
		}
	}
	return group
}

// multiply reads a product of units: "1000 ft2 24 h", "sq ft".
func multiply(text string) (Unit, bool) {
	words := strings.Fields(text)
	if len(words) == 0 {
		return Unit{}, false
	}
	result := unit("", Number, 1, 1)
	for len(words) > 0 {
		count := 1.0
		if n, err := strconv.ParseUint(words[0], 10, 32); err == nil && n > 0 {
			count, words = float64(n), words[1:]
		}
		u, used := factor(words)
		if used == 0 {
			return Unit{}, false
		}
		result = result.times(u, 1)
		result.over *= count
		result.Factor *= count
		words = words[used:]
	}
	return result, true
}

// factor reads one unit with its power and tells how many words it took.
func factor(words []string) (Unit, int) {
	if len(words) > 1 {
		if n := powerBefore(words[0]); n != 0 {
			if u, ok := lookup(words[1]); ok {
				return unit("", Number, 1, 1).times(u, n), 2
			}
		}
	}
	for used := min(3, len(words)); used > 0; used-- {
		if u, ok := lookup(strings.Join(words[:used], " ")); ok {
			return u.difference(), used
		}
	}
	if len(words) == 0 {
		return Unit{}, 0
	}
	name, n := powerAfter(words[0])
	if u, ok := lookup(name); ok && n != 0 {
		return unit("", Number, 1, 1).times(u, n), 1
	}
	return Unit{}, 0
}

// powerBefore knows "sq ft" and "cubic metres".
func powerBefore(word string) int {
	switch strings.ToLower(word) {
	case "sq", "square":
		return 2
	case "cu", "cubic":
		return 3
	}
	return 0
}

// powerAfter splits "m2", "m^2", "sqm" into the unit and its power.
func powerAfter(word string) (string, int) {
	low := strings.ToLower(word)
	if rest, ok := strings.CutPrefix(low, "sq"); ok {
		return rest, 2
	}
	if rest, ok := strings.CutPrefix(low, "cu"); ok {
		return rest, 3
	}
	name := strings.TrimRight(word, "0123456789")
	n, err := strconv.Atoi(word[len(name):])
	if err != nil || n > 99 {
		return word, 0
	}
	return strings.TrimSuffix(name, "^"), n
}

// times multiplies by a whole power of another unit.
func (u Unit) times(o Unit, n int) Unit {
	over, under := o.over, o.under
	if n < 0 {
		over, under = under, over
	}
	result := Unit{Dimension: u.Dimension.combine(o.Dimension, n), over: u.over, under: u.under}
	for range max(n, -n) {
		result.over *= over
		result.under *= under
	}
	result.Factor = result.over / result.under
	return result
}
