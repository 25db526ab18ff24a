// Writes what people say in two units: feet and inches with sixteenths, hours and minutes.
package quantity

import (
	"math"
	"strconv"
)

// writeFeet rounds to 1/16 in: inches below a foot, feet and inches above, whole feet from 100 000 ft.
func writeFeet(si float64) string {
	inch, foot := bySpelling["in"], bySpelling["ft"]
	sixteenths := int64(math.Round(math.Abs(inch.From(si)) * 16))
	feet, rest := sixteenths/192, sixteenths%192
	if feet >= 1e5 {
		return decimals(foot.From(si), 0) + " ft"
	}
	text := mixedNumber(rest) + " in"
	if feet > 0 && rest > 0 && rest < 16 {
		text = strconv.FormatInt(feet, 10) + "' 0 " + mixedNumber(rest) + `"`
	} else if feet > 0 {
		text = strconv.FormatInt(feet, 10) + "' " + mixedNumber(rest) + `"`
	}
	return signed(text, si < 0 && sixteenths > 0)
}

// mixedNumber writes sixteenths as a whole number and a fraction in lowest terms.
func mixedNumber(sixteenths int64) string {
	whole, over, under := sixteenths/16, sixteenths%16, int64(16)
	for over > 0 && over%2 == 0 {
		over, under = over/2, under/2
	}
	fraction := strconv.FormatInt(over, 10) + "/" + strconv.FormatInt(under, 10)
	switch {
	case over == 0:
		return strconv.FormatInt(whole, 10)
	case whole == 0:
		return fraction
	}
	return strconv.FormatInt(whole, 10) + " " + fraction
}

// writeTime rounds to 0.1 s below a minute, seconds below an hour, minutes below four days, and hours beyond.
func writeTime(si float64) string {
	seconds := math.Abs(si)
	if text := decimals(seconds, 1); parsed(text) < 60 {
		return signed(text+" s", si < 0 && text != "0")
	}
	if n := math.Round(seconds); n < 3600 {
		return signed(two(n, 60, "min", "s"), si < 0)
	}
	if n := math.Round(seconds / 60); n < 4*24*60 {
		return signed(two(n, 60, "h", "min"), si < 0)
	}
	return signed(two(math.Round(seconds/3600), 24, "d", "h"), si < 0)
}

// two writes a count of the smaller unit in both units.
func two(count, per float64, large, small string) string {
	rest := math.Mod(count, per)
	text := decimals((count-rest)/per, 0) + " " + large
	if rest > 0 {
		text += " " + decimals(rest, 0) + " " + small
	}
	return text
}

func signed(text string, negative bool) string {
	if negative {
		return "-" + text
	}
	return text
}
