package kept

import (
	"bytes"
	"context"
	"encoding/json"
	"maps"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// Imported is what came of reading a file.
type Imported struct {
	Jobs   []Entry `json:"jobs"` // added
	Same   int     `json:"same"` // jobs that were here already
	Sheets int     `json:"sheets"`
	Books  int     `json:"books"`
	Shop   bool    `json:"shop"` // the price list: taken where there was none
}

// Import adds what a file holds, all of it or, when anything is wrong, nothing. What is here already stays: a document with a known ID and
// other content is added under a new one.
func (k *Keeper) Import(ctx context.Context, content []byte) (Imported, error) {
	file, err := ReadFile(content)
	if err != nil {
		return Imported{}, err
	}
	var done Imported
	err = k.Store.Write(ctx, func(w store.Writer) (err error) {
		done, err = k.addAll(w, file)
		return err
	})
	return done, told(err)
}

func (k *Keeper) addAll(w store.Writer, file File) (Imported, error) {
	done := Imported{Jobs: []Entry{}}
	jobs, err := newAdder(w, shelf[engine.Job]{k, "job", jobKey("")})
	if err != nil {
		return done, err
	}
	for _, job := range file.Jobs {
		added, err := jobs.add(&job.ID, &job)
		if err != nil {
			return done, err
		}
		if !added {
			done.Same++
			continue
		}
		done.Jobs = append(done.Jobs, entryOf(&jobRecord{Kept: k.now(), Exported: k.now(), Item: job}))
	}
	if done.Sheets, err = addItems(w, k.Sheets(), file.Sheets, func(s *Sheet) *string { return &s.ID }); err != nil {
		return done, err
	}
	if done.Books, err = addItems(w, k.Books(), file.Books, func(b *Book) *string { return &b.ID }); err != nil {
		return done, err
	}
	if done.Shop, err = k.addShop(w, file.Shop); err != nil {
		return done, err
	}
	if err := k.addSettings(w, file.Settings); err != nil {
		return done, err
	}
	return done, enter(w, done.Jobs...)
}

// addShop takes a file's price list where there is none.
func (k *Keeper) addShop(w store.Writer, shop *engine.Shop) (bool, error) {
	key := k.shops().prefix + theShop
	there, err := w.Get(key)
	if err != nil || there != nil || shop == nil {
		return false, err
	}
	content, err := encode(&record[engine.Shop]{Kept: k.now(), Item: *shop})
	if err != nil {
		return false, err
	}
	return true, w.Put(key, content)
}

// addSettings takes those of a file's settings that nobody has made here.
func (k *Keeper) addSettings(w store.Writer, settings Settings) error {
	if len(settings) == 0 {
		return nil
	}
	mine, err := load[Settings](w, "settings", k.settings().prefix+allSettings)
	if err != nil {
		return err
	}
	fresh := maps.Clone(settings)
	if mine != nil {
		maps.Copy(fresh, mine.Item)
	}
	return k.mergeSettings(w, fresh)
}

func addItems[T any](w store.Writer, s shelf[T], items []T, id func(*T) *string) (count int, err error) {
	adder, err := newAdder(w, s)
	for i := 0; i < len(items) && err == nil; i++ {
		var added bool
		if added, err = adder.add(id(&items[i]), &items[i]); added {
			count++
		}
	}
	return count, err
}

// adder puts items on a shelf beside those that are there.
type adder[T any] struct {
	w     store.Writer
	shelf shelf[T]
	there map[string]bool // keys
}

func newAdder[T any](w store.Writer, s shelf[T]) (*adder[T], error) {
	keys, err := w.Keys(s.prefix)
	there := make(map[string]bool, len(keys))
	for _, key := range keys {
		there[key] = true
	}
	return &adder[T]{w, s, there}, err
}

// add puts an item on the shelf, under a new ID where its own is taken; false where just this item is there already. id points into the item.
func (a *adder[T]) add(id *string, item *T) (bool, error) {
	if checkID("id", *id) != nil {
		*id = a.shelf.keeper.NewID()
	}
	if key := a.shelf.prefix + *id; a.there[key] {
		found, err := load[T](a.w, a.shelf.what, key)
		if err == nil && found != nil && sameDocument(found.Item, *item) {
			return false, nil
		}
		*id = a.shelf.keeper.NewID()
	}
	content, err := encode(&record[T]{Kept: a.shelf.keeper.now(), Exported: a.shelf.keeper.now(), Item: *item})
	if err != nil {
		return false, err
	}
	a.there[a.shelf.prefix+*id] = true
	return true, a.w.Put(a.shelf.prefix+*id, content)
}

func sameDocument(a, b any) bool {
	first, err := json.Marshal(a)
	second, otherwise := json.Marshal(b)
	return err == nil && otherwise == nil && bytes.Equal(first, second)
}
