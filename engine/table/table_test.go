// How rows and fields come apart.
package table_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "lowspot/engine/table"
)

func rows(text string) (parted [][]string) {
	clean, separator := Clean(text)
	if separator == 0 {
		separator = Separator(clean)
	}
	Each(clean, separator, func(r Row) bool {
		parted = append(parted, r.Fields)
		return true
	})
	return parted
}

func TestQuotesKeepSeparatorsLineEndsAndQuotes(t *testing.T) {
	assert.Equal(t, [][]string{{"a;b", `3/8" strip`, "two\nlines"}, {"c", "d", "e"}}, rows("\"a;b\";\"3/8\"\" strip\";\"two\r\nlines\"\r\nc;d;e"))
	assert.Equal(t, [][]string{{`3/8" strip`, `"loose" end`}, {"c", `"never closed`}}, rows("3/8\" strip;\"loose\" end\nc;\"never closed"))
}

func TestARowKeepsItsLineNumberBehindQuotedLines(t *testing.T) {
	var lines []int
	Each("a;\"b\nc\"\nd;e\n\nf;g", ';', func(r Row) bool {
		lines = append(lines, r.Line)
		return true
	})
	assert.Equal(t, []int{1, 3, 4, 5}, lines)
}

func TestTheSeparatorIsTheOneMostRowsHave(t *testing.T) {
	for text, want := range map[string]byte{
		"a;b,c\n1;2,5": ';', "a\tb;c\n1\t2": '\t', "a,b\n1,2": ',', "one\ntwo": 0, "": 0, "title, only\na;b\nc;d": ';', "\"a;b\",c\n\"d;e\",f": ',',
	} {
		assert.Equal(t, want, Separator(text), text)
	}
}

func TestAFileReadsInTheEncodingItWasSavedIn(t *testing.T) {
	for name, file := range map[string]string{
		"UTF-8":                     "½;€ é",
		"Windows-1252":              "\xBD;\x80 \xE9",
		"UTF-16, low bytes first":   "\xFF\xFE\xBD\x00;\x00\xAC\x20 \x00\xE9\x00",
		"UTF-16, high bytes first":  "\xFE\xFF\x00\xBD\x00;\x20\xAC\x00 \x00\xE9",
		"UTF-16 with a byte astray": "\xFF\xFE\xBD\x00;\x00\xAC\x20 \x00\xE9\x00\x00",
	} {
		assert.Equal(t, "½;€ é", Decode(file), name)
	}
}
