package engine

import (
	"strconv"

	"lowspot/engine/readings"
)

// Brought is what came of reading a list of readings: the good ones, and the lines that can't be read.
type Brought struct {
	Readings Readings  `json:"readings"`
	Problems []Problem `json:"problems"` // Field is the line: "line 7"
	More     int       `json:"more"`     // bad lines beyond those listed
}

// BringReadings reads a list of readings as text; what its header doesn't say is as in the survey given.
func BringReadings(text string, given Readings) Brought {
	read := readings.Read(text, readings.Defaults{Sense: given.Sense, PositionUnit: given.PositionUnit, HeightUnit: given.HeightUnit})
	brought := Brought{
		Readings: Readings{Sense: read.Sense, PositionUnit: read.PositionUnit, HeightUnit: read.HeightUnit, Rows: make([]Reading, len(read.Rows))},
		Problems: []Problem{}, More: read.More,
	}
	for i, row := range read.Rows {
		brought.Readings.Rows[i] = Reading{X: row.X, Y: row.Y, Height: row.Height}
	}
	for _, bad := range read.Bad {
		field := "line " + strconv.Itoa(bad.Line)
		if bad.Line == 0 {
			field = "text"
		}
		brought.Problems = append(brought.Problems, Problem{Code: "line", Field: field, Given: bad.Given, Message: bad.Message, Remedy: bad.Remedy})
	}
	return brought
}
