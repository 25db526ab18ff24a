// Package words checks that nothing which the engine says is left in English where the page speaks another language.
package words

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/rules"
)

// jobs is the demo, the corpus, and each of them as somebody leaves it who answers nothing.
func jobs(t *testing.T) []*engine.Job {
	files, err := filepath.Glob("../../engine/testdata/jobs/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	list := []*engine.Job{engine.DemoJob("demo"), unanswered(engine.DemoJob("demo")), rough(engine.DemoJob("demo")), timber(engine.DemoJob("demo"))}
	for _, file := range files {
		document, err := os.ReadFile(file)
		require.NoError(t, err)
		if len(document) > 60_000 {
			continue // a large survey says nothing that a small one doesn't
		}
		job, err := engine.ReadJob(document)
		require.NoError(t, err)
		list = append(list, job)
	}
	for _, job := range list {
		nameless(job)
	}
	return list
}

// nameless gives everything a name that is no word of any language, so that what a person typed isn't taken for the engine's.
func nameless(job *engine.Job) {
	for i := range job.Rooms {
		room := &job.Rooms[i]
		room.Name = "Q1"
		for j := range room.Decks {
			room.Decks[j].Name = strings.Repeat("Q2", j%2)
		}
		for j := range room.Doors {
			room.Doors[j].Name = "Q3"
		}
		for j := range room.Penetrations {
			room.Penetrations[j].Name = "Q4"
		}
		for j := range room.KeepOuts {
			room.KeepOuts[j].Name = "Q5"
		}
	}
}

func unanswered(job *engine.Job) *engine.Job {
	job.Answers = engine.Answers{}
	for i := range job.Rooms {
		room := &job.Rooms[i]
		room.Answers = engine.Answers{}
		for j := range room.Decks {
			room.Decks[j].Answers = engine.Answers{}
		}
		for j := range room.Doors {
			room.Doors[j].Answers = engine.Answers{}
		}
	}
	return job
}

func rough(job *engine.Job) *engine.Job {
	unanswered(job)
	for i := range job.Rooms {
		job.Rooms[i].Readings.Rows = nil
		job.Rooms[i].Rough = &engine.Rough{Least: "4 mm", Greatest: "22 mm"}
	}
	return job
}

// timber is a springy, heated, damp floor poured by too few, so that most checks have something to say.
func timber(job *engine.Job) *engine.Job {
	job.Answers["crew.people"], job.Answers["crew.buckets"], job.Answers["air.temperature"], job.Answers["air.speed"] = "1", "1", "4 °C", "30 km/h"
	for i := range job.Rooms {
		room := &job.Rooms[i]
		room.Answers["room.heated"], room.Answers["room.below"] = "yes", "yes"
		for j := range room.Decks {
			room.Decks[j].Answers = engine.Answers{"deck.kind": "plywood", "deck.thickness": "12 mm", "deck.sound": "no", "deck.clean": "no", "deck.screwed": "no", "deck.gaps_closed": "no", "deck.moisture": "19 %"}
		}
	}
	return job
}

// spoken is everything that the page is told of one job.
func spoken(job *engine.Job, book *engine.Rulebook) []any {
	plan := engine.MakePlan(job, book)
	said := []any{
		plan, engine.MakeStudy(job, book), engine.MakePour(job, book), engine.MakeTakeOff(job, book, nil), engine.MakeFieldSheet(job, book),
		engine.RulesOn(job, book), engine.MakeAfter(job, book),
	}
	cleared := 0
	for _, finding := range plan.Findings {
		if finding.State != rules.Broken || cleared == 6 {
			continue
		}
		if clearing, ok := engine.Clear(job, book, nil, finding.Rule, finding.Subject); ok {
			said = append(said, clearing)
			cleared++
		}
	}
	return said
}

func TestEverythingThatTheEngineSaysIsSaidInSpanish(t *testing.T) {
	book := engine.ShippedRulebook()
	said := []any{engine.WordList(), book.Book.Rules}
	for _, job := range jobs(t) {
		said = append(said, spoken(job, book)...)
	}
	document, err := json.Marshal(said)
	require.NoError(t, err)
	command := exec.Command("node", "said.mjs")
	command.Stdin = bytes.NewReader(document)
	command.Stderr = os.Stderr
	out, err := command.Output()
	require.NoError(t, err)
	var left []string
	require.NoError(t, json.Unmarshal(out, &left))
	assert.Empty(t, left, "texts without Spanish: add them to site/src/words/es/engine")
}
