package engine

import (
	"lowspot/engine/deck"
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// MoisturePlan is the moisture tests of one deck: how many, how deep, where, and whether those made satisfy their method.
type MoisturePlan struct {
	Method     string             `json:"method"`
	Source     string             `json:"source"`
	Needed     int                `json:"needed"`
	ProbeDepth *Amount            `json:"probeDepth"` // of probes, where the slab's thickness is known
	Spots      []TestSpot         `json:"spots"`
	Tests      []MoistureTestPlan `json:"tests"` // those entered one by one, in their order
	Satisfied  bool               `json:"satisfied"`
	Open       []string           `json:"open"` // what is missing or wrong, in words
}

// TestSpot is where one moisture test goes.
type TestSpot struct {
	At floor.Point `json:"at"`
	X  Amount      `json:"x"`
	Y  Amount      `json:"y"`
}

// methodOf is how the deck's moisture was measured; by probes where nobody says, because those say most.
func methodOf(facts rules.Facts) deck.Method {
	id := "f2170"
	switch {
	case isTrue(facts, "moisture.chloride"):
		id = "f1869"
	case isTrue(facts, "moisture.plastic"):
		id = "d4263"
	}
	method, _ := deck.MethodNamed(id)
	return method
}

// proveMoisture works out how many tests the deck needs, how deep its probes sit.
func (w *work) proveMoisture(d *deckWork) {
	needed, err := methodOf(d.facts).TestsFor(d.facts["deck.area"].Value.Number)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	worksOut(d.facts, "moisture.tests_needed", number(float64(needed)))
	thickness, known := d.facts["deck.thickness"]
	sides := sidesOf(d.facts)
	if !known || sides == 0 {
		return
	}
	depth, err := deck.ProbeDepth(thickness.Value.Number, sides)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	worksOut(d.facts, "moisture.probe_depth", number(depth))
}

// sidesOf is from how many sides the slab dries; 0 where nobody says.
func sidesOf(facts rules.Facts) int {
	switch facts["slab.sides"].Value.Text {
	case "one":
		return 1
	case "two":
		return 2
	}
	return 0
}

// moisturePlan tells the deck's tests; nil on decks that have none.
func (w *work) moisturePlan(d *deckWork) *MoisturePlan {
	needed, known := d.facts["moisture.tests_needed"]
	if !known {
		return nil
	}
	method := methodOf(d.facts)
	plan := &MoisturePlan{Method: method.Name, Source: method.Source, Needed: int(needed.Value.Number), Spots: w.testSpots(d), Tests: []MoistureTestPlan{}, Open: []string{}}
	for _, test := range d.tests {
		plan.Tests = append(plan.Tests, MoistureTestPlan{At: test.at, Open: []string{}})
	}
	if depth, known := d.facts["moisture.probe_depth"]; known && method.ID == "f2170" {
		plan.ProbeDepth = w.pointer(depth.Value.Number, quantity.Length)
	}
	verdict, err := surveyOf(d, method).Judge()
	if err != nil {
		return plan
	}
	plan.Satisfied = verdict.Satisfied
	for _, reason := range verdict.Reasons {
		open := &plan.Open
		if ofOneTest(reason.Code) && reason.Test >= 0 && reason.Test < len(plan.Tests) {
			open = &plan.Tests[reason.Test].Open
		}
		if !contains(*open, reason.Says) {
			*open = append(*open, reason.Says)
		}
	}
	return plan
}

// ofOneTest tells whether a reason is about one test rather than about the slab, the room or the instrument.
func ofOneTest(code string) bool { return isOne(code, "value", "wait", "wait-most", "depth") }

func contains(list []string, text string) bool {
	for _, one := range list {
		if one == text {
			return true
		}
	}
	return false
}

// mostTests are judged; a deck needs no more.
const mostTests = 1000

// spotted asks for so many spots more than are needed, since some may fall on another deck area that lies over this one.
const (
	spotted       = 3
	mostTestSpots = 60  // looked at while somebody types
	mostTestWalls = 100 // of a deck area whose spots are worked out while somebody types
)

// testSpots are where moisture tests go on a deck; none while a change is only tried, which nobody looks at.
func (w *work) testSpots(d *deckWork) []TestSpot {
	spots := []TestSpot{}
	needed, known := d.facts["moisture.tests_needed"]
	if !known || w.before != nil || len(d.outline.Outer) > mostTestWalls {
		return spots
	}
	count := int(needed.Value.Number)
	all, _ := deck.TestSpots(d.outline, min(spotted*count, mostTestSpots))
	for _, spot := range all {
		if len(spots) < count && d.lies(spot) {
			spots = append(spots, TestSpot{At: spot, X: w.length(spot.X), Y: w.length(spot.Y)})
		}
	}
	return spots
}

// lies tells whether a spot is on this deck area and on no other.
func (d *deckWork) lies(spot floor.Point) bool {
	for _, piece := range d.region {
		if piece.Contains(spot) {
			return true
		}
	}
	return false
}
