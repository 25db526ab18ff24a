package kept

import (
	"cmp"
	"context"
	"slices"
	"strings"

	"lowspot/wasm/store"
)

// Entry is one line of the list of jobs.
type Entry struct {
	ID       string   `json:"id"`
	Name     string   `json:"name"`
	Rooms    []string `json:"rooms"` // names
	Kept     string   `json:"kept"`
	Exported string   `json:"exported"` // empty: never
	Deleted  string   `json:"deleted"`  // empty: it is not
}

func entryOf(r *jobRecord) Entry {
	entry := Entry{ID: r.Item.ID, Name: r.Item.Name, Rooms: []string{}, Kept: r.Kept, Exported: r.Exported, Deleted: r.Deleted}
	for _, room := range r.Item.Rooms {
		if room.Name != "" {
			entry.Rooms = append(entry.Rooms, room.Name)
		}
	}
	return entry
}

// listing is what was last read of the list, so that only pages which changed since are read again; another tab may have changed them.
type listing struct {
	pages   map[string]readyPage
	entries []*listed // of all pages, last kept first
}

// listed is an entry with what it is searched by, once it was searched.
type listed struct {
	Entry
	text string
}

type readyPage struct {
	content string
	entries []listed
}

// ListJobs gives the list of jobs, last kept first; deleted ones are among them and say so.
func (k *Keeper) ListJobs(ctx context.Context) ([]Entry, error) {
	err := k.readList(ctx)
	entries := make([]Entry, len(k.list.entries))
	for i, ready := range k.list.entries {
		entries[i] = ready.Entry
	}
	return entries, err
}

func (k *Keeper) readList(ctx context.Context) error {
	err := k.Store.Read(ctx, func(r store.Reader) error {
		items, err := r.All(listKeys)
		if err != nil {
			return err
		}
		return k.list.renew(r, items)
	})
	return told(err)
}

func (l *listing) renew(r store.Reader, items []store.Item) error {
	fresh := make(map[string]readyPage, len(items))
	same := len(items) == len(l.pages)
	for _, item := range items {
		ready, known := l.pages[item.Key]
		if !known || ready.content != string(item.Value) {
			entries, err := readPage(r, item.Key, item.Value)
			if err != nil {
				return err
			}
			ready, same = readyPage{string(item.Value), toList(entries)}, false
		}
		fresh[item.Key] = ready
	}
	l.pages = fresh
	if !same {
		l.gather(items)
	}
	return nil
}

func toList(entries []Entry) []listed {
	ready := make([]listed, len(entries))
	for i, e := range entries {
		ready[i].Entry = e
	}
	return ready
}

func (l *listing) gather(items []store.Item) {
	l.entries = l.entries[:0]
	for _, item := range items {
		entries := l.pages[item.Key].entries
		for i := range entries {
			l.entries = append(l.entries, &entries[i])
		}
	}
	slices.SortFunc(l.entries, func(a, b *listed) int {
		return cmp.Or(cmp.Compare(b.Kept, a.Kept), cmp.Compare(a.ID, b.ID))
	})
}

// Wanted says which jobs are looked for: those whose name and rooms hold every word of Find, in any case, and the first Most of them (0: all).
type Wanted struct {
	Find    string `json:"find,omitempty"`
	Most    int    `json:"most,omitempty"`
	Deleted bool   `json:"deleted,omitempty"` // the deleted ones instead of the others
}

// Found is the jobs that were looked for, last kept first.
type Found struct {
	Jobs    []Entry `json:"jobs"`
	Count   int     `json:"count"`   // of all that match
	All     int     `json:"all"`     // of all there are, whatever was looked for
	Unsaved int     `json:"unsaved"` // of those, how many have changes that are in no file
}

// FindJobs looks through the list of jobs.
func (k *Keeper) FindJobs(ctx context.Context, wanted Wanted) (Found, error) {
	found := Found{Jobs: []Entry{}}
	err := k.readList(ctx)
	words := strings.Fields(strings.ToLower(wanted.Find))
	for _, entry := range k.list.entries {
		if (entry.Deleted != "") != wanted.Deleted {
			continue
		}
		found.All++
		if entry.Exported < entry.Kept {
			found.Unsaved++
		}
		if !entry.holds(words) {
			continue
		}
		if found.Count++; wanted.Most == 0 || found.Count <= wanted.Most {
			found.Jobs = append(found.Jobs, entry.Entry)
		}
	}
	return found, err
}

func (l *listed) holds(words []string) bool {
	if len(words) == 0 {
		return true
	}
	if l.text == "" {
		l.text = strings.ToLower(l.Name + " " + strings.Join(l.Rooms, " "))
	}
	return !slices.ContainsFunc(words, func(word string) bool { return !strings.Contains(l.text, word) })
}
