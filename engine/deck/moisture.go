package deck

import (
	"math"

	"lowspot/engine/quantity"
)

// squareFoot is in m².
const squareFoot = 0.3048 * 0.3048

// Method is one way of testing a mineral deck for moisture: how many tests an area needs, and what makes a reading count. Durations are seconds, and
// zero where the method doesn't ask for it.
type Method struct {
	ID         string  `json:"id"`
	Name       string  `json:"name"`
	Measures   string  `json:"measures"`
	FirstTests int     `json:"firstTests"` // for the first area
	First      float64 `json:"first"`      // m²
	Each       float64 `json:"each"`       // m² beyond it that need one more test, or part of it
	Condition  float64 `json:"condition"`  // how long the room is at service conditions before the test
	Wait       float64 `json:"wait"`       // least time from placing the test to its reading
	WaitMost   float64 `json:"waitMost"`   // most
	Calibrated float64 `json:"calibrated"` // most time since the instrument's check
	Sheet      float64 `json:"sheet"`      // side of the plastic sheet, m
	Source     string  `json:"source"`
}

const (
	hour = 3600.0
	day  = 24 * hour
)

// Methods are the tests in use. The area of 1,000 ft² is also given as 100 m²; the smaller one is used, so that neither reading of it has too few tests.
var Methods = []Method{
	{ID: "f2170", Name: "Relative humidity in the slab", Measures: "relative humidity", FirstTests: 3, First: 1000 * squareFoot, Each: 1000 * squareFoot,
		Condition: 48 * hour, Wait: 24 * hour, Calibrated: 30 * day,
		Source: "ASTM F2170, values as recalled, document not at hand; 72 h before its 2018 revision"},
	{ID: "f1869", Name: "Vapour emission by calcium chloride", Measures: "mass per area and time", FirstTests: 3, First: 1000 * squareFoot, Each: 1000 * squareFoot,
		Condition: 48 * hour, Wait: 60 * hour, WaitMost: 72 * hour,
		Source: "ASTM F1869, values as recalled, document not at hand"},
	{ID: "d4263", Name: "Plastic sheet", Measures: "damp or dry under the sheet", FirstTests: 1, First: 500 * squareFoot, Each: 500 * squareFoot,
		Wait: 16 * hour, Sheet: 18 * inch,
		Source: "ASTM D4263, values as recalled, document not at hand"},
}

// MethodNamed finds a method by its ID.
func MethodNamed(id string) (Method, bool) {
	for _, m := range Methods {
		if m.ID == id {
			return m, true
		}
	}
	return Method{}, false
}

// TestsFor is how many tests an area (m²) needs.
func (m Method) TestsFor(area float64) (int, error) {
	if !(area > 0 && area <= 1e6) {
		return 0, refuse("area", quantity.Write(area, quantity.Area, quantity.Metric), "The area must lie between 0 and 1,000,000 m².", "Give the area of this deck.")
	}
	if area <= m.First {
		return m.FirstTests, nil
	}
	const hair = 1e-9 // of an area: 2,000 ft² in square metres is no more than twice 1,000 ft²
	return m.FirstTests + int(math.Ceil((area-m.First)/m.Each-hair)), nil
}

// ProbeDepth is how deep a humidity probe sits in a slab (m): 40 % of it where it dries from one side, 20 % where from two. ASTM F2170 §10.2, value as
// recalled, document not at hand.
func ProbeDepth(slab float64, sides int) (float64, error) {
	if !(slab > 0 && slab <= 2) {
		return 0, refuse("deck.thickness", length(slab), "A slab is up to 2 m thick.", "Give the thickness of the concrete alone.")
	}
	switch sides {
	case 1:
		return 0.4 * slab, nil
	case 2:
		return 0.2 * slab, nil
	}
	return 0, refuse("slab.drying_sides", quantity.Write(float64(sides), quantity.Number, quantity.Metric), "A slab dries from one side or from two.", "On the ground or on metal: one; free below: two.")
}

// The acidity of a surface is tested with paper after water has stood on it: ASTM F710-05 §5 (reproduction).
const (
	PuddleAcross  = 1 * inch
	PuddleStands  = 60.0 // s, give or take PuddleSlack
	PuddleSlack   = 5.0  // s
	CleanedBefore = 24 * hour
)
