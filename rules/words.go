package rules

// Small helpers for telling errors: the nearest known name, counts and lists in words.

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// nearest returns the known name that takes the fewest edits from the one given, or "" where none comes near.
func nearest(name string, known []string) string {
	best, fewest := "", (utf8.RuneCountInString(name)+1)/3+1
	for _, k := range known {
		if d := edits(strings.ToLower(name), strings.ToLower(k), fewest); d < fewest {
			best, fewest = k, d
		}
	}
	return best
}

// edits is the Levenshtein distance between two names, or limit where it is not below that.
func edits(a, b string, limit int) int {
	x, y := []rune(a), []rune(b)
	if len(x) > 2*LimitName || len(y) > 2*LimitName || len(x)-len(y) >= limit || len(y)-len(x) >= limit {
		return limit
	}
	row := make([]int, len(y)+1)
	for j := range row {
		row[j] = j
	}
	for i, c := range x {
		diagonal := row[0]
		row[0] = i + 1
		for j, d := range y {
			change := diagonal
			if c != d {
				change++
			}
			diagonal = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return min(row[len(y)], limit)
}

func count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return strconv.Itoa(n) + " " + thing + "s"
}

func bytesText(n int) string { return strconv.Itoa(n>>10) + " KB" }

// orList joins names as "a, b or c", quoted as expressions write them where quote is set.
func orList(names []string, quote string) string {
	var w strings.Builder
	for i, n := range names {
		switch {
		case i == 0:
		case i == len(names)-1:
			w.WriteString(" or ")
		default:
			w.WriteString(", ")
		}
		w.WriteString(quote + n + quote)
	}
	return w.String()
}
