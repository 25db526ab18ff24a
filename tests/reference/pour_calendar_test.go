// The run sheet's calendar file read back by a general-purpose iCalendar library (github.com/arran4/golang-ical).
package reference

import (
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/engine/pour"
)

// events are a run sheet's holds as the page puts them into a calendar, bare of words.
func events(sheet []pour.Entry) []pour.Event {
	list := []pour.Event{}
	for _, e := range sheet {
		if e.Hold != "" {
			list = append(list, pour.Event{ID: e.ID, Title: e.Hold, From: e.End, To: e.HoldEarliest, About: append([]string{e.Title}, e.Cautions...)})
		}
	}
	return list
}

func TestTheCalendarFileReadsBackWhole(t *testing.T) {
	steps := []pour.Step{
		{ID: "patch", Title: "Patch holes; fill seams, twice", Who: "Ann", Work: 5400, Hold: &pour.Hold{Title: "Patch cures – nicht betreten, außer nötig", Earliest: 4 * 3600}},
		{ID: "prime", Title: "Prime", Who: "Ann", Work: 3600, After: []string{"patch"},
			Hold: &pour.Hold{Title: "Primer window \\ first coat " + strings.Repeat("and on ", 20), Earliest: 2 * 3600, Latest: 24 * 3600}, Cautions: []string{"Open a window.", "Keep sparks away; see the label."}},
		{ID: "pour", Title: "Pour", Who: "Ann", Work: 7200, After: []string{"prime"}, Hold: &pour.Hold{Title: "Set", Earliest: 4 * 3600}},
		{ID: "tile", Title: "Tile", Who: "Ann", Work: 7200, After: []string{"pour"}},
	}
	sheet, err := pour.RunSheet(steps, "2026-12-31T08:00", pour.Workday{Opens: 7 * 3600, Closes: 18 * 3600})
	require.NoError(t, err)
	text, err := pour.Calendar(events(sheet), "job-7", "2026-12-30T06:00:00Z")
	require.NoError(t, err)

	calendar, err := ics.ParseCalendar(strings.NewReader(text))
	require.NoError(t, err)
	back := calendar.Events()
	require.Len(t, back, 3, "one event a hold")
	byID := map[string]pour.Entry{}
	for _, e := range sheet {
		byID["job-7."+e.ID+"@lowspot.invalid"] = e
	}
	seen := map[string]bool{}
	for _, event := range back {
		entry, known := byID[event.Id()]
		require.True(t, known, event.Id())
		assert.False(t, seen[event.Id()], "every UID once")
		seen[event.Id()] = true
		assert.Equal(t, entry.Hold, ics.FromText(event.GetProperty(ics.ComponentPropertySummary).Value))
		start, err := event.GetStartAt()
		require.NoError(t, err)
		end, err := event.GetEndAt()
		require.NoError(t, err)
		assert.Equal(t, entry.End, start.Format("2006-01-02T15:04:05"))
		assert.Equal(t, entry.HoldEarliest, end.Format("2006-01-02T15:04:05"))
		stamp, err := event.GetDtStampTime()
		require.NoError(t, err)
		assert.Equal(t, time.Date(2026, 12, 30, 6, 0, 0, 0, time.UTC), stamp.UTC())
		about := ics.FromText(event.GetProperty(ics.ComponentPropertyDescription).Value)
		assert.Contains(t, about, entry.Title)
		for _, caution := range entry.Cautions {
			assert.Contains(t, about, caution)
		}
		assert.Len(t, event.Alarms(), 1)
	}
}

// A whole job's holds: patch, barrier, every coat of primer, the lift below, walking, tiling, covering.
func TestEveryHoldOfAWholeJobIsInItsCalendarFile(t *testing.T) {
	job, book := engine.DemoJob("demo"), engine.ShippedRulebook()
	job.Start = "2026-05-04T08:00"
	job.Rooms[0].Decks[1].Answers["deck.barrier"] = "yes"
	job.Rooms[0].Readings.Rows[7].Height = "1262" // a hole that takes two lifts
	sheet := engine.MakePour(job, book).Sheet.Entries
	text, err := pour.Calendar(events(sheet), job.ID, "2026-05-01T06:00:00Z")
	require.NoError(t, err)
	calendar, err := ics.ParseCalendar(strings.NewReader(text))
	require.NoError(t, err)
	back := map[string]*ics.VEvent{}
	for _, event := range calendar.Events() {
		back[event.GetProperty(ics.ComponentPropertyUniqueId).Value] = event
	}
	held := 0
	for _, entry := range sheet {
		if entry.Hold == "" {
			continue
		}
		held++
		event := back["demo."+entry.ID+"@lowspot.invalid"]
		require.NotNil(t, event, entry.ID)
		assert.Equal(t, entry.Hold, ics.FromText(event.GetProperty(ics.ComponentPropertySummary).Value))
		from, err := time.Parse("2006-01-02T15:04:05", entry.End)
		require.NoError(t, err)
		assert.Equal(t, from.Format("20060102T150405"), event.GetProperty(ics.ComponentPropertyDtStart).Value)
	}
	assert.Len(t, back, held)
	for _, id := range []string{"patch", "barrier-1", "barrier-2", "prime-1", "prime-2", "pour-1", "prime-over-1", "off-it", "no-tile", "no-cover"} {
		assert.Contains(t, back, "demo."+id+"@lowspot.invalid")
	}
}
