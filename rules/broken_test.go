package rules

import (
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Renew the golden file with: go test ./rules -run TestTheBrokenRulebook -update
var update = flag.Bool("update", false, "write testdata/broken.errors anew")

func TestTheBrokenRulebookTellsEachOfItsErrors(t *testing.T) {
	text, err := os.ReadFile("testdata/broken.rules")
	require.NoError(t, err)
	book, errors := Parse(string(text))
	_, more := Compile(book, words())
	told := tell(string(text), append(errors, more...))
	if *update {
		require.NoError(t, os.WriteFile("testdata/broken.errors", []byte(told), 0o644))
	}
	golden, err := os.ReadFile("testdata/broken.errors")
	require.NoError(t, err)
	assert.Equal(t, string(golden), told)
}

// tell shows each error under the line that it is about.
func tell(text string, errors []*Error) string {
	lines := strings.Split(text, "\n")
	var w strings.Builder
	for _, e := range errors {
		w.WriteString(e.Error() + "\n")
		if e.Line > 0 {
			w.WriteString("  | " + lines[e.Line-1] + "\n  | " + strings.Repeat(" ", e.Column-1) + "^ " + e.Code + "\n")
		}
	}
	return w.String()
}
