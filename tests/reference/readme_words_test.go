package reference

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/rules"
)

var update = flag.Bool("update", false, "write the README's list of words afresh")

const wordsBegin, wordsEnd = "<!-- words: made from the engine -->\n", "<!-- /words -->\n"

// TestTheReadmeListsEveryWordThatARuleMayUse compares the rule guide's table with the engine's own vocabulary; -update renews it.
func TestTheReadmeListsEveryWordThatARuleMayUse(t *testing.T) {
	const path = "../../README.md"
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	before, rest, found := strings.Cut(string(content), wordsBegin)
	require.True(t, found)
	table, after, found := strings.Cut(rest, wordsEnd)
	require.True(t, found)
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(before+wordsBegin+wordTable()+wordsEnd+after), 0o644))
		return
	}
	require.Equal(t, wordTable(), table, "go test ./tests/reference -run TestTheReadmeLists -update")
}

func wordTable() string {
	var b strings.Builder
	b.WriteString("\n| word | for each | what it is | meaning | example |\n| --- | --- | --- | --- | --- |\n")
	for _, w := range engine.WordList() {
		what := w.Dimension
		switch w.Kind {
		case rules.Choice:
			what = strings.Join(w.Choices, ", ")
		case rules.Truth:
			what = "yes or no"
		case rules.Text:
			what = "text"
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s | %s |\n", w.Name, w.Scope, what, w.Meaning, strings.ReplaceAll(w.Example, "|", "\\|"))
	}
	b.WriteString("\n")
	return b.String()
}
