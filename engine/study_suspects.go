package engine

import "lowspot/rules"

// mostScreened is how many readings are held against each other: more take minutes. Own choice, by measurement.
const mostScreened = 4000

// suspects lists the readings that the others don't bear out, each with what leaving it out would change. False where there are too many readings.
func (s *study) suspects(r *roomWork) ([]SuspectStudy, bool) {
	list := []SuspectStudy{}
	if len(r.points) > mostScreened {
		return list, false
	}
	for _, found := range r.model.Suspects() {
		i := found.Reading
		out := SuspectStudy{
			Row: r.rows[i], At: r.points[i], Read: s.asRead(r, found.Height), Expected: s.asRead(r, found.Expected),
			Off: s.length(found.Off), Deviations: found.Deviations,
		}
		if volume, ok := s.without(r, r.rows[i]); ok {
			out.Bags = s.bagsWithWaste(volume - r.volume)
		}
		list = append(list, out)
	}
	return list, true
}

// without works the room out anew with one row left out, and gives its volume.
func (s *study) without(r *roomWork, row int) (float64, bool) {
	room := *r.room
	room.Readings.Rows = append([]Reading{}, room.Readings.Rows...)
	room.Readings.Rows[row].Off = true
	again := &work{job: s.job, book: s.book, amounts: s.amounts, facts: rules.Facts{}}
	again.readJob()
	without := again.workRoom(&room, r.field)
	return without.volume, without.hasPour
}
