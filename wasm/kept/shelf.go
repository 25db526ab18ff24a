package kept

import (
	"context"
	"maps"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// Sheet is a product sheet kept for later jobs.
type Sheet struct {
	ID    string       `json:"id"`
	Kind  string       `json:"kind"` // leveller, primer, ...
	Sheet engine.Sheet `json:"sheet"`
}

// Book is a rulebook kept for later jobs, as its text, with the text that shipped when it was begun or last brought up to date.
type Book struct {
	ID    string `json:"id"`
	Title string `json:"title"`
	Text  string `json:"text"`
	Base  string `json:"base"`
}

// Settings are a person's own, by name: language, units, last rulebook.
type Settings map[string]string

// shelf keeps documents of one kind, each under its ID.
type shelf[T any] struct {
	keeper *Keeper
	what   string
	prefix string
}

// Sheets is the shelf of product sheets.
func (k *Keeper) Sheets() shelf[Sheet] { return shelf[Sheet]{k, "sheet", "sheet/"} }

// Books is the shelf of rulebooks.
func (k *Keeper) Books() shelf[Book] { return shelf[Book]{k, "rulebook", "book/"} }

// settings is a shelf with one document.
func (k *Keeper) settings() shelf[Settings] { return shelf[Settings]{k, "settings", "settings/"} }

// Keep keeps a document and gives the time once it is read back.
func (s shelf[T]) Keep(ctx context.Context, id string, item T) (string, error) {
	if err := checkID("id", id); err != nil {
		return "", err
	}
	fresh := &record[T]{Kept: s.keeper.now(), Item: item}
	content, err := encode(fresh)
	if err != nil {
		return "", err
	}
	err = s.keeper.Store.Write(ctx, func(w store.Writer) error {
		if _, err := load[T](w, s.what, s.prefix+id); err != nil {
			return err // a newer one stays
		}
		return w.Put(s.prefix+id, content)
	})
	if err == nil {
		err = s.keeper.confirm(ctx, s.prefix+id, content)
	}
	return fresh.Kept, told(err)
}

// Open gives a document.
func (s shelf[T]) Open(ctx context.Context, id string) (T, error) {
	var item T
	err := s.keeper.Store.Read(ctx, func(r store.Reader) error {
		found, err := load[T](r, s.what, s.prefix+id)
		if err != nil {
			return err
		}
		if found == nil {
			return missing(s.what, id)
		}
		item = found.Item
		return nil
	})
	return item, told(err)
}

// List gives every document that can be read, in the order of the IDs.
func (s shelf[T]) List(ctx context.Context) ([]T, error) {
	items := []T{}
	err := s.keeper.Store.Read(ctx, func(r store.Reader) error {
		kept, err := r.All(s.prefix)
		for _, item := range kept {
			if found, bad := decode[T](s.what, item.Value); bad == nil {
				items = append(items, found.Item)
			}
		}
		return err
	})
	return items, told(err)
}

// Delete removes a document. Undoing it is keeping it again.
func (s shelf[T]) Delete(ctx context.Context, id string) error {
	return told(s.keeper.Store.Write(ctx, func(w store.Writer) error { return w.Delete(s.prefix + id) }))
}

const allSettings = "all"

// OpenSettings gives the settings; none yet is an empty set.
func (k *Keeper) OpenSettings(ctx context.Context) (Settings, error) {
	found, err := k.settings().List(ctx)
	if err != nil || len(found) == 0 {
		return Settings{}, err
	}
	return found[0], nil
}

// KeepSettings keeps the settings given; those not named stay as they are.
func (k *Keeper) KeepSettings(ctx context.Context, settings Settings) error {
	return told(k.Store.Write(ctx, func(w store.Writer) error { return k.mergeSettings(w, settings) }))
}

func (k *Keeper) mergeSettings(w store.Writer, settings Settings) error {
	merged := &record[Settings]{Kept: k.now(), Item: Settings{}}
	found, err := load[Settings](w, "settings", k.settings().prefix+allSettings)
	if err != nil {
		return err
	}
	if found != nil {
		maps.Copy(merged.Item, found.Item)
	}
	maps.Copy(merged.Item, settings)
	content, err := encode(merged)
	if err != nil {
		return err
	}
	return w.Put(k.settings().prefix+allSettings, content)
}
