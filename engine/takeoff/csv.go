package takeoff

import "strings"

// WriteCSV writes rows as CSV (RFC 4180) with a byte-order mark, by which spreadsheet programs know UTF-8. Where decimals have a comma, these programs
// want semicolons between the columns. What they would take for a formula gets an apostrophe before it.
func WriteCSV(rows [][]string, comma bool) string {
	separator := byte(',')
	if comma {
		separator = ';'
	}
	var b strings.Builder
	b.WriteString("\uFEFF")
	for _, row := range rows {
		for i, field := range row {
			if i > 0 {
				b.WriteByte(separator)
			}
			b.WriteString(quoted(guarded(field), separator))
		}
		b.WriteString("\r\n")
	}
	return b.String()
}

func quoted(field string, separator byte) string {
	if strings.IndexByte(field, separator) < 0 && !strings.ContainsAny(field, ";\t\"\r\n") && strings.TrimSpace(field) == field {
		return field
	}
	return `"` + strings.ReplaceAll(field, `"`, `""`) + `"`
}

// formula is what a spreadsheet program takes a field that starts with it for; the apostrophe itself is among them so that guarding can be undone.
const formula = "=+-@'"

func guarded(field string) string {
	if field != "" && strings.IndexByte(formula, field[0]) >= 0 && !plain(field) {
		return "'" + field
	}
	return field
}

func unguarded(field string) string {
	if len(field) > 1 && field[0] == '\'' && strings.IndexByte(formula, field[1]) >= 0 {
		return field[1:]
	}
	return field
}

// plain reports whether a field is a number, which is no formula.
func plain(field string) bool {
	return strings.Trim(field, "+-0123456789.,") == "" && strings.LastIndexAny(field, "+-") == 0
}
