package rules

import "strings"

// Text writes the book so that Parse reads the same book again.
func (b *Book) Text() string {
	var w strings.Builder
	writeNotes(&w, b.Opening, "title", "")
	writeTop(&w, "title", b.Title)
	writeNotes(&w, b.Opening, "version", "")
	writeTop(&w, "version", b.Version)
	theme := ""
	for i := range b.Rules {
		rule := &b.Rules[i]
		if rule.Theme != theme {
			theme = rule.Theme
			w.WriteString("\ntheme: " + flat(theme) + "\n")
		}
		w.WriteString("\n" + rule.Text())
	}
	if len(b.Ending) > 0 {
		w.WriteString("\n")
	}
	writeNotes(&w, b.Ending, "", "")
	return strings.TrimLeft(w.String(), "\n")
}

// Text writes one rule, without its theme.
func (r *Rule) Text() string {
	var w strings.Builder
	notes := r.anchoredNotes()
	writeNotes(&w, notes, "", "")
	w.WriteString(r.sort() + " " + flat(r.Name) + "\n")
	for _, key := range r.keys() {
		for n, text := range r.texts(key) {
			writeNotes(&w, notes, label(key, n), "  ")
			writeField(&w, key, text)
		}
	}
	return w.String()
}

// anchoredNotes are the notes, those of fields that are not there moved to the rule's head.
func (r *Rule) anchoredNotes() []Note {
	written := map[string]bool{}
	for _, key := range r.keys() {
		for n := range r.texts(key) {
			written[label(key, n)] = true
		}
	}
	notes := append([]Note{}, r.Notes...)
	for i := range notes {
		if !written[notes[i].Before] {
			notes[i].Before = ""
		}
	}
	return notes
}

func writeTop(w *strings.Builder, key, text string) {
	if text != "" {
		w.WriteString(key + ": " + flat(text) + "\n")
	}
}

func writeNotes(w *strings.Builder, notes []Note, before, indent string) {
	for _, n := range notes {
		if n.Before != before {
			continue
		}
		text := flat(n.Text)
		if !strings.HasPrefix(text, "#") {
			text = "# " + text
		}
		w.WriteString(indent + text + "\n")
	}
}

// writeField writes each line of the text on its own; one that would be read as a comment joins the line before it.
func writeField(w *strings.Builder, key, text string) {
	w.WriteString("  " + key + ":")
	gap := " "
	for _, line := range strings.Split(text, "\n") {
		line = flat(line)
		if line == "" {
			continue
		}
		if gap != " " && line[0] == '#' {
			gap = " "
		}
		w.WriteString(gap + line)
		gap = "\n      "
	}
	w.WriteString("\n")
}

// flat is text on one line, without what is no text.
func flat(text string) string {
	return strings.Trim(strings.Map(printable, strings.ReplaceAll(text, "\n", " ")), " \t")
}
