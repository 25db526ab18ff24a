package kept

import (
	"context"
	"encoding/json"
	"errors"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// Export writes the jobs of these IDs to a file or, given none, all that is kept, and marks them as exported. On a full disk the file comes all the
// same, and nothing is marked.
func (k *Keeper) Export(ctx context.Context, ids []string) ([]byte, error) {
	file := File{Lowspot: FileFormat, Made: k.now(), Sheets: []Sheet{}, Books: []Book{}}
	if len(ids) == 0 {
		if err := k.fillAll(ctx, &file, &ids); err != nil {
			return nil, err
		}
	}
	err := k.Store.Write(ctx, func(w store.Writer) error { return markJobs(w, ids, &file) })
	if errors.Is(err, store.ErrFull) {
		err = k.Store.Read(ctx, func(r store.Reader) error {
			_, err := takeJobs(r, ids, &file)
			return err
		})
	}
	if err != nil {
		return nil, told(err)
	}
	return write(file)
}

// Write gives a job as a file as it is shown, kept or not.
func (k *Keeper) Write(job engine.Job) ([]byte, error) {
	return write(File{Lowspot: FileFormat, Made: k.now(), Jobs: []engine.Job{job}, Sheets: []Sheet{}, Books: []Book{}})
}

func write(file File) ([]byte, error) { return json.MarshalIndent(file, "", "\t") }

// takeJobs puts jobs into a file and gives their records.
func takeJobs(r store.Reader, ids []string, file *File) ([]*jobRecord, error) {
	file.Jobs = []engine.Job{}
	records := make([]*jobRecord, 0, len(ids))
	for _, id := range ids {
		found, err := load[engine.Job](r, "job", jobKey(id))
		if err != nil {
			return nil, err
		}
		if found == nil {
			return nil, missing("job", id)
		}
		file.Jobs = append(file.Jobs, found.Item)
		records = append(records, found)
	}
	return records, nil
}

// markJobs puts jobs into a file and marks them as exported.
func markJobs(w store.Writer, ids []string, file *File) error {
	records, err := takeJobs(w, ids, file)
	if err != nil {
		return err
	}
	entries := make([]Entry, len(ids))
	for i, found := range records {
		saved(found, file.Made)
		content, err := encode(found)
		if err != nil {
			return err
		}
		if err := w.Put(jobKey(ids[i]), content); err != nil {
			return err
		}
		entries[i] = entryOf(found)
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
