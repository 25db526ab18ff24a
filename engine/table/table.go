// Package table parts text into rows and fields the way spreadsheet programs and field books write them: fields apart by tab, semicolon, comma or
// spaces, quotes where a field holds the separator itself, any line ending, a byte-order mark or none. It judges no field; its users do.
package table

import "strings"

// Spaces as a separator stands for one or more spaces or tabs in a row.
const Spaces = ' '

// LongestQuoted is how many bytes a quoted field may have; a quote that isn't closed by then is a mark like any other.
const LongestQuoted = 4096

// Row is one row: the number of its first line, counted from 1, its text, and its fields without the spaces round them.
type Row struct {
	Line   int
	Text   string
	Fields []string
}

// Clean takes off the byte-order mark and the "sep=;" line that spreadsheet programs put first, and gives every line the same ending.
// A separator named so comes back; otherwise it is zero. The named line stays as an empty one, so that line numbers still hold.
func Clean(text string) (string, byte) {
	text = strings.TrimPrefix(text, "\uFEFF")
	if strings.IndexByte(text, '\r') >= 0 {
		text = strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n")
	}
	if len(text) >= 5 && strings.EqualFold(text[:4], "sep=") && (len(text) == 5 || text[5] == '\n') {
		return text[5:], text[4]
	}
	return text, 0
}

// sampled is how many rows the separator is judged by.
const sampled = 50

// Separator finds what parts the fields: tab, semicolon or comma, the first that at least half of the first rows have outside quotes.
// Zero means that none of them does.
func Separator(clean string) byte {
	for _, separator := range []byte{'\t', ';', ','} {
		rows, parted := 0, 0
		Each(clean, separator, func(r Row) bool {
			if strings.TrimSpace(r.Text) != "" {
				rows++
				if len(r.Fields) > 1 {
					parted++
				}
			}
			return rows < sampled
		})
		if parted > 0 && 2*parted >= rows {
			return separator
		}
	}
	return 0
}

// Each calls do with every row of cleaned text, empty ones too, until it returns false.
func Each(clean string, separator byte, do func(Row) bool) {
	for line := 1; clean != ""; {
		fields, length := row(clean, separator)
		text := clean[:length]
		if !do(Row{Line: line, Text: text, Fields: fields}) || length == len(clean) {
			return
		}
		line += 1 + strings.Count(text, "\n")
		clean = clean[length+1:]
	}
}

// row parts the text's first row and tells its length in bytes, without its line ending.
func row(text string, separator byte) (fields []string, length int) {
	if separator == Spaces {
		length = lineEnd(text)
		return strings.Fields(text[:length]), length
	}
	for at := 0; ; {
		field, size := field(text[at:], separator)
		fields = append(fields, field)
		at += size
		if at == len(text) || text[at] == '\n' {
			return fields, at
		}
		at++ // the separator
	}
}

func lineEnd(text string) int {
	if end := strings.IndexByte(text, '\n'); end >= 0 {
		return end
	}
	return len(text)
}

func field(text string, separator byte) (string, int) {
	value, closing := quoted(text)
	end := closing
	for end < len(text) && text[end] != separator && text[end] != '\n' {
		end++
	}
	if closing > 0 && strings.Trim(text[closing:end], " ") == "" {
		return value, end
	}
	return strings.TrimSpace(text[:end]), end
}

// quoted reads a field in quotation marks, a doubled mark standing for one, and tells where it closes; zero if it doesn't.
func quoted(text string) (value string, closing int) {
	at := len(text) - len(strings.TrimLeft(text, " "))
	if at == len(text) || text[at] != '"' {
		return "", 0
	}
	var inside strings.Builder
	for at++; at < len(text) && at <= LongestQuoted; at++ {
		switch {
		case text[at] != '"':
			inside.WriteByte(text[at])
		case strings.HasPrefix(text[at:], `""`):
			inside.WriteByte('"')
			at++
		default:
			return inside.String(), at + 1
		}
	}
	return "", 0
}
