package engine

import (
	"math"
	"strconv"
	"strings"

	"lowspot/engine/deck"
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// MoistureTest is one moisture test as typed: where it was made, what it gave, how deep its probe sat and how long it stood.
type MoistureTest struct {
	At     *Spot  `json:"at,omitempty"`
	Value  string `json:"value"` // humidity, emission, or for a plastic sheet damp or dry
	Depth  string `json:"depth"` // of a probe
	Waited string `json:"waited"`
}

// MoistureTestPlan is one test as entered, held against its method.
type MoistureTestPlan struct {
	At   *floor.Point `json:"at"`
	Open []string     `json:"open"` // what is missing or wrong, in words; empty: it counts
}

// testSite is one test as the arithmetic takes it.
type testSite struct {
	deck.Test
	at *floor.Point
}

// readTests reads a deck's tests. A field that can't be read is a problem, and the test then lacks it.
func (w *work) readTests(d *deckWork) {
	if d.facts["moisture.method"].Value.Text == "none" {
		return
	}
	method := methodOf(d.facts)
	for i, typed := range d.area.Tests {
		if i == mostTests {
			return
		}
		field := d.field + "/tests/" + strconv.Itoa(i)
		one := testSite{}
		one.Value = w.testValue(field+"/value", typed.Value, method)
		one.Depth = w.ifTyped(field+"/depth", typed.Depth, quantity.Length, depths)
		one.Waited = w.ifTyped(field+"/waited", typed.Waited, quantity.Time, hours)
		one.at = w.testAt(field+"/at", typed.At, d)
		d.tests = append(d.tests, one)
	}
}

func (w *work) ifTyped(field, typed string, d quantity.Dimension, bare Bare) *float64 {
	if strings.TrimSpace(typed) == "" {
		return nil
	}
	unit := bare.Metric
	if w.units == quantity.US {
		unit = bare.US
	}
	value, ok := w.quantityIn(field, typed, d, unit)
	if !ok {
		return nil
	}
	return &value
}

func (w *work) testValue(field, typed string, method deck.Method) *float64 {
	switch method.ID {
	case "f2170":
		return w.ifTyped(field, typed, quantity.Number, percents)
	case "f1869":
		return w.ifTyped(field, typed, quantity.EvaporationRate, emissions)
	}
	value := 0.0
	switch strings.ToLower(strings.TrimSpace(typed)) {
	case "":
		return nil
	case "damp":
		value = 1
	case "dry":
	default:
		w.fail(Problem{Code: "choice", Field: field, Given: typed, Message: "A plastic sheet was damp or dry below.", Remedy: "Write damp or dry."})
		return nil
	}
	return &value
}

// testAt is where a test was made; nil where nobody says or where that isn't this deck.
func (w *work) testAt(field string, spot *Spot, d *deckWork) *floor.Point {
	if spot == nil || strings.TrimSpace(spot.X+spot.Y) == "" {
		return nil
	}
	at, ok := w.readSpot(*spot, field, "")
	if !ok {
		return nil
	}
	if !d.lies(at) {
		w.fail(Problem{Code: "outside", Field: field, Message: "This test was not made on this deck.", Remedy: "Check its two distances.", At: &at})
		return nil
	}
	return &at
}

// factTests gives the checks what the single tests come to: the worst value, how many have one, and the depth and the time that are farthest off.
func (w *work) factTests(d *deckWork) {
	if len(d.tests) == 0 {
		return
	}
	method := methodOf(d.facts)
	names := testWords[method.ID]
	counted, worst := 0, 0.0
	var waited, depth *float64
	for _, test := range d.tests {
		if test.Value != nil {
			counted, worst = counted+1, max(worst, *test.Value)
		}
		waited = fartherOff(waited, test.Waited, method.Wait, method.WaitMost)
		if needed, known := d.facts["moisture.probe_depth"]; known {
			depth = fartherOff(depth, test.Depth, needed.Value.Number, needed.Value.Number)
		}
	}
	worksOut(d.facts, names.count, number(float64(counted)))
	if counted > 0 && method.ID == "d4263" {
		worksOut(d.facts, names.value, truth(worst > 0))
	} else if counted > 0 {
		worksOut(d.facts, names.value, number(worst))
	}
	if waited != nil {
		worksOut(d.facts, names.waited, number(*waited))
	}
	if depth != nil && method.ID == "f2170" {
		worksOut(d.facts, "slab.probe_depth", number(*depth))
	}
}

// fartherOff is whichever of two lies farther outside what is asked, or where both lie within it the lesser one. A most of zero asks for none.
func fartherOff(a, b *float64, least, most float64) *float64 {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	}
	off := func(x float64) float64 {
		if most > 0 && x > most {
			return x - most
		}
		return math.Max(0, least-x)
	}
	if offA, offB := off(*a), off(*b); offB > offA || offB == offA && *b < *a {
		return b
	}
	return a
}

// testWords are the words that a method's tests come to.
var testWords = map[string]struct{ value, count, waited string }{
	"f2170": {"slab.humidity", "slab.probes", "slab.probe_wait"},
	"f1869": {"slab.emission", "slab.emission_tests", "slab.emission_time"},
	"d4263": {"slab.sheet_damp", "slab.sheet_tests", "slab.sheet_time"},
}

// surveyOf puts the tests together: one by one where they were entered so, else from what is said of them all, the worst value standing for each.
func surveyOf(d *deckWork, method deck.Method) deck.Survey {
	survey := deck.Survey{Method: method, Area: d.facts["deck.area"].Value.Number, Thickness: d.facts["deck.thickness"].Value.Number, Sides: sidesOf(d.facts)}
	common := deck.Test{Condition: pointerTo(d.facts, "slab.conditioned"), Calibrated: pointerTo(d.facts, "slab.probe_checked"), Age: pointerTo(d.facts, "slab.reading_age")}
	for _, one := range d.tests {
		test := one.Test
		test.Condition, test.Calibrated, test.Age = common.Condition, common.Calibrated, common.Age
		survey.Tests = append(survey.Tests, test)
	}
	if len(d.tests) > 0 {
		return survey
	}
	names := testWords[method.ID]
	common.Value, common.Waited, common.Depth = pointerTo(d.facts, names.value), pointerTo(d.facts, names.waited), pointerTo(d.facts, "slab.probe_depth")
	for i := 0; i < mostTests && float64(i) < d.facts[names.count].Value.Number; i++ {
		survey.Tests = append(survey.Tests, common)
	}
	return survey
}

// pointerTo is a fact's number, or one for yes and nought for no; nil where it is open.
func pointerTo(facts rules.Facts, name string) *float64 {
	fact, known := facts[name]
	if !known {
		return nil
	}
	value := fact.Value.Number
	if fact.Value.Truth {
		value = 1
	}
	return &value
}
