package engine

import "lowspot/engine/takeoff"

// TakeOff is everything to buy for a job, with what it comes to.
type TakeOff struct {
	Units    string        `json:"units"`
	Ready    bool          `json:"ready"` // every room has a depth
	Problems []Problem     `json:"problems"`
	Lines    []TakeOffLine `json:"lines"`
	Asks     []Question    `json:"asks"` // what the list would like to know and takes as usual meanwhile
	Bags     *BagsStudy    `json:"bags"` // nil until every room has a depth
	Survey   *SurveySaves  `json:"survey"`
	Mass     Amount        `json:"mass"` // of all that is quoted
	Hand     Journeys      `json:"hand"`
	Vehicle  Journeys      `json:"vehicle"`
	Labour   *LabourPlan   `json:"labour"`
	Bill     *BillPlan     `json:"bill"`
	Until    string        `json:"until"` // the quote holds until this day; empty where that isn't known
}

// The groups of a take-off, in the order of the list.
const (
	GroupPour    = "pour"
	GroupPrepare = "prepare"
	GroupEdges   = "edges"
	GroupTools   = "tools"
	GroupProtect = "protect"
)

// TakeOffLine is one thing to buy in whole packs.
type TakeOffLine struct {
	Key      string     `json:"key"`
	Group    string     `json:"group"`
	Item     string     `json:"item"`
	Need     Amount     `json:"need"`
	PackName string     `json:"packName"`
	Parts    []LinePack `json:"parts"` // by size of pack, the largest first; never empty
	Packs    int        `json:"packs"` // of all sizes
	Leftover Amount     `json:"leftover"`
	Mass     Amount     `json:"mass"`
	Because  []Reason   `json:"because"`
	Keeps    *Amount    `json:"keeps"`  // how long it may stand in the shop; nil where that doesn't matter
	TooOld   string     `json:"tooOld"` // what was made before this day is too old on the day of the pour; empty where no day is chosen
	Quoted   bool       `json:"quoted"`
	line     takeoff.Line
	names    []string // by which the price list may call it
	fixed    float64  // the pack must be this, SI; zero: any pack will do
}

// LinePack is how many packs of one size a line takes.
type LinePack struct {
	Pack  Amount     `json:"pack"` // what one holds
	Packs int        `json:"packs"`
	Price *LinePrice `json:"price"` // nil where the price list has none
	holds float64    // SI
	mass  float64    // of one, kg
	row   *takeoff.Price
}

// Reason is one step of a quantity: what is said, and the rule that says so, if one does.
type Reason struct {
	Says   string `json:"says"`
	Rule   string `json:"rule"`
	Source string `json:"source"`
}

// LinePrice is packs of one size priced. Margin is for the desk alone.
type LinePrice struct {
	Item   string `json:"item"`
	Code   string `json:"code"`
	Each   string `json:"each"`
	Amount string `json:"amount"` // before the discount
	Margin string `json:"margin"` // empty where the price list has no cost
}

// Journeys is how often one goes. Says tells why where it can't be worked out.
type Journeys struct {
	Count    int    `json:"count"`
	Capacity Amount `json:"capacity"`
	Says     string `json:"says"`
}

// SurveySaves is what one quick survey would spare on a floor that nobody has read: bags to buy now, and once it is read.
type SurveySaves struct {
	Doubt    Amount `json:"doubt"` // of the mean depth now, one standard deviation
	After    Amount `json:"after"` // once it is read
	Buy      int    `json:"buy"`
	Surely   int    `json:"surely"` // bags to buy then, if the mean depth comes out as said
	Fewer    int    `json:"fewer"`
	Saves    string `json:"saves"` // at the price list's price; empty without one
	Readings int    `json:"readings"`
}

// LabourPlan is hands' hours.
type LabourPlan struct {
	Hours Amount   `json:"hours"`
	Steps []Reason `json:"steps"`
}

// BillPlan is what it comes to, as text in the shop's currency.
type BillPlan struct {
	Currency  string    `json:"currency"`
	Inclusive bool      `json:"inclusive"`
	Discount  string    `json:"discount"`
	Rate      string    `json:"rate"` // of the discount; empty for none
	Delivery  string    `json:"delivery"`
	Labour    string    `json:"labour"`
	Net       string    `json:"net"`
	Taxes     []BillTax `json:"taxes"`
	Tax       string    `json:"tax"`
	Total     string    `json:"total"`
	Margin    string    `json:"margin"`   // of the lines whose cost is known, before tax; for the desk alone
	Unpriced  []string  `json:"unpriced"` // items that the price list lacks
	Amount    int64     `json:"amount"`   // the total in the currency's smallest unit
}

// BillTax is one tax class of a bill.
type BillTax struct {
	Name string `json:"name"`
	Rate string `json:"rate"`
	Net  string `json:"net"`
	Tax  string `json:"tax"`
}
