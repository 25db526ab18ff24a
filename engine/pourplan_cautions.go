package engine

import "lowspot/engine/people"

// Cautions of the run sheet that no step of the work has by itself. Each defers to local codes, the product's own sheet and licensed practice.
const (
	cautionHeating  = "A heated floor holds cables or pipes: never drill, screw or grind into it. Work on the heating itself is licensed work in many places."
	cautionDraught  = "Windows and doors closed, fans and blowers off. Heaters that burn fuel need fresh air from outside: carbon monoxide has no smell."
	cautionMoisture = "Measure the pour's moisture before you go on; the finish's own sheet goes first."
)

// cautionsAt are the usual cautions of what a step of the run sheet is made of, each once; those of heated floors only where there is one.
func (p *pourWork) cautionsAt(steps ...string) []string {
	list := []string{}
	for _, step := range steps {
		for _, caution := range people.CautionsAt(step) {
			if (caution.ID != "heated-floor" || p.heated()) && !contains(list, caution.Text) {
				list = append(list, caution.Text)
			}
		}
	}
	return list
}
