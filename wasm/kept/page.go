package kept

import (
	"encoding/json"
	"maps"
	"slices"
	"strconv"
	"strings"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// The list of jobs is kept on pages, each with the jobs whose IDs fall on it: ten thousand jobs are listed by reading 64 pages, and one is kept
// by writing one. A page only repeats what the jobs say, so one that can't be read is made again from them.
//
// A page is lines of text, for ten thousand entries in JSON took the browser longer to read than a person waits. The first line names the
// format; the others hold ID, kept, exported, deleted, name and rooms, with a unit separator (U+001F) between. Format 1 was JSON.
const (
	pageHead  = "lowspot list 2\n"
	separator = "\x1f"
)

const pages = 64

// pageKey spreads IDs evenly over the pages (FNV-1a, 32 bits).
func pageKey(id string) string {
	hash := uint32(2166136261)
	for _, c := range []byte(id) {
		hash = (hash ^ uint32(c)) * 16777619
	}
	return listKeys + strconv.FormatUint(uint64(hash%pages)+0x100, 16)[1:]
}

const listKeys = "list/"

// enter puts jobs' entries on their pages in place of those before, and writes each page once.
func enter(w store.Writer, entries ...Entry) error {
	fresh := map[string]map[string]*Entry{}
	for i := range entries {
		key := pageKey(entries[i].ID)
		if fresh[key] == nil {
			fresh[key] = map[string]*Entry{}
		}
		fresh[key][entries[i].ID] = &entries[i]
	}
	return turn(w, fresh)
}

// strike takes a job's entry off its page.
func strike(w store.Writer, id string) error {
	return turn(w, map[string]map[string]*Entry{pageKey(id): {id: nil}})
}

// turn replaces entries, by page and ID; nil takes one away.
func turn(w store.Writer, fresh map[string]map[string]*Entry) error {
	for _, key := range slices.Sorted(maps.Keys(fresh)) {
		content, err := w.Get(key)
		if err != nil {
			return err
		}
		entries, err := readPage(w, key, content)
		if err != nil {
			return err
		}
		entries = slices.DeleteFunc(entries, func(e Entry) bool { _, replaced := fresh[key][e.ID]; return replaced })
		for _, id := range slices.Sorted(maps.Keys(fresh[key])) {
			if entry := fresh[key][id]; entry != nil {
				entries = append(entries, *entry)
			}
		}
		if err := w.Put(key, writePage(entries)); err != nil {
			return err
		}
	}
	return nil
}

func writePage(entries []Entry) []byte {
	content := []byte(pageHead)
	for _, e := range entries {
		for _, field := range append([]string{e.ID, e.Kept, e.Exported, e.Deleted, e.Name}, e.Rooms...) {
			content = append(append(content, oneLine(field)...), separator...)
		}
		content[len(content)-1] = '\n'
	}
	return content
}

// oneLine puts spaces in the place of what divides fields and lines.
func oneLine(field string) string {
	return strings.Map(func(c rune) rune {
		if c < ' ' {
			return ' '
		}
		return c
	}, field)
}

// readPage gives a page's entries. A page that is not there has none.
func readPage(r store.Reader, key string, content []byte) ([]Entry, error) {
	if content == nil {
		return nil, nil
	}
	if lines, ok := strings.CutPrefix(string(content), pageHead); ok {
		if entries, ok := readLines(lines); ok {
			return entries, nil
		}
	}
	var old struct {
		Format  int     `json:"format"`
		Entries []Entry `json:"entries"`
	}
	if json.Unmarshal(content, &old) == nil && old.Format == 1 {
		return old.Entries, nil
	}
	return rebuild(r, key)
}

// fieldsBefore is how many fields of a line come before its rooms.
const fieldsBefore = 5

func readLines(lines string) ([]Entry, bool) {
	entries := make([]Entry, 0, strings.Count(lines, "\n"))
	for len(lines) > 0 {
		line, rest, whole := strings.Cut(lines, "\n")
		fields := strings.Split(line, separator)
		if !whole || len(fields) < fieldsBefore {
			return nil, false
		}
		entries = append(entries, Entry{ID: fields[0], Kept: fields[1], Exported: fields[2], Deleted: fields[3], Name: fields[4], Rooms: fields[fieldsBefore:]})
		lines = rest
	}
	return entries, true
}

func rebuild(r store.Reader, key string) ([]Entry, error) {
	jobs, err := r.Keys(jobKey(""))
	if err != nil {
		return nil, err
	}
	var entries []Entry
	for _, job := range jobs {
		if pageKey(job[len(jobKey("")):]) != key {
			continue
		}
		found, err := load[engine.Job](r, "job", job)
		if err == nil && found != nil {
			entries = append(entries, entryOf(found))
		}
	}
	return entries, nil
}
