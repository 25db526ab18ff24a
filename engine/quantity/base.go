// The SI base units of a dimension, for quantities without a unit of their own: "kg m⁴/s²", "per m²".
package quantity

import (
	"strconv"
	"strings"
)

func baseSymbol(d Dimension) string {
	above, below := d.baseUnits(1), d.baseUnits(-1)
	under := strings.Join(below, " ")
	if len(below) > 1 {
		under = "(" + under + ")"
	}
	switch {
	case len(below) == 0:
		return strings.Join(above, " ")
	case len(above) == 0:
		return "per " + under
	}
	return strings.Join(above, " ") + "/" + under
}

// baseUnits are the units above (sign 1) or below (sign -1) the line. Money has none: its currency is never part of the text.
func (d Dimension) baseUnits(sign int) []string {
	var units []string
	for _, b := range []struct {
		symbol   string
		exponent int8
	}{{"kg", d.Mass}, {"m", d.Length}, {"K", d.Temperature}, {"s", d.Time}} {
		if n := int(b.exponent) * sign; n > 0 {
			units = append(units, b.symbol+raised(n))
		}
	}
	return units
}

func raised(n int) string {
	if n == 1 {
		return ""
	}
	var b strings.Builder
	for _, digit := range strconv.Itoa(n) {
		b.WriteRune([]rune("⁰¹²³⁴⁵⁶⁷⁸⁹")[digit-'0'])
	}
	return b.String()
}
