// Tells whether a comma parts columns or marks decimals.
package readings

import (
	"strings"

	"lowspot/engine/table"
)

// separatorOf finds what parts the columns. Commas part them unless the first rows read as plain numbers between spaces ("1,5 2,0 12,3").
func separatorOf(clean string) byte {
	separator := table.Separator(clean)
	if separator == 0 || separator == ',' && spaced(clean) {
		return table.Spaces
	}
	return separator
}

// spaced reports whether every one of the first rows that begins with a number is at least three numbers with spaces between.
func spaced(clean string) bool {
	rows, all := 0, true
	table.Each(clean, table.Spaces, func(row table.Row) bool {
		if len(row.Fields) == 0 || !strings.ContainsAny(row.Fields[0][:1], "0123456789+-") {
			return row.Line < 100
		}
		rows++
		all = len(row.Fields) >= 3 && number(row.Fields[0]) && number(row.Fields[1]) && number(row.Fields[2])
		return all && rows < 50
	})
	return rows > 0 && all
}

// decimalCommas reports whether the text marks decimals with commas throughout: at least one number's comma can't part thousands, and no
// number has a point. Where it doesn't hold, a number that can be read in two ways is refused by name.
func decimalCommas(clean string, separator byte, header int) bool {
	sure, points := false, false
	table.Each(clean, separator, func(row table.Row) bool {
		if row.Line == header {
			return true
		}
		for _, field := range row.Fields {
			if !number(field) {
				continue
			}
			points = points || strings.Contains(field, ".")
			if i := strings.IndexByte(field, ','); i >= 0 {
				sure = sure || !thousands(field[:i], field[i+1:])
			}
		}
		return !points
	})
	return sure && !points
}

// thousands reports whether a comma between these could part thousands.
func thousands(before, after string) bool {
	before = strings.TrimLeft(before, "+-")
	return len(after) == 3 && len(before) <= 3 && before != "0" && before != ""
}

// number reports whether a field is a plain number: a sign, digits, and at most one point or comma.
func number(field string) bool {
	field = strings.TrimLeft(field, "+-")
	digits, marks := 0, 0
	for i := 0; i < len(field); i++ {
		switch c := field[i]; {
		case c >= '0' && c <= '9':
			digits++
		case c == '.' || c == ',':
			marks++
		default:
			return false
		}
	}
	return digits > 0 && marks <= 1
}
