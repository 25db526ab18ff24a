package engine

// A rulebook and sheets in one file that a person can read, hand on and mend by hand:
//
//	lowspot rules 1
//
//	sheet leveller: My usual bag
//	  sheet.bag_mass: 25 kg
//	  sheet.least_depth_wood: 6 mm
//
//	rulebook
//	figure least_depth
//	  ...
//
// A file without the first line is taken as a rulebook alone.

import (
	"sort"
	"strconv"
	"strings"

	"lowspot/rules"
)

// KindSheet is a sheet with the kind of product that it is for.
type KindSheet struct {
	Kind  string `json:"kind"`
	Sheet Sheet  `json:"sheet"`
}

// BookFile is a rulebook and sheets. An empty book is the shipped one.
type BookFile struct {
	Book   string      `json:"book"`
	Sheets []KindSheet `json:"sheets"`
}

// The limits of a file from a stranger, beyond those of the rulebook in it.
const (
	mostSheets     = 200
	mostSheetBytes = 512 << 10
)

const bookFileHead, rulebookLine, sheetLine = "lowspot rules ", "rulebook", "sheet "

// Text writes the file.
func (f BookFile) Text() string {
	var b strings.Builder
	b.WriteString(bookFileHead + "1\n")
	for _, s := range f.Sheets {
		b.WriteString("\n" + sheetLine + s.Kind + ": " + oneLine(s.Sheet.Name) + "\n")
		for _, name := range sortedNames(s.Sheet.Values) {
			if typed := oneLine(s.Sheet.Values[name]); typed != "" {
				b.WriteString("  " + name + ": " + typed + "\n")
			}
		}
	}
	if strings.TrimSpace(f.Book) != "" {
		b.WriteString("\n" + rulebookLine + "\n\n" + strings.TrimLeft(f.Book, "\n"))
	}
	return b.String()
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// ReadBookFile reads a file. What is wrong with its sheets is told by line and nothing of the file is taken then; what is wrong with its rules is
// told by ReadRulebook, as while they are written.
func ReadBookFile(text string) (BookFile, []Problem) {
	text = strings.ReplaceAll(strings.TrimPrefix(text, "\ufeff"), "\r\n", "\n")
	f := BookFile{Sheets: []KindSheet{}}
	if !strings.HasPrefix(text, bookFileHead) {
		f.Book = text
		return f, bookProblems(text, "file", text)
	}
	head, rest, _ := strings.Cut(text, "\n")
	if version := strings.TrimSpace(strings.TrimPrefix(head, bookFileHead)); version != "1" {
		return f, []Problem{{Code: "newer", Field: "line 1", Given: version, Message: "This file was made by a later version.", Remedy: "Open it there, or update this page."}}
	}
	sheets := rest
	if at := strings.Index("\n"+rest, "\n"+rulebookLine+"\n"); at >= 0 {
		sheets, f.Book = rest[:at], strings.TrimLeft(rest[at+len(rulebookLine):], "\n")
	}
	if len(sheets) > mostSheetBytes {
		return f, []Problem{{Code: "limit", Field: "file", Message: "The sheets in this file are longer than any bag's.", Remedy: "Take out what is no sheet."}}
	}
	r := &reader{}
	f.Sheets = r.readSheets(strings.Split(sheets, "\n"))
	return f, append(r.problems, bookProblems(f.Book, "rulebook", text)...)
}

// bookProblems refuses what is no rulebook at all.
func bookProblems(book, field, whole string) []Problem {
	if strings.TrimSpace(book) == "" && strings.TrimSpace(whole) != "" && field != "file" {
		return nil
	}
	parsed, errors := rules.Parse(book)
	if len(parsed.Rules) > 0 || len(errors) == 0 && strings.TrimSpace(book) != "" {
		return nil
	}
	message, remedy := "There is no rule in this file.", "Choose a file that was saved from the rulebook page."
	if len(errors) > 0 && errors[0].Code == rules.CodeLimit {
		message, remedy = errors[0].Message, errors[0].Remedy
	}
	return []Problem{{Code: "file", Field: field, Message: message, Remedy: remedy}}
}

func (r *reader) readSheets(lines []string) []KindSheet {
	sheets := []KindSheet{}
	var sheet *KindSheet
	for i, line := range lines {
		field := "line " + strconv.Itoa(i+2)
		trimmed := strings.TrimSpace(line)
		key, value, colon := strings.Cut(trimmed, ":")
		key, value = strings.TrimSpace(key), strings.TrimSpace(value)
		switch {
		case trimmed == "" || trimmed[0] == '#':
		case line[0] != ' ' && line[0] != '\t':
			sheet = nil
			if kind, is := strings.CutPrefix(key, strings.TrimSpace(sheetLine)+" "); is && r.knownKind(field, strings.TrimSpace(kind)) && len(sheets) < mostSheets {
				sheets = append(sheets, KindSheet{strings.TrimSpace(kind), Sheet{Name: value, Values: Answers{}}})
				sheet = &sheets[len(sheets)-1]
			} else if !is {
				r.fail(Problem{Code: "line", Field: field, Given: trimmed, Message: "This line begins no sheet.", Remedy: "Begin it with “sheet leveller: name”, or “rulebook” for the rules."})
			}
		case sheet == nil:
		case !colon:
			r.fail(Problem{Code: "line", Field: field, Given: trimmed, Message: "This line has no colon.", Remedy: "Write “sheet.bag_mass: 25 kg”."})
		default:
			r.readSheetValue(sheet, field, key, value)
		}
	}
	return sheets
}

func (r *reader) knownKind(field, kind string) bool {
	for _, known := range SheetKinds {
		if kind == known {
			return true
		}
	}
	r.fail(Problem{Code: "line", Field: field, Given: kind, Message: "No kind of product is called “" + kind + "”.", Remedy: "Use one of: " + strings.Join(SheetKinds, ", ") + "."})
	return false
}

func (r *reader) readSheetValue(sheet *KindSheet, field, name, typed string) {
	word, known := wordByName[name]
	if !known || word.Step != sheet.Kind {
		r.fail(Problem{Code: "unknown-word", Field: field, Given: name, Message: "A sheet of a " + sheet.Kind + " states nothing called “" + name + "”.", Remedy: "The words are listed on the rulebook page."})
		return
	}
	if _, ok := r.readValue(word, field, typed); ok {
		sheet.Sheet.Values[name] = typed
	}
}

// Preview is what taking a file in would change.
type Preview struct {
	Problems []Problem      `json:"problems"` // of the file: nothing of it can be taken then
	Errors   []*rules.Error `json:"errors"`   // of its rules, which come out faulty
	Book     string         `json:"book"`     // the rulebook as it would be
	Rules    []RuleChange   `json:"rules"`
	Sheets   []KindSheet    `json:"sheets"`
}

// RuleChange is one rule before and after. A nil side has no such rule.
type RuleChange struct {
	Name   string    `json:"name"`
	Before *RuleText `json:"before"`
	After  *RuleText `json:"after"`
}

// PreviewFile tells what a file would change of a book, and changes nothing.
func PreviewFile(text string, book *Rulebook) Preview {
	file, problems := ReadBookFile(text)
	p := Preview{Problems: some(problems), Errors: []*rules.Error{}, Book: file.Book, Rules: []RuleChange{}, Sheets: file.Sheets}
	if len(problems) > 0 || strings.TrimSpace(file.Book) == "" {
		return p
	}
	brought := ReadRulebook(file.Book)
	p.Errors, p.Rules = some(brought.Errors()), ruleChanges(book.Book, brought.Book)
	return p
}

// ruleChanges lists the rules that say something else after than before, by name.
func ruleChanges(before, after *rules.Book) []RuleChange {
	names := map[string]bool{}
	for _, book := range []*rules.Book{before, after} {
		for i := range book.Rules {
			names[book.Rules[i].Name] = true
		}
	}
	list := []RuleChange{}
	for name := range names {
		was, is := before.Find(name), after.Find(name)
		if !was.Alike(is) {
			list = append(list, RuleChange{name, textOf(was), textOf(is)})
		}
	}
	sort.Slice(list, func(i, j int) bool { return list[i].Name < list[j].Name })
	return list
}
