package engine

import "strconv"

// The limits of a plan: enough for any building, small enough to answer at once. What lies beyond is told and left out.
const (
	mostRooms        = 200
	mostReadings     = 200_000 // these and the next ones of one room
	mostKeepOuts     = 200
	mostDoors        = 200
	mostPenetrations = 500
	mostDecks        = 100
	mostProblems     = 1000 // told at once
)

// The limits of a job document that comes from elsewhere, well above those of a plan: one that was kept here can always be opened again.
const (
	mostListed   = 1000    // rooms, records, or things of one kind in a room
	mostRows     = 250_000 // readings of one room
	mostRecorded = 20_000  // batches of one pour
)

// upTo gives the first of a list and tells what is left out.
func upTo[T any](r *reader, list []T, most int, field, message, remedy string) []T {
	if len(list) <= most {
		return list
	}
	r.fail(Problem{Code: "too-many", Field: field, Message: message, Remedy: remedy})
	return list[:most]
}

// Excess says what a job document has too much of to be taken; empty: it is within the limits.
func (j *Job) Excess() string {
	counts := []count{{"rooms", len(j.Rooms), mostListed}, {"records of a pour", len(j.Record), mostListed}}
	for _, record := range j.Record {
		counts = append(counts, count{"batches in a record", len(record.Batches), mostRecorded})
	}
	for _, room := range j.Rooms {
		counts = append(counts,
			count{"readings in a room", len(room.Readings.Rows), mostRows}, count{"keep-outs in a room", len(room.KeepOuts), mostListed},
			count{"doors in a room", len(room.Doors), mostListed}, count{"penetrations in a room", len(room.Penetrations), mostListed},
			count{"deck areas in a room", len(room.Decks), mostListed})
	}
	for _, c := range counts {
		if c.given > c.most {
			return "more than " + strconv.Itoa(c.most) + " " + c.of
		}
	}
	return ""
}

type count struct {
	of          string
	given, most int
}
