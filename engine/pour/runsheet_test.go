package pour

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const hour = 3600.0

// job is an invented floor from priming to tile.
var job = []Step{
	{ID: "prime", Title: "Prime the deck", Who: "A", Work: 1 * hour, Hold: &Hold{"Primer dries; pour within its window", 3 * hour, 12 * hour}},
	{ID: "strip", Title: "Set the edge strip", Who: "B", Work: 2 * hour},
	{ID: "pour", Title: "Pour", Who: "A", Work: 2 * hour, After: []string{"prime", "strip"}, Hold: &Hold{"No walking yet", 4 * hour, 0},
		Cautions: []string{"Wet cement burns: gloves, goggles, long sleeves."}},
	{ID: "check", Title: "Check the plane", Who: "A", Work: 0.5 * hour, After: []string{"pour"}},
	{ID: "tile", Title: "Tile", Who: "A", Work: 6 * hour, After: []string{"check"}},
}

func TestStepsFollowTheirHolds(t *testing.T) {
	sheet, err := RunSheet(job, "2026-05-02T08:00", Workday{})
	require.NoError(t, err)
	starts := map[string]string{}
	for _, e := range sheet {
		starts[e.ID] = e.Start
		assert.Empty(t, e.Missed)
	}
	assert.Equal(t, map[string]string{"prime": "2026-05-02T08:00:00", "strip": "2026-05-02T08:00:00", "pour": "2026-05-02T12:00:00",
		"check": "2026-05-02T18:00:00", "tile": "2026-05-02T18:30:00"}, starts)
	assert.Equal(t, "2026-05-02T21:00:00", sheet[0].HoldLatest)
	assert.Equal(t, job[2].Cautions, sheet[2].Cautions)
}

// Started in the afternoon, the primer's window would close in the night: the priming waits for the morning.
func TestAStepIsHeldBackRatherThanItsWindowMissed(t *testing.T) {
	sheet, err := RunSheet(job, "2026-05-02T14:00+02:00", Workday{7 * hour, 18 * hour})
	require.NoError(t, err)
	assert.Equal(t, "strip", sheet[1].ID)
	assert.Equal(t, "2026-05-02T14:00:00", sheet[1].Start)
	assert.Equal(t, "2026-05-03T07:00:00", sheet[0].Start)
	assert.Equal(t, "2026-05-03T11:00:00", sheet[2].Start)
	for _, e := range sheet {
		assert.Empty(t, e.Missed)
	}
}

func TestAWindowThatNoHoursCanMeetIsSaid(t *testing.T) {
	narrow := []Step{{ID: "prime", Title: "Prime", Who: "A", Work: 9 * hour, Hold: &Hold{"Primer", 3 * hour, 5 * hour}},
		{ID: "pour", Title: "Pour", Who: "A", Work: 2 * hour, After: []string{"prime"}}}
	sheet, err := RunSheet(narrow, "2026-05-02T07:00", Workday{7 * hour, 17 * hour})
	require.NoError(t, err)
	assert.Contains(t, sheet[1].Missed, "after “Prime” stops holding")
}

func TestNonsenseStepsAreRefused(t *testing.T) {
	_, err := RunSheet([]Step{{ID: "a", After: []string{"b"}}, {ID: "b", After: []string{"c"}}, {ID: "c", After: []string{"b"}}}, "2026-05-02T08:00", Workday{})
	assert.EqualError(t, err, "steps: they go in a circle: b waits for c waits for b; take one of these off")
	_, err = RunSheet([]Step{{ID: "a", After: []string{"x"}}}, "2026-05-02T08:00", Workday{})
	assert.ErrorContains(t, err, "comes after “x”, which isn't there")
	_, err = RunSheet(job, "tomorrow", Workday{})
	assert.EqualError(t, err, "start: “tomorrow”; give a date and time such as 2026-05-02T08:00")
	_, err = RunSheet(job, "2026-02-30T08:00", Workday{})
	assert.Error(t, err, "there is no 30 February")
}

// FuzzRunSheet holds every run sheet to its own rules.
func FuzzRunSheet(f *testing.F) {
	f.Add("2026-05-02T08:00", 3600.0, 7200.0, 80000.0, 25200.0, 61200.0)
	f.Add("2028-02-28T23:59:59Z", 0.0, 1.5, 0.0, 0.0, 0.0)
	f.Fuzz(func(t *testing.T, start string, work, earliest, latest, opens, closes float64) {
		steps := []Step{{ID: "1", Who: "A", Work: work, Hold: &Hold{"h", earliest, latest}}, {ID: "2", Who: "A", Work: work, After: []string{"1"}}}
		sheet, err := RunSheet(steps, start, Workday{opens, closes})
		if err != nil {
			return
		}
		end, err := time.Parse(civil, sheet[0].End)
		require.NoError(t, err)
		next, err := time.Parse(civil, sheet[1].Start)
		require.NoError(t, err)
		require.False(t, next.Before(end))
		require.GreaterOrEqual(t, next.Sub(end).Seconds(), earliest-61)
		if latest > 0 && next.Sub(end).Seconds() > latest+1 {
			require.NotEmpty(t, sheet[1].Missed)
		}
	})
}

func TestCalendarLinesAreFoldedAndEscaped(t *testing.T) {
	events := []Event{{ID: "prime", Title: "Größe ≥ 3 h – " + strings.Repeat("trocknen – ", 12), From: "2026-05-02T09:00:00", To: "2026-05-02T12:00:00",
		About: []string{"Prime; twice, \\ once", "Line one\r\nline two"}}}
	text, err := Calendar(events, "job-1", "2026-05-01T06:00:00Z")
	require.NoError(t, err)
	assert.True(t, strings.HasSuffix(text, "END:VCALENDAR\r\n"))
	assert.Equal(t, strings.Count(text, "\n"), strings.Count(text, "\r\n"))
	for _, line := range strings.Split(text, "\r\n") {
		assert.LessOrEqual(t, len(line), 75)
		assert.True(t, utf8.ValidString(line))
	}
	whole := strings.ReplaceAll(text, "\r\n ", "")
	assert.Contains(t, whole, `Prime\; twice\, \\ once\nLine one\nline two`)
	assert.Contains(t, whole, "DTSTART:20260502T090000\r\nDTEND:20260502T120000\r\n")
	assert.Equal(t, 1, strings.Count(text, "BEGIN:VEVENT"))
	_, err = Calendar(events, "job-1", "now")
	assert.ErrorContains(t, err, "stamp")
	_, err = Calendar([]Event{{ID: "set", From: "2026-05-02T09:00:00"}}, "job-1", "2026-05-01T06:00:00Z")
	assert.ErrorContains(t, err, "hold after “set”")
}
