package engine

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

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
	assert.Len(t, day.Rooms, 1, "nobody asked for bays yet")
	job.Rooms[0].InBays = true
	bays := MakePour(job, ShippedRulebook()).Rooms
	require.Greater(t, len(bays), 1)
	dams, volume := 0, 0.0
	for i, bay := range bays {
		require.Empty(t, bay.Why)
		assert.True(t, bay.Clock.Timeline.Kept)
		assert.Equal(t, i+1, bay.Bay)
		assert.Equal(t, "bay "+strconv.Itoa(i+1), bay.Part)
		dams += len(bay.Dams)
		for _, batch := range bay.Batches {
			volume += batch.Volume.SI
		}
	}
	assert.Positive(t, dams)
	assert.InEpsilon(t, MakePlan(job, ShippedRulebook()).Rooms[0].Pour.Volume.SI, volume, 1e-6, "the bays are the floor")
}

// deep is a floor of 73 mm at its deepest, which a sheet with lifts of 30 mm takes in three.
func deep() *Job {
	job := square(70)
	job.Sheets["leveller"].Values["sheet.greatest_lift_filled"] = "30 mm"
	job.Rooms[0].Doors = []Door{{ID: "hall", Name: "Hall", Wall: 0, At: "1 m", Width: "1 m", Exit: true, Answers: Answers{}}}
	return job
}

func TestADeepFloorIsPouredLiftByLift(t *testing.T) {
	job := deep()
	day := MakePour(job, book)
	require.Len(t, day.Rooms, 3)
	study := studyOf(t, job).Lifts[0]
	bags := 0
	for i, lift := range day.Rooms {
		require.Empty(t, lift.Why)
		require.NotNil(t, lift.Clock)
		assert.Equal(t, "lift "+strconv.Itoa(i+1), lift.Part)
		volume := 0.0
		for _, batch := range lift.Batches {
			volume += batch.Volume.SI
		}
		assert.InEpsilon(t, study.Lifts[i].Volume.SI, volume, 1e-6, "the batches of a lift fill it")
		bags += lift.Bags
	}
	assert.InDelta(t, MakePlan(job, book).Totals.BagsExact, float64(bags), 3, "no more than a part bag over in each lift")

	at := map[string]pour.Entry{}
	for _, entry := range day.Sheet.Entries {
		at[entry.ID] = entry
	}
	for i := 1; i < 3; i++ {
		lift, prime, next := at["pour-"+strconv.Itoa(i)], at["prime-over-"+strconv.Itoa(i)], at["pour-"+strconv.Itoa(i+1)]
		require.NotEmpty(t, lift.HoldEarliest)
		assert.GreaterOrEqual(t, prime.Start, lift.HoldEarliest, "primed when the lift may be walked on")
		assert.GreaterOrEqual(t, next.Start, prime.HoldEarliest, "poured when its primer is dry")
		assert.LessOrEqual(t, next.Start, prime.HoldLatest, "and while it holds")
	}
}

func TestALiftWithAggregateSaysHowMuchGoesIntoEachBatch(t *testing.T) {
	job := deep()
	job.Sheets["leveller"].Values["sheet.greatest_lift_filled"] = "60 mm"
	day := MakePour(job, book)
	require.Len(t, day.Rooms, 2)
	grain, powder := 0.0, 0.0
	for _, batch := range day.Rooms[0].Batches {
		require.NotNil(t, batch.Aggregate)
		assert.InDelta(t, batch.Powder.SI/2, batch.Aggregate.SI, 1e-9, "the sheet's half of the powder's mass")
		grain += batch.Aggregate.SI
		powder += batch.Powder.SI
	}
	for _, batch := range day.Rooms[1].Batches {
		assert.Nil(t, batch.Aggregate, "the last lift is leveller alone")
	}
	study := studyOf(t, job).Lifts[1]
	require.True(t, study.Filled)
	first := study.Lifts[0]
	// By hand: 25 kg fill 14 L, and 12.5 kg of grain at 2650 kg/m³ another 4.717 L.
	assert.InDelta(t, first.Volume.SI*1.03/(0.014+12.5/2650), first.Bags, 1e-9)
	assert.InDelta(t, first.Bags*12.5, first.Aggregate.SI, 1e-9)
	assert.InDelta(t, first.Area.SI/8*0.5/1000, first.Primer.SI, 1e-9, "one coat at 8 m² to the litre, half of it primer")
	assert.InDelta(t, grain, first.Aggregate.SI, 12.5, "what is bought is what is mixed, but for the last bag")
	assert.InDelta(t, powder, first.Bags*25, 25)
	list := MakeTakeOff(job, book, nil)
	for _, line := range list.Lines {
		if line.Key == "aggregate" {
			assert.InDelta(t, first.Aggregate.SI, line.Need.SI, 1e-6)
		}
	}
}

func TestAFloorThatNobodyReadHasBatchesAndAClockButNoPlaceOnTheMap(t *testing.T) {
	job := NewJob("counter", "metric")
	job.Rooms[0].Outline = Shape{How: ShapeArea, Area: "12 m²"}
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "concrete"
	job.Rooms[0].Rough = &Rough{Mean: "10 mm"}
	day := MakePour(job, book)
	require.Empty(t, day.Problems)
	room := day.Rooms[0]
	require.Empty(t, room.Why)
	assert.True(t, room.Rough)
	assert.Contains(t, room.Note, "Nobody has read this floor")
	assert.Equal(t, 9, room.Bags, "12 m² × 10 mm × 1.03 at 14 L a bag")
	require.NotNil(t, room.Clock)
	assert.Empty(t, room.Batches[0].Polygons)
	assert.NotEmpty(t, day.Sheet.Entries)
	job.Rooms[0].Rough = &Rough{Least: "5 mm", Greatest: "50 mm"}
	assert.Contains(t, MakePour(job, book).Rooms[0].Note, "several, with primer between")
}

func TestTheRunSheetHoldsTheBarrierTheDecksOwnPrimerAndTellsWhoDoesWhat(t *testing.T) {
	job := deep()
	deck := job.Rooms[0].Decks[0].Answers
	deck["deck.barrier"], deck["deck.absorbency"], job.Answers["deck.temperature"] = "yes", "dense", "12 °C"
	at := map[string]pour.Entry{}
	for _, entry := range MakePour(job, book).Sheet.Entries {
		at[entry.ID] = entry
	}
	require.Contains(t, at, "barrier-2", "two coats")
	assert.Equal(t, "Moisture barrier cures", at["barrier-2"].Hold)
	assert.GreaterOrEqual(t, at["prime"].Start, at["barrier-2"].HoldEarliest)
	end, err := time.Parse("2006-01-02T15:04:05", at["prime"].End)
	require.NoError(t, err)
	dry, err := time.Parse("2006-01-02T15:04:05", at["prime"].HoldEarliest)
	require.NoError(t, err)
	assert.Equal(t, 6*time.Hour, dry.Sub(end), "two hours by the tin, twice that on a dense deck, half as long again below 15 °C")
	hands := at["pour-3"].Hands
	require.Len(t, hands, 2)
	mixes, carries := 0, 0
	for _, hand := range hands {
		if hand.Mixes {
			mixes++
		}
		if hand.Carries {
			carries++
		}
	}
	assert.Positive(t, mixes)
	assert.Positive(t, carries)
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

func TestAStartThatIsNoDayIsNamed(t *testing.T) {
	job := DemoJob("demo")
	assert.True(t, MakePour(job, ShippedRulebook()).Sheet.Relative)
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
