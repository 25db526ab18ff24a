// Finds a unit by what was typed.
package quantity

import "strings"

// bySpelling holds every spelling as it stands; folded the same in lower case, without those that the case decides ("mg" and "Mg").
var bySpelling, folded = indexSpellings()

func indexSpellings() (exact, lower map[string]Unit) {
	exact, lower = make(map[string]Unit, 6*len(simple)), make(map[string]Unit, 6*len(simple))
	for _, u := range simple[1:] {
		for _, spelling := range append([]string{u.Symbol}, u.Spellings...) {
			exact[spelling] = u
			low := strings.ToLower(spelling)
			if other, taken := lower[low]; taken && other.Symbol != u.Symbol {
				lower[low] = Unit{} // the case decides
				continue
			}
			lower[low] = u
		}
	}
	return exact, lower
}

// lookup finds a simple unit or an alias. A spelling in another case counts where only one unit could be meant.
func lookup(name string) (Unit, bool) {
	if u, ok := bySpelling[name]; ok {
		return u, true
	}
	low := strings.ToLower(name)
	if u, ok := folded[low]; ok {
		return u, u.Symbol != ""
	}
	if stands, ok := aliases[low]; ok {
		u, ok := compose(stands)
		u.Symbol = low
		return u, ok
	}
	return Unit{}, false
}
