package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// slab is a slab of 12 m² and 100 mm, drying from one side, whose tests are entered one by one.
func slab(method string, tests ...MoistureTest) *Job {
	job := square(0)
	deck := &job.Rooms[0].Decks[0]
	for word, answer := range map[string]string{"moisture.method": method, "deck.thickness": "100 mm", "slab.sides": "one", "slab.conditioned": "72 h", "slab.probe_checked": "10 d", "slab.reading_age": "3 d"} {
		deck.Answers[word] = answer
	}
	deck.Tests = tests
	return job
}

func outcomes(job *Job) map[string]string {
	states := map[string]string{}
	for _, f := range MakePlan(job, book).Findings {
		states[f.Rule] = string(f.State)
	}
	return states
}

func TestProbesEnteredOneByOneAreEachHeldAgainstTheStandard(t *testing.T) {
	job := slab("probes",
		MoistureTest{At: &Spot{"1 m", "1 m"}, Value: "72 %", Depth: "40 mm", Waited: "26 h"},
		MoistureTest{At: &Spot{"3 m", "1 m"}, Value: "81 %", Depth: "20 mm", Waited: "30 h"},
		MoistureTest{At: &Spot{"2 m", "2.5 m"}, Value: "74 %", Depth: "41 mm", Waited: "2 h"},
	)
	tests := MakePlan(job, book).Rooms[0].Decks[0].Moisture
	require.Len(t, tests.Tests, 3)
	assert.Equal(t, 3, tests.Needed)
	assert.Empty(t, tests.Tests[0].Open)
	assert.Equal(t, []string{"The probe sat 20 mm deep; it needs 40 mm."}, tests.Tests[1].Open, "ASTM F2170: 40 % of a slab that dries from one side")
	require.Len(t, tests.Tests[2].Open, 1)
	assert.Contains(t, tests.Tests[2].Open[0], "2 h; it needs 24 h")
	assert.Equal(t, 3.0, tests.Tests[1].At.X)
	assert.False(t, tests.Satisfied)
	states := outcomes(job)
	assert.Equal(t, "kept", states["probes-enough"])
	assert.Equal(t, "broken", states["probes-deep-enough"], "the one that is farthest off speaks for all")
	assert.Equal(t, "broken", states["probes-waited"])

	job.Rooms[0].Decks[0].Tests[1].Depth, job.Rooms[0].Decks[0].Tests[2].Waited = "40 mm", "25 h"
	assert.True(t, MakePlan(job, book).Rooms[0].Decks[0].Moisture.Satisfied)
	assert.Equal(t, "kept", outcomes(job)["probes-deep-enough"])
}

func TestTheWorstOfTheTestsDecidesAndATestWithoutAValueDoesNotCount(t *testing.T) {
	job := slab("calcium chloride",
		MoistureTest{Value: "2 lb/(1000 ft2 24 h)", Waited: "66 h"}, MoistureTest{Value: "5 lb/(1000 ft2 24 h)", Waited: "66 h"}, MoistureTest{Waited: "80 h"})
	states := outcomes(job)
	assert.Equal(t, "broken", states["emission-low"])
	assert.Equal(t, "broken", states["emission-tests-enough"], "two have a value and three are needed")
	assert.Equal(t, "broken", states["emission-time"], "80 h is over the 72 h that it may stand")
	open := MakePlan(job, book).Rooms[0].Decks[0].Moisture.Tests[2].Open
	assert.Len(t, open, 2, "no value, and it stood too long")

	damp := slab("plastic sheet", MoistureTest{Value: "dry", Waited: "16 h"}, MoistureTest{Value: "damp", Waited: "16 h"})
	assert.Equal(t, "broken", outcomes(damp)["sheet-dry-below"])
}

func TestATestOffTheDeckOrUnreadableIsNamedAndNothingElseIsLost(t *testing.T) {
	job := slab("probes", MoistureTest{At: &Spot{"9 m", "1 m"}, Value: "wet", Depth: "40 mm", Waited: "26 h"})
	plan := MakePlan(job, book)
	fields := map[string]bool{}
	for _, problem := range plan.Problems {
		fields[problem.Field] = true
	}
	assert.True(t, fields["rooms/0/decks/0/tests/0/at"])
	assert.True(t, fields["rooms/0/decks/0/tests/0/value"])
	assert.NotEmpty(t, plan.Totals.Bags)
}
