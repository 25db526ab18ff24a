package engine

import "lowspot/engine/floor"

// A flatness as a contract names it: one or several straightedges, all of which hold.

type flatness struct {
	name string
	keys []string // of floor.Tolerances
}

var flatnesses = []flatness{
	{"tile with an edge of 15 in or more (ANSI A108)", []string{"tile-large-10ft", "tile-large-2ft"}},
	{"tile with all edges under 15 in (ANSI A108)", []string{"tile-small-10ft", "tile-small-1ft"}},
	{"resilient flooring (ASTM F710)", []string{"resilient-10ft"}},
	{"BS 8204 SR1", []string{"bs8204-sr1"}},
	{"BS 8204 SR2", []string{"bs8204-sr2"}},
	{"BS 8204 SR3", []string{"bs8204-sr3"}},
	{"AS 1884", []string{"as1884-planeness", "as1884-abrupt"}},
	{"DIN 18202 row 3", []string{"din18202-3-1m", "din18202-3-2m", "din18202-3-4m"}},
	{"DIN 18202 row 4", []string{"din18202-4-1m", "din18202-4-2m", "din18202-4-4m"}},
}

// suited is the flatness taken where nobody has named one, by finish. Common practice but for tile and resilient flooring.
var suited = map[string]string{
	"large tile": "tile with an edge of 15 in or more (ANSI A108)", "stone": "tile with an edge of 15 in or more (ANSI A108)",
	"small tile": "tile with all edges under 15 in (ANSI A108)", "resilient": "resilient flooring (ASTM F710)", "wood": "resilient flooring (ASTM F710)",
}

// flatnessFor is the flatness of a name, or the one that suits the finish; BS 8204 SR2 for any other floor.
func flatnessFor(name, finish string) flatness {
	if name == "" {
		name = suited[finish]
	}
	for _, f := range flatnesses {
		if f.name == name {
			return f
		}
	}
	return flatnessFor("BS 8204 SR2", "")
}

func (f flatness) tolerances() []floor.Tolerance {
	var list []floor.Tolerance
	for _, key := range f.keys {
		for _, tolerance := range floor.Tolerances() {
			if tolerance.Key == key {
				list = append(list, tolerance)
			}
		}
	}
	return list
}

func toleranceNames() []string {
	names := make([]string, len(flatnesses))
	for i, f := range flatnesses {
		names[i] = f.name
	}
	return names
}
