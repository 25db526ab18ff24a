package engine

import (
	"strconv"
	"strings"
)

// Guide is a job as a walk of questions, one after the other in the order of the work, for somebody who does this for the first time. What changes the
// plan comes before the result. What only proves the deck, and what is to be made true before a bag is opened, are chapters of their own behind it.
type Guide struct {
	Steps []GuideStep `json:"steps"`
	Next  string      `json:"next"` // the first step before the result that is open; the result where none is
	Open  int         `json:"open"` // steps before the result that are open
}

// GuideStep is one question.
type GuideStep struct {
	ID      string   `json:"id"`
	Chapter string   `json:"chapter"` // room, heights, deck, finish, products, crew, result, proof, before
	Kind    string   `json:"kind"`    // outline, keep-outs, doors, drains, survey, readings, word, leveller, result
	Room    int      `json:"room"`    // index in the job
	Subject Subject  `json:"subject"`
	Word    string   `json:"word"`   // of a word's question
	State   string   `json:"state"`  // open, answered, unknown (don't know), optional (may be passed over)
	Checks  []string `json:"checks"` // that stay unanswered without it
	Offers  []string `json:"offers"` // answers that many would give, to be taken with one tap
	After   string   `json:"after"`  // the step to go on to; empty after the result
	Skip    string   `json:"skip"`   // the step to go on to without the rest of the chapter
}

// The states of a step.
const (
	stepOpen     = "open"
	stepAnswered = "answered"
	stepUnknown  = "unknown"
	stepOptional = "optional"
)

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
		g.ofRoom("deck", i)
	}
	g.jobSteps()
	g.place("result", "result", 0, stepOptional)
	for _, chapter := range []string{"proof", "before"} {
		for i := range g.rooms {
			g.ofRoom(chapter, i)
		}
		g.words(chapter, 0, Subject{Scope: ScopeJob}, g.job.Answers)
	}
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

// jobSteps are what else changes the plan.
func (g *guide) jobSteps() {
	job := Subject{Scope: ScopeJob}
	g.words("finish", 0, job, g.job.Answers)
	sheet, given := g.job.Sheets["leveller"]
	g.place("products", "leveller", 0, state(given && !sheet.Generic, stepOptional))
	g.words("crew", 0, job, g.job.Answers)
}

// ofRoom asks one chapter's words of a room: of its deck areas, of itself, of its doors and of what comes up through it.
func (g *guide) ofRoom(chapter string, i int) {
	r := &g.job.Rooms[i]
	for j := range r.Decks {
		deck := &r.Decks[j]
		g.words(chapter, i, Subject{Scope: ScopeDeck, Room: r.ID, ID: deck.ID, Name: deck.Name}, deck.Answers)
	}
	g.words(chapter, i, Subject{Scope: ScopeRoom, Room: r.ID, ID: r.ID, Name: r.Name}, r.Answers)
	for j := range r.Doors {
		door := &r.Doors[j]
		g.words(chapter, i, Subject{Scope: ScopeDoor, Room: r.ID, ID: door.ID, Name: door.Name}, door.Answers)
	}
	for j := range r.Penetrations {
		p := &r.Penetrations[j]
		g.words(chapter, i, Subject{Scope: ScopePenetration, Room: r.ID, ID: p.ID, Name: p.Name}, p.Answers)
	}
}

// words places one chapter's questions of one subject: what is answered, what a check waits for, and what is always asked.
func (g *guide) words(chapter string, room int, subject Subject, answers Answers) {
	for i := range vocabulary {
		word := &vocabulary[i]
		if !word.Asked || word.Scope != subject.Scope || word.Step == stepPourDay || chapterOf(word) != chapter {
			continue
		}
		checks, waited := g.asks[askedID(word.Name, subject)]
		answer := strings.TrimSpace(answers[word.Name])
		if answer == "" && !waited && !alwaysAsked[word.Name] {
			continue
		}
		g.steps = append(g.steps, GuideStep{
			ID: askedID(word.Name, subject), Chapter: chapter, Kind: "word", Room: room, Subject: subject, Word: word.Name, State: answerState(answer),
			Checks: some(checks), Offers: offersOf(word.Name, g.units),
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
	g.steps = append(g.steps, GuideStep{ID: kind + "~" + strconv.Itoa(room), Chapter: chapter, Kind: kind, Room: room, State: state, Checks: []string{}, Offers: []string{}})
}

func state(answered bool, otherwise string) string {
	if answered {
		return stepAnswered
	}
	return otherwise
}

// finish joins the steps up and finds where to go on.
func (g *guide) finish() *Guide {
	result := 0
	for g.steps[result].Kind != "result" {
		result++
	}
	out := &Guide{Steps: g.steps, Next: g.steps[result].ID}
	for i := len(g.steps) - 1; i >= 0; i-- {
		step := &g.steps[i]
		step.After = g.after(i, result)
		step.Skip = step.After
		if i+1 < len(g.steps) && g.steps[i+1].Chapter == step.Chapter {
			step.Skip = g.steps[i+1].Skip
		}
		if i < result && step.State == stepOpen {
			out.Open++
			out.Next = step.ID
		}
	}
	return out
}

// after is the step behind one. The chapters behind the result lead back to it.
func (g *guide) after(i, result int) string {
	switch {
	case i == result:
		return ""
	case i < result || i+1 < len(g.steps) && g.steps[i+1].Chapter == g.steps[i].Chapter:
		return g.steps[i+1].ID
	}
	return g.steps[result].ID
}
