package store

import (
	"context"
	"errors"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// Every store keeps the same promises: freshStore gives the one under test, in memory natively and IndexedDB in a browser.

func put(t *testing.T, s Store, items map[string]string) {
	t.Helper()
	require.NoError(t, s.Write(t.Context(), func(w Writer) error {
		for key, value := range items {
			if err := w.Put(key, []byte(value)); err != nil {
				return err
			}
		}
		return nil
	}))
}

func get(t *testing.T, s Store, key string) (value []byte) {
	t.Helper()
	require.NoError(t, s.Read(t.Context(), func(r Reader) (err error) {
		value, err = r.Get(key)
		return err
	}))
	return value
}

func keys(t *testing.T, s Store, prefix string) (found []string) {
	t.Helper()
	require.NoError(t, s.Read(t.Context(), func(r Reader) (err error) {
		found, err = r.Keys(prefix)
		return err
	}))
	return found
}

func TestWhatWasPutIsThereAndWhatWasNotIsNil(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"job/1": "first", "job/empty": "", "job/text": "3/8 in, 68 °F \x00 end"})
	require.Equal(t, []byte("first"), get(t, s, "job/1"))
	require.Equal(t, []byte{}, get(t, s, "job/empty"))
	require.Equal(t, []byte("3/8 in, 68 °F \x00 end"), get(t, s, "job/text"))
	require.Nil(t, get(t, s, "job/none"))
	put(t, s, map[string]string{"job/1": "second"})
	require.Equal(t, []byte("second"), get(t, s, "job/1"))
}

func TestKeysAreThoseOfThePrefixInOrder(t *testing.T) {
	s := freshStore(t)
	require.Equal(t, []string{}, keys(t, s, "job/"))
	put(t, s, map[string]string{"job/2": "", "job/10": "", "jobs": "", "jo": "", "list/1": "", "job/": ""})
	require.Equal(t, []string{"job/", "job/10", "job/2"}, keys(t, s, "job/"))
	require.Len(t, keys(t, s, ""), 6)
}

func TestAllGivesEveryValueOfThePrefixInOrder(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"job/2": "two", "job/10": "", "jobs": "no", "list/1": "no"})
	for i := range 200 {
		put(t, s, map[string]string{fmt.Sprintf("many/%03d", i): fmt.Sprint(i)})
	}
	require.NoError(t, s.Read(t.Context(), func(r Reader) error {
		found, err := r.All("job/")
		require.Equal(t, []Item{{"job/10", []byte{}}, {"job/2", []byte("two")}}, found)
		if err != nil {
			return err
		}
		many, err := r.All("many/")
		require.Len(t, many, 200)
		for i, item := range many {
			require.Equal(t, Item{fmt.Sprintf("many/%03d", i), []byte(fmt.Sprint(i))}, item)
		}
		return err
	}))
}

func TestDeletedIsGoneAndDeletingNothingIsNoError(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"a": "1", "b": "2"})
	require.NoError(t, s.Write(t.Context(), func(w Writer) error { return errors.Join(w.Delete("a"), w.Delete("none")) }))
	require.Nil(t, get(t, s, "a"))
	require.Equal(t, []byte("2"), get(t, s, "b"))
}

func TestATransactionIsDoneWholeOrNotAtAll(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"a": "before"})
	refused := errors.New("changed its mind")
	require.ErrorIs(t, s.Write(t.Context(), func(w Writer) error {
		if err := errors.Join(w.Put("a", []byte("after")), w.Put("b", []byte("new"))); err != nil {
			return err
		}
		return refused
	}), refused)
	require.Equal(t, []byte("before"), get(t, s, "a"))
	require.Nil(t, get(t, s, "b"))
}

func TestATransactionSeesWhatItPutItself(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"count": "1"})
	require.NoError(t, s.Write(t.Context(), func(w Writer) error {
		for range 20 {
			before, err := w.Get("count")
			if err != nil {
				return err
			}
			if err := w.Put("count", append(before, '1')); err != nil {
				return err
			}
		}
		found, err := w.Keys("")
		require.Equal(t, []string{"count"}, found)
		return err
	}))
	require.Len(t, get(t, s, "count"), 21)
}

func TestWhatIsHandedOutAndInIsNotShared(t *testing.T) {
	s := freshStore(t)
	mine := []byte("mine")
	require.NoError(t, s.Write(t.Context(), func(w Writer) error { return w.Put("a", mine) }))
	mine[0] = 'X'
	get(t, s, "a")[1] = 'X'
	require.Equal(t, []byte("mine"), get(t, s, "a"))
}

func TestACancelledContextIsAnErrorAndChangesNothing(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"a": "before"})
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	require.ErrorIs(t, s.Read(ctx, func(r Reader) error { _, err := r.Get("a"); return err }), context.Canceled)
	require.ErrorIs(t, s.Write(ctx, func(w Writer) error { return w.Put("a", []byte("after")) }), context.Canceled)
	require.Equal(t, []byte("before"), get(t, s, "a"))
}

func TestAContextCancelledHalfWayChangesNothing(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"a": "before"})
	ctx, cancel := context.WithCancel(t.Context())
	require.ErrorIs(t, s.Write(ctx, func(w Writer) error {
		if err := w.Put("a", []byte("after")); err != nil {
			return err
		}
		cancel()
		_, err := w.Get("a")
		return err
	}), context.Canceled)
	require.Equal(t, []byte("before"), get(t, s, "a"))
}

func TestManyWritersAtOnceLoseNothing(t *testing.T) {
	s := freshStore(t)
	put(t, s, map[string]string{"count": ""})
	done := make(chan error)
	for range 25 {
		go func() {
			done <- s.Write(context.Background(), func(w Writer) error {
				before, err := w.Get("count")
				if err != nil {
					return err
				}
				return w.Put("count", append(before, '+'))
			})
		}()
	}
	for range 25 {
		require.NoError(t, <-done)
	}
	require.Len(t, get(t, s, "count"), 25)
}

func TestALargeDocumentComesBackWhole(t *testing.T) {
	s := freshStore(t)
	large := make([]byte, 8<<20)
	for i := range large {
		large[i] = byte(i * 31)
	}
	require.NoError(t, s.Write(t.Context(), func(w Writer) error { return w.Put("large", large) }))
	require.Equal(t, large, get(t, s, "large"))
}

func TestAThousandDocumentsAreFoundByKey(t *testing.T) {
	s := freshStore(t)
	items := map[string]string{}
	for i := range 1000 {
		items[fmt.Sprintf("job/%04d", i)] = fmt.Sprint(i)
	}
	put(t, s, items)
	require.Len(t, keys(t, s, "job/"), 1000)
	require.Equal(t, []byte("517"), get(t, s, "job/0517"))
}
