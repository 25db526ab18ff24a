package kept

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"encoding/json"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// What was ever written must open for ever: see testdata/formats/README.md.

func formats(t *testing.T) []string {
	t.Helper()
	folders, err := filepath.Glob("testdata/formats/*/store")
	require.NoError(t, err)
	require.NotEmpty(t, folders)
	for i := range folders {
		folders[i] = filepath.Dir(folders[i])
	}
	return folders
}

// storeOf is a keeper of a folder's store, each value as change makes it.
func storeOf(t *testing.T, folder string, change func([]byte) []byte) *Keeper {
	t.Helper()
	k, _ := keeper()
	files := os.DirFS(filepath.Join(folder, "store"))
	require.NoError(t, k.Store.Write(t.Context(), func(w store.Writer) error {
		return fs.WalkDir(files, ".", func(key string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() {
				return err
			}
			content, err := fs.ReadFile(files, key)
			if err != nil {
				return err
			}
			return w.Put(key, change(content))
		})
	}))
	return k
}

func asItIs(content []byte) []byte { return content }

func all(t *testing.T, k *Keeper) (items []store.Item) {
	t.Helper()
	require.NoError(t, k.Store.Read(t.Context(), func(r store.Reader) (err error) {
		items, err = r.All("")
		return err
	}))
	return items
}

func read(t *testing.T, folder, name string) []byte {
	t.Helper()
	content, err := os.ReadFile(filepath.Join(folder, name))
	require.NoError(t, err)
	return content
}

func TestTheStoreOfEveryFormatOpens(t *testing.T) {
	for _, folder := range formats(t) {
		k := storeOf(t, folder, asItIs)
		var ids []string
		for _, entry := range list(t, k) {
			ids = append(ids, entry.ID)
			opened, err := k.OpenJob(t.Context(), entry.ID)
			require.NoError(t, err, folder)
			require.Equal(t, entry.Name, opened.Job.Name, folder)
			require.Equal(t, entry.Kept, opened.Kept, folder)
		}
		require.ElementsMatch(t, []string{"full", "demo", "gone", "bays", "tests"}, ids, folder)
		opened, err := k.OpenJob(t.Context(), "full")
		require.NoError(t, err)
		require.Equal(t, "3' 0\"", opened.Job.Rooms[0].KeepOuts[1].Shape.Width, "as it was typed")
		require.Equal(t, "a little stiff", opened.Job.Record[0].Batches[0].Note)
		require.Equal(t, "C. Ustomer", opened.Job.Offer.Customer)

		_, err = k.RestoreRevision(t.Context(), "full", 1)
		require.NoError(t, err, folder)
		sheets, err := k.Sheets().List(t.Context())
		require.NoError(t, err)
		require.Equal(t, "25 kg", sheets[0].Sheet.Values["sheet.bag_mass"])
		book, err := k.Books().Open(t.Context(), "mine")
		require.NoError(t, err)
		require.Empty(t, engine.ReadRulebook(book.Text).Errors())
		shop, err := k.OpenShop(t.Context())
		require.NoError(t, err)
		require.Equal(t, "L25", shop.Prices[0].Code)
		settings, err := k.OpenSettings(t.Context())
		require.NoError(t, err)
		require.Equal(t, "off", settings["day.sound"])
	}
}

func TestWhatIsKeptAgainIsKeptAsItWas(t *testing.T) {
	for _, folder := range formats(t) {
		k := storeOf(t, folder, asItIs)
		opened, err := k.OpenJob(t.Context(), "full")
		require.NoError(t, err)
		keep(t, k, opened.Job)
		again, err := k.OpenJob(t.Context(), "full")
		require.NoError(t, err)
		require.Equal(t, opened.Job, again.Job, folder)
	}
}

func TestTheFilesOfEveryFormatOpen(t *testing.T) {
	for _, folder := range formats(t) {
		k, _ := keeper()
		done, err := k.Import(t.Context(), read(t, folder, "everything.json"))
		require.NoError(t, err, folder)
		require.Equal(t, []int{2, 1, 1}, []int{len(done.Jobs), done.Sheets, done.Books}, folder)
		require.True(t, done.Shop, folder)
		done, err = k.Import(t.Context(), read(t, folder, "job.json"))
		require.NoError(t, err, folder)
		require.Equal(t, 1, done.Same, "it was in the other file")

		book, problems := engine.ReadBookFile(string(read(t, folder, "rulebook.rules")))
		require.Empty(t, problems, folder)
		require.Empty(t, engine.ReadRulebook(book.Book).Errors(), folder)
		require.Len(t, book.Sheets, 1, folder)

		shared, err := engine.ReadJob(unpacked(t, read(t, folder, "link.txt")))
		require.NoError(t, err, folder)
		require.Equal(t, "walked", shared.Rooms[1].ID, folder)
	}
}

// unpacked is what a link holds: deflated, in base64url.
func unpacked(t *testing.T, link []byte) []byte {
	t.Helper()
	document, err := io.ReadAll(flate.NewReader(base64.NewDecoder(base64.RawURLEncoding, bytes.NewReader(link))))
	require.NoError(t, err)
	return document
}

var formatNumber = regexp.MustCompile(`("format"|"lowspot"):\s*\d+`)

func ofALaterFormat(content []byte) []byte { return formatNumber.ReplaceAll(content, []byte("$1:99")) }

func TestWhatALaterVersionKeptIsRefusedAndLeftAsItIs(t *testing.T) {
	for _, folder := range formats(t) {
		k := storeOf(t, folder, ofALaterFormat)
		before := all(t, k)
		refused := func(err error) {
			t.Helper()
			require.Equal(t, "newer", problem(t, err).Code)
			require.Contains(t, problem(t, err).Message, "was made by a newer version than this one. It was left as it is.")
		}
		_, err := k.OpenJob(t.Context(), "full")
		refused(err)
		_, err = k.KeepJob(t.Context(), job("full", "Hall"))
		refused(err)
		_, err = k.RestoreRevision(t.Context(), "full", 1)
		refused(err)
		refused(k.DeleteJob(t.Context(), "full"))
		_, err = k.Sheets().Open(t.Context(), "own")
		refused(err)
		_, err = k.Sheets().Keep(t.Context(), "own", Sheet{ID: "own"})
		refused(err)
		_, err = k.Books().Keep(t.Context(), "mine", Book{ID: "mine"})
		refused(err)
		_, err = k.KeepShop(t.Context(), engine.NewShop())
		refused(err)
		refused(k.KeepSettings(t.Context(), Settings{"language": "es"}))
		_, err = k.Import(t.Context(), ofALaterFormat(read(t, folder, "everything.json")))
		refused(err)
		require.Equal(t, before, all(t, k))
		_, problems := engine.ReadBookFile(strings.Replace(string(read(t, folder, "rulebook.rules")), "lowspot rules 1", "lowspot rules 99", 1))
		require.Equal(t, "newer", problems[0].Code)
		_, err = engine.ReadJob(ofALaterFormat(unpacked(t, read(t, folder, "link.txt"))))
		require.ErrorContains(t, err, "kept by a later version")
	}
}

// A field that is added to the job document stands in one of the documents, or nobody would notice when it can't be read any more.
func TestEveryFieldOfAJobStandsInTheDocuments(t *testing.T) {
	written := map[string]bool{}
	for _, folder := range formats(t) {
		files, err := filepath.Glob(filepath.Join(folder, "store/job/*"))
		require.NoError(t, err)
		for _, file := range files {
			var document any
			require.NoError(t, json.Unmarshal(read(t, "", file), &document))
			collect(document, written)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(fields(reflect.TypeFor[engine.Job](), map[string]bool{}))) {
		require.True(t, written[name], "add a document with the field %q to testdata/formats", name)
	}
}

func collect(value any, names map[string]bool) {
	switch value := value.(type) {
	case map[string]any:
		for name, inner := range value {
			names[name] = true
			collect(inner, names)
		}
	case []any:
		for _, inner := range value {
			collect(inner, names)
		}
	}
}

func fields(t reflect.Type, names map[string]bool) map[string]bool {
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice, reflect.Map:
		return fields(t.Elem(), names)
	case reflect.Struct:
		for i := range t.NumField() {
			name, _, _ := strings.Cut(t.Field(i).Tag.Get("json"), ",")
			names[name] = true
			fields(t.Field(i).Type, names)
		}
	}
	return names
}
