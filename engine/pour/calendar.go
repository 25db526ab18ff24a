package pour

import (
	"strings"
	"time"
	"unicode/utf8"
)

// Event is a hold of a run sheet as it goes into a calendar, in the words of whoever reads it: from the end of its step to the earliest that the next
// may start, local, as 2006-01-02T15:04:05.
type Event struct {
	ID    string   `json:"id"`
	Title string   `json:"title"`
	From  string   `json:"from"`
	To    string   `json:"to"`
	About []string `json:"about"` // line by line
}

// Calendar writes events as an iCalendar file (RFC 5545), each with a reminder at its end. Times are floating, local wherever it is read. job makes the
// UIDs unique, and stamp is the moment of writing in UTC, 2006-01-02T15:04:05Z.
func Calendar(events []Event, job, stamp string) (string, error) {
	written, err := time.Parse(time.RFC3339, stamp)
	if err != nil {
		return "", refuse("stamp", "“"+stamp+"”", "give the moment of writing such as 2026-05-02T06:00:00Z")
	}
	c := &calendar{}
	c.line("BEGIN", "VCALENDAR")
	c.line("VERSION", "2.0")
	c.line("PRODID", "-//Lowspot//Run sheet//EN")
	for _, e := range events {
		if err := c.event(e, job, written.UTC().Format("20060102T150405Z")); err != nil {
			return "", err
		}
	}
	c.line("END", "VCALENDAR")
	return c.text.String(), nil
}

type calendar struct{ text strings.Builder }

func (c *calendar) event(e Event, job, stamp string) error {
	from, err := readCivil("end of “"+e.ID+"”", e.From)
	if err != nil {
		return err
	}
	to, err := readCivil("hold after “"+e.ID+"”", e.To)
	if err != nil {
		return err
	}
	c.line("BEGIN", "VEVENT")
	c.line("UID", escape(job+"."+e.ID+"@lowspot.invalid"))
	c.line("DTSTAMP", stamp)
	c.line("DTSTART", from.Format("20060102T150405"))
	if to.After(from) {
		c.line("DTEND", to.Format("20060102T150405"))
	}
	c.line("SUMMARY", escape(e.Title))
	c.line("DESCRIPTION", escape(strings.Join(e.About, "\n")))
	c.line("TRANSP", "TRANSPARENT")
	c.line("BEGIN", "VALARM")
	c.line("ACTION", "DISPLAY")
	c.line("TRIGGER;RELATED=END", "PT0S")
	c.line("DESCRIPTION", escape(e.Title))
	c.line("END", "VALARM")
	c.line("END", "VEVENT")
	return nil
}

// line writes a content line, folded so that no line is longer than 75 octets without its break and no character is torn (RFC 5545, 3.1).
func (c *calendar) line(name, value string) {
	line, room := name+":"+value, 75
	for len(line) > room {
		cut := room
		for !utf8.RuneStart(line[cut]) {
			cut--
		}
		c.text.WriteString(line[:cut] + "\r\n ")
		line, room = line[cut:], 74
	}
	c.text.WriteString(line + "\r\n")
}

// escape writes text as RFC 5545, 3.3.11 has it; control characters, which it doesn't allow, are left out.
func escape(text string) string {
	out := strings.Builder{}
	for _, r := range strings.ToValidUTF8(text, "�") {
		switch {
		case r == '\\' || r == ';' || r == ',':
			out.WriteRune('\\')
			out.WriteRune(r)
		case r == '\n':
			out.WriteString(`\n`)
		case r >= ' ' && r != 0x7f:
			out.WriteRune(r)
		}
	}
	return out.String()
}
