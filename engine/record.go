package engine

// The record of pour day: what happened, kept in the job beside what was planned. Quantities and moments are kept as entered and tapped.

// PourRecord is what happened to one pour of a room.
type PourRecord struct {
	Room    string        `json:"room"`           // ID
	Part    string        `json:"part,omitempty"` // which of the room's pours, as the plan names it
	Started string        `json:"started"`        // the moment the pour began, RFC 3339; every other moment is written the same way
	Ended   string        `json:"ended,omitempty"`
	Batches []BatchRecord `json:"batches"`
	Air     string        `json:"air,omitempty"` // temperatures as measured
	Deck    string        `json:"deck,omitempty"`
	Water   string        `json:"water,omitempty"`
	Mix     string        `json:"mix,omitempty"`
	Spread  string        `json:"spread,omitempty"` // of the flow ring
	Lots    string        `json:"lots,omitempty"`   // lot numbers on the bags
	Who     string        `json:"who,omitempty"`
	Notes   string        `json:"notes,omitempty"`
}

// BatchRecord is what happened to one batch; a moment is empty until it was tapped.
type BatchRecord struct {
	Batch   int    `json:"batch"` // from 1
	Started string `json:"started,omitempty"`
	Poured  string `json:"poured,omitempty"`
	Done    string `json:"done,omitempty"`
	Skipped bool   `json:"skipped,omitempty"`
	Bags    int    `json:"bags,omitempty"`  // mixed
	Water   string `json:"water,omitempty"` // measured out
	Note    string `json:"note,omitempty"`
}
