package engine

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
	"lowspot/engine/pour"
	"lowspot/rules"
)

func demoPour(t *testing.T, answers ...string) (*Job, *PourDay) {
	t.Helper()
	job := DemoJob("demo")
	for i := 0; i < len(answers); i += 2 {
		job.Answers[answers[i]] = answers[i+1]
	}
	return job, MakePour(job, ShippedRulebook())
}

func finding(t *testing.T, day *PourDay, rule string) Finding {
	t.Helper()
	for _, f := range day.Findings {
		if f.Rule == rule {
			return f
		}
	}
	require.Fail(t, "no such finding", rule)
	return Finding{}
}

func TestTheDemoPourIsMixedInWholeBagsWithTheWaterOfTheSheet(t *testing.T) {
	_, day := demoPour(t)
	require.Empty(t, day.Problems)
	room := day.Rooms[0]
	require.Empty(t, room.Why)
	bags, volume := 0, 0.0
	for i, b := range room.Batches {
		assert.Equal(t, i+1, b.Number)
		assert.InDelta(t, float64(b.Bags)*25, b.Powder.SI, 1e-9)
		assert.GreaterOrEqual(t, b.Water.SI, b.Least.SI-1e-12)
		assert.LessOrEqual(t, b.Water.SI, b.Most.SI+1e-12)
		assert.InDelta(t, b.Water.SI, float64(b.Marks)*b.Mark.SI, 1e-12, "water in marks that a person can measure")
		bags += b.Bags
		volume += b.Volume.SI
	}
	plan := MakePlan(DemoJob("demo"), ShippedRulebook())
	assert.InEpsilon(t, plan.Rooms[0].Pour.Volume.SI, volume, 1e-6, "the batches fill what the plan pours")
	assert.Equal(t, bags, room.Bags)
	assert.LessOrEqual(t, bags, plan.Totals.Bags, "what is bought is enough for what is mixed")
}

// Common practice: two or more buckets going at once; rest of about two minutes; start far, end at the way out; agitate while it flows.
func TestTheDemoPourGoesAsTheTradePours(t *testing.T) {
	_, day := demoPour(t)
	room := day.Rooms[0]
	clock := room.Clock.Timeline
	require.True(t, clock.Kept)
	assert.LessOrEqual(t, clock.LongestWait, day.Setting.WetEdge.SI)
	assert.GreaterOrEqual(t, clock.Crew.Buckets, 2)

	first, last := room.Batches[0], room.Batches[len(room.Batches)-1]
	assert.Greater(t, first.Distance.SI, 0.8*room.Walk.SI, "it starts at the far end")
	for _, b := range room.Batches[:len(room.Batches)-1] {
		assert.Greater(t, b.Distance.SI, last.Distance.SI, "it ends at the way out")
	}

	rest, pours, spread, overlap := map[int]float64{}, map[int]pour.Task{}, map[int]pour.Task{}, 0
	for _, task := range clock.Tasks {
		switch task.Kind {
		case pour.TaskRest:
			rest[task.Batch] = task.End - task.Start
		case pour.TaskPour:
			pours[task.Batch] = task
		case pour.TaskAgitate:
			spread[task.Batch] = task
		}
		for _, other := range clock.Tasks {
			if task.Kind == pour.TaskMix && other.Kind == pour.TaskPour && task.Bucket != other.Bucket && task.Start < other.End && other.Start < task.End {
				overlap++
			}
		}
	}
	assert.Positive(t, overlap, "one bucket is mixed while another is poured")
	require.Len(t, rest, len(room.Batches))
	for batch, seconds := range rest {
		assert.GreaterOrEqual(t, seconds, 120-1e-6, "batch %d rests two minutes", batch)
		assert.Equal(t, pours[batch].End, spread[batch].Start, "batch %d is spread as soon as it is down", batch)
		if batch > 1 {
			assert.GreaterOrEqual(t, pours[batch].Start, pours[batch-1].End-1e-6, "in order")
		}
	}
}

func TestNobodyIsLeftStandingOnAnIsland(t *testing.T) {
	_, day := demoPour(t)
	room := day.Rooms[0]
	plan := MakePlan(DemoJob("demo"), ShippedRulebook()).Rooms[0]
	for poured := range room.Batches {
		// The floor still bare is one piece that holds the way out: walk from the door over the bare patches alone and every bare patch is reached.
		bare := room.Batches[poured+1:]
		if len(bare) == 0 {
			continue
		}
		reached := map[int]bool{}
		for i, b := range bare {
			if distanceTo(b.Polygons, room.Exits[0]) < 0.05 {
				reached[i] = true
			}
		}
		for grown := true; grown; {
			grown = false
			for i, b := range bare {
				for k := range bare {
					if !reached[i] && reached[k] && touching(b.Polygons, bare[k].Polygons) {
						reached[i], grown = true, true
					}
				}
			}
		}
		assert.Len(t, reached, len(bare), "after batch %d the bare floor hangs together with the door", poured+1)
	}
	assert.True(t, plan.Drawn)
}

func distanceTo(rings []floor.Ring, p floor.Point) float64 {
	best := math.Inf(1)
	for _, ring := range rings {
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			length := floor.Distance(a, b)
			s := 0.0
			if length > 0 {
				s = math.Max(0, math.Min(1, ((p.X-a.X)*(b.X-a.X)+(p.Y-a.Y)*(b.Y-a.Y))/(length*length)))
			}
			best = math.Min(best, floor.Distance(p, floor.Point{X: a.X + s*(b.X-a.X), Y: a.Y + s*(b.Y-a.Y)}))
		}
	}
	return best
}

func touching(a, b []floor.Ring) bool {
	for _, ring := range a {
		for _, p := range ring {
			if distanceTo(b, p) < 1e-6 {
				return true
			}
		}
	}
	return false
}

func TestOnePersonWithOneBucketLosesTheWetEdgeAndBaysOrHandsAreOffered(t *testing.T) {
	job, day := demoPour(t, "crew.people", "1", "crew.buckets", "1")
	f := finding(t, day, "wet-edge-kept")
	assert.Equal(t, rules.Broken, f.State)
	assert.Contains(t, f.Says, "An edge waits")
	fewest := day.Rooms[0].Fewest
	require.True(t, fewest.Timeline.Kept)
	assert.GreaterOrEqual(t, fewest.Timeline.Crew.Buckets, 2)
	bays := MakeBays(job, ShippedRulebook(), "room-1")
	require.Empty(t, bays.Why)
	require.Greater(t, len(bays.Bays), 1)
	dams, area := 0, 0.0
	for _, bay := range bays.Bays {
		assert.True(t, bay.Clock.Timeline.Kept)
		dams += len(bay.Dams)
		area += bay.Area.SI
	}
	assert.Positive(t, dams)
	assert.InEpsilon(t, MakePlan(job, ShippedRulebook()).Rooms[0].Area.SI, area, 1e-6, "the bays are the floor")
}

func TestWarmthShortensTheEdgeAndColdLengthensTheWaitForTiles(t *testing.T) {
	_, mild := demoPour(t, "air.temperature", "20 °C", "deck.temperature", "20 °C")
	assert.InDelta(t, 600, mild.Setting.WetEdge.SI, 1e-6, "at 20 °C the sheet's own time holds")
	_, warm := demoPour(t, "air.temperature", "30 °C", "deck.temperature", "20 °C")
	assert.InDelta(t, 300, warm.Setting.WetEdge.SI, 1e-6, "ten degrees more, half the time: the warmest counts")
	assert.InDelta(t, 24*3600, warm.Setting.Tile.SI, 1e-6, "the coldest counts for tiling")
	_, cold := demoPour(t, "air.temperature", "20 °C", "deck.temperature", "10 °C")
	assert.InDelta(t, 48*3600, cold.Setting.Tile.SI, 1e-6)
	_, frost := demoPour(t, "air.temperature", "2 °C", "deck.temperature", "2 °C", "water.temperature", "5 °C", "powder.temperature", "5 °C")
	require.NotEmpty(t, frost.Problems, "outside the model's range no time is made up")
	assert.Nil(t, frost.Rooms[0].Clock)
}

func TestTheWaterThatBringsTheMixIntoItsWindow(t *testing.T) {
	// (5·0.9982·11 + 0.22·25·16)/(5·0.9982 + 0.22·25) = 13.6 °C; TM 5-852-4 / AFM 88-19 ch. 4, Eq. 16, by hand.
	_, day := demoPour(t)
	require.NotNil(t, day.Mix.Temperature)
	assert.Equal(t, "13.6 °C", day.Mix.Temperature.Text)
	assert.Equal(t, "With bags at 16 °C, water at 3.4 °C to 34.9 °C brings the mix into the sheet's window.", day.Mix.Says)
	_, hot := demoPour(t, "powder.temperature", "60 °C")
	assert.Contains(t, hot.Mix.Says, "Cool the powder")
	_, unknown := demoPour(t, "powder.temperature", "")
	assert.Nil(t, unknown.Mix.Temperature)
}

func TestTheFlowRingIsHeldAgainstTheSheet(t *testing.T) {
	_, before := demoPour(t)
	assert.Equal(t, rules.Unanswered, finding(t, before, "flow-ring").State)
	_, short := demoPour(t, "mix.spread", "120 mm")
	assert.Equal(t, rules.Broken, finding(t, short, "flow-ring").State)
	assert.Equal(t, pour.SpreadShort, short.Mix.Spread.Outcome)
	_, right := demoPour(t, "mix.spread", "140 mm")
	assert.Equal(t, rules.Kept, finding(t, right, "flow-ring").State)
	for _, f := range MakePlan(DemoJob("demo"), ShippedRulebook()).Findings {
		assert.NotEqual(t, "flow-ring", f.Rule, "the plan doesn't ask for what only pour day knows")
	}
}

func TestTheRunSheetHoldsWhatMustPassInOrder(t *testing.T) {
	job := DemoJob("demo")
	job.Start = "2026-05-04T08:00"
	sheet := MakePour(job, ShippedRulebook()).Sheet
	require.Empty(t, sheet.Why)
	assert.False(t, sheet.Relative)
	at := map[string]pour.Entry{}
	for _, e := range sheet.Entries {
		at[e.ID] = e
		assert.Empty(t, e.Missed, e.ID)
	}
	order := []string{"strip", "test", "patch", "prime-1", "prime-2", "edge", "indicators", "dams", "ready", "pour", "walk", "tile"}
	for i := 1; i < len(order); i++ {
		require.Contains(t, at, order[i])
		assert.GreaterOrEqual(t, at[order[i]].Start, at[order[i-1]].Start, "%s after %s", order[i], order[i-1])
	}
	assert.Equal(t, "2026-05-04T08:00:00", at["strip"].Start)
	assert.GreaterOrEqual(t, at["prime-1"].Start, at["patch"].HoldEarliest, "the patch has cured")
	assert.GreaterOrEqual(t, at["pour"].Start, at["prime-2"].HoldEarliest, "the primer has dried")
	assert.LessOrEqual(t, at["pour"].Start, at["prime-2"].HoldLatest, "and its window is open")
	assert.GreaterOrEqual(t, at["walk"].Start, at["off-it"].HoldEarliest)
	assert.GreaterOrEqual(t, at["tile"].Start, at["no-tile"].HoldEarliest)
	assert.Contains(t, strings.Join(at["strip"].Cautions, " "), "asbestos")
	assert.Contains(t, strings.Join(at["pour"].Cautions, " "), "burns")
}

func TestAHeatedFloorIsOffTwoDaysBeforeThePour(t *testing.T) {
	job := DemoJob("demo")
	job.Start = "2026-05-04T08:00"
	job.Rooms[0].Answers["room.heated"] = "yes"
	at := map[string]pour.Entry{}
	for _, e := range MakePour(job, ShippedRulebook()).Sheet.Entries {
		at[e.ID] = e
		assert.Empty(t, e.Missed, e.ID)
	}
	assert.GreaterOrEqual(t, at["ready"].Start, at["heating-off"].HoldEarliest)
	assert.GreaterOrEqual(t, at["heating-on"].Start, "2026-05-13")
}

func TestACalendarWantsADay(t *testing.T) {
	job := DemoJob("demo")
	_, err := MakeCalendar(job, ShippedRulebook(), "2026-05-01T10:00:00Z")
	require.ErrorContains(t, err, "no start yet")
	job.Start = "2026-05-04T08:00"
	text, err := MakeCalendar(job, ShippedRulebook(), "2026-05-01T10:00:00Z")
	require.NoError(t, err)
	assert.Contains(t, text, "SUMMARY:Primer dries")
	job.Start = "tomorrow"
	day := MakePour(job, ShippedRulebook())
	require.Len(t, day.Problems, 1)
	assert.Equal(t, "start", day.Problems[0].Field)
}

func TestARoomThatCannotBePouredYetSaysWhatToDo(t *testing.T) {
	job := DemoJob("demo")
	job.Rooms[0].Doors = nil
	assert.Contains(t, MakePour(job, ShippedRulebook()).Rooms[0].Why, "mark it as the way out")
	job = DemoJob("demo")
	job.Rooms[0].Readings.Rows = nil
	assert.Contains(t, MakePour(job, ShippedRulebook()).Rooms[0].Why, "Enter readings first")
	job = NewJob("empty", "metric")
	assert.Contains(t, MakePour(job, ShippedRulebook()).Rooms[0].Why, "Give this room its size")
	_, day := demoPour(t, "bucket.size", "8 L")
	require.Len(t, day.Problems, 1)
	assert.Equal(t, "answers/bucket.size", day.Problems[0].Field)
}

func TestInUSUnitsWaterIsMeasuredInQuarterQuarts(t *testing.T) {
	job := DemoJob("demo")
	job.Units, job.Sheets = "us", GenericSheets("us")
	day := MakePour(job, ShippedRulebook())
	require.Empty(t, day.Problems)
	first := day.Rooms[0].Batches[0]
	assert.Equal(t, "5 qt", first.Water.Text)
	assert.Equal(t, 20, first.Marks)
	assert.Equal(t, "0.25 qt", first.Mark.Text)
	assert.Equal(t, "50 lb", first.Powder.Text)
}

func TestTheSameJobGivesTheSamePourToTheByte(t *testing.T) {
	_, one := demoPour(t)
	_, two := demoPour(t)
	a, err := json.Marshal(one)
	require.NoError(t, err)
	b, err := json.Marshal(two)
	require.NoError(t, err)
	assert.Equal(t, string(a), string(b))
}
