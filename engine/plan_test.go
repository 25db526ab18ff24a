package engine

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
	"lowspot/rules"
)

var book = ShippedRulebook()

func TestTheShippedRulebookHasNoErrorsAndItsExamplesHold(t *testing.T) {
	for _, err := range book.Errors() {
		assert.NoError(t, err)
	}
	for _, result := range book.Compiled.Examples() {
		assert.True(t, result.Passed, "%s: %s: got %s", result.Rule, result.Text, result.Got)
	}
	assert.GreaterOrEqual(t, len(book.Book.Rules), 25)
}

func TestEveryShippedCheckIsShownKeptAndBroken(t *testing.T) {
	shown := map[string]map[string]bool{}
	for _, result := range book.Compiled.Examples() {
		if shown[result.Rule] == nil {
			shown[result.Rule] = map[string]bool{}
		}
		shown[result.Rule][result.Wanted] = true
	}
	for _, rule := range book.Book.Rules {
		assert.NotEmpty(t, rule.Source, "%s has no source", rule.Name)
		if !rule.Check {
			assert.NotEmpty(t, shown[rule.Name], "%s has no example", rule.Name)
			continue
		}
		assert.True(t, shown[rule.Name]["kept"], "%s is not shown kept", rule.Name)
		assert.True(t, shown[rule.Name]["broken"], "%s is not shown broken", rule.Name)
		if rule.Applies != "" {
			assert.True(t, shown[rule.Name]["idle"], "%s is not shown idle", rule.Name)
		}
	}
}

func TestFiguresThatTheSurfaceWaitsForUseNothingWorkedOutFromIt(t *testing.T) {
	for _, figure := range []string{"least_depth"} {
		for _, name := range book.Compiled.Needs(figure) {
			word := wordByName[name]
			require.NotNil(t, word, name)
			assert.True(t, word.Asked || len(derived[name]) > 0, "%s needs %s, which is worked out later", figure, name)
		}
	}
}

// square is a room of 4 m by 3 m with readings every metre on a deck that sags by the given depth in the middle.
func square(sag float64) *Job {
	job := NewJob("square", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline.Length, room.Outline.Width = "4 m", "3 m"
	room.Decks[0].Answers["deck.kind"] = "concrete"
	for x := 0; x <= 4; x++ {
		for y := 0; y <= 3; y++ {
			height := 1200.0
			if x == 2 && (y == 1 || y == 2) {
				height += sag
			}
			room.Readings.Rows = append(room.Readings.Rows, Reading{X: strconv.Itoa(x), Y: strconv.Itoa(y), Height: short(height)})
		}
	}
	return job
}

func TestAFlatDeckTakesItsAreaTimesTheLeastDepth(t *testing.T) {
	plan := MakePlan(square(0), book)
	require.Empty(t, plan.Problems)
	assert.InEpsilon(t, 12*0.003, plan.Totals.Volume.SI, 1e-12, "12 m² at 3 mm over concrete")
	assert.Equal(t, 3, plan.Totals.Bags, "36 L and 3 % of waste at 14 L a bag")
	assert.Equal(t, "36 L", plan.Totals.Volume.Text)
}

func TestTheSagIsAPyramidOnTheTriangles(t *testing.T) {
	// By hand: two neighbouring spots 10 mm low. Four squares of 1 m² have one low corner and are cut off beside it: half a square × 10/3 mm
	// each. Two squares have two: half a square × 20/3 mm and half × 10/3 mm. Together 16.667 L over the flat deck's 36.
	plan := MakePlan(square(10), book)
	assert.InDelta(t, 0.036+0.010*(4*0.5/3+2*(0.5*2/3+0.5/3)), plan.Totals.Volume.SI, 1e-12)
	assert.InDelta(t, 0.013, plan.Rooms[0].Pour.Depths.Greatest.SI, 1e-12)
}

func TestMovingEveryReadingMovesNothingButTheDatum(t *testing.T) {
	job := DemoJob("demo")
	before := MakePlan(job, book)
	for i := range job.Rooms[0].Readings.Rows {
		row := &job.Rooms[0].Readings.Rows[i]
		height, _ := strconv.ParseFloat(row.Height, 64)
		row.Height = short(height + 256)
	}
	after := MakePlan(job, book)
	assert.InEpsilon(t, before.Totals.Volume.SI, after.Totals.Volume.SI, 1e-9)
	assert.Equal(t, before.Totals.Bags, after.Totals.Bags)
	assert.InDelta(t, before.Rooms[0].Plane.Staff.SI+0.256, after.Rooms[0].Plane.Staff.SI, 1e-12)
}

func TestTurningOrMirroringTheRoomChangesNoBag(t *testing.T) {
	before := MakePlan(asCorners(DemoJob("demo"), func(x, y float64) (float64, float64) { return x, y }), book)
	for name, turn := range map[string]func(x, y float64) (float64, float64){
		"by a quarter": func(x, y float64) (float64, float64) { return -y, x },
		"mirrored":     func(x, y float64) (float64, float64) { return -x, y },
		"by 33 degrees": func(x, y float64) (float64, float64) {
			c, s := math.Cos(0.576), math.Sin(0.576)
			return c*x - s*y + 3, s*x + c*y + 1
		},
	} {
		after := MakePlan(asCorners(DemoJob("demo"), turn), book)
		assert.InEpsilon(t, before.Totals.Volume.SI, after.Totals.Volume.SI, 1e-6, name)
		assert.Equal(t, before.Totals.Bags, after.Totals.Bags, name)
	}
}

// asCorners writes the demo job's room as corners, with everything in it turned.
func asCorners(job *Job, turn func(x, y float64) (float64, float64)) *Job {
	plan := MakePlan(job, book)
	room := &job.Rooms[0]
	spot := func(x, y float64) Spot {
		x, y = turn(x, y)
		return Spot{X: strconv.FormatFloat(x, 'f', 12, 64) + " m", Y: strconv.FormatFloat(y, 'f', 12, 64) + " m"}
	}
	room.Outline = Shape{How: ShapeCorners}
	for _, p := range plan.Rooms[0].Outline.Outer {
		room.Outline.Corners = append(room.Outline.Corners, spot(p.X, p.Y))
	}
	room.KeepOuts, room.Doors, room.Penetrations, room.Decks = nil, nil, nil, room.Decks[:1]
	for i, reading := range plan.Rooms[0].Readings {
		moved := spot(reading.At.X, reading.At.Y)
		room.Readings.Rows[i].X, room.Readings.Rows[i].Y = moved.X, moved.Y
	}
	return job
}

func TestAPlaneByAnyWayKeepsItsWord(t *testing.T) {
	job := DemoJob("demo")
	level := MakePlan(job, book)
	job.Rooms[0].Plane = PlaneChoice{How: PlaneLeastVolume, SlopeLimit: "2 %"}
	tilted := MakePlan(job, book)
	assert.Less(t, tilted.Totals.Volume.SI, level.Totals.Volume.SI)
	assert.GreaterOrEqual(t, tilted.Rooms[0].Pour.Depths.Least.SI, level.Rooms[0].Decks[1].Least.SI-1e-9)
	job.Rooms[0].Plane = PlaneChoice{How: PlaneLevel, Raise: "5 mm"}
	raised := MakePlan(job, book)
	assert.InEpsilon(t, level.Totals.Volume.SI+0.005*level.Totals.Area.SI, raised.Totals.Volume.SI, 1e-9)
	job.Rooms[0].Plane = PlaneChoice{How: PlaneHand, Height: "1185"}
	byHand := MakePlan(job, book)
	assert.InDelta(t, 1.185, byHand.Rooms[0].Plane.Staff.SI, 1e-12)
	job.Rooms[0].Plane = PlaneChoice{How: PlaneDoor, Door: "kitchen"}
	met := MakePlan(job, book)
	assert.InDelta(t, 0, met.Rooms[0].Doors[0].Step.SI, 1e-12, "the finished floor meets the kitchen's")
}

func TestWhatCannotBeReadIsNamedAndHidesNothingElse(t *testing.T) {
	for name, bad := range map[string]struct {
		change func(*Job)
		field  string
		code   string
	}{
		"a wall in kilograms":   {func(j *Job) { j.Rooms[0].Outline.Walk[1].Length = "1.6 kg" }, "rooms/0/outline/walk/1/length", "dimension"},
		"a wall of nothing":     {func(j *Job) { j.Rooms[0].Outline.Walk[1].Length = "0 m" }, "rooms/0/outline/walk/1/length", "not-positive"},
		"a turn upwards":        {func(j *Job) { j.Rooms[0].Outline.Walk[1].Turn = "up" }, "rooms/0/outline/walk/1/turn", "turn"},
		"a reading in words":    {func(j *Job) { j.Rooms[0].Readings.Rows[3].Height = "low" }, "rooms/0/readings/rows/3/height", "number"},
		"a door past its wall":  {func(j *Job) { j.Rooms[0].Doors[0].Width = "2 m" }, "rooms/0/doors/0/width", "door-too-wide"},
		"a drain in the garden": {func(j *Job) { j.Rooms[0].Penetrations[0].At.X = "12 m" }, "rooms/0/penetrations/0/at", "outside"},
		"a strange choice":      {func(j *Job) { j.Rooms[0].Decks[0].Answers["deck.kind"] = "cheese" }, "rooms/0/decks/0/answers/deck.kind", "choice"},
		"an unknown word":       {func(j *Job) { j.Answers["air.colour"] = "blue" }, "answers/air.colour", "unknown-word"},
		"a keep-out outside":    {func(j *Job) { j.Rooms[0].KeepOuts[0].Shape.Length = "9 m" }, "rooms/0/keepOuts/0/shape", "hole-outside"},
		"a bag without a unit":  {func(j *Job) { j.Sheets["leveller"].Values["sheet.bag_mass"] = "25" }, "sheets/leveller/values/sheet.bag_mass", "no-unit"},
	} {
		job := DemoJob("demo")
		bad.change(job)
		plan := MakePlan(job, book)
		require.NotEmpty(t, plan.Problems, name)
		assert.Equal(t, bad.field, plan.Problems[0].Field, name)
		assert.Equal(t, bad.code, plan.Problems[0].Code, name)
		assert.NotEmpty(t, plan.Problems[0].Remedy, name)
		if plan.Rooms[0].Drawn {
			assert.NotNil(t, plan.Rooms[0].Pour, name)
		}
	}
}

func TestAKeepOutNearlyAgainstTheWallLeavesNoStripOfFloorBehindIt(t *testing.T) {
	job := square(0)
	job.Rooms[0].KeepOuts = []KeepOut{{ID: "bath", Shape: Shape{How: ShapeRectangle, Length: "0.70 m", Width: "1.69 m", At: &Spot{"5 mm", "1.305 m"}}}}
	plan := MakePlan(job, book)
	require.Empty(t, plan.Problems)
	assert.InDelta(t, 12-0.705*1.695, plan.Totals.Area.SI, 1e-9, "the bath reaches both walls")
}

func TestAnOutlineThatCannotBeIsShownWithTheSpotWhereItGoesWrong(t *testing.T) {
	job := DemoJob("demo")
	job.Rooms[0].Outline.Walk[0].Length = "6.20 m"
	plan := MakePlan(job, book)
	require.Equal(t, "does-not-close", plan.Problems[0].Code)
	require.Len(t, plan.Rooms[0].Sketch, 7, "six walls and where they ended")
	assert.Equal(t, plan.Rooms[0].Sketch[6], *plan.Problems[0].At)

	job.Rooms[0].Outline = Shape{How: ShapeCorners, Corners: []Spot{{"0 m", "0 m"}, {"4 m", "3 m"}, {"4 m", "0 m"}, {"0 m", "3 m"}}}
	plan = MakePlan(job, book)
	require.Equal(t, "crosses-itself", plan.Problems[0].Code)
	assert.InDelta(t, 2, plan.Problems[0].At.X, 1e-9)
	assert.InDelta(t, 1.5, plan.Problems[0].At.Y, 1e-9)
	assert.Len(t, plan.Rooms[0].Sketch, 5)
}

func TestThinkingOverTheDeckChangesTheLeastDepth(t *testing.T) {
	job := square(0)
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "plywood"
	assert.InEpsilon(t, 12*0.010, MakePlan(job, book).Totals.Volume.SI, 1e-12, "the sheet asks 10 mm over wood")
	delete(job.Rooms[0].Decks[0].Answers, "deck.kind")
	plan := MakePlan(job, book)
	assert.InEpsilon(t, 12*0.010, plan.Totals.Volume.SI, 1e-12, "nobody says what it is: the deeper of the two")
	asked := map[string]bool{}
	for _, question := range plan.Questions {
		asked[question.Word] = true
	}
	assert.True(t, asked["deck.kind"], "and the plan asks")
}

func TestAJobOfNothingHasAPlanOfNothing(t *testing.T) {
	plan := MakePlan(&Job{}, book)
	assert.False(t, plan.Totals.Ready)
	assert.Zero(t, plan.Totals.Bags)
	_, err := json.Marshal(plan)
	assert.NoError(t, err)
}

func TestEveryCheckOfTheDemoCanBeExplained(t *testing.T) {
	job := DemoJob("demo")
	for _, finding := range MakePlan(job, book).Findings {
		assert.NotEqual(t, rules.Faulty, finding.State, "%s: %v", finding.Rule, finding.Fault)
		explanation, found := Explain(job, book, finding.Rule, finding.Subject)
		require.True(t, found, finding.Rule)
		assert.NotEmpty(t, explanation.Steps, finding.Rule)
	}
}

// The corpus is also planned in WebAssembly, where the bytes must be the same: see tests/reference.
func TestThePlansOfTheCorpusAreAsAccepted(t *testing.T) {
	files, err := filepath.Glob("testdata/jobs/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		document, err := os.ReadFile(file)
		require.NoError(t, err)
		job, err := ReadJob(document)
		require.NoError(t, err, file)
		plan := MakePlan(job, book)
		bytes, err := json.Marshal(plan)
		require.NoError(t, err, file)
		assert.NotContains(t, string(bytes), "NaN")
	}
}

func FuzzReadJob(f *testing.F) {
	for _, job := range []*Job{DemoJob("demo"), square(10), {Format: 1}} {
		document, _ := json.Marshal(job)
		f.Add(document)
	}
	f.Add([]byte(`{"format":1,"rooms":[{"outline":{"how":"corners","corners":[{"x":"1e300 km","y":"NaN m"}]}}]}`))
	f.Fuzz(func(t *testing.T, document []byte) {
		job, err := ReadJob(document)
		if err != nil {
			return
		}
		plan := MakePlan(job, book)
		if _, err := json.Marshal(plan); err != nil {
			t.Fatal(err)
		}
		for _, room := range plan.Rooms {
			if room.Pour != nil && (math.IsNaN(room.Pour.Volume.SI) || room.Pour.Volume.SI < 0) {
				t.Fatalf("volume %v", room.Pour.Volume.SI)
			}
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	for _, n := range []int{200, 2000, 20000} {
		job := Surveyed(n)
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			for b.Loop() {
				MakePlan(job, book)
			}
		})
	}
}
