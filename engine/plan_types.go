package engine

import (
	"lowspot/engine/floor"
	"lowspot/rules"
)

// Plan is everything worked out from a job. Amounts carry their SI value and the text in the job's units, so that the page never converts.
type Plan struct {
	Units     string     `json:"units"`
	Problems  []Problem  `json:"problems"`
	Rooms     []RoomPlan `json:"rooms"`
	Totals    Totals     `json:"totals"`
	Findings  []Finding  `json:"findings"`
	Questions []Question `json:"questions"`
	Holds     []string   `json:"holds"` // the words that questions wait for and that are true of the job
}

// Amount is a quantity for people and for programs.
type Amount struct {
	SI   float64 `json:"si"`
	Text string  `json:"text"`
}

// RoomPlan is one room worked out: what to draw and what it comes to. Plan coordinates are metres.
type RoomPlan struct {
	ID           string            `json:"id"`
	Name         string            `json:"name"`
	Drawn        bool              `json:"drawn"` // the outline could be read
	Outline      floor.Outline     `json:"outline"`
	Sketch       []floor.Point     `json:"sketch"` // the path of an outline that can't be, to show where it goes wrong
	Walls        []Amount          `json:"walls"`  // wall i runs from corner i to the next
	Closing      *ClosingPlan      `json:"closing"`
	Area         Amount            `json:"area"`
	Perimeter    Amount            `json:"perimeter"`
	Doors        []DoorPlan        `json:"doors"`
	Penetrations []PenetrationPlan `json:"penetrations"`
	Decks        []DeckPlan        `json:"decks"`
	Readings     []ReadingPlan     `json:"readings"`
	Surface      string            `json:"surface"` // what the surface rests on, in words; empty without readings
	Plane        *PlanePlan        `json:"plane"`   // nil without readings
	Pour         *PourPlan         `json:"pour"`    // nil without a plane
	Holds        []string          `json:"holds"`   // the words that questions wait for and that are true of it
	Rough        *RoughPlan        `json:"rough"`   // nil where the floor was read, or nothing is said of it
}

// ClosingPlan is how far a walk round the walls missed its start.
type ClosingPlan struct {
	Error Amount `json:"error"`
	OneIn int    `json:"oneIn"` // perimeter over error, as a traverse's closure is stated
}

// DoorPlan is a door in plan with what the floor does to it.
type DoorPlan struct {
	ID    string      `json:"id"`
	Name  string      `json:"name"`
	From  floor.Point `json:"from"`
	To    floor.Point `json:"to"`
	Exit  bool        `json:"exit"`
	Depth *Amount     `json:"depth"` // of the pour at the door
	Rise  *Amount     `json:"rise"`  // finished floor over the bare deck
	Step  *Amount     `json:"step"`  // finished floor less the floor beyond
	Holds []string    `json:"holds"`
}

// PenetrationPlan is a drain, flange or pipe in plan.
type PenetrationPlan struct {
	ID     string      `json:"id"`
	Name   string      `json:"name"`
	Kind   string      `json:"kind"`
	At     floor.Point `json:"at"`
	Radius float64     `json:"radius"`
	Proud  *Amount     `json:"proud"` // its top over the finished floor
	Holds  []string    `json:"holds"`
}

// DeckPlan is one deck area with the figures that go by it.
type DeckPlan struct {
	ID       string        `json:"id"`
	Name     string        `json:"name"`
	Kind     string        `json:"kind"`
	Outline  floor.Outline `json:"outline"`
	Area     Amount        `json:"area"`
	Least    Amount        `json:"least"` // the least depth that the rulebook asks for
	Figures  []FigurePlan  `json:"figures"`
	Depths   *Depths       `json:"depths"`
	Covering bool          `json:"covering"` // it is the room's first area: all that the others leave
	Holds    []string      `json:"holds"`    // the words that questions wait for and that are true of it
	Moisture *MoisturePlan `json:"moisture"` // nil where the deck needs no tests
}

// ReadingPlan is one reading in plan. A floor of more than four hundred readings shows none.
type ReadingPlan struct {
	Row   int         `json:"row"`   // in the job's list
	At    floor.Point `json:"at"`    // to the tenth of a millimetre
	Depth string      `json:"depth"` // of the pour over it
}

// PlanePlan is the finish plane: heights go up, from the job's own datum.
type PlanePlan struct {
	How     string       `json:"how"`
	A       float64      `json:"a"`
	B       float64      `json:"b"`
	C       float64      `json:"c"`
	Fall    Amount       `json:"fall"`    // slope
	Staff   Amount       `json:"staff"`   // what the staff reads on the finished pour (at the room's middle), in the sense of the readings
	Highest *floor.Point `json:"highest"` // the spot that holds the plane up
}

// Depths is the pour's depth over some ground.
type Depths struct {
	Least      Amount      `json:"least"`
	LeastAt    floor.Point `json:"leastAt"`
	Mean       Amount      `json:"mean"`
	Greatest   Amount      `json:"greatest"`
	GreatestAt floor.Point `json:"greatestAt"`
}

// PourPlan is the pour in one room.
type PourPlan struct {
	Volume   Amount        `json:"volume"`
	Depths   Depths        `json:"depths"`
	Poured   Amount        `json:"poured"` // area
	Dry      Amount        `json:"dry"`    // area where the deck stands above the plane
	Contours []ContourPlan `json:"contours"`
	Bands    []BandPlan    `json:"bands"`
	Bags     float64       `json:"bags"` // exact, before waste and rounding
}

// ContourPlan is the lines of one depth.
type ContourPlan struct {
	Depth  Amount        `json:"depth"`
	Path   string        `json:"path"`   // SVG path data, millimetres, y downwards
	Labels []floor.Point `json:"labels"` // where its depth may be written, the best place first
}

// BandPlan is the ground between two depths. Step counts from 0 at the shallowest of Steps, for the page's ramp.
type BandPlan struct {
	From  Amount `json:"from"`
	To    Amount `json:"to"`
	Step  int    `json:"step"`
	Steps int    `json:"steps"`
	Path  string `json:"path"` // SVG path data, millimetres, y downwards
}

// Totals is what the job comes to.
type Totals struct {
	Area       Amount  `json:"area"`
	Volume     Amount  `json:"volume"` // between deck and plane
	Waste      Amount  `json:"waste"`  // what stays in buckets and on tools
	Bags       int     `json:"bags"`   // to buy
	BagsExact  float64 `json:"bagsExact"`
	BagMass    Amount  `json:"bagMass"`
	BagYield   Amount  `json:"bagYield"`
	BagWater   Amount  `json:"bagWater"`
	WaterLeast Amount  `json:"waterLeast"` // for one bag
	WaterMost  Amount  `json:"waterMost"`
	Powder     Amount  `json:"powder"` // mass to carry
	Water      Amount  `json:"water"`  // to mix it all
	Load       Amount  `json:"load"`   // powder and water
	Ready      bool    `json:"ready"`  // every room has a pour
}

// FigurePlan is a figure of the rulebook with its value on this job.
type FigurePlan struct {
	Name    string      `json:"name"`
	Words   string      `json:"words"`
	State   rules.State `json:"state"`
	Text    string      `json:"text"`
	Missing []string    `json:"missing"`
	Changed []string    `json:"changed,omitempty"` // rules behind it that say something else than the shipped ones
}

// Subject is what a finding or a figure is about.
type Subject struct {
	Scope string `json:"scope"`
	Room  string `json:"room"` // ID
	ID    string `json:"id"`   // of the deck area, door or penetration
	Name  string `json:"name"`
}

// Finding is one check on one subject.
type Finding struct {
	rules.Outcome
	Subject Subject      `json:"subject"`
	At      *floor.Point `json:"at"`                // where on the map, if anywhere
	Changed []string     `json:"changed,omitempty"` // rules behind it that say something else than the shipped ones
}

// Question is something that a rule would like to know and nobody has said.
type Question struct {
	Word     string   `json:"word"`
	Subject  Subject  `json:"subject"`
	Step     string   `json:"step"`
	Question string   `json:"question"`
	Why      string   `json:"why"`
	How      string   `json:"how"`
	Checks   []string `json:"checks"`          // that stay unanswered without it
	Risks    []Risk   `json:"risks,omitempty"` // what that risks, check by check
	DontKnow bool     `json:"dontKnow"`
}

// Risk is what stays open where a check can't be made: how grave it would be, and who could come to harm.
type Risk struct {
	Rule    string `json:"rule"`
	Weight  string `json:"weight"`
	Caution string `json:"caution"`
}
