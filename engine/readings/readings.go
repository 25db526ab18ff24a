// Package readings reads a survey from text: pasted, typed or saved from a field book or a spreadsheet. What can't be read is named line by
// line; what can is kept, as it was typed.
package readings

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"lowspot/engine/quantity"
	"lowspot/engine/table"
)

// The limits of one text. More bad lines than MostBad are only counted.
const (
	MostBytes   = 32 << 20
	MostRows    = 200_000
	LongestLine = 4096
	MostBad     = 200
)

// The two senses of a height, as in a job document.
const (
	Below = "below" // staff readings below a level line
	Above = "above" // heights above a datum
)

// Defaults are what holds where the text's header doesn't say otherwise; units by their symbol ("m", "in").
type Defaults struct{ Sense, PositionUnit, HeightUnit string }

// Row is one reading as typed. Bare numbers are in the result's units; a decimal comma has become a point.
type Row struct{ X, Y, Height string }

// Bad is a line that couldn't be read, for the person who must act. Line counts from 1; zero is the text as a whole.
type Bad struct {
	Line    int
	Given   string
	Message string
	Remedy  string
}

// Result is what was read. More is how many further bad lines there are beyond those in Bad.
type Result struct {
	Rows         []Row
	Sense        string
	PositionUnit string
	HeightUnit   string
	Bad          []Bad
	More         int
}

// Read reads a survey: a row a reading, x, y and height in columns, under names and units if the first row has them ("x (m); y (m); staff mm").
// The text may be a file's bytes as they are.
// Columns may be apart by tab, semicolon, comma or spaces; empty lines and lines that start with # count for nothing.
func Read(text string, d Defaults) Result {
	r := reader{result: Result{Sense: d.Sense, PositionUnit: d.PositionUnit, HeightUnit: d.HeightUnit}, columns: plainColumns}
	if problem := unfit(text); problem != nil {
		r.result.Bad = append(r.result.Bad, *problem)
		return r.result
	}
	clean, separator := table.Clean(table.Decode(text))
	if separator == 0 {
		separator = separatorOf(clean)
	}
	r.separator = separator
	r.findHeader(clean)
	r.commas = decimalCommas(clean, separator, r.header)
	table.Each(clean, separator, r.read)
	return r.result
}

// unfit tells why a text isn't worth reading at all.
func unfit(text string) *Bad {
	switch {
	case len(text) > MostBytes:
		return &Bad{Message: "The text has more than 32 MB.", Remedy: "Read it in parts, one room at a time."}
	case strings.IndexByte(table.Decode(text[:min(len(text), 4096)]), 0) >= 0:
		return &Bad{Message: "This isn't plain text.", Remedy: "Save it again as CSV in UTF-8."}
	}
	return nil
}

type reader struct {
	result    Result
	separator byte
	header    int // line of the header; zero where there is none
	columns   columns
	commas    bool // a comma in a number is a decimal comma
}

// read takes one row; it reports false where nothing further is to be read.
func (r *reader) read(row table.Row) bool {
	wordsOnly := !hasDigit(row.Text)
	if row.Line == r.header || skipped(row) || wordsOnly && row.Line < r.header {
		return true
	}
	if len(r.result.Rows) == MostRows {
		r.fail(row, "The text has more than 200 000 readings.", "Read it in parts, one room at a time.")
		return false
	}
	if len(row.Text) > LongestLine {
		r.fail(row, "This line has more than 4096 bytes.", "Give one reading a line: x, y and height.")
		return true
	}
	if wordsOnly {
		r.fail(row, "This line has no numbers.", "Name the columns “x; y; height” in the first line, or leave this one out.")
		return true
	}
	if r.header == 0 && r.unnamed(row) {
		return true
	}
	if len(row.Fields) <= r.columns.last() {
		r.fail(row, "This line has "+strconv.Itoa(len(row.Fields))+" of the columns x, y and height.", "Give x, y and height on every line, for example “1.2; 3.4; 12”.")
		return true
	}
	r.keep(row)
	return true
}

func hasDigit(text string) bool { return strings.ContainsAny(text, "0123456789¼½¾⅛⅜⅝⅞") }

// skipped reports whether a row counts for nothing: it is empty, or a remark.
func skipped(row table.Row) bool {
	text := strings.TrimSpace(row.Text)
	if text == "" || text[0] == '#' {
		return true
	}
	for _, field := range row.Fields {
		if field != "" {
			return false
		}
	}
	return true
}

// unnamed refuses a row with a fourth number when no header says which three count: it might be a point number, or an intermediate sight.
func (r *reader) unnamed(row table.Row) bool {
	if len(row.Fields) < 4 {
		return false
	}
	for _, field := range row.Fields[:4] {
		if !number(field) {
			return false
		}
	}
	r.fail(row, "This line has more numbers than x, y and height.", "Name the columns in the first line, for example “point; x; y; height”; if commas mark decimals, part the columns with semicolons.")
	return true
}

// keep checks the three fields and keeps them, as typed but for the comma.
func (r *reader) keep(row table.Row) {
	c := r.columns
	x, okX := r.field(row, c.x, "x", c.xUnit, r.result.PositionUnit)
	if !okX {
		return
	}
	y, okY := r.field(row, c.y, "y", c.yUnit, r.result.PositionUnit)
	if !okY {
		return
	}
	height, okHeight := r.field(row, c.height, "height", "", r.result.HeightUnit)
	if okHeight {
		r.result.Rows = append(r.result.Rows, Row{X: x, Y: y, Height: height})
	}
}

// field reads one field. A bare number in a column of another unit than the result's gets its unit written to it.
func (r *reader) field(row table.Row, column int, name, own, unit string) (string, bool) {
	typed := row.Fields[column]
	if r.commas && number(typed) {
		typed = strings.Replace(typed, ",", ".", 1)
	}
	if own != "" && own != unit {
		if _, err := quantity.Read(typed, quantity.Length); err != nil {
			typed += " " + own
		}
	}
	if _, err := quantity.ReadIn(typed, quantity.Length, unit); err != nil {
		message, remedy := err.Error(), ""
		if bad, ok := err.(*quantity.Error); ok {
			message, remedy = bad.Message, bad.Remedy
		}
		r.fail(row, "The "+name+" can't be read: "+message, remedy)
		return "", false
	}
	return typed, true
}

func (r *reader) fail(row table.Row, message, remedy string) {
	if len(r.result.Bad) == MostBad {
		r.result.More++
		return
	}
	r.result.Bad = append(r.result.Bad, Bad{Line: row.Line, Given: shown(row.Text), Message: message, Remedy: remedy})
}

// shown is a line cut where it is too long to repeat.
func shown(text string) string {
	const longest = 120
	text = strings.ToValidUTF8(strings.TrimSpace(text), "\uFFFD")
	if len(text) <= longest {
		return text
	}
	end := longest
	for !utf8.RuneStart(text[end]) {
		end--
	}
	return text[:end] + "…"
}
