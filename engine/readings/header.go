// Finds the row that names the columns, and what it says of their order, units and sense.
package readings

import (
	"strings"

	"lowspot/engine/quantity"
	"lowspot/engine/table"
)

// columns are the places of the three columns, counted from 0, and the units of x and y where the header gives them.
type columns struct {
	x, y, height int
	xUnit, yUnit string
}

var plainColumns = columns{x: 0, y: 1, height: 2}

func (c columns) last() int { return max(c.x, c.y, c.height) }

// named is how columns are called, in every language that the page speaks. A word of the height's name may also tell its sense.
var (
	namedX      = words("x east easting este")
	namedY      = words("y north northing norte")
	namedHeight = words("z h height heights reading readings staff rod level elevation elev rl altura alturas lectura lecturas mira nivel cota elevación elevacion")
	meansBelow  = words("staff rod below down mira bajo debajo")
	meansAbove  = words("elevation elev rl z above datum reduced cota elevación elevacion sobre")
	qualifiers  = words("above below down line datum bajo debajo sobre línea linea")
)

func words(list string) map[string]bool {
	set := map[string]bool{}
	for _, word := range strings.Fields(list) {
		set[word] = true
	}
	return set
}

// headerWithin is how many rows the header is looked for in; titles may stand above it.
const headerWithin = 20

func (r *reader) findHeader(clean string) {
	table.Each(clean, r.separator, func(row table.Row) bool {
		fields := row.Fields
		if r.separator == table.Spaces {
			fields = joined(fields)
		}
		if r.takeHeader(fields) {
			r.header = row.Line
		}
		return r.header == 0 && row.Line < headerWithin
	})
}

// takeHeader reports whether the fields name x, y and a height; if so it takes what they say.
func (r *reader) takeHeader(fields []string) bool {
	c := columns{x: -1, y: -1, height: -1}
	heightUnit, sense := "", ""
	for i, field := range fields {
		name, unit := nameAndUnit(field)
		switch {
		case c.x < 0 && anyOf(name, namedX):
			c.x, c.xUnit = i, unit
		case c.y < 0 && anyOf(name, namedY):
			c.y, c.yUnit = i, unit
		case c.height < 0 && anyOf(name, namedHeight):
			c.height, heightUnit, sense = i, unit, senseOf(name)
		}
	}
	if c.x < 0 || c.y < 0 || c.height < 0 {
		return false
	}
	if c.xUnit != "" {
		r.result.PositionUnit = c.xUnit
	} else if c.yUnit != "" {
		c.xUnit = r.result.PositionUnit
	}
	r.columns = c
	if heightUnit != "" {
		r.result.HeightUnit = heightUnit
	}
	if sense != "" {
		r.result.Sense = sense
	}
	return true
}

// nameAndUnit parts "Staff reading (mm)" or "reading mm" into its lower-case words and the unit's symbol, which is empty where none is given.
func nameAndUnit(field string) (name []string, unit string) {
	name = strings.FieldsFunc(strings.ToLower(field), func(c rune) bool { return strings.ContainsRune(" ()[]/,_:-.", c) })
	if len(name) > 1 {
		if u, ok := quantity.UnitNamed(name[len(name)-1]); ok && u.Dimension == quantity.Length {
			return name[:len(name)-1], u.Symbol
		}
	}
	return name, ""
}

func anyOf(name []string, set map[string]bool) bool {
	for _, word := range name {
		if set[word] {
			return true
		}
	}
	return false
}

func senseOf(name []string) string {
	switch {
	case anyOf(name, meansBelow):
		return Below
	case anyOf(name, meansAbove):
		return Above
	}
	return ""
}

// joined puts the words of a header that is apart by spaces back together: a unit or a qualifier belongs to the name before it.
func joined(fields []string) []string {
	var names []string
	for _, field := range fields {
		name, _ := nameAndUnit("of " + field)
		_, unit := nameAndUnit("of " + field)
		belongs := unit != "" || len(name) == 2 && qualifiers[name[1]]
		if belongs && len(names) > 0 {
			names[len(names)-1] += " " + field
		} else {
			names = append(names, field)
		}
	}
	return names
}
