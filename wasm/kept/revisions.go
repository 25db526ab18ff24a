package kept

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"time"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// An edited job is put aside at most every revisionEvery, and the last mostRevisions are kept.
const (
	revisionEvery = 10 * time.Minute
	mostRevisions = 50
)

// Revision is an earlier state of a job.
type Revision struct {
	Number   int    `json:"number"`
	Kept     string `json:"kept"` // when it was the job's state
	Name     string `json:"name"`
	Rooms    int    `json:"rooms"`
	Readings int    `json:"readings"` // of all rooms
}

func revisionKeys(id string) string { return "revision/" + id + "/" }

func revisionKey(id string, number int) string { return revisionKeys(id) + fmt.Sprintf("%06d", number) }

// putAside keeps the state before as a revision if the last one is old enough, or always, and counts it in after.
func (k *Keeper) putAside(w store.Writer, before, after *jobRecord, always bool) error {
	last, err := time.Parse(stamp, before.Revised)
	if err == nil && k.Now().Sub(last) < revisionEvery && !always {
		return nil
	}
	content, err := encode(before)
	if err != nil {
		return err
	}
	after.Revised, after.Revisions = k.now(), before.Revisions+1
	if outdated := after.Revisions - mostRevisions; outdated > 0 {
		if err := w.Delete(revisionKey(before.Item.ID, outdated)); err != nil {
			return err
		}
	}
	return w.Put(revisionKey(before.Item.ID, after.Revisions), content)
}

// ListRevisions gives a job's earlier states, newest first.
func (k *Keeper) ListRevisions(ctx context.Context, id string) ([]Revision, error) {
	revisions := []Revision{}
	err := k.Store.Read(ctx, func(r store.Reader) error {
		items, err := r.All(revisionKeys(id))
		if err != nil {
			return err
		}
		for _, item := range slices.Backward(items) {
			found, err := decode[engine.Job]("revision", item.Value)
			number, bad := strconv.Atoi(item.Key[len(revisionKeys(id)):])
			if err == nil && bad == nil {
				revisions = append(revisions, revisionOf(number, found))
			}
		}
		return nil
	})
	return revisions, told(err)
}

func revisionOf(number int, r *jobRecord) Revision {
	revision := Revision{Number: number, Kept: r.Kept, Name: r.Item.Name, Rooms: len(r.Item.Rooms)}
	for _, room := range r.Item.Rooms {
		revision.Readings += len(room.Readings.Rows)
	}
	return revision
}

// RestoreRevision makes an earlier state the job's own again; the state until now becomes a revision itself.
func (k *Keeper) RestoreRevision(ctx context.Context, id string, number int) (OpenedJob, error) {
	var restored engine.Job
	stands, err := k.changeJob(ctx, id, func(before *jobRecord, w store.Writer) (*jobRecord, error) {
		found, err := load[engine.Job](w, "revision", revisionKey(id, number))
		if err != nil {
			return nil, err
		}
		if before == nil || found == nil {
			return nil, missing("revision", strconv.Itoa(number))
		}
		restored = found.Item
		after := *before
		after.Item = restored
		k.changed(&after)
		return &after, k.putAside(w, before, &after, true)
	})
	return OpenedJob{stands, restored}, err
}
