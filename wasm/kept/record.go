package kept

import (
	"bytes"
	"context"
	"encoding/json"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// recordFormat is the version of a wrapping that this build writes.
const recordFormat = 1

// record wraps a kept document.
type record[T any] struct {
	Format       int    `json:"format"`
	Kept         string `json:"kept"`                   // when
	Exported     string `json:"exported,omitempty"`     // when, if ever
	Unsaved      int    `json:"unsaved,omitempty"`      // changes since then
	UnsavedSince string `json:"unsavedSince,omitempty"` // when the first of them was made
	PutOff       string `json:"putOff,omitempty"`       // until when nobody wants to be reminded of them
	Deleted      string `json:"deleted,omitempty"`      // when, if it is
	Revised      string `json:"revised,omitempty"`      // when its last revision was put aside
	Revisions    int    `json:"revisions,omitempty"`    // how many were, ever
	Item         T      `json:"item"`
}

// load reads a record; nil where there is none.
func load[T any](r store.Reader, what, key string) (*record[T], error) {
	content, err := r.Get(key)
	if err != nil || content == nil {
		return nil, err
	}
	return decode[T](what, content)
}

// decode looks at the format before anything else, so that a newer record is refused and not misread.
func decode[T any](what string, content []byte) (*record[T], error) {
	var head struct {
		Format int `json:"format"`
		Item   struct {
			Format int `json:"format"`
		} `json:"item"`
	}
	if json.Unmarshal(content, &head) != nil || head.Format < 1 {
		return nil, unreadable(what)
	}
	if head.Format > recordFormat || head.Item.Format > engine.JobFormat {
		return nil, newer(what)
	}
	var found record[T]
	if json.Unmarshal(content, &found) != nil {
		return nil, unreadable(what)
	}
	return &found, nil
}

// encode gives the bytes of a record as they are kept.
func encode[T any](r *record[T]) ([]byte, error) {
	r.Format = recordFormat
	return json.Marshal(r)
}

// confirm reads back what was just kept and compares it.
func (k *Keeper) confirm(ctx context.Context, key string, want []byte) error {
	var found []byte
	err := k.Store.Read(ctx, func(r store.Reader) (err error) {
		found, err = r.Get(key)
		return err
	})
	if err == nil && !bytes.Equal(found, want) {
		return engine.Problem{Code: "storage", Message: "Not kept: the browser gave back something other than what was put in.", Remedy: "Export the job to a file, then reload the page."}
	}
	return err
}
