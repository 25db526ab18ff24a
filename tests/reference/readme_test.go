package reference

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
)

// TestTheReadmesRulesWorkAsTheyStandThere runs the rule guide: every indented block with a figure or a check is a rulebook, and its examples hold.
func TestTheReadmesRulesWorkAsTheyStandThere(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	_, guide, found := strings.Cut(string(readme), "## Changing a rule")
	require.True(t, found)
	guide, _, _ = strings.Cut(guide, "\n## ")
	var text strings.Builder
	for _, line := range strings.Split(guide, "\n") {
		if code, is := strings.CutPrefix(line, "    "); is {
			text.WriteString(code + "\n")
		} else if line == "" {
			text.WriteString("\n")
		}
	}
	book := engine.ReadRulebook(text.String())
	for _, e := range book.Errors() {
		assert.Fail(t, e.Error())
	}
	require.GreaterOrEqual(t, len(book.Book.Rules), 2)
	examples := book.Compiled.Examples()
	require.GreaterOrEqual(t, len(examples), len(book.Book.Rules))
	for _, e := range examples {
		assert.True(t, e.Passed, "%s: %s gives %s", e.Rule, e.Text, e.Got)
	}
}
