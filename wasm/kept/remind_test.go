package kept

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

func stands(t *testing.T, k *Keeper, id string) Standing {
	t.Helper()
	opened, err := k.OpenJob(t.Context(), id)
	require.NoError(t, err)
	return opened.Standing
}

func TestAPersonIsRemindedToExportAWeekAfterTheFirstChangeThatIsInNoFile(t *testing.T) {
	k, c := keeper()
	keep(t, k, job("a", "Hall"))
	c.pass(30 * 24 * time.Hour)
	require.False(t, stands(t, k, "a").Remind, "nothing was changed since it was made")
	keep(t, k, job("a", "Hall, changed"))
	c.pass(6 * 24 * time.Hour)
	keep(t, k, job("a", "Hall, changed again"))
	require.Equal(t, Standing{Kept: "2026-04-07T08:00:00.000Z", Unsaved: 2}, stands(t, k, "a"))
	c.pass(24 * time.Hour)
	require.True(t, stands(t, k, "a").Remind)
}

func TestAPersonIsRemindedToExportAfterManyChanges(t *testing.T) {
	k, _ := keeper()
	for range remindChanges {
		keep(t, k, job("a", "Hall"))
	}
	require.False(t, stands(t, k, "a").Remind)
	at, err := k.KeepJob(t.Context(), job("a", "Hall"))
	require.NoError(t, err)
	require.True(t, at.Remind)
	require.Equal(t, remindChanges, at.Unsaved)
}

func TestAReminderCanBePutOffAndAnExportEndsIt(t *testing.T) {
	k, c := keeper()
	keep(t, k, job("a", "Hall"))
	keep(t, k, job("a", "Hall, changed"))
	c.pass(remindAfter)
	off, err := k.PutOff(t.Context(), "a")
	require.NoError(t, err)
	require.False(t, off.Remind)
	require.Equal(t, "2026-03-02T08:00:00.000Z", off.Kept, "putting it off changes nothing of the job")
	c.pass(putOffFor - time.Minute)
	require.False(t, stands(t, k, "a").Remind)
	c.pass(time.Minute)
	require.True(t, stands(t, k, "a").Remind)

	_, err = k.Export(t.Context(), []string{"a"})
	require.NoError(t, err)
	require.Equal(t, Standing{Kept: "2026-03-02T08:00:00.000Z", Exported: "2026-03-12T08:00:00.000Z"}, stands(t, k, "a"))
}

func TestPuttingOffWhatIsNotThereSaysSo(t *testing.T) {
	k, _ := keeper()
	_, err := k.PutOff(t.Context(), "none")
	require.Equal(t, "missing", problem(t, err).Code)
}
