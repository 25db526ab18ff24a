package engine

import (
	"strconv"
	"strings"
)

// Guide is a job as a walk of questions, one after the other in the order of the work, for somebody who does this for the first time.
type Guide struct {
	Steps []GuideStep `json:"steps"`
	Next  string      `json:"next"` // the first step that is open; the result where none is
	Open  int         `json:"open"` // steps still open
}

// GuideStep is one question.
type GuideStep struct {
	ID      string   `json:"id"`
	Chapter string   `json:"chapter"` // room, heights, deck, doors, finish, products, air, crew, result
	Kind    string   `json:"kind"`    // outline, keep-outs, doors, drains, survey, readings, word, leveller, result
	Room    int      `json:"room"`    // index in the job
	Subject Subject  `json:"subject"`
	Word    string   `json:"word"`   // of a word's question
	State   string   `json:"state"`  // open, answered, unknown (don't know), optional (may be passed over)
	Checks  []string `json:"checks"` // that stay unanswered without it
}

// The states of a step.
const (
	stepOpen     = "open"
	stepAnswered = "answered"
	stepUnknown  = "unknown"
	stepOptional = "optional"
)

// alwaysAsked are words that a first pour needs answered even where no check waits for them: figures and the pour's clock go by them.
var alwaysAsked = map[string]bool{
	"deck.kind": true, "deck.absorbency": true, "room.wet": true, "finish.kind": true, "finish.thickness": true,
	"crew.people": true, "crew.mixers": true, "crew.buckets": true, "order.confidence": true,
}

// MakeGuide lays out the questions of a job.
func MakeGuide(job *Job, book *Rulebook) *Guide {
	g := &guide{work: workOut(job, book), asks: map[string][]string{}}
	for _, question := range g.questions() {
		g.asks[askedID(question.Word, question.Subject)] = question.Checks
	}
	for i := range g.rooms {
		g.roomSteps(i)
	}
	for i := range g.rooms {
		g.deckAndDoorSteps(i, &g.job.Rooms[i])
	}
	g.jobSteps()
	return g.finish()
}

// guide is a Guide in the making.
type guide struct {
	*work
	asks  map[string][]string // checks that wait for a word of a subject
	steps []GuideStep
}

func askedID(word string, s Subject) string {
	return strings.Join([]string{word, s.Room, s.ID}, "~")
}

func (g *guide) roomSteps(i int) {
	r := &g.job.Rooms[i]
	site := g.rooms[i]
	g.place("room", "outline", i, state(site.site != nil, stepOpen))
	g.place("room", "keep-outs", i, state(len(r.KeepOuts) > 0, stepOptional))
	g.place("room", "doors", i, state(hasExit(r), stepOpen))
	g.place("room", "drains", i, state(len(r.Penetrations) > 0, stepOptional))
	g.place("heights", "survey", i, state(len(r.Readings.Rows) > 0, stepOptional))
	g.place("heights", "readings", i, state(site.hasPour && g.enough(site), stepOpen))
}

// enough tells whether every spot that was laid out is read; how many are wanted is the rulebook's to say, and a check tells of it.
func (g *guide) enough(r *roomWork) bool {
	for _, row := range r.room.Readings.Rows {
		if !row.Off && strings.TrimSpace(row.Height) == "" {
			return false
		}
	}
	return true
}

func hasExit(r *Room) bool {
	for _, door := range r.Doors {
		if door.Exit {
			return true
		}
	}
	return false
}

func (g *guide) deckAndDoorSteps(i int, r *Room) {
	for j := range r.Decks {
		deck := &r.Decks[j]
		g.words("deck", i, Subject{Scope: ScopeDeck, Room: r.ID, ID: deck.ID, Name: deck.Name}, deck.Answers)
	}
	g.words("deck", i, Subject{Scope: ScopeRoom, Room: r.ID, ID: r.ID, Name: r.Name}, r.Answers)
	for j := range r.Doors {
		door := &r.Doors[j]
		g.words("doors", i, Subject{Scope: ScopeDoor, Room: r.ID, ID: door.ID, Name: door.Name}, door.Answers)
	}
	for j := range r.Penetrations {
		p := &r.Penetrations[j]
		g.words("doors", i, Subject{Scope: ScopePenetration, Room: r.ID, ID: p.ID, Name: p.Name}, p.Answers)
	}
}

func (g *guide) jobSteps() {
	job := Subject{Scope: ScopeJob}
	g.words("finish", 0, job, g.job.Answers)
	sheet, given := g.job.Sheets["leveller"]
	g.place("products", "leveller", 0, state(given && !sheet.Generic, stepOptional))
	g.words("air", 0, job, g.job.Answers)
	g.words("crew", 0, job, g.job.Answers)
}

// words places the questions of one subject: what is answered, what a check waits for, and what is always asked.
func (g *guide) words(chapter string, room int, subject Subject, answers Answers) {
	for i := range vocabulary {
		word := &vocabulary[i]
		if !word.Asked || word.Scope != subject.Scope || word.Step == stepPourDay || subject.Scope == ScopeJob && word.Step != chapter {
			continue
		}
		checks, waited := g.asks[askedID(word.Name, subject)]
		answer := strings.TrimSpace(answers[word.Name])
		if answer == "" && !waited && !alwaysAsked[word.Name] {
			continue
		}
		g.steps = append(g.steps, GuideStep{
			ID: askedID(word.Name, subject), Chapter: chapter, Kind: "word", Room: room, Subject: subject, Word: word.Name, State: answerState(answer), Checks: some(checks),
		})
	}
}

func answerState(answer string) string {
	switch answer {
	case "":
		return stepOpen
	case DontKnow:
		return stepUnknown
	}
	return stepAnswered
}

func (g *guide) place(chapter, kind string, room int, state string) {
	g.steps = append(g.steps, GuideStep{ID: kind + "~" + strconv.Itoa(room), Chapter: chapter, Kind: kind, Room: room, State: state, Checks: []string{}})
}

func state(answered bool, otherwise string) string {
	if answered {
		return stepAnswered
	}
	return otherwise
}

// finish ends the walk with the result and finds where to go on.
func (g *guide) finish() *Guide {
	g.place("result", "result", 0, stepOptional)
	out := &Guide{Steps: g.steps, Next: g.steps[len(g.steps)-1].ID}
	for i := len(g.steps) - 1; i >= 0; i-- {
		if g.steps[i].State == stepOpen {
			out.Open++
			out.Next = g.steps[i].ID
		}
	}
	return out
}
