package deck

import (
	"math"
	"strconv"

	"lowspot/engine/quantity"
)

// Test is one moisture test as it was made. What nobody wrote down is nil; durations are seconds, depths metres.
type Test struct {
	Value      *float64 `json:"value"`      // humidity as a share of 1, or emission in kg/(m² s); for a plastic sheet 1 is damp, 0 dry
	Depth      *float64 `json:"depth"`      // of the probe
	Waited     *float64 `json:"waited"`     // from placing the test to its reading
	Condition  *float64 `json:"condition"`  // how long the room had been at service conditions
	Calibrated *float64 `json:"calibrated"` // since the instrument's check
	Age        *float64 `json:"age"`        // since the reading
}

// Survey is all tests by one method on one deck.
type Survey struct {
	Method    Method  `json:"method"`
	Area      float64 `json:"area"`      // m²
	Thickness float64 `json:"thickness"` // of the slab, m; zero where not known
	Sides     int     `json:"sides"`     // that it dries from, 1 or 2
	Tests     []Test  `json:"tests"`
}

// Reason is why a survey doesn't satisfy its method. Test counts from 0; -1 is the survey as a whole. Unanswered ones need only be written down.
type Reason struct {
	Code       string `json:"code"`
	Test       int    `json:"test"`
	Unanswered bool   `json:"unanswered"`
	Says       string `json:"says"`
}

// Verdict is what a survey comes to. The worst value decides: results are never averaged. Counted are the tests that have a value.
type Verdict struct {
	Satisfied bool     `json:"satisfied"`
	Needed    int      `json:"needed"`
	Counted   int      `json:"counted"`
	Worst     float64  `json:"worst"`
	WorstTest int      `json:"worstTest"` // -1 without a value
	Reasons   []Reason `json:"reasons"`
}

// OldestReading is how old a reading may be before the deck wants another one, s: common practice.
const OldestReading = 30 * day

// depthSlack is how far a probe may be off its depth, as a share of it: common practice.
const depthSlack = 0.1

// Judge tells whether the tests made satisfy their method, and if not, why.
func (s Survey) Judge() (Verdict, error) {
	needed, err := s.Method.TestsFor(s.Area)
	if err != nil {
		return Verdict{}, err
	}
	j := judge{survey: s, verdict: Verdict{Needed: needed, WorstTest: -1}}
	for i, test := range s.Tests {
		j.test(i, test)
	}
	if j.verdict.Counted < needed {
		j.fail("too-few", -1, "Tests with a value: "+strconv.Itoa(j.verdict.Counted)+"; this area needs "+strconv.Itoa(needed)+".")
	}
	j.verdict.Satisfied = len(j.verdict.Reasons) == 0
	return j.verdict, nil
}

type judge struct {
	survey  Survey
	verdict Verdict
}

func (j *judge) fail(code string, test int, says string) {
	j.verdict.Reasons = append(j.verdict.Reasons, Reason{Code: code, Test: test, Says: says})
}

func (j *judge) ask(code string, test int, says string) {
	j.verdict.Reasons = append(j.verdict.Reasons, Reason{Code: code, Test: test, Unanswered: true, Says: says})
}

func (j *judge) test(i int, t Test) {
	m := j.survey.Method
	j.value(i, t.Value)
	j.atLeast("condition", i, t.Condition, m.Condition, "The room was at service conditions for ", "How long the room had been at service conditions isn't known.")
	j.atLeast("wait", i, t.Waited, m.Wait, "The test was read after ", "How long the test had stood isn't known.")
	if m.WaitMost > 0 && t.Waited != nil && *t.Waited > m.WaitMost {
		j.fail("wait-most", i, "The test was read after "+duration(*t.Waited)+"; it needs "+duration(m.WaitMost)+" or less.")
	}
	j.atMost("calibrated", i, t.Calibrated, m.Calibrated, "The instrument was checked ", "When the instrument was checked isn't known.")
	j.atMost("age", i, t.Age, OldestReading, "The reading was taken ", "When the reading was taken isn't known.")
	if m.ID == "f2170" {
		j.depth(i, t.Depth)
	}
}

func (j *judge) value(i int, value *float64) {
	switch {
	case value == nil:
		j.ask("value", i, "This test has no value yet.")
	case !(*value >= 0) || math.IsInf(*value, 1) || j.survey.Method.ID == "f2170" && *value > 1:
		j.fail("value", i, "This test's value can't be.")
	default:
		j.verdict.Counted++
		if j.verdict.WorstTest < 0 || *value > j.verdict.Worst {
			j.verdict.Worst, j.verdict.WorstTest = *value, i
		}
	}
}

func (j *judge) atLeast(code string, i int, given *float64, least float64, says, asks string) {
	switch {
	case least == 0:
	case given == nil:
		j.ask(code, i, asks)
	case !(*given >= least):
		j.fail(code, i, says+duration(*given)+"; it needs "+duration(least)+".")
	}
}

func (j *judge) atMost(code string, i int, given *float64, most float64, says, asks string) {
	switch {
	case most == 0:
	case given == nil:
		j.ask(code, i, asks)
	case !(*given >= 0 && *given <= most):
		j.fail(code, i, says+duration(*given)+" ago; "+duration(most)+" is the most.")
	}
}

func (j *judge) depth(i int, given *float64) {
	needed, err := ProbeDepth(j.survey.Thickness, j.survey.Sides)
	switch {
	case err != nil:
		j.ask("slab", i, "The slab's thickness and the sides that it dries from aren't known, so the probe's depth can't be judged.")
	case given == nil:
		j.ask("depth", i, "How deep the probe sat isn't known; it needs "+length(needed)+".")
	case !(math.Abs(*given-needed) <= depthSlack*needed):
		j.fail("depth", i, "The probe sat "+length(*given)+" deep; it needs "+length(needed)+".")
	}
}

func duration(seconds float64) string { return quantity.Write(seconds, quantity.Time, quantity.Metric) }
