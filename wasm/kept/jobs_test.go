package kept

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/engine/quantity"
	"lowspot/wasm/store"
)

// clock is a time that tests move by hand.
type clock struct{ time.Time }

func (c *clock) pass(d time.Duration) { c.Time = c.Add(d) }

// keeper keeps in memory, at eight in the morning, and names what is new new-1, new-2, ...
func keeper() (*Keeper, *clock) {
	c := &clock{time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)}
	named := 0
	return &Keeper{Store: &store.Memory{}, Now: func() time.Time { return c.Time }, NewID: func() string {
		named++
		return fmt.Sprintf("new-%d", named)
	}}, c
}

// job is a job whose room holds what people type.
func job(id, name string) engine.Job {
	made := engine.NewJob(id, quantity.US)
	made.Name = name
	made.Rooms[0].Name = "Bathroom"
	made.Rooms[0].Outline = engine.Shape{How: engine.ShapeRectangle, Length: `8' 3/8"`, Width: "1,2 m"}
	return *made
}

func keep(t *testing.T, k *Keeper, j engine.Job) {
	t.Helper()
	_, err := k.KeepJob(t.Context(), j)
	require.NoError(t, err)
}

func problem(t *testing.T, err error) engine.Problem {
	t.Helper()
	var p engine.Problem
	require.ErrorAs(t, err, &p)
	return p
}

func list(t *testing.T, k *Keeper) []Entry {
	t.Helper()
	entries, err := k.ListJobs(t.Context())
	require.NoError(t, err)
	return entries
}

func TestAKeptJobComesBackAsItWasTyped(t *testing.T) {
	k, _ := keeper()
	j := job("bath", "Bath, upstairs")
	stands, err := k.KeepJob(t.Context(), j)
	require.NoError(t, err)
	require.Equal(t, "2026-03-02T08:00:00.000Z", stands.Kept)
	opened, err := k.OpenJob(t.Context(), "bath")
	require.NoError(t, err)
	require.Equal(t, j, opened.Job)
	require.Equal(t, stands, opened.Standing)
}

func TestTheListHasTheLastKeptFirst(t *testing.T) {
	k, c := keeper()
	for _, id := range []string{"a", "b", "c"} {
		keep(t, k, job(id, "Job "+id))
		c.pass(time.Minute)
	}
	keep(t, k, job("a", "Job a, changed"))
	entries := list(t, k)
	require.Len(t, entries, 3)
	require.Equal(t, []string{"a", "c", "b"}, []string{entries[0].ID, entries[1].ID, entries[2].ID})
	require.Equal(t, Entry{ID: "a", Name: "Job a, changed", Rooms: []string{"Bathroom"}, Kept: "2026-03-02T08:03:00.000Z"}, entries[0])
}

func TestADeletedJobCanBeHadBackUntilItIsErased(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	require.NoError(t, k.DeleteJob(t.Context(), "a"))
	require.NotEmpty(t, list(t, k)[0].Deleted)
	require.NoError(t, k.UndeleteJob(t.Context(), "a"))
	require.Empty(t, list(t, k)[0].Deleted)
	require.Equal(t, "missing", problem(t, k.EraseJob(t.Context(), "a")).Code, "only a deleted job is erased")

	require.NoError(t, k.DeleteJob(t.Context(), "a"))
	require.NoError(t, k.EraseJob(t.Context(), "a"))
	require.Empty(t, list(t, k))
	_, err := k.OpenJob(t.Context(), "a")
	require.Equal(t, "missing", problem(t, err).Code)
	require.NoError(t, k.Store.Read(t.Context(), func(r store.Reader) error {
		keys, err := r.Keys("job/")
		require.Empty(t, keys)
		return err
	}))
}

func TestEditingADeletedJobBringsItBack(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	require.NoError(t, k.DeleteJob(t.Context(), "a"))
	keep(t, k, job("a", "Hall, edited in another tab"))
	require.Empty(t, list(t, k)[0].Deleted)
}

func TestACopyIsAJobOfItsOwn(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	copied, err := k.CopyJob(t.Context(), "a", "Hall, second go")
	require.NoError(t, err)
	require.Equal(t, "new-1", copied.Job.ID)
	opened, err := k.OpenJob(t.Context(), "a")
	require.NoError(t, err)
	require.Equal(t, "Hall", opened.Job.Name)
	require.Len(t, list(t, k), 2)
}

func TestEarlierStatesAreKeptEveryTenMinutesAndCanBeRestored(t *testing.T) {
	k, c := keeper()
	for i := range 31 { // half an hour, an edit a minute
		keep(t, k, job("a", fmt.Sprintf("minute %d", i)))
		c.pass(time.Minute)
	}
	revisions, err := k.ListRevisions(t.Context(), "a")
	require.NoError(t, err)
	require.Equal(t, []Revision{
		{3, "2026-03-02T08:20:00.000Z", "minute 20", 1, 0}, {2, "2026-03-02T08:10:00.000Z", "minute 10", 1, 0}, {1, "2026-03-02T08:00:00.000Z", "minute 0", 1, 0},
	}, revisions)

	restored, err := k.RestoreRevision(t.Context(), "a", 2)
	require.NoError(t, err)
	require.Equal(t, "minute 10", restored.Job.Name)
	opened, err := k.OpenJob(t.Context(), "a")
	require.NoError(t, err)
	require.Equal(t, restored, opened)

	undone, err := k.RestoreRevision(t.Context(), "a", 4)
	require.NoError(t, err)
	require.Equal(t, "minute 30", undone.Job.Name, "what restoring replaced is itself an earlier state")
}

func TestOnlyTheLastFiftyEarlierStatesAreKept(t *testing.T) {
	k, c := keeper()
	for i := range 61 {
		keep(t, k, job("a", fmt.Sprint(i)))
		c.pass(revisionEvery)
	}
	revisions, err := k.ListRevisions(t.Context(), "a")
	require.NoError(t, err)
	require.Len(t, revisions, mostRevisions)
	require.Equal(t, 60, revisions[0].Number)
	require.Equal(t, 11, revisions[49].Number)
}

func TestAnIdentifierThatCouldLeaveItsDrawerIsRefused(t *testing.T) {
	k, _ := keeper()
	for _, id := range []string{"", "a/b", "../list", "ä", "a b", string(make([]byte, 65))} {
		_, err := k.KeepJob(t.Context(), job(id, "Hall"))
		require.Equal(t, "bad-id", problem(t, err).Code, "%q", id)
	}
}

func TestAJobOfALaterVersionIsRefusedAndLeftAsItIs(t *testing.T) {
	k, _ := keeper()
	later := []byte(`{"format":1,"kept":"2031-01-01T00:00:00.000Z","item":{"format":99,"id":"a","rooms":"shaped otherwise"}}`)
	require.NoError(t, k.Store.Write(t.Context(), func(w store.Writer) error { return w.Put("job/a", later) }))
	_, err := k.OpenJob(t.Context(), "a")
	require.Equal(t, "newer", problem(t, err).Code)
	_, err = k.KeepJob(t.Context(), job("a", "Hall"))
	require.Equal(t, "newer", problem(t, err).Code)
	require.NoError(t, k.Store.Read(t.Context(), func(r store.Reader) error {
		still, err := r.Get("job/a")
		require.Equal(t, later, still)
		return err
	}))
}

func TestADamagedRecordSaysSoAndDoesNotHideTheOthers(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	keep(t, k, job("b", "Bath"))
	require.NoError(t, k.Store.Write(t.Context(), func(w store.Writer) error {
		return errors.Join(w.Put("job/a", []byte(`{"form`)), w.Put(pageKey("b"), []byte("rubbish")))
	}))
	_, err := k.OpenJob(t.Context(), "a")
	require.Equal(t, "unreadable", problem(t, err).Code)
	require.Len(t, list(t, k), 2, "the damaged page of the list is made again from the jobs")
}

// faulty is a store that fails, or forgets.
type faulty struct {
	store.Store
	fails   error
	forgets bool
}

func (f faulty) Write(ctx context.Context, steps func(store.Writer) error) error {
	if f.fails != nil {
		return f.fails
	}
	if f.forgets {
		return (&store.Memory{}).Write(ctx, steps)
	}
	return f.Store.Write(ctx, steps)
}

func TestNothingIsCalledKeptThatIsNot(t *testing.T) {
	for _, c := range []struct {
		store faulty
		code  string
	}{
		{faulty{Store: &store.Memory{}, fails: store.ErrFull}, "full"},
		{faulty{Store: &store.Memory{}, fails: store.ErrUnavailable}, "unavailable"},
		{faulty{Store: &store.Memory{}, fails: context.DeadlineExceeded}, "late"},
		{faulty{Store: &store.Memory{}, fails: errors.New("UnknownError: disk")}, "storage"},
		{faulty{Store: &store.Memory{}, forgets: true}, "storage"},
	} {
		k, _ := keeper()
		k.Store = c.store
		_, err := k.KeepJob(t.Context(), job("a", "Hall"))
		p := problem(t, err)
		require.Equal(t, c.code, p.Code)
		require.NotEmpty(t, p.Message)
		require.NotEmpty(t, p.Remedy)
	}
}

func TestARecordIsReadableByAnybody(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	require.NoError(t, k.Store.Read(t.Context(), func(r store.Reader) error {
		content, err := r.Get("job/a")
		require.NoError(t, err)
		var plain map[string]any
		require.NoError(t, json.Unmarshal(content, &plain))
		require.EqualValues(t, 1, plain["format"])
		return err
	}))
}
