package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

func stepIDs(g *Guide) []string {
	ids := []string{}
	for _, step := range g.Steps {
		ids = append(ids, step.ID)
	}
	return ids
}

func TestAGuideBeginsWithTheRoomsSizeAndComesToTheResult(t *testing.T) {
	guide := MakeGuide(NewJob("j", quantity.Metric), ShippedRulebook())
	assert.Equal(t, "outline~0", guide.Next)
	assert.Equal(t, "outline", guide.Steps[0].Kind)
	assert.Equal(t, "result~0", before(MakeGuide(walked(), ShippedRulebook()), "proof"), "what changes the plan comes first")
	assert.Subset(t, stepIDs(guide), []string{"readings~0", "deck.kind~room-1~room-1-deck", "leveller~0", "crew.people~~"})
}

func TestAGuideAsksWhatTheDeckMakesNecessary(t *testing.T) {
	job := walked()
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "concrete"
	concrete := stepIDs(MakeGuide(job, ShippedRulebook()))
	assert.Contains(t, concrete, "slab.humidity~room-1~room-1-deck")
	assert.NotContains(t, concrete, "deck.screwed~room-1~room-1-deck")
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "plywood"
	wood := stepIDs(MakeGuide(job, ShippedRulebook()))
	assert.Contains(t, wood, "deck.screwed~room-1~room-1-deck")
	assert.NotContains(t, wood, "slab.humidity~room-1~room-1-deck")
}

func TestDontKnowIsAnAnswerThatStaysOnTheList(t *testing.T) {
	job := walked()
	job.Answers["air.temperature"] = DontKnow
	job.Answers["crew.people"] = DontKnow
	open := MakeGuide(walked(), ShippedRulebook()).Open
	guide := MakeGuide(job, ShippedRulebook())
	assert.Equal(t, open-1, guide.Open, "the air is no question that the plan waits for")
	for _, step := range guide.Steps {
		if step.Word == "air.temperature" {
			assert.Equal(t, "unknown", step.State)
			assert.NotEmpty(t, step.Checks, "what is not checked without it")
			return
		}
	}
	t.Fatal("the question is gone")
}

func TestTheDemoJobsGuideGoesOnAtWhatIsOpen(t *testing.T) {
	job := DemoJob("demo")
	guide := MakeGuide(job, ShippedRulebook())
	assert.Equal(t, "result~0", guide.Next, "what the plan waits for is all answered")
	delete(job.Answers, "crew.people")
	guide = MakeGuide(job, ShippedRulebook())
	assert.Equal(t, "crew.people~~", guide.Next)
	assert.Equal(t, 1, guide.Open)
}

// before is the last step ahead of a chapter.
func before(g *Guide, chapter string) string {
	for i, step := range g.Steps {
		if step.Chapter == chapter {
			return g.Steps[i-1].ID
		}
	}
	return ""
}

func TestAWalkThroughTheStepsReachesTheResultAndEveryChapterBehindItLeadsBack(t *testing.T) {
	guide := MakeGuide(walked(), ShippedRulebook())
	byID := map[string]GuideStep{}
	for _, step := range guide.Steps {
		byID[step.ID] = step
	}
	for _, step := range guide.Steps {
		for way, next := range map[string]func(GuideStep) string{"on": func(s GuideStep) string { return s.After }, "skipping": func(s GuideStep) string { return s.Skip }} {
			at, moves := step, 0
			for ; at.Kind != "result" && moves <= len(guide.Steps); moves++ {
				at = byID[next(at)]
			}
			assert.Equal(t, "result", at.Kind, "%s from %s", way, step.ID)
		}
	}
	assert.Empty(t, byID["result~0"].After)
}

// A homeowner answers no more than this before the first result; the rest is told there and can be proved later.
func TestAWoodFloorsPlanWaitsForFewQuestions(t *testing.T) {
	job := walked()
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "plywood"
	words := 0
	for _, step := range MakeGuide(job, ShippedRulebook()).Steps {
		if step.Kind == "result" {
			break
		}
		if step.Kind == "word" {
			words++
		}
	}
	assert.LessOrEqual(t, words, 13)
}

func TestEveryAnswerOfferedCanBeRead(t *testing.T) {
	for name := range offers {
		word := wordByName[name]
		require.NotNil(t, word, name)
		for _, units := range []quantity.System{quantity.Metric, quantity.US} {
			for _, offer := range offersOf(name, units) {
				_, err := quantity.ReadIn(offer, word.Type.Dimension, "")
				assert.NoError(t, err, "%s %s", name, offer)
			}
		}
	}
}

// walked is a room of 4 m by 3 m with a door.
func walked() *Job {
	job := NewJob("j", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline.Length, room.Outline.Width = "4 m", "3 m"
	room.Doors = []Door{{ID: "d", Wall: 0, At: "1 m", Width: "0.8 m", Exit: true, Answers: Answers{}}}
	return job
}

func TestAFieldSheetSpreadsTheReadingsThatTheRulebookWants(t *testing.T) {
	for _, c := range []struct {
		name, length, width string
		units               quantity.System
		least               int
	}{
		{"a bathroom", "2 m", "1.5 m", quantity.Metric, 4},
		{"a room", "4 m", "3 m", quantity.Metric, 12},
		{"a hall", "9 m", "1.2 m", quantity.Metric, 11},
		{"a room in feet", "14 ft", "10 ft", quantity.US, 14},
	} {
		t.Run(c.name, func(t *testing.T) {
			job := NewJob("j", c.units)
			job.Rooms[0].Outline.Length, job.Rooms[0].Outline.Width = c.length, c.width
			sheet := MakeFieldSheet(job, ShippedRulebook())
			require.Len(t, sheet.Rooms, 1)
			room := sheet.Rooms[0]
			assert.True(t, room.Suggested)
			assert.GreaterOrEqual(t, len(room.Spots), c.least)
			assert.LessOrEqual(t, len(room.Spots), 2*c.least+4, "not many more than are wanted")
		})
	}
}

func TestSpotsStandOffWallsAndKeepOuts(t *testing.T) {
	job := DemoJob("demo")
	job.Rooms[0].Readings.Rows = nil
	book := ShippedRulebook()
	outline := MakePlan(job, book).Rooms[0].Outline
	spots := MakeFieldSheet(job, book).Rooms[0].Spots
	require.NotEmpty(t, spots)
	for _, spot := range spots {
		assert.True(t, outline.Contains(spot.At))
		assert.True(t, clearOf(outline, spot.At))
	}
}

func TestAFieldSheetKeepsTheSpotsThatWereLaidOut(t *testing.T) {
	job := walked()
	job.Rooms[0].Readings.Rows = []Reading{{X: "1", Y: "1", Height: "1203"}, {X: "2", Y: "1"}, {X: "two", Y: "1"}}
	room := MakeFieldSheet(job, ShippedRulebook()).Rooms[0]
	assert.False(t, room.Suggested)
	require.Len(t, room.Spots, 2)
	assert.Equal(t, "1203", room.Spots[0].Height)
	assert.Empty(t, room.Spots[1].Height)
}
