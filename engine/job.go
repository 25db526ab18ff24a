// Package engine is the trade's arithmetic: a job in, a plan out. Plan is a pure function; it knows no browser, no file, no clock.
package engine

import "lowspot/engine/quantity"

// JobFormat is the version of the job document that this build writes. Older ones are brought up to it when read.
const JobFormat = 1

// Job is everything entered for one piece of work. Quantities are kept as the person typed them ("3/8 in", "9.5 mm") and read on use,
// so that nothing entered is ever rounded or lost. Every list of things with an ID keeps the order in which the person made it.
type Job struct {
	Format  int              `json:"format"`
	ID      string           `json:"id"`
	Name    string           `json:"name"`
	Units   quantity.System  `json:"units"` // how the plan shows quantities; what was typed stays as typed
	Rooms   []Room           `json:"rooms"`
	Answers Answers          `json:"answers"` // words of scope job: crew, air, finish, tolerance wanted
	Sheets  map[string]Sheet `json:"sheets"`  // by kind: leveller, primer, patch, aggregate, barrier
	Notes   string           `json:"notes"`
	Start   string           `json:"start,omitempty"`  // when the whole job begins, local: 2026-05-02T08:00; empty: times count from the first day
	Record  []PourRecord     `json:"record,omitempty"` // what happened on pour day, one a room
	Offer   *Offer           `json:"offer,omitempty"`  // what is quoted for it
	After   *AfterPour       `json:"after,omitempty"`  // what came of it
}

// Answers holds what a person answered, by the vocabulary's word: "deck.kind": "plywood", "air.temperature": "18 °C".
// "don't know" is an answer that leaves the word unanswered on purpose.
type Answers map[string]string

// DontKnow is the answer of somebody who was asked and doesn't know: the word stays unanswered, but it isn't asked again.
const DontKnow = "don't know"

// Sheet is the figures of one product as its bag states them, as words of the kind's own scope ("sheet.yield": "0.55 L/kg").
type Sheet struct {
	Name    string  `json:"name"`
	Generic bool    `json:"generic"` // shipped, typical values: the bag goes first
	Values  Answers `json:"values"`
	Kept    string  `json:"kept,omitempty"` // the ID of the kept sheet that this is a copy of
}

// Room is one pour: an outline with what stands in it, the readings taken in it, and where the finish plane goes.
type Room struct {
	ID           string        `json:"id"`
	Name         string        `json:"name"`
	Outline      Shape         `json:"outline"`
	KeepOuts     []KeepOut     `json:"keepOuts"`
	Doors        []Door        `json:"doors"`
	Penetrations []Penetration `json:"penetrations"`
	Decks        []DeckArea    `json:"decks"` // the first covers whatever the others don't
	Readings     Readings      `json:"readings"`
	Rough        *Rough        `json:"rough,omitempty"` // what is said of a floor that nobody has read yet
	Plane        PlaneChoice   `json:"plane"`
	InBays       bool          `json:"inBays,omitempty"` // dammed off into bays where the crew can't keep the wet edge in one pour
	Answers      Answers       `json:"answers"`
}

// The ways to enter an outline.
const (
	ShapeRectangle = "rectangle" // Length × Width, one corner at the origin
	ShapeWalk      = "walk"      // round the walls: lengths and turns, starting along x
	ShapeCorners   = "corners"   // corners in order
	ShapeArea      = "area"      // the area alone, drawn as a square
)

// Shape is an outline as entered. At moves a keep-out's or deck area's rectangle off the room's origin.
type Shape struct {
	How     string `json:"how"`
	Length  string `json:"length,omitempty"`
	Width   string `json:"width,omitempty"`
	Area    string `json:"area,omitempty"`
	At      *Spot  `json:"at,omitempty"`
	Walk    []Leg  `json:"walk,omitempty"`
	Corners []Spot `json:"corners,omitempty"`
}

// Leg is one wall of a walk: its length, then the turn at its end: "left", "right", or degrees to the left ("45", "-30").
type Leg struct {
	Length string `json:"length"`
	Turn   string `json:"turn"`
}

// Spot is a place in plan as typed.
type Spot struct {
	X string `json:"x"`
	Y string `json:"y"`
}

// KeepOut is a part of the room where nothing is poured: a shower recess, a bath, an island.
type KeepOut struct {
	ID    string `json:"id"`
	Name  string `json:"name"`
	Shape Shape  `json:"shape"`
}

// Door is an opening in a wall. Wall counts from 0 in the order of the outline; At is the distance from that wall's start to the near jamb.
type Door struct {
	ID        string  `json:"id"`
	Name      string  `json:"name"`
	Wall      int     `json:"wall"`
	At        string  `json:"at"`
	Width     string  `json:"width"`
	Exit      bool    `json:"exit"`      // the way out on pour day
	Neighbour string  `json:"neighbour"` // height of the floor beyond, read like the room's readings
	Answers   Answers `json:"answers"`
}

// Penetration is a drain, flange or pipe that comes up through the floor.
type Penetration struct {
	ID       string  `json:"id"`
	Name     string  `json:"name"`
	Kind     string  `json:"kind"` // drain, flange, pipe
	At       Spot    `json:"at"`
	Diameter string  `json:"diameter"`
	Height   string  `json:"height"` // of its top, read like the room's readings
	Answers  Answers `json:"answers"`
}

// DeckArea is a part of the deck of one kind. A room's first area has no shape: it is all that the others leave.
type DeckArea struct {
	ID      string         `json:"id"`
	Name    string         `json:"name"`
	Shape   *Shape         `json:"shape,omitempty"`
	Answers Answers        `json:"answers"`
	Tests   []MoistureTest `json:"tests,omitempty"`
}

// The two ways to read heights.
const (
	ReadBelowLine  = "below" // staff readings below a level line: a larger reading is lower ground
	ReadAboveDatum = "above" // heights above a datum: a larger reading is higher ground
)

// Readings is the survey. Bare numbers take the two units, as a column of a field book does.
type Readings struct {
	Sense        string    `json:"sense"`
	PositionUnit string    `json:"positionUnit"`
	HeightUnit   string    `json:"heightUnit"`
	Rows         []Reading `json:"rows"`
}

// Reading is one measured height as typed.
type Reading struct {
	X      string `json:"x"`
	Y      string `json:"y"`
	Height string `json:"height"`
	Off    bool   `json:"off,omitempty"` // kept, but left out of the plan
}

// The ways to place the finish plane.
const (
	PlaneLevel       = "level"        // level, at the highest ground plus the least depth
	PlaneLeastVolume = "least-volume" // flat, of the least volume within a slope limit
	PlaneDoor        = "door"         // level through a door's neighbouring floor
	PlaneHand        = "hand"         // level at a height given by hand, read like the room's readings
)

// PlaneChoice is where the person wants the finish plane.
type PlaneChoice struct {
	How        string `json:"how"`
	SlopeLimit string `json:"slopeLimit,omitempty"` // least-volume: "1 %"
	Door       string `json:"door,omitempty"`       // door: its ID
	Height     string `json:"height,omitempty"`     // hand
	Raise      string `json:"raise,omitempty"`      // lifts a level plane above the lowest that would do
}
