package table

import (
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// Decode turns a file's bytes into UTF-8: what is UTF-8 stays; UTF-16 is known by its byte-order mark; anything else is taken for Windows-1252, in
// which spreadsheet programs of the west save CSV by default.
func Decode(file string) string {
	switch {
	case strings.HasPrefix(file, "\xFF\xFE"):
		return fromUTF16(file[2:], 0, 1)
	case strings.HasPrefix(file, "\xFE\xFF"):
		return fromUTF16(file[2:], 1, 0)
	case utf8.ValidString(file):
		return file
	}
	return fromWindows1252(file)
}

func fromUTF16(file string, low, high int) string {
	units := make([]uint16, len(file)/2)
	for i := range units {
		units[i] = uint16(file[2*i+low]) | uint16(file[2*i+high])<<8
	}
	return string(utf16.Decode(units))
}

// windows1252 is what the bytes 0x80 to 0x9F stand for; the rest is as in Unicode.
var windows1252 = []rune("€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ")

func fromWindows1252(file string) string {
	var b strings.Builder
	b.Grow(len(file) + len(file)/8)
	for i := 0; i < len(file); i++ {
		r := rune(file[i])
		if r >= 0x80 && r < 0xA0 {
			r = windows1252[r-0x80]
		}
		b.WriteRune(r)
	}
	return b.String()
}
