package store

import (
	"context"
	"syscall/js"
	"testing"

	"github.com/hack-pad/go-indexeddb/idb"
	"github.com/stretchr/testify/require"
)

// freshStore is a database of the test's own, removed when the test ends.
func freshStore(t *testing.T) Store {
	t.Helper()
	s := &IndexedDB{Name: t.Name()}
	t.Cleanup(func() {
		if s.database != nil {
			_ = s.database.Close()
		}
		if request, err := idb.Global().DeleteDatabase(t.Name()); err == nil {
			_ = request.Await(context.Background())
		}
	})
	return s
}

func TestWhatWasKeptIsThereForTheNextStart(t *testing.T) {
	put(t, freshStore(t), map[string]string{"a": "kept"})
	require.Equal(t, []byte("kept"), get(t, &IndexedDB{Name: t.Name()}, "a"))
}

func TestAConnectionThatTheBrowserClosedIsOpenedAgain(t *testing.T) {
	s := freshStore(t).(*IndexedDB)
	put(t, s, map[string]string{"a": "kept"})
	require.NoError(t, s.database.Close())
	require.Equal(t, []byte("kept"), get(t, s, "a"))
}

func TestABrowserWithoutStorageSaysSo(t *testing.T) {
	scope := js.Global()
	there := scope.Get("indexedDB")
	scope.Get("Object").Call("defineProperty", scope, "indexedDB", map[string]any{"value": nil, "configurable": true})
	defer scope.Get("Object").Call("defineProperty", scope, "indexedDB", map[string]any{"value": there, "configurable": true})
	s := &IndexedDB{Name: t.Name()}
	require.ErrorIs(t, s.Write(t.Context(), func(w Writer) error { return w.Put("a", nil) }), ErrUnavailable)
}

func TestABrowserWithNoRoomLeftSaysSo(t *testing.T) {
	full := idb.NewDOMException("QuotaExceededError")
	require.ErrorIs(t, told(t.Context(), full), ErrFull)
}
