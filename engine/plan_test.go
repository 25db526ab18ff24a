package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/rules"
)

func TestTheShippedRulebookHasNoErrorsAndItsExamplesHold(t *testing.T) {
	book := ShippedRulebook()
	for _, err := range book.Errors {
		assert.NoError(t, err)
	}
	for _, result := range book.Compiled.Examples() {
		assert.True(t, result.Passed, "%s: %s: got %s", result.Rule, result.Text, result.Got)
	}
	assert.GreaterOrEqual(t, len(book.Book.Rules), 25)
}

func TestTheDemoJobHasAPlan(t *testing.T) {
	plan := MakePlan(DemoJob("demo"), ShippedRulebook())
	assert.Empty(t, plan.Problems)
	require.Len(t, plan.Rooms, 1)
	require.NotNil(t, plan.Rooms[0].Pour)
	assert.True(t, plan.Totals.Ready)
	assert.Positive(t, plan.Totals.Bags)
	for _, f := range plan.Findings {
		assert.NotEqual(t, rules.Faulty, f.State, "%s: %v", f.Rule, f.Fault)
		t.Log(f.State, f.Weight, f.Rule, f.Subject.Name, f.Says)
	}
	for _, q := range plan.Questions {
		t.Log(q.Word, q.Subject, q.Checks, q.DontKnow)
	}
	t.Logf("%+v", plan.Totals)
	t.Logf("%+v", plan.Rooms[0].Pour.Depths)
	t.Logf("%+v %+v", plan.Rooms[0].Plane, plan.Rooms[0].Doors)
}
