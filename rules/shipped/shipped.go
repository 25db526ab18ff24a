// Package shipped holds the rulebook that ships: one file a theme, read in the order of the files' names.
package shipped

import (
	"embed"
	"strings"

	"lowspot/rules"
)

//go:embed *.rules
var files embed.FS

// Text is the whole shipped rulebook as one text.
func Text() string {
	var w strings.Builder
	entries, _ := files.ReadDir(".")
	for _, entry := range entries {
		text, _ := files.ReadFile(entry.Name())
		w.Write(text)
		w.WriteString("\n")
	}
	return w.String()
}

// Book reads the shipped rulebook. Its errors are those of Text's lines; the tests hold that there are none.
func Book() (*rules.Book, []*rules.Error) { return rules.Parse(Text()) }
