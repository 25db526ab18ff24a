package kept

import (
	"context"
	"time"

	"lowspot/wasm/store"
)

// A person is reminded to export a job once so many of its changes, or changes so old, are in no file of theirs; putting it off lasts putOffFor.
const (
	remindChanges = 500
	remindAfter   = 7 * 24 * time.Hour
	putOffFor     = 3 * 24 * time.Hour
)

// Standing is how a job stands: on this device, and in the person's own files.
type Standing struct {
	Kept     string `json:"kept"`
	Exported string `json:"exported"` // empty: never
	Unsaved  int    `json:"unsaved"`  // changes since, that are in no file
	Remind   bool   `json:"remind"`   // it is time to export
}

func (k *Keeper) standing(r *jobRecord) Standing {
	return Standing{Kept: r.Kept, Exported: r.Exported, Unsaved: r.Unsaved, Remind: k.due(r)}
}

func (k *Keeper) due(r *jobRecord) bool {
	if r.Unsaved == 0 || k.now() < r.PutOff {
		return false
	}
	first, err := time.Parse(stamp, r.UnsavedSince)
	return r.Unsaved >= remindChanges || err == nil && k.Now().Sub(first) >= remindAfter
}

// changed counts a change that is in no file yet.
func (k *Keeper) changed(r *jobRecord) {
	r.Kept = k.now()
	if r.Unsaved == 0 {
		r.UnsavedSince = r.Kept
	}
	r.Unsaved++
}

// saved notes that all of a record is in a file now.
func saved(r *jobRecord, when string) {
	r.Exported, r.Unsaved, r.UnsavedSince, r.PutOff = when, 0, "", ""
}

// PutOff keeps quiet about exporting a job for a while.
func (k *Keeper) PutOff(ctx context.Context, id string) (Standing, error) {
	return k.changeJob(ctx, id, func(found *jobRecord, _ store.Writer) (*jobRecord, error) {
		if found == nil {
			return nil, missing("job", id)
		}
		found.PutOff = k.Now().Add(putOffFor).UTC().Format(stamp)
		return found, nil
	})
}
