package engine

import (
	"lowspot/engine/floor"
	"lowspot/engine/pour"
)

// PourDay is the pour worked out: batches, patches, the crew's clock, temperatures, and the whole job in order. Times are seconds from the start of
// each room's pour.
type PourDay struct {
	Units    string      `json:"units"`
	Problems []Problem   `json:"problems"`
	Rooms    []RoomPour  `json:"rooms"`
	Findings []Finding   `json:"findings"` // the checks that only the clock or the pour itself can answer
	Mix      MixPlan     `json:"mix"`
	Setting  SettingPlan `json:"setting"`
	Sheet    RunSheet    `json:"sheet"`
}

// RoomPour is one pour: a room in one go, one lift of it, or one bay of a lift. A room's pours follow each other in order.
type RoomPour struct {
	ID      string        `json:"id"` // of the room
	Name    string        `json:"name"`
	Part    string        `json:"part"` // names it among the room's pours: "lift 2, bay 1"; empty for the only one
	Lift    int           `json:"lift"` // from 1
	Lifts   int           `json:"lifts"`
	Bay     int           `json:"bay"` // from 1
	Bays    int           `json:"bays"`
	Rough   bool          `json:"rough"` // nobody has read the floor: its batches have no place on it
	Note    string        `json:"note"`
	Outline floor.Outline `json:"outline"`
	Dams    []pour.Dam    `json:"dams"` // to set before it
	Why     string        `json:"why"`  // why it can't be planned, and what would help; empty where it can
	Exits   []floor.Point `json:"exits"`
	Batches []BatchPlan   `json:"batches"`
	Bags    int           `json:"bags"`  // of all batches
	Walk    Amount        `json:"walk"`  // the longest way from the door
	Clock   *ClockPlan    `json:"clock"` // with the crew there is; nil where it can't be worked out
	Fewest  *ClockPlan    `json:"fewest"`
}

// BatchPlan is one batch and the patch of floor that it covers.
type BatchPlan struct {
	Number    int          `json:"number"` // from 1, in the order of the pour
	Bags      int          `json:"bags"`
	Powder    Amount       `json:"powder"`
	Aggregate *Amount      `json:"aggregate"` // mixed in; nil for none
	Water     Amount       `json:"water"`     // to be measured out
	Least     Amount       `json:"least"`     // water that the sheet allows for it
	Most      Amount       `json:"most"`
	Marks     int          `json:"marks"` // of the measure; 0 where the amount lies between two
	Mark      Amount       `json:"mark"`  // one mark
	Note      string       `json:"note"`
	Volume    Amount       `json:"volume"` // that the floor takes of it
	Left      Amount       `json:"left"`   // over in the last one
	Area      Amount       `json:"area"`
	Distance  Amount       `json:"distance"` // from the door
	Polygons  []floor.Ring `json:"polygons"`
	Label     floor.Point  `json:"label"`
	Exit      int          `json:"exit"` // the nearest, by its place in the room's list
}

// ClockPlan is who does what when, with how close it comes to the limits.
type ClockPlan struct {
	Timeline    pour.Timeline `json:"timeline"`
	Lasts       Amount        `json:"lasts"`
	LongestWait Amount        `json:"longestWait"`
	OldestBatch Amount        `json:"oldestBatch"`
	Says        string        `json:"says"`
}

// MixPlan is how warm the mix comes out, and how warm the water must be.
type MixPlan struct {
	Temperature *Amount            `json:"temperature"` // nil while powder or water has none
	Coldest     Amount             `json:"coldest"`
	Warmest     Amount             `json:"warmest"`
	WaterFrom   *Amount            `json:"waterFrom"` // coldest water that keeps within the window; nil: any
	WaterTo     *Amount            `json:"waterTo"`
	Says        string             `json:"says"`
	SpreadFrom  *Amount            `json:"spreadFrom"` // the sheet's least spread of the flow ring
	SpreadTo    *Amount            `json:"spreadTo"`
	Spread      *pour.SpreadResult `json:"spread"` // nil until it is measured
}

// SettingPlan is the sheet's times at the temperatures there are, with the model that says so.
type SettingPlan struct {
	Says    string `json:"says"`
	Fastest Amount `json:"fastest"` // temperature that bounds flow and wet edge
	Slowest Amount `json:"slowest"` // temperature that bounds walking, tiling and covering
	Flow    Amount `json:"flow"`
	WetEdge Amount `json:"wetEdge"`
	Walk    Amount `json:"walk"`
	Tile    Amount `json:"tile"`
	Cover   Amount `json:"cover"`
}

// RunSheet is the whole job in order. Relative ones count from 08:00 of a first day, written as 2001-01-01.
type RunSheet struct {
	Why      string       `json:"why"` // why there is none; empty where there is
	Relative bool         `json:"relative"`
	Entries  []pour.Entry `json:"entries"`
}

// PourRest is how a pour under way stands, and what is still to do. Times are seconds since it began.
type PourRest struct {
	Now     float64    `json:"now"`
	Batches []BatchNow `json:"batches"`
	Edges   []OpenEdge `json:"edges"` // the one that closes first comes first
	Clock   ClockPlan  `json:"clock"` // of what is still to do
}

// The states of a batch on pour day.
const (
	BatchToCome  = "to come"
	BatchBegun   = "begun"
	BatchPoured  = "poured"
	BatchDone    = "done"
	BatchSkipped = "skipped"
)

// BatchNow is one batch as it stands: what happened, and where it hasn't, what is planned.
type BatchNow struct {
	Number int     `json:"number"`
	State  string  `json:"state"`
	Starts float64 `json:"starts"` // its water is measured
	Ready  float64 `json:"ready"`  // mixed and rested
	Pours  float64 `json:"pours"`  // the bucket is empty
	Done   float64 `json:"done"`
	FlowTo float64 `json:"flowTo"` // spread by then, or thrown away
}

// OpenEdge is a poured edge that still waits for the next batch.
type OpenEdge struct {
	From   int     `json:"from"` // batch
	To     int     `json:"to"`
	Closes float64 `json:"closes"` // it joins until then
}
