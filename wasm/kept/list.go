package kept

import (
	"cmp"
	"context"
	"encoding/json"
	"maps"
	"slices"
	"strconv"

	"lowspot/engine"
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

// page is a part of the list: the jobs whose IDs fall on it. Ten thousand jobs are listed by reading 64 pages, and one is kept by writing one.
type page struct {
	Format  int     `json:"format"`
	Entries []Entry `json:"entries"`
}

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

func entryOf(r *jobRecord) Entry {
	entry := Entry{ID: r.Item.ID, Name: r.Item.Name, Rooms: []string{}, Kept: r.Kept, Exported: r.Exported, Deleted: r.Deleted}
	for _, room := range r.Item.Rooms {
		if room.Name != "" {
			entry.Rooms = append(entry.Rooms, room.Name)
		}
	}
	return entry
}

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
		entries, err := readPage(w, key)
		if err != nil {
			return err
		}
		entries = slices.DeleteFunc(entries, func(e Entry) bool { _, replaced := fresh[key][e.ID]; return replaced })
		for _, id := range slices.Sorted(maps.Keys(fresh[key])) {
			if entry := fresh[key][id]; entry != nil {
				entries = append(entries, *entry)
			}
		}
		content, err := json.Marshal(page{Format: recordFormat, Entries: entries})
		if err != nil {
			return err
		}
		if err := w.Put(key, content); err != nil {
			return err
		}
	}
	return nil
}

// readPage gives a page's entries. A page that is damaged is made again from the jobs themselves.
func readPage(r store.Reader, key string) ([]Entry, error) {
	content, err := r.Get(key)
	if err != nil || content == nil {
		return nil, err
	}
	var found page
	if json.Unmarshal(content, &found) != nil || found.Format != recordFormat {
		return rebuild(r, key)
	}
	return found.Entries, nil
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

// ListJobs gives the list of jobs, last kept first; deleted ones are among them and say so.
func (k *Keeper) ListJobs(ctx context.Context) ([]Entry, error) {
	entries := []Entry{}
	err := k.Store.Read(ctx, func(r store.Reader) error {
		keys, err := r.Keys(listKeys)
		if err != nil {
			return err
		}
		for _, key := range keys {
			found, err := readPage(r, key)
			if err != nil {
				return err
			}
			entries = append(entries, found...)
		}
		return nil
	})
	slices.SortFunc(entries, func(a, b Entry) int {
		return cmp.Or(cmp.Compare(b.Kept, a.Kept), cmp.Compare(a.ID, b.ID))
	})
	return entries, told(err)
}
