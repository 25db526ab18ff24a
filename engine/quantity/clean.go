// Brings the many ways of typing the same thing down to one: quotes, primes, dashes, spaces, fractions and raised digits.
package quantity

import "strings"

var typography = strings.NewReplacer(
	"\u00a0", " ", "\u2002", " ", "\u2003", " ", "\u2007", " ", "\u2008", " ", "\u2009", " ", "\u200a", " ", "\u202f", " ", "\u3000", " ", "\t", " ",
	"\u200b", "", "\ufeff", "", "\u2060", "", "\u200e", "", "\u200f", "",
	"−", "-", "–", "-", "‐", "-", "‑", "-",
	"''", `"`, "’’", `"`, "′′", `"`,
	"’", "'", "‘", "'", "′", "'", "´", "'", "`", "'", "ʹ", "'",
	"”", `"`, "“", `"`, "″", `"`, "„", `"`, "ʺ", `"`,
	"¼", " 1/4", "½", " 1/2", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⅕", " 1/5", "⅖", " 2/5", "⅗", " 3/5", "⅘", " 4/5", "⅙", " 1/6", "⅚", " 5/6", "⅐", " 1/7", "⅑", " 1/9", "⅒", " 1/10",
	"⁄", "/", "∕", "/",
	"⁰", "^0", "¹", "^1", "²", "^2", "³", "^3", "⁴", "^4", "⁵", "^5", "⁶", "^6", "⁷", "^7", "⁸", "^8", "⁹", "^9",
	"·", "*", "⋅", "*", "×", "*",
	"∶", ":", "º", "°", "℃", "°C", "℉", "°F", "㎡", "m^2", "㎥", "m^3",
)

// clean returns the text in plain characters with single spaces.
func clean(text string) string {
	if strings.Trim(text, "0123456789.") == "" {
		return text // a bare number, by far the most of what is read
	}
	text = strings.Join(strings.Fields(typography.Replace(text)), " ")
	text = strings.ReplaceAll(text, "° ", "°")
	if !strings.HasSuffix(text, "per cent") {
		text = strings.ReplaceAll(" "+text, " per ", " / ")
	}
	return dropStops(strings.TrimSpace(text))
}

// dropStops takes out the point of an abbreviation ("3 in.") and the comma between parts ("5 ft, 7 in").
func dropStops(text string) string {
	var b strings.Builder
	for i := 0; i < len(text); i++ {
		stop := text[i] == '.' || text[i] == ','
		if stop && i > 0 && endsUnit(text[i-1]) && (i+1 == len(text) || !isDigit(text[i+1])) {
			continue
		}
		b.WriteByte(text[i])
	}
	return b.String()
}

func endsUnit(c byte) bool { return isLetter(c) || c == '\'' || c == '"' }

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' || c >= 0x80 }
