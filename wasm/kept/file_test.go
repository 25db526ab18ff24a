package kept

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/wasm/store"
)

func TestAWholeStoreGoesIntoOneFileAndComesBackElsewhere(t *testing.T) {
	here, _ := keeper()
	keep(t, here, job("a", "Hall"))
	keep(t, here, job("b", "Bath"))
	_, err := here.Sheets().Keep(t.Context(), "s", Sheet{ID: "s", Kind: "leveller", Sheet: engine.Sheet{Name: "Own", Values: engine.Answers{"sheet.bag_mass": "20 kg"}}})
	require.NoError(t, err)
	_, err = here.Books().Keep(t.Context(), "r", Book{ID: "r", Title: "Own rules", Text: "# nothing yet"})
	require.NoError(t, err)
	content, err := here.Export(t.Context(), nil)
	require.NoError(t, err)
	for _, entry := range list(t, here) {
		require.Equal(t, "2026-03-02T08:00:00.000Z", entry.Exported)
	}

	there, _ := keeper()
	done, err := there.Import(t.Context(), content)
	require.NoError(t, err)
	require.Len(t, done.Jobs, 2)
	require.Equal(t, Imported{Jobs: done.Jobs, Sheets: 1, Books: 1}, done)
	for _, id := range []string{"a", "b"} {
		mine, err := here.OpenJob(t.Context(), id)
		require.NoError(t, err)
		theirs, err := there.OpenJob(t.Context(), id)
		require.NoError(t, err)
		require.Equal(t, mine.Job, theirs.Job)
	}
	sheets, err := there.Sheets().List(t.Context())
	require.NoError(t, err)
	require.Equal(t, "20 kg", sheets[0].Sheet.Values["sheet.bag_mass"])
}

// fullDisk takes nothing more.
type fullDisk struct{ store.Store }

func (fullDisk) Write(context.Context, func(store.Writer) error) error { return store.ErrFull }

func TestOnAFullDiskAFileComesAllTheSame(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	k.Store = fullDisk{k.Store}
	_, err := k.KeepJob(t.Context(), job("a", "Hall, longer"))
	require.Equal(t, "full", problem(t, err).Code)
	content, err := k.Export(t.Context(), []string{"a"})
	require.NoError(t, err)
	file, err := ReadFile(content)
	require.NoError(t, err)
	require.Equal(t, "Hall", file.Jobs[0].Name, "as it was kept")
	content, err = k.Write(job("a", "Hall, longer"))
	require.NoError(t, err)
	file, err = ReadFile(content)
	require.NoError(t, err)
	require.Equal(t, "Hall, longer", file.Jobs[0].Name, "as it is shown")
}

func TestAWholeStoreBringsPricesAndSettingsWhereNobodyMadeAnyYet(t *testing.T) {
	here, _ := keeper()
	shop := engine.NewShop()
	shop.Name, shop.Currency = "Corner shop", "CHF"
	_, err := here.KeepShop(t.Context(), shop)
	require.NoError(t, err)
	require.NoError(t, here.KeepSettings(t.Context(), Settings{"language": "es", "day.sound": "off"}))
	content, err := here.Export(t.Context(), nil)
	require.NoError(t, err)

	there, _ := keeper()
	require.NoError(t, there.KeepSettings(t.Context(), Settings{"language": "en"}))
	done, err := there.Import(t.Context(), content)
	require.NoError(t, err)
	require.True(t, done.Shop)
	taken, err := there.OpenShop(t.Context())
	require.NoError(t, err)
	require.Equal(t, shop, taken)
	settings, err := there.OpenSettings(t.Context())
	require.NoError(t, err)
	require.Equal(t, Settings{"language": "en", "day.sound": "off"}, settings, "what was chosen here stays")

	shop.Name = "Another shop"
	_, err = there.KeepShop(t.Context(), shop)
	require.NoError(t, err)
	done, err = there.Import(t.Context(), content)
	require.NoError(t, err)
	require.False(t, done.Shop, "a price list that is here stays")
}

func TestReadingTheSameFileTwiceAddsNothing(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	content, err := k.Export(t.Context(), []string{"a"})
	require.NoError(t, err)
	done, err := k.Import(t.Context(), content)
	require.NoError(t, err)
	require.Equal(t, Imported{Jobs: []Entry{}, Same: 1}, done)
	require.Len(t, list(t, k), 1)
}

func TestAnOlderCopyFromAFileStandsBesideTheJobAndDoesNotReplaceIt(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	content, err := k.Export(t.Context(), []string{"a"})
	require.NoError(t, err)
	keep(t, k, job("a", "Hall, worked on since"))
	done, err := k.Import(t.Context(), content)
	require.NoError(t, err)
	require.Equal(t, "new-1", done.Jobs[0].ID)
	mine, err := k.OpenJob(t.Context(), "a")
	require.NoError(t, err)
	require.Equal(t, "Hall, worked on since", mine.Job.Name)
}

func TestADeletedJobIsNotExported(t *testing.T) {
	k, _ := keeper()
	keep(t, k, job("a", "Hall"))
	require.NoError(t, k.DeleteJob(t.Context(), "a"))
	content, err := k.Export(t.Context(), nil)
	require.NoError(t, err)
	file, err := ReadFile(content)
	require.NoError(t, err)
	require.Empty(t, file.Jobs)
}

func TestABadFileIsRefusedAndChangesNothing(t *testing.T) {
	rows := strings.TrimSuffix(strings.Repeat(`{"x":"","y":"","height":""},`, 250_001), ",")
	for name, content := range map[string]string{
		"empty":                "",
		"not JSON":             "PK\x03\x04",
		"something else":       `{"type":"FeatureCollection"}`,
		"a number for a name":  `{"lowspot":1,"jobs":[{"id":"a","format":1,"name":7}]}`,
		"a job that is a list": `{"lowspot":1,"jobs":[[]]}`,
		"deep":                 `{"lowspot":1,"jobs":` + strings.Repeat("[", 100_000) + strings.Repeat("]", 100_000) + `}`,
		"too many jobs":        `{"lowspot":1,"jobs":[` + strings.TrimSuffix(strings.Repeat("{},", MostJobs+1), ",") + `]}`,
		"too many rooms":       `{"lowspot":1,"jobs":[{"rooms":[` + strings.TrimSuffix(strings.Repeat("{},", 1001), ",") + `]}]}`,
		"too many readings":    `{"lowspot":1,"jobs":[{"rooms":[{"readings":{"rows":[` + rows + `]}}]}]}`,
		"too many keep-outs":   `{"lowspot":1,"jobs":[{"rooms":[{"keepOuts":[` + strings.TrimSuffix(strings.Repeat("{},", 1001), ",") + `]}]}]}`,
		"too many batches":     `{"lowspot":1,"jobs":[{"record":[{"batches":[` + strings.TrimSuffix(strings.Repeat("{},", 20_001), ",") + `]}]}]}`,
		"too many sheets":      `{"lowspot":1,"sheets":[` + strings.TrimSuffix(strings.Repeat("{},", MostKept+1), ",") + `]}`,
		"too large":            strings.Repeat(" ", MostBytes+1),
	} {
		k, _ := keeper()
		keep(t, k, job("a", "Hall"))
		_, err := k.Import(t.Context(), []byte(content))
		require.Equal(t, "file", problem(t, err).Code, name)
		require.Contains(t, problem(t, err).Message, "Nothing was changed", name)
		require.Len(t, list(t, k), 1, name)
	}
}

func TestAFileOfALaterVersionIsRefused(t *testing.T) {
	k, _ := keeper()
	for _, content := range []string{`{"lowspot":2,"jobs":"shaped otherwise"}`, `{"lowspot":1,"jobs":[{"format":99}]}`} {
		_, err := k.Import(t.Context(), []byte(content))
		require.Equal(t, "newer", problem(t, err).Code)
	}
}

func TestIdentifiersFromAFileCannotLeaveTheirDrawer(t *testing.T) {
	k, _ := keeper()
	done, err := k.Import(t.Context(), []byte(`{"lowspot":1,"jobs":[{"format":1,"id":"../list/00","name":"<b>Hall</b>"}]}`))
	require.NoError(t, err)
	require.Equal(t, "new-1", done.Jobs[0].ID)
	require.Equal(t, "<b>Hall</b>", done.Jobs[0].Name, "markup is text like any other")
}

// FuzzReadFile: no file panics, and one that is taken stands within the limits and comes out of a second reading the same.
func FuzzReadFile(f *testing.F) {
	for _, content := range []string{`{"lowspot":1}`, `{"lowspot":1,"jobs":[{"format":1,"id":"a","rooms":[{"doors":null}]}]}`, `{"lowspot":1,"sheets":[{"sheet":{"values":{"a":"b"}}}]}`, `[[[[`} {
		f.Add([]byte(content))
	}
	f.Fuzz(func(t *testing.T, content []byte) {
		file, err := ReadFile(content)
		if err != nil {
			require.NotEmpty(t, problem(t, err).Message)
			return
		}
		again, err := json.Marshal(file)
		require.NoError(t, err)
		second, err := ReadFile(again)
		require.NoError(t, err)
		twice, err := json.Marshal(second)
		require.NoError(t, err)
		require.Equal(t, string(again), string(twice))
	})
}

func TestTenThousandJobsAreListed(t *testing.T) {
	k, _ := keeper()
	file := File{Lowspot: FileFormat}
	for i := range 10_000 {
		file.Jobs = append(file.Jobs, engine.Job{Format: 1, ID: fmt.Sprintf("job-%d", i), Name: fmt.Sprintf("Floor %d", i)})
	}
	content, err := json.Marshal(file)
	require.NoError(t, err)
	_, err = k.Import(t.Context(), content)
	require.NoError(t, err)
	require.Len(t, list(t, k), 10_000)
}
