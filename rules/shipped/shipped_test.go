package shipped_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/rules"
	"lowspot/rules/shipped"
)

func book(t *testing.T) (*rules.Book, *rules.Compiled) {
	t.Helper()
	book, errors := shipped.Book()
	require.Empty(t, errors)
	var vocabulary rules.Vocabulary
	for _, w := range engine.Vocabulary() {
		vocabulary = append(vocabulary, w.Word)
	}
	compiled, errors := rules.Compile(book, vocabulary)
	require.Empty(t, errors)
	return book, compiled
}

func TestEveryExampleOfTheShippedBookHolds(t *testing.T) {
	_, compiled := book(t)
	for _, e := range compiled.Examples() {
		assert.True(t, e.Passed, "%s: %s gives %s", e.Rule, e.Text, e.Got)
	}
}

func TestEveryShippedRuleHasASourceAndExamplesOfWhatCanComeOfIt(t *testing.T) {
	shippedBook, compiled := book(t)
	for _, r := range shippedBook.Rules {
		assert.NotEmpty(t, r.Source, r.Name)
		assert.NotEmpty(t, r.Theme, r.Name)
		assert.NotEmpty(t, r.Examples, r.Name)
		if !r.Check {
			continue
		}
		var wanted []string
		for _, e := range r.Examples {
			wanted = append(wanted, strings.TrimSpace(e[strings.LastIndex(e, "=>")+2:]))
		}
		assert.Contains(t, wanted, "kept", r.Name)
		assert.Contains(t, wanted, "broken", r.Name)
		if r.Applies != "" {
			assert.Contains(t, wanted, "idle", r.Name)
		}
		for _, o := range compiled.Checks(r.For, rules.Facts{}, "metric") {
			if o.Rule == r.Name && o.State == rules.Unanswered {
				assert.Contains(t, wanted, "unanswered", r.Name)
			}
		}
	}
}

func TestTheShippedBookIsWrittenAsItReads(t *testing.T) {
	shippedBook, _ := book(t)
	again, errors := rules.Parse(shippedBook.Text())
	require.Empty(t, errors)
	assert.Equal(t, shippedBook.Text(), again.Text())
	assert.Len(t, again.Rules, len(shippedBook.Rules))
}
