package rules

// The text of a rulebook, line by line:
//
//	title: ..., version: ...     about the book, at the line's start
//	theme: Depth                 of the rules that follow
//	figure NAME / check NAME     begins a rule
//	  key: text                  a field of it, indented
//	      more text              goes on where it is indented deeper than its key
//	# a comment                  kept with what follows it
//
// A line that can't be read is told and kept as a comment, so that nothing a person wrote is lost.

import (
	"strings"
	"unicode/utf8"
)

// Parse reads a rulebook's text. It always returns a book: with errors it holds what could be read.
func Parse(text string) (*Book, []*Error) {
	r := &textReader{book: &Book{}}
	if len(text) > LimitBook {
		r.fail(1, 1, CodeLimit, "The rulebook is longer than "+bytesText(LimitBook)+".", "Split it, or take out what you don't use.")
		return r.book, r.errors
	}
	text = strings.TrimPrefix(text, "\ufeff")
	for i, line := range strings.Split(text, "\n") {
		r.line(i+1, strings.TrimRight(line, " \t\r"))
	}
	r.endRule()
	r.book.Ending = r.takeNotes("")
	return r.book, r.errors
}

type textReader struct {
	book   *Book
	errors []*Error
	theme  string
	rule   *Rule    // being read, not yet in the book
	key    string   // of the open field
	indent int      // of the open field's key
	lines  []string // of the open field
	places []place
	notes  []string // comments that wait for what follows them
}

func (r *textReader) fail(line, column int, code, message, remedy string) *Error {
	e := &Error{Code: code, Line: line, Column: column, Message: message, Remedy: remedy}
	if r.rule != nil {
		e.Rule = r.rule.Name
	}
	if len(r.errors) < limitErrors {
		r.errors = append(r.errors, e)
	}
	return e
}

func (r *textReader) line(number int, line string) {
	if bad := unreadable(line); bad >= 0 {
		r.fail(number, utf8.RuneCountInString(line[:bad])+1, CodeFormat, "This line holds a character that is not text.", "Save the file as UTF-8 text.")
		line = strings.Map(printable, strings.ToValidUTF8(line, "\ufffd"))
	}
	text := strings.TrimLeft(line, " \t")
	indent := utf8.RuneCountInString(line) - utf8.RuneCountInString(text)
	switch {
	case text == "":
	case text[0] == '#':
		r.notes = append(r.notes, text)
	case indent == 0:
		r.endField()
		r.top(number, text)
	case r.key != "" && indent > r.indent:
		r.lines = append(r.lines, text)
		r.places = append(r.places, place{number, indent + 1})
	default:
		r.endField()
		r.field(number, indent, text)
	}
}

// unreadable finds the first byte that is not text, or -1.
func unreadable(line string) int {
	for i, c := range line {
		if c == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(line[i:]); size == 1 {
				return i
			}
		}
		if printable(c) < 0 {
			return i
		}
	}
	return -1
}

// printable drops control characters but the tab.
func printable(c rune) rune {
	if c < ' ' && c != '\t' || c >= 0x7f && c < 0xa0 {
		return -1
	}
	return c
}

// top reads a line that begins at the margin.
func (r *textReader) top(number int, text string) {
	key, value, colon := strings.Cut(text, ":")
	value = strings.Trim(value, " \t")
	switch {
	case colon && key == "theme":
		r.endRule()
		r.theme = value
		return
	case colon && (key == "title" || key == "version") && value == "":
		return
	case colon && (key == "title" || key == "version") && r.rule == nil && len(r.book.Rules) == 0:
		r.book.Opening = append(r.book.Opening, r.takeNotes(key)...)
		if key == "title" {
			r.book.Title = value
		} else {
			r.book.Version = value
		}
		return
	}
	kind, name, _ := strings.Cut(text, " ")
	if name = strings.Trim(name, " \t"); (kind == "figure" || kind == "check") && name != "" {
		r.beginRule(number, kind == "check", name)
		return
	}
	r.keep(text)
	r.fail(number, 1, CodeFormat, "This line begins nothing that a rulebook holds.",
		"Begin it with “figure NAME”, “check NAME” or “theme: ...”; indent it if it belongs to the rule above; put # before a comment.").Found = text
}

func (r *textReader) beginRule(number int, check bool, name string) {
	r.endRule()
	r.rule = &Rule{Check: check, Name: name, Theme: r.theme, places: map[string][]place{"": {{number, 1}}}}
	r.rule.Notes = r.takeNotes("")
}

// field reads the first line of a field.
func (r *textReader) field(number, indent int, text string) {
	key, value, colon := strings.Cut(text, ":")
	key = strings.Trim(key, " \t")
	known := colon && r.rule != nil && r.rule.allows(key)
	switch {
	case r.rule == nil:
		r.fail(number, indent+1, CodeFormat, "This line is indented, but no rule stands above it.", "Begin a rule with “figure NAME” or “check NAME” at the margin.").Found = text
	case !known:
		remedy := "Write “key: text”; a " + r.rule.sort() + " may have " + strings.Join(r.rule.keys(), ", ") + "."
		if near := nearest(key, r.rule.keys()); near != "" {
			remedy = "Did you mean “" + near + ":”? " + remedy
		}
		r.fail(number, indent+1, CodeFormat, "A "+r.rule.sort()+" has no field like this.", remedy).Found = text
	case r.rule.full(key):
		r.fail(number, indent+1, CodeFormat, "The field “"+key+"” stands here a second time or once too often.", "Keep one.").Found = text
	default:
		value = strings.TrimLeft(value, " \t")
		column := indent + 1 + utf8.RuneCountInString(text) - utf8.RuneCountInString(value)
		r.rule.Notes = append(r.rule.Notes, r.takeNotes(label(key, r.rule.times(key)))...)
		r.open(key, indent, value, place{number, column})
		return
	}
	r.keep(text)
	r.open(skippedKey, indent, "", place{number, indent + 1})
}

// skippedKey is the open field's name while its lines are kept as comments.
const skippedKey = "#"

func (r *textReader) open(key string, indent int, value string, at place) {
	r.key, r.indent, r.lines, r.places = key, indent, nil, nil
	if value != "" {
		r.lines, r.places = []string{value}, []place{at}
	}
}

func (r *textReader) endField() {
	key := r.key
	r.key = ""
	switch {
	case key == skippedKey:
		for _, line := range r.lines {
			r.keep(line)
		}
	case key != "":
		r.rule.add(key, strings.Join(r.lines, "\n"), r.places)
	}
}

func (r *textReader) endRule() {
	r.endField()
	if r.rule == nil {
		return
	}
	rule := r.rule
	r.rule = nil
	if len(r.book.Rules) == LimitRules {
		r.fail(rule.places[""][0].line, 1, CodeLimit, "The rulebook has more than "+count(LimitRules, "rule")+"; this one and those after it are left out.", "Split the book.")
	}
	if len(r.book.Rules) < LimitRules {
		r.book.Rules = append(r.book.Rules, *rule)
	}
}

// keep turns a line that can't be used into a comment.
func (r *textReader) keep(line string) { r.notes = append(r.notes, "# "+line) }

func (r *textReader) takeNotes(before string) []Note {
	var notes []Note
	for _, text := range r.notes {
		notes = append(notes, Note{before, text})
	}
	r.notes = nil
	return notes
}
