package kept

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/wasm/store"
)

func TestARulebookIsKeptOpenedListedAndDeleted(t *testing.T) {
	k, _ := keeper()
	own := Book{ID: "own", Title: "Own rules", Text: "figure least_depth\n"}
	at, err := k.Books().Keep(t.Context(), own.ID, own)
	require.NoError(t, err)
	require.Equal(t, "2026-03-02T08:00:00.000Z", at)
	opened, err := k.Books().Open(t.Context(), "own")
	require.NoError(t, err)
	require.Equal(t, own, opened)
	require.NoError(t, k.Books().Delete(t.Context(), "own"))
	books, err := k.Books().List(t.Context())
	require.NoError(t, err)
	require.Empty(t, books)
	_, err = k.Books().Open(t.Context(), "own")
	require.Equal(t, "There is no such rulebook on this device.", problem(t, err).Message)
}

func TestADamagedSheetDoesNotHideTheOthersAndANewerOneIsNotOverwritten(t *testing.T) {
	k, _ := keeper()
	require.NoError(t, k.Store.Write(t.Context(), func(w store.Writer) error {
		if err := w.Put("sheet/damaged", []byte("{")); err != nil {
			return err
		}
		return w.Put("sheet/newer", []byte(`{"format":9}`))
	}))
	_, err := k.Sheets().Keep(t.Context(), "own", Sheet{ID: "own"})
	require.NoError(t, err)
	sheets, err := k.Sheets().List(t.Context())
	require.NoError(t, err)
	require.Len(t, sheets, 1)
	_, err = k.Sheets().Keep(t.Context(), "newer", Sheet{ID: "newer"})
	require.Equal(t, "newer", problem(t, err).Code)
}

func TestSettingsStartEmptyAndStay(t *testing.T) {
	k, _ := keeper()
	none, err := k.OpenSettings(t.Context())
	require.NoError(t, err)
	require.Equal(t, Settings{}, none)
	require.NoError(t, k.KeepSettings(t.Context(), Settings{"language": "es"}))
	kept, err := k.OpenSettings(t.Context())
	require.NoError(t, err)
	require.Equal(t, Settings{"language": "es"}, kept)
	require.NoError(t, k.KeepSettings(t.Context(), Settings{"day.sound": "off"}))
	kept, err = k.OpenSettings(t.Context())
	require.NoError(t, err)
	require.Equal(t, Settings{"language": "es", "day.sound": "off"}, kept, "one setting does not undo another")
}
