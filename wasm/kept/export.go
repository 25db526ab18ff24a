package kept

import (
	"context"
	"encoding/json"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// Export writes the jobs of these IDs to a file or, given none, all that is kept, and marks them as exported.
func (k *Keeper) Export(ctx context.Context, ids []string) ([]byte, error) {
	file := File{Lowspot: FileFormat, Made: k.now(), Jobs: []engine.Job{}, Sheets: []Sheet{}, Books: []Book{}}
	if len(ids) == 0 {
		if err := k.fillAll(ctx, &file, &ids); err != nil {
			return nil, err
		}
	}
	if err := told(k.Store.Write(ctx, func(w store.Writer) error { return k.exportJobs(w, ids, &file) })); err != nil {
		return nil, err
	}
	return json.MarshalIndent(file, "", "\t")
}

func (k *Keeper) exportJobs(w store.Writer, ids []string, file *File) error {
	entries := make([]Entry, 0, len(ids))
	for _, id := range ids {
		found, err := load[engine.Job](w, "job", jobKey(id))
		if err != nil {
			return err
		}
		if found == nil {
			return missing("job", id)
		}
		saved(found, file.Made)
		content, err := encode(found)
		if err != nil {
			return err
		}
		if err := w.Put(jobKey(id), content); err != nil {
			return err
		}
		file.Jobs = append(file.Jobs, found.Item)
		entries = append(entries, entryOf(found))
	}
	return enter(w, entries...)
}

func (k *Keeper) fillAll(ctx context.Context, file *File, ids *[]string) (err error) {
	if file.Sheets, err = k.Sheets().List(ctx); err != nil {
		return err
	}
	if file.Books, err = k.Books().List(ctx); err != nil {
		return err
	}
	if file.Settings, err = k.OpenSettings(ctx); err != nil {
		return err
	}
	shops, err := k.shops().List(ctx)
	if err != nil {
		return err
	}
	if len(shops) > 0 {
		file.Shop = &shops[0]
	}
	entries, err := k.ListJobs(ctx)
	for _, entry := range entries {
		if entry.Deleted == "" {
			*ids = append(*ids, entry.ID)
		}
	}
	return err
}
