package engine

import (
	"encoding/json"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func studyOf(t *testing.T, job *Job) RoomStudy {
	t.Helper()
	study := MakeStudy(job, book)
	require.NotEmpty(t, study.Rooms)
	require.True(t, study.Rooms[0].Ready)
	require.Empty(t, study.Rooms[0].Problems)
	return study.Rooms[0]
}

func TestTheSameJobGivesTheSameStudyToTheByte(t *testing.T) {
	first, err := json.Marshal(MakeStudy(DemoJob("demo"), book))
	require.NoError(t, err)
	second, err := json.Marshal(MakeStudy(DemoJob("demo"), book))
	require.NoError(t, err)
	assert.Equal(t, string(first), string(second))
}

func TestAJobWithNothingMeasuredHasAnEmptyStudy(t *testing.T) {
	study := MakeStudy(NewJob("new", "metric"), book)
	assert.Nil(t, study.Bags)
	require.Len(t, study.Rooms, 1)
	assert.False(t, study.Rooms[0].Ready)
}

func TestToBeSurerTakesNoFewerBags(t *testing.T) {
	job := DemoJob("demo")
	for _, confidence := range []string{"50 %", "90 %", "99 %"} {
		job.Answers["order.confidence"] = confidence
		bags := MakeStudy(job, book).Bags
		require.NotNil(t, bags)
		assert.LessOrEqual(t, bags.Half, bags.Ninety)
		assert.LessOrEqual(t, bags.Ninety, bags.NinetyNine)
		assert.Equal(t, map[string]int{"50 %": bags.Half, "90 %": bags.Ninety, "99 %": bags.NinetyNine}[confidence], bags.Buy)
		shares := 0.0
		for _, cause := range bags.Causes {
			shares += cause.Share
		}
		assert.InDelta(t, 1, shares, 1e-9, "the causes of doubt make up all of it")
	}
}

func TestAWorseStaffLeavesMoreDoubt(t *testing.T) {
	job := DemoJob("demo")
	fine := MakeStudy(job, book).Bags
	job.Rooms[0].Answers["survey.error"] = "4 mm"
	assert.Greater(t, MakeStudy(job, book).Bags.Deviation, fine.Deviation)
}

func TestAMistypedStaffReadingIsNamedWithWhatLeavingItOutChanges(t *testing.T) {
	job := DemoJob("demo")
	job.Rooms[0].Readings.Rows[12].Height = "1128" // for 1218
	study := studyOf(t, job)
	require.NotEmpty(t, study.Suspects)
	suspect := study.Suspects[0]
	assert.Equal(t, 12, suspect.Row)
	assert.InDelta(t, 1.217, suspect.Expected.SI, 0.006)
	assert.Negative(t, suspect.Bags, "90 mm too high, it held the plane up")
	without := MakePlan(DemoJob("demo"), book).Totals.BagsExact
	job.Rooms[0].Readings.Rows[12].Off = true
	assert.Less(t, MakePlan(job, book).Totals.BagsExact, without*1.2)
}

func TestPlanesSideBySideAreTheRoomsOwnOnceChosen(t *testing.T) {
	job := DemoJob("demo")
	study := studyOf(t, job)
	hows := map[string]int{}
	level, least := PlaneStudy{}, PlaneStudy{}
	for _, plane := range study.Planes {
		hows[plane.Choice.How]++
		switch plane.Choice.How {
		case PlaneLevel:
			level = plane
		case PlaneLeastVolume:
			least = plane
		}
		job.Rooms[0].Plane = plane.Choice
		assert.InDelta(t, plane.Bags, MakePlan(job, book).Totals.BagsExact, 1e-9, "%+v", plane.Choice)
	}
	assert.Equal(t, map[string]int{PlaneLevel: 1, PlaneLeastVolume: 1, PlaneDoor: 4}, hows, "two doors, each level and tilted")
	assert.LessOrEqual(t, least.Bags, level.Bags)
	assert.NotEmpty(t, least.Carriers)
	assert.LessOrEqual(t, least.Slope.SI, 0.01+1e-12)
}

func TestGrindingKeepsToTheRulebooksLimits(t *testing.T) {
	job := square(-8)
	study := studyOf(t, job)
	require.Len(t, study.Grinding.Cuts, 5, "5 mm may come off concrete, a millimetre at a time")
	for i, cut := range study.Grinding.Cuts {
		assert.InDelta(t, float64(i+1)/1000, cut.Height.SI, 1e-12)
		assert.NotEmpty(t, cut.Spots)
		if i > 0 {
			assert.Greater(t, cut.Bags, study.Grinding.Cuts[i-1].Bags)
		}
	}
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "plywood"
	assert.Len(t, studyOf(t, job).Grinding.Cuts, 1, "timber hardly")
	job.Rooms[0].Answers["room.heated"] = "yes"
	assert.Empty(t, studyOf(t, job).Grinding.Cuts, "nothing off a heated floor")
}

func TestADeepFloorIsPartedIntoLiftsThatMakeUpThePour(t *testing.T) {
	job := square(70)
	plain := studyOf(t, job).Lifts[0]
	require.Nil(t, plain.Problem)
	require.Len(t, plain.Lifts, 3, "73 mm in lifts of 30 mm")
	sum := 0.0
	for _, lift := range plain.Lifts {
		sum += lift.Volume.SI
		assert.LessOrEqual(t, lift.Greatest.SI, 0.030+1e-9)
	}
	assert.InDelta(t, MakePlan(job, book).Totals.Volume.SI, sum, 1e-9)
	with := studyOf(t, job).Lifts
	require.Len(t, with, 2, "the sheet allows 60 mm with aggregate")
	assert.Len(t, with[1].Lifts, 2)
}

func TestFlatnessGoesByWhatIsWantedOrSuitsTheFinish(t *testing.T) {
	job := DemoJob("demo")
	suits := studyOf(t, job).Flatness
	assert.False(t, suits.Stated)
	assert.Contains(t, suits.Name, "15 in")
	require.Len(t, suits.Gaps, 2)
	assert.False(t, suits.Gaps[0].Kept)
	job.Answers["finish.tolerance"] = "DIN 18202 row 3"
	named := studyOf(t, job).Flatness
	assert.True(t, named.Stated)
	require.Len(t, named.Gaps, 3)
	assert.InDelta(t, 0.010, named.Gaps[2].Limit.SI, 1e-12, "10 mm over 4 m")
}

func TestAStraightLineOfReadingsAtTwelveInchesHasFNumbers(t *testing.T) {
	job := square(0)
	rows := []Reading{}
	for i := range 13 {
		height := 1200.0
		if i%2 == 1 {
			height += 25.4 / 16
		}
		rows = append(rows, Reading{X: strconv.Itoa(12 * (i + 1)), Y: "60", Height: short(height)})
	}
	job.Rooms[0].Readings.Rows, job.Rooms[0].Readings.PositionUnit = rows, "in"
	flatness := studyOf(t, job).Flatness
	require.Len(t, flatness.Lines, 1)
	assert.Equal(t, "11.3", flatness.Lines[0].Flatness, "a zigzag of 1/16 in, 13 points: FF 11.339")
	assert.Equal(t, "no departure", flatness.Lines[0].Levelness)
}

func TestIndicatorsStandInTheGroundAndClearOfThePipes(t *testing.T) {
	study := studyOf(t, DemoJob("demo"))
	plan := MakePlan(DemoJob("demo"), book).Rooms[0]
	require.NotEmpty(t, study.Indicators.Pins)
	for _, pin := range study.Indicators.Pins {
		assert.True(t, plan.Outline.Contains(pin.At))
		assert.LessOrEqual(t, pin.Head.SI, plan.Pour.Depths.Greatest.SI+1e-9)
	}
}

func TestAStairAtADoorGetsItsRisersChecked(t *testing.T) {
	job := DemoJob("demo")
	job.Rooms[0].Doors[0].Answers["stair.place"] = "foot"
	job.Rooms[0].Doors[0].Answers["stair.nearest"] = "180 mm"
	job.Rooms[0].Doors[0].Answers["stair.riser"] = "180 mm"
	door := studyOf(t, job).Heights.Doors[0]
	require.NotNil(t, door.Stair)
	assert.InDelta(t, 0.180-door.Rise.SI, door.Stair.Riser.SI, 1e-12, "the new floor takes its rise from the first riser")
	assert.False(t, door.Stair.Uniform)
	states := map[string]string{}
	for _, f := range MakePlan(job, book).Findings {
		if f.Rule == "stair-risers" {
			states[f.Subject.ID] = string(f.State)
		}
	}
	assert.Equal(t, map[string]string{"kitchen": "broken", "yard": "idle"}, states)
}

func TestADoorOnGroundThatStaysDryIsSteppedFromTheBareDeck(t *testing.T) {
	job := square(0)
	room := &job.Rooms[0]
	for i := range room.Readings.Rows {
		if room.Readings.Rows[i].Y == "0" {
			room.Readings.Rows[i].Height = "1190" // 10 mm higher along the door's wall
		}
	}
	job.Answers["finish.thickness"] = "10 mm"
	room.Doors = []Door{{ID: "hall", Name: "Hall", Wall: 0, At: "1 m", Width: "1 m", Neighbour: "1190 mm", Answers: Answers{}}}
	room.Plane = PlaneChoice{How: PlaneHand, Height: "1195 mm"}
	study := studyOf(t, job)
	for _, plane := range study.Planes {
		if plane.Choice.How == PlaneHand {
			require.Positive(t, plane.Dry.SI)
			assert.InDelta(t, 0.010, plane.Doors[0].Step.SI, 1e-9, "finish on the bare deck, level with the neighbour; the plane lies 5 mm under it")
			assert.InDelta(t, 0, plane.Doors[0].Depth.SI, 1e-9)
		}
	}
	assert.InDelta(t, 0.010, study.Heights.Doors[0].Step.SI, 1e-9)
	assert.InDelta(t, 0.010, study.Heights.Doors[0].Rise.SI, 1e-9)
	assert.InDelta(t, 0.010, MakePlan(job, book).Rooms[0].Doors[0].Step.SI, 1e-9)
}
