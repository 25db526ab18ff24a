package kept

import (
	"context"

	"lowspot/engine"
	"lowspot/wasm/store"
)

type jobRecord = record[engine.Job]

// OpenedJob is a job and how it stands.
type OpenedJob struct {
	Standing
	Job engine.Job `json:"job"`
}

func jobKey(id string) string { return "job/" + id }

// KeepJob keeps a job and tells how it stands once it is read back from the disk. A deleted job that is edited on comes back.
func (k *Keeper) KeepJob(ctx context.Context, job engine.Job) (Standing, error) {
	if err := checkID("job/id", job.ID); err != nil {
		return Standing{}, err
	}
	if job.Format > engine.JobFormat {
		return Standing{}, newer("job")
	}
	job.Format = engine.JobFormat
	return k.changeJob(ctx, job.ID, func(before *jobRecord, w store.Writer) (*jobRecord, error) {
		if before == nil {
			return &jobRecord{Kept: k.now(), Item: job}, nil
		}
		after := *before
		after.Item, after.Deleted = job, ""
		k.changed(&after)
		return &after, k.putAside(w, before, &after, false)
	})
}

// changeJob replaces a job's record by what change makes of it (nil before: there is none), its entry in the list with it.
func (k *Keeper) changeJob(ctx context.Context, id string, change func(*jobRecord, store.Writer) (*jobRecord, error)) (Standing, error) {
	var content []byte
	var stands Standing
	err := k.Store.Write(ctx, func(w store.Writer) error {
		before, err := load[engine.Job](w, "job", jobKey(id))
		if err != nil {
			return err
		}
		after, err := change(before, w)
		if err != nil {
			return err
		}
		if content, err = encode(after); err != nil {
			return err
		}
		stands = k.standing(after)
		if err := w.Put(jobKey(id), content); err != nil {
			return err
		}
		return enter(w, entryOf(after))
	})
	if err == nil {
		err = k.confirm(ctx, jobKey(id), content)
	}
	return stands, told(err)
}

// OpenJob gives a job as it was last kept.
func (k *Keeper) OpenJob(ctx context.Context, id string) (OpenedJob, error) {
	var found *jobRecord
	err := k.Store.Read(ctx, func(r store.Reader) (err error) {
		found, err = load[engine.Job](r, "job", jobKey(id))
		return err
	})
	if err == nil && found == nil {
		err = missing("job", id)
	}
	if err != nil {
		return OpenedJob{}, told(err)
	}
	return OpenedJob{k.standing(found), found.Item}, nil
}

// CopyJob keeps a copy of a job under a new ID and the name given.
func (k *Keeper) CopyJob(ctx context.Context, id, name string) (OpenedJob, error) {
	opened, err := k.OpenJob(ctx, id)
	if err != nil {
		return OpenedJob{}, err
	}
	opened.Job.ID, opened.Job.Name = k.NewID(), name
	opened.Standing, err = k.KeepJob(ctx, opened.Job)
	return opened, err
}

// DeleteJob takes a job off the list. It stays where it is until it is erased.
func (k *Keeper) DeleteJob(ctx context.Context, id string) error {
	return k.markDeleted(ctx, id, k.now())
}

// UndeleteJob puts a deleted job back on the list.
func (k *Keeper) UndeleteJob(ctx context.Context, id string) error { return k.markDeleted(ctx, id, "") }

func (k *Keeper) markDeleted(ctx context.Context, id, when string) error {
	_, err := k.changeJob(ctx, id, func(found *jobRecord, _ store.Writer) (*jobRecord, error) {
		if found == nil {
			return nil, missing("job", id)
		}
		found.Deleted = when
		return found, nil
	})
	return err
}

// EraseJob removes a deleted job and its revisions for good.
func (k *Keeper) EraseJob(ctx context.Context, id string) error {
	return told(k.Store.Write(ctx, func(w store.Writer) error {
		found, err := load[engine.Job](w, "job", jobKey(id))
		if err != nil {
			return err
		}
		if found == nil || found.Deleted == "" {
			return missing("deleted job", id)
		}
		revisions, err := w.Keys(revisionKeys(id))
		if err != nil {
			return err
		}
		for _, key := range append(revisions, jobKey(id)) {
			if err := w.Delete(key); err != nil {
				return err
			}
		}
		return strike(w, id)
	}))
}
