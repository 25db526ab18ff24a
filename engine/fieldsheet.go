package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// FieldSheet is what a person takes into the rooms: where to read, with room for what is read.
type FieldSheet struct {
	Rooms []FieldSheetRoom `json:"rooms"`
}

// FieldSheetRoom is one room's spots: those entered already, or else a regular spread of them.
type FieldSheetRoom struct {
	ID        string      `json:"id"`
	Suggested bool        `json:"suggested"` // nobody has entered a place yet
	Apart     Amount      `json:"apart"`     // how far suggested spots stand apart at most
	Grid      Amount      `json:"grid"`      // squares to draw under the plan, a usual measure of the job's units
	Spots     []FieldSpot `json:"spots"`
}

// FieldSpot is a place to read, counted along the rows of a walk that turns at each wall.
type FieldSpot struct {
	Row    int         `json:"row"` // in the job's list; of a suggested spot, where it would stand
	At     floor.Point `json:"at"`
	X      Amount      `json:"x"`
	Y      Amount      `json:"y"`
	Height string      `json:"height"` // as typed; empty where it is not read yet
}

// MakeFieldSheet spreads the spots over every room that can be drawn.
func MakeFieldSheet(job *Job, book *Rulebook) *FieldSheet {
	w := workOut(job, book)
	sheet := &FieldSheet{Rooms: []FieldSheetRoom{}}
	for _, room := range w.rooms {
		if room.site != nil {
			sheet.Rooms = append(sheet.Rooms, w.fieldSheetOf(room))
		}
	}
	return sheet
}

func (w *work) fieldSheetOf(r *roomWork) FieldSheetRoom {
	one := FieldSheetRoom{ID: r.room.ID, Grid: w.length(0.5), Spots: w.enteredSpots(r)}
	if w.units == quantity.US {
		one.Grid = w.length(foot)
	}
	if len(one.Spots) > 0 {
		return one
	}
	wanted, _ := w.book.quantity("least_readings", r.facts)
	spots, apart := spreadSpots(r, wanted, w.units)
	one.Suggested, one.Apart = true, w.length(apart)
	for i, p := range spots {
		one.Spots = append(one.Spots, FieldSpot{Row: i, At: p, X: w.length(p.X), Y: w.length(p.Y)})
	}
	return one
}

// enteredSpots are the readings whose place can be read, with or without a height.
func (w *work) enteredSpots(r *roomWork) []FieldSpot {
	spots := []FieldSpot{}
	silent := reader{} // the plan tells what can't be read
	for i, row := range r.room.Readings.Rows {
		p, ok := silent.readSpot(Spot{row.X, row.Y}, "", r.room.Readings.PositionUnit)
		if ok && !row.Off {
			spots = append(spots, FieldSpot{Row: i, At: p, X: w.length(p.X), Y: w.length(p.Y), Height: row.Height})
		}
	}
	return spots
}

const (
	foot = 0.3048
	inch = foot / 12
)

// offWall is how far from a wall the staff's foot still stands flat, metres (common practice).
const offWall = 0.150

// sheetSpots is what fits the table of one printed page.
const sheetSpots = 45

// spreadSpots lays spots on a regular grid, as far apart as still gives the readings wanted; rows run along the first wall and turn at its end.
func spreadSpots(r *roomWork, wanted float64, units quantity.System) (spots []floor.Point, apart float64) {
	step, unit := 0.25, 0.05
	if units == quantity.US {
		step, unit = foot/2, inch
	}
	low, high := floor.Bounds(r.outline.Outer)
	widest := math.Max(high.X-low.X, high.Y-low.Y)
	for apart = step * math.Ceil(widest/step); apart > step; apart -= step {
		spots = gridSpots(r.outline, apart, unit)
		if float64(len(spots)) >= wanted {
			break
		}
	}
	if len(spots) > sheetSpots {
		spots = spots[:sheetSpots]
	}
	return spots, apart
}

func gridSpots(outline floor.Outline, apart, unit float64) []floor.Point {
	low, high := floor.Bounds(outline.Outer)
	columns, rows := along(low.X, high.X, apart, unit), along(low.Y, high.Y, apart, unit)
	var spots []floor.Point
	for j, y := range rows {
		for i := range columns {
			x := columns[i]
			if j%2 == 1 {
				x = columns[len(columns)-1-i]
			}
			if p := (floor.Point{X: x, Y: y}); outline.Contains(p) && clearOf(outline, p) {
				spots = append(spots, p)
			}
		}
	}
	return spots
}

// along spreads places evenly from wall to wall, rounded to what a tape reads at a glance.
func along(low, high, apart, unit float64) []float64 {
	from, to := low+offWall, high-offWall
	if to-from < unit {
		return []float64{(low + high) / 2}
	}
	count := math.Max(1, math.Ceil((to-from)/apart-1e-9))
	places := []float64{}
	for i := 0.0; i <= count; i++ {
		places = append(places, unit*math.Round((from+(to-from)*i/count)/unit))
	}
	return places
}

// clearOf tells whether a staff can stand there: off every wall and keep-out, less what rounding took.
func clearOf(outline floor.Outline, p floor.Point) bool {
	for _, ring := range outline.Rings() {
		if _, _, off := ring.NearestWall(p); off < offWall/2 {
			return false
		}
	}
	return true
}
