// Reads amounts and rates as people and spreadsheet programs write them, digit by digit.
package takeoff

import (
	"strconv"
	"strings"
)

// Error says what in the prices or the take-off can't be used, what was given, and what would work.
type Error struct {
	Field   string `json:"field"`
	Given   string `json:"given"`
	Message string `json:"message"`
	Remedy  string `json:"remedy"`
}

func (e *Error) Error() string { return e.Field + ": " + e.Message + " " + e.Remedy }

func refuse(field, given, message, remedy string) *Error {
	return &Error{Field: field, Given: given, Message: message, Remedy: remedy}
}

// Read reads an amount: "12.50", "12,5", "1,234.50", "1.234,50", "1'234.50", "12.50 EUR", "€ 12". An amount that can be read in two ways is refused.
func (c Currency) Read(text string) (Money, error) {
	n, err := decimal(c.bare(text), c.Digits)
	if err != "" {
		return 0, refuse("price", text, "“"+shown(text)+"” "+err, "Write it like "+c.Write(123450)+".")
	}
	if n > int64(MostMoney) || n < -int64(MostMoney) {
		return 0, refuse("price", text, "“"+shown(text)+"” is more than is ever sold here.", "Check the amount.")
	}
	return Money(n), nil
}

// bare takes the currency's own mark off an amount.
func (c Currency) bare(text string) string {
	text = strings.TrimSpace(text)
	for _, mark := range []string{c.Code, "€", "$", "£"} {
		if mark == "" {
			continue
		}
		if cut, ok := strings.CutPrefix(text, mark); ok {
			return strings.TrimSpace(cut)
		}
		if cut, ok := strings.CutSuffix(text, mark); ok {
			return strings.TrimSpace(cut)
		}
	}
	return text
}

// ReadRate reads a share in per cent, with or without its sign: "19 %", "8.875", "7,5%".
func ReadRate(text string) (Rate, error) {
	n, err := decimal(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "%")), 4)
	if err != "" {
		return 0, refuse("rate", text, "“"+shown(text)+"” "+err, "Write it like 19 % or 8.875 %.")
	}
	if n < 0 || n > int64(MostRate) {
		return 0, refuse("rate", text, "“"+shown(text)+"” isn't a rate.", "Give it between 0 % and 1000 %.")
	}
	return Rate(n), nil
}

// decimal reads a number to a count of digits behind its mark, as one whole number of the smallest unit; it tells in words what is wrong.
func decimal(text string, digits int) (int64, string) {
	text = ungrouped.Replace(text)
	sign := int64(1)
	if cut, ok := strings.CutPrefix(text, "-"); ok {
		sign, text = -1, cut
	}
	before, after, wrong := halves(text, digits)
	if wrong != "" {
		return 0, wrong
	}
	extra := strings.TrimRight(after, "0")
	if len(extra) > digits {
		return 0, "has more decimals than can be kept."
	}
	n, err := strconv.ParseInt(before+extra+strings.Repeat("0", digits-len(extra)), 10, 64)
	if err != nil {
		return 0, "isn't a number that can be kept."
	}
	return sign * n, ""
}

// ungrouped drops the spaces and apostrophes that part thousands.
var ungrouped = strings.NewReplacer(" ", "", "\u00A0", "", "\u202F", "", "\u2009", "", "'", "", "’", "", "−", "-")

// halves parts a number at its decimal mark. Where both marks stand, the last one is it; where one stands alone, what follows tells.
func halves(text string, digits int) (before, after, wrong string) {
	mark := strings.LastIndexAny(text, ".,")
	if mark < 0 {
		return text, "", notDigits(text)
	}
	before, after = text[:mark], text[mark+1:]
	other := map[byte]string{'.': ",", ',': "."}[text[mark]]
	switch {
	case strings.IndexByte(before, text[mark]) >= 0: // it stands twice, so it parts thousands
		before, after, other = text, "", text[mark:mark+1]
	case strings.Contains(before, other):
	case len(after) == 3 && digits < 3 && len(before) <= 3 && before != "" && before != "0":
		return "", "", "can mean a thousand times as much."
	}
	before, ok := withoutGroups(before, other)
	if !ok {
		return "", "", "isn't a number."
	}
	return before, after, notDigits(before + after)
}

// withoutGroups takes the marks between thousands away, if every group behind one has three digits.
func withoutGroups(text, mark string) (string, bool) {
	groups := strings.Split(text, mark)
	for _, group := range groups[1:] {
		if len(group) != 3 {
			return "", false
		}
	}
	return strings.Join(groups, ""), len(groups) == 1 || groups[0] != "" && len(groups[0]) <= 3
}

func notDigits(text string) string {
	if text == "" || strings.Trim(text, "0123456789") != "" {
		return "isn't a number."
	}
	return ""
}

// shown is a text cut where it is too long to repeat.
func shown(text string) string {
	runes := []rune(strings.ToValidUTF8(text, "\uFFFD"))
	if len(runes) > 40 {
		return string(runes[:40]) + "…"
	}
	return string(runes)
}
