package engine

import (
	"strings"
	"time"
)

// Shelf life: how old what is bought may be on the day of the pour.

// workPour works the pour out, once.
func (t *buying) workPour() {
	if t.day != nil {
		return
	}
	t.day = newPourWork(t.job, t.book)
	for _, room := range t.day.rooms {
		t.pours = append(t.pours, t.day.roomPours(room))
	}
}

// keep tells of what is too old on the day of the last pour, where the work has a day.
func (t *buying) keep() {
	if strings.TrimSpace(t.job.Start) == "" {
		return
	}
	t.workPour()
	day, known := pourDate(t.day.runSheet())
	if !known {
		return
	}
	for i := range t.out.Lines {
		if line := &t.out.Lines[i]; line.Keeps != nil && line.Keeps.SI > 0 {
			line.TooOld = day.AddDate(0, 0, -int(line.Keeps.SI/86400)).Format(time.DateOnly)
		}
	}
}

// pourDate is the day of a run sheet's last pour.
func pourDate(sheet RunSheet) (day time.Time, known bool) {
	for _, entry := range sheet.Entries {
		if entry.ID != "pour" && !strings.HasPrefix(entry.ID, "pour-") {
			continue
		}
		if at, err := time.Parse(time.DateOnly, entry.Start[:min(len(entry.Start), len(time.DateOnly))]); err == nil {
			day, known = at, true
		}
	}
	return day, known
}
