// Digits: fixed decimals, trimmed decimals, significant figures. Never "-0".
package quantity

import (
	"strconv"
	"strings"
)

// fixed is a number with a fixed count of decimals.
func fixed(value float64, count int) string {
	text := strconv.FormatFloat(value, 'f', count, 64)
	if parsed(text) == 0 {
		return strings.TrimPrefix(text, "-")
	}
	return text
}

// decimals is a number with at most so many decimals.
func decimals(value float64, count int) string {
	text := fixed(value, count)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// figures is a number with so many significant figures; whole digits are all shown. Very small and very large ones get a power of ten.
func figures(value float64, count int) string {
	if value == 0 {
		return "0"
	}
	_, power, _ := strings.Cut(strconv.FormatFloat(value, 'e', count-1, 64), "e")
	n, _ := strconv.Atoi(power)
	if n < -5 || n >= 12 {
		return strconv.FormatFloat(value, 'g', count, 64)
	}
	return decimals(value, max(0, count-1-n))
}

func parsed(text string) float64 {
	value, _ := strconv.ParseFloat(text, 64)
	return value
}
