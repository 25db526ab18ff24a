package protocol

import (
	"lowspot/engine"
	"lowspot/engine/quantity"
)

// Greeting is how page and engine make sure that they belong together.
type Greeting struct {
	Build string `json:"build"`
}

// Greeted says what the engine is.
type Greeted struct {
	Build     string `json:"build"`
	JobFormat int    `json:"jobFormat"`
}

func hello(b *Bridge, g Greeting) (Greeted, error) {
	if g.Build != b.Build {
		return Greeted{}, engine.Problem{Code: "build", Given: g.Build, Message: "The page and its engine are of different versions.", Remedy: "Reload the page. What was kept is still there."}
	}
	return Greeted{Build: b.Build, JobFormat: engine.JobFormat}, nil
}

// TypedQuantity is a quantity as a person typed it. A bare number is of BareUnit, if there is one.
type TypedQuantity struct {
	Typed     string             `json:"typed"`
	Dimension quantity.Dimension `json:"dimension"`
	BareUnit  string             `json:"bareUnit,omitempty"`
}

// ReadAmount is a quantity in SI base units.
type ReadAmount struct {
	SI float64 `json:"si"`
}

func readQuantity(_ *Bridge, q TypedQuantity) (ReadAmount, error) {
	si, err := quantity.ReadIn(q.Typed, q.Dimension, q.BareUnit)
	if bad, ok := err.(*quantity.Error); ok {
		return ReadAmount{}, engine.Problem{Code: bad.Code, Field: "typed", Given: bad.Given, Message: bad.Message, Remedy: bad.Remedy}
	}
	return ReadAmount{SI: si}, err
}

// WantedText is a quantity in SI base units to be written for people.
type WantedText struct {
	SI        float64            `json:"si"`
	Dimension quantity.Dimension `json:"dimension"`
	Units     quantity.System    `json:"units"`
}

// WrittenAmount is a quantity as text.
type WrittenAmount struct {
	Text string `json:"text"`
}

func writeQuantity(_ *Bridge, w WantedText) (WrittenAmount, error) {
	return WrittenAmount{Text: quantity.Write(w.SI, w.Dimension, w.Units)}, nil
}

// WantedJob says in which units a new job is to be.
type WantedJob struct {
	Units quantity.System `json:"units"`
}

// MadeJob is a job that is kept nowhere yet.
type MadeJob struct {
	Job engine.Job `json:"job"`
}

func newJob(b *Bridge, w WantedJob) (MadeJob, error) {
	return MadeJob{Job: *engine.NewJob(b.Keeper.NewID(), w.Units)}, nil
}

func demoJob(b *Bridge, _ Nothing) (MadeJob, error) {
	return MadeJob{Job: *engine.DemoJob(b.Keeper.NewID())}, nil
}
