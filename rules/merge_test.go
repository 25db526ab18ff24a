package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func figureBook(t *testing.T, version string, values ...string) *Book {
	t.Helper()
	text := "version: " + version + "\n"
	for i := 0; i < len(values); i += 2 {
		text += "figure " + values[i] + "\n dimension: length\n value: " + values[i+1] + "\n"
	}
	book, errors := Parse(text)
	require.Empty(t, errors)
	return book
}

func TestALaterShippedBookIsMergedRuleByRule(t *testing.T) {
	base := figureBook(t, "1", "same", "mm(1)", "theirs", "mm(2)", "mine", "mm(3)", "both", "mm(4)", "alike", "mm(5)", "dropped", "mm(6)", "dropped_edited", "mm(7)", "removed", "mm(8)")
	users := figureBook(t, "1", "same", "mm(1)", "theirs", "mm(2)", "mine", "mm(33)", "both", "mm(44)", "alike", "mm(55)", "dropped", "mm(6)", "dropped_edited", "mm(77)", "own", "mm(9)")
	shipped := figureBook(t, "2", "same", "mm(1)", "theirs", "mm(22)", "mine", "mm(3)", "both", "mm(444)", "alike", "mm(55)", "removed", "mm(8)", "fresh", "mm(10)")

	merged, conflicts := Merge(shipped, users, base)
	values := map[string]string{}
	for _, r := range merged.Rules {
		values[r.Name] = r.Value
	}
	assert.Equal(t, map[string]string{"same": "mm(1)", "theirs": "mm(22)", "mine": "mm(33)", "both": "mm(44)", "alike": "mm(55)", "dropped_edited": "mm(77)", "own": "mm(9)", "fresh": "mm(10)"}, values)
	assert.Equal(t, "2", merged.Version)
	require.Len(t, conflicts, 2)
	assert.Equal(t, "both", conflicts[0].Rule)
	assert.Equal(t, "mm(444)", conflicts[0].Shipped.Value)
	assert.Equal(t, "dropped_edited", conflicts[1].Rule)
	assert.Nil(t, conflicts[1].Shipped)
}

func TestMergingWithoutEditsGivesWhatShips(t *testing.T) {
	base, shipped := figureBook(t, "1", "a", "mm(1)", "b", "mm(2)"), figureBook(t, "2", "b", "mm(3)", "c", "mm(4)")
	merged, conflicts := Merge(shipped, base, base)
	assert.Empty(t, conflicts)
	assert.Equal(t, shipped.Text(), merged.Text())
}

func TestAChangeKeepsWhatTheRuleSaidBefore(t *testing.T) {
	book := figureBook(t, "1", "a", "mm(1)")
	to := book.Rules[0]
	to.Value, to.Words = "mm(2)", "The thinnest."
	book.Changed(to, "the shop", "2024-05-01")
	to.Value = "mm(3)"
	book.Changed(to, "me", "2024-06-01")
	assert.Equal(t, "mm(3)", book.Rules[0].Value)
	assert.Equal(t, []string{"2024-05-01 the shop: words: (nothing)", "2024-05-01 the shop: value: mm(1)", "2024-06-01 me: value: mm(2)"}, book.Rules[0].History)
	again, errors := Parse(book.Text())
	require.Empty(t, errors)
	assert.Equal(t, book.Rules[0].History, again.Rules[0].History)
	book.Changed(Rule{Name: "new", Dimension: "length", Value: "mm(1)"}, "me", "2024-06-01")
	assert.Len(t, book.Rules, 2)
}
