package kept

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/wasm/store"
)

func find(t *testing.T, k *Keeper, wanted Wanted) Found {
	t.Helper()
	found, err := k.FindJobs(t.Context(), wanted)
	require.NoError(t, err)
	return found
}

func TestJobsAreFoundByTheWordsOfTheirNamesAndRooms(t *testing.T) {
	k, c := keeper()
	for i, name := range []string{"Müller, Hofstraße 3", "Miller, hall", "Laundry"} {
		keep(t, k, job(fmt.Sprint(i), name))
		c.pass(time.Minute)
	}
	for wanted, ids := range map[string][]string{"": {"2", "1", "0"}, "MÜLLER": {"0"}, "bath mil": {"1"}, "hall laundry": {}, "  bathroom ": {"2", "1", "0"}} {
		found := find(t, k, Wanted{Find: wanted})
		got := []string{}
		for _, entry := range found.Jobs {
			got = append(got, entry.ID)
		}
		require.Equal(t, ids, got, wanted)
		require.Equal(t, []int{len(ids), 3}, []int{found.Count, found.All}, wanted)
	}
}

func TestOnlySoManyJobsAreGivenButAllAreCounted(t *testing.T) {
	k, _ := keeper()
	for i := range 5 {
		keep(t, k, job(fmt.Sprint(i), "Hall"))
	}
	require.NoError(t, k.DeleteJob(t.Context(), "4"))
	_, err := k.Export(t.Context(), []string{"0"})
	require.NoError(t, err)
	found := find(t, k, Wanted{Find: "hall", Most: 2})
	require.Len(t, found.Jobs, 2)
	require.Equal(t, []int{4, 4, 3}, []int{found.Count, found.All, found.Unsaved})
	require.Equal(t, "4", find(t, k, Wanted{Deleted: true}).Jobs[0].ID)
}

func TestTheListSeesWhatAnotherTabKept(t *testing.T) {
	here, c := keeper()
	there, _ := keeper()
	there.Store = here.Store
	keep(t, here, job("a", "Hall"))
	require.Len(t, list(t, here), 1)
	c.pass(time.Minute)
	keep(t, there, job("b", "Bath"))
	keep(t, there, job("a", "Hall, changed elsewhere"))
	require.Equal(t, []string{"Hall, changed elsewhere", "Bath"}, []string{list(t, here)[0].Name, list(t, here)[1].Name})
}

func TestWhatDividesTheLinesOfAPageIsASpaceInAName(t *testing.T) {
	k, _ := keeper()
	odd := job("a", "Hall\nsecond\x1fline\x00 \xff end")
	odd.Rooms = append(odd.Rooms, engine.Room{Name: "Bath\r\n"})
	keep(t, k, odd)
	entry := list(t, k)[0]
	require.Equal(t, "Hall second line  � end", entry.Name)
	require.Equal(t, []string{"Bathroom", "Bath  "}, entry.Rooms)
}

func TestAPageThatIsDamagedOrOfALaterFormatIsMadeAgainFromTheJobs(t *testing.T) {
	for _, content := range []string{"", "rubbish", pageHead + "a\x1fhalf a li", pageHead + "short\x1fline\n", `{"format":2,"entries":"shaped otherwise"}`, "lowspot list 3\n\n"} {
		k, _ := keeper()
		keep(t, k, job("a", "Hall"))
		require.NoError(t, k.Store.Write(t.Context(), func(w store.Writer) error { return w.Put(pageKey("a"), []byte(content)) }))
		require.Equal(t, "Hall", list(t, k)[0].Name, "%q", content)
	}
}
