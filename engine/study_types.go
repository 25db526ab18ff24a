package engine

import "lowspot/engine/floor"

// Study is what stands behind a plan and takes longer to work out: how sure the bags are, where to measure next, what other planes would cost,
// what grinding saves, lifts, flatness, height indicators, and the heights all round.
type Study struct {
	Bags  *BagsStudy  `json:"bags"` // nil until every room has a pour
	Rooms []RoomStudy `json:"rooms"`
}

// RoomStudy is one room studied. Without a pour there is nothing in it.
type RoomStudy struct {
	ID         string           `json:"id"`
	Ready      bool             `json:"ready"`
	Bags       *BagsStudy       `json:"bags"`
	Next       *NextStudy       `json:"next"`
	Doubts     []DoubtStudy     `json:"doubts"`
	Suspects   []SuspectStudy   `json:"suspects"`
	Screened   bool             `json:"screened"` // suspects were looked for; they aren't among a great many readings
	Planes     []PlaneStudy     `json:"planes"`
	Grinding   *GrindStudy      `json:"grinding"`
	Lifts      []LiftsStudy     `json:"lifts"`
	Flatness   *FlatnessStudy   `json:"flatness"`
	Indicators *IndicatorsStudy `json:"indicators"`
	Heights    *HeightsStudy    `json:"heights"`
	Problems   []Problem        `json:"problems"`
}

// BagsStudy is how many bags are enough, and how surely. All counts hold the waste; those to buy are whole.
type BagsStudy struct {
	Mean       float64      `json:"mean"`      // expected need, bags
	Deviation  float64      `json:"deviation"` // standard deviation of the need, bags
	Half       int          `json:"half"`      // enough one time in two
	Ninety     int          `json:"ninety"`
	NinetyNine int          `json:"ninetyNine"`
	Confidence string       `json:"confidence"` // the one chosen
	Buy        int          `json:"buy"`        // at that confidence
	Causes     []CauseStudy `json:"causes"`
}

// The causes of doubt.
const (
	CauseReading = "reading" // the error of a reading
	CauseGround  = "ground"  // ground between the readings that nobody measured
	CauseYield   = "yield"   // what a bag fills
	CauseDosing  = "dosing"  // how the water is measured out
)

// CauseStudy is one cause of doubt: its standard deviation in bags, and its share of the whole doubt (of the variance).
type CauseStudy struct {
	Cause string  `json:"cause"`
	Bags  float64 `json:"bags"`
	Share float64 `json:"share"`
}

// NextStudy is where one more reading helps most.
type NextStudy struct {
	At     floor.Point `json:"at"`
	X      Amount      `json:"x"`
	Y      Amount      `json:"y"`
	Bags   float64     `json:"bags"`   // by how much it narrows what one would buy to have enough nine times in ten
	Enough bool        `json:"enough"` // it isn't worth taking
}

// DoubtStudy is a square of floor with the standard deviation of the deck's height there. Step counts from 0 where it is least to 4.
type DoubtStudy struct {
	Corners []floor.Point `json:"corners"`
	Text    string        `json:"text"`
	Step    int           `json:"step"`
}

// SuspectStudy is a reading that the others don't bear out. Heights are written as they were read.
type SuspectStudy struct {
	Row        int         `json:"row"` // in the job's list
	At         floor.Point `json:"at"`
	Read       Amount      `json:"read"`
	Expected   Amount      `json:"expected"`
	Off        Amount      `json:"off"`        // by how much the deck would stand higher there than the others say
	Deviations float64     `json:"deviations"` // that many standard deviations
	Bags       float64     `json:"bags"`       // what leaving it out adds to the bags
}

// PlaneStudy is one way to place the finish plane and what it comes to.
type PlaneStudy struct {
	Choice   PlaneChoice      `json:"choice"` // what makes it the room's own
	Chosen   bool             `json:"chosen"`
	Door     string           `json:"door"` // name of the door that it goes through
	Bags     float64          `json:"bags"` // with waste
	Volume   Amount           `json:"volume"`
	Least    Amount           `json:"least"`
	Greatest Amount           `json:"greatest"`
	Slope    Amount           `json:"slope"`
	Fall     Amount           `json:"fall"`  // across the room
	Dry      Amount           `json:"dry"`   // deck above the plane
	Short    *Amount          `json:"short"` // by how much it misses the least depth, where it does
	ShortAt  *floor.Point     `json:"shortAt"`
	Carriers []CarrierStudy   `json:"carriers"`
	Doors    []PlaneDoorStudy `json:"doors"`
}

// CarrierStudy is a spot that stops a plane from going lower: a reading's row, or -1 for a spot at a wall that nobody read.
type CarrierStudy struct {
	At  floor.Point `json:"at"`
	Row int         `json:"row"`
}

// PlaneDoorStudy is what a door gets from a plane.
type PlaneDoorStudy struct {
	ID    string          `json:"id"`
	Name  string          `json:"name"`
	Depth Amount          `json:"depth"`
	Step  *Amount         `json:"step"`
	Class floor.StepClass `json:"class"` // empty without a step
}

// GrindStudy is what taking down the high spots saves.
type GrindStudy struct {
	Limits []GrindLimitStudy `json:"limits"`
	Cuts   []CutStudy        `json:"cuts"`
}

// GrindLimitStudy is the most that the rulebook lets come off one deck.
type GrindLimitStudy struct {
	Deck string `json:"deck"`
	Most Amount `json:"most"`
}

// CutStudy is one step of the curve: what comes off at most, what it saves, and the spots to cut.
type CutStudy struct {
	Height Amount      `json:"height"`
	Bags   float64     `json:"bags"` // saved
	Area   Amount      `json:"area"`
	Volume Amount      `json:"volume"` // of deck that comes off
	Spots  []SpotStudy `json:"spots"`  // the largest first
	Others int         `json:"others"` // more spots than are listed
}

// SpotStudy is one high spot to cut.
type SpotStudy struct {
	At     floor.Point `json:"at"`
	X      Amount      `json:"x"`
	Y      Amount      `json:"y"`
	Height Amount      `json:"height"`
	Area   Amount      `json:"area"`
	Volume Amount      `json:"volume"`
}

// LiftsStudy is the pour parted into lifts, of leveller alone or with aggregate in the lower ones.
type LiftsStudy struct {
	Filled  bool        `json:"filled"`
	Most    Amount      `json:"most"` // thickness of one of its lower lifts
	Bags    float64     `json:"bags"` // of leveller, all lifts, with waste
	Lifts   []LiftStudy `json:"lifts"`
	Problem *Problem    `json:"problem"`
}

// LiftStudy is one lift, in the order of pouring.
type LiftStudy struct {
	Below     Amount          `json:"below"` // its top under the finish plane
	Whole     bool            `json:"whole"` // covers the whole floor
	Area      Amount          `json:"area"`
	Volume    Amount          `json:"volume"`
	Bags      float64         `json:"bags"` // of leveller, with waste
	Least     Amount          `json:"least"`
	Greatest  Amount          `json:"greatest"`
	Aggregate *Amount         `json:"aggregate"` // nil where it takes none
	Primer    *Amount         `json:"primer"`    // out of the tin, over it before the next lift; nil over the last
	Ground    [][]floor.Point `json:"ground"`    // polygons of the ground it covers; empty where that is the whole floor
	Edge      [][]floor.Point `json:"edge"`      // lines along which it ends
}

// FlatnessStudy holds the deck against the flatness wanted.
type FlatnessStudy struct {
	Name    string           `json:"name"`
	Stated  bool             `json:"stated"` // by the person; else it is what suits the finish
	Gaps    []GapStudy       `json:"gaps"`
	Cures   []string         `json:"cures"` // what the pour leaves, in words
	Lines   []FNumbersStudy  `json:"lines"`
	All     *FNumbersStudy   `json:"all"` // of all lines together
	Classes []FNumberClasses `json:"classes"`
}

// GapStudy is the largest gap under a straightedge of one length on the deck as it is.
type GapStudy struct {
	Name   string      `json:"name"`
	Source string      `json:"source"`
	Length Amount      `json:"length"`
	Limit  Amount      `json:"limit"`
	Depth  Amount      `json:"depth"`
	Kept   bool        `json:"kept"`
	From   floor.Point `json:"from"`
	At     floor.Point `json:"at"`
	To     floor.Point `json:"to"`
	Fault  string      `json:"fault"` // why it could not be worked out
}

// FNumbersStudy is F-numbers in words: "28.8", or "no departure".
type FNumbersStudy struct {
	From      floor.Point `json:"from"`
	To        floor.Point `json:"to"`
	Readings  int         `json:"readings"`
	Flatness  string      `json:"flatness"`
	Levelness string      `json:"levelness"`
	Rescaled  bool        `json:"rescaled"` // read at 300 mm
}

// FNumberClasses is a class of floor with the overall F-numbers that it asks for.
type FNumberClasses struct {
	Name      string  `json:"name"`
	Flatness  float64 `json:"flatness"`
	Levelness float64 `json:"levelness"`
	Kept      bool    `json:"kept"`
}

// IndicatorsStudy is where to set height indicators, in walking order.
type IndicatorsStudy struct {
	Spacing   Amount           `json:"spacing"`
	Clearance Amount           `json:"clearance"`
	Pins      []IndicatorStudy `json:"pins"`
	Heated    bool             `json:"heated"` // nothing may be screwed or drilled
}

// IndicatorStudy is one height indicator.
type IndicatorStudy struct {
	At   floor.Point `json:"at"`
	X    Amount      `json:"x"`
	Y    Amount      `json:"y"`
	Head Amount      `json:"head"` // over the deck
}

// HeightsStudy is what the new floor does to everything that it meets.
type HeightsStudy struct {
	Finish *Amount              `json:"finish"` // thickness over the pour
	Rise   *Amount              `json:"rise"`   // finished floor over the deck, on average
	Doors  []DoorHeightsStudy   `json:"doors"`
	Passed []PassedHeightsStudy `json:"passed"` // drains, flanges, pipes
}

// DoorHeightsStudy is one door all round.
type DoorHeightsStudy struct {
	ID        string          `json:"id"`
	Name      string          `json:"name"`
	Dam       Amount          `json:"dam"`  // the deepest that the pour stands against it
	Rise      *Amount         `json:"rise"` // finished floor over the bare deck
	Step      *Amount         `json:"step"`
	Class     floor.StepClass `json:"class"`
	Run       *Amount         `json:"run"`       // of the bevel or ramp
	LeastRun  *Amount         `json:"leastRun"`  // where 1/4 in stays upright
	Clearance *Amount         `json:"clearance"` // of the leaf over the finished floor
	Trim      *Amount         `json:"trim"`      // to take off the leaf
	Stair     *StairStudy     `json:"stair"`
}

// StairStudy is the stair that meets the floor at a door, once the floor is in.
type StairStudy struct {
	Riser     Amount `json:"riser"` // the one next to the floor
	Other     Amount `json:"other"`
	Variation Amount `json:"variation"`
	Uniform   bool   `json:"uniform"` // within 3/8 in
	Low       bool   `json:"low"`     // no riser over 7 3/4 in
}

// PassedHeightsStudy is one drain, flange or pipe.
type PassedHeightsStudy struct {
	ID        string `json:"id"`
	Name      string `json:"name"`
	Kind      string `json:"kind"`
	Extension Amount `json:"extension"` // to add so that its top meets the finished floor; below zero it stands proud
}
