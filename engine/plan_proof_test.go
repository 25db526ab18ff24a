package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/climate"
	"lowspot/engine/deck"
	"lowspot/engine/floor"
	"lowspot/engine/people"
	"lowspot/engine/pour"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// proved works a job out and gives a word's value on its first room's first deck, or on the job.
func proved(t *testing.T, job *Job) (value func(word string) float64, known func(word string) bool) {
	t.Helper()
	w := workOut(job, book)
	facts := w.facts
	all := func(word string) (rules.Given, bool) {
		if given, ok := facts[word]; ok {
			return given, true
		}
		if given, ok := w.rooms[0].facts[word]; ok {
			return given, true
		}
		given, ok := w.rooms[0].decks[0].facts[word]
		return given, ok
	}
	value = func(word string) float64 {
		given, ok := all(word)
		require.True(t, ok, "%s is worked out", word)
		return given.Value.Number
	}
	known = func(word string) bool { _, ok := all(word); return ok }
	return value, known
}

// timber is a room of 4 m by 3 m on joists, level enough to take 12 mm everywhere, with tile on top.
func timber(answers Answers) *Job {
	job := square(0)
	job.Rooms[0].Plane = PlaneChoice{How: PlaneLevel, Raise: "2 mm"}
	job.Answers["finish.kind"], job.Answers["finish.thickness"] = "small tile", "12 mm"
	job.Rooms[0].Decks[0].Answers = Answers{"deck.kind": "plywood", "deck.thickness": "18 mm"}
	for name, typed := range answers {
		job.Rooms[0].Decks[0].Answers[name] = typed
	}
	return job
}

func TestJoistsOfTheSpanTableBendInThePlanAsTheyDoByHand(t *testing.T) {
	// 2×10 of Douglas fir-larch No. 2 at 16 in over 12 ft under 40 psf: 0.1572 in, L/916 (5wL⁴/(384EI)).
	value, _ := proved(t, timber(Answers{"joist.size": "2×10", "joist.grade": "douglas-fir-larch", "joist.spacing": "16 in", "joist.span": "12 ft"}))
	assert.InDelta(t, 0.15720*inch, value("joist.deflection_live"), 1e-5*inch)
	assert.InDelta(t, 916, value("joist.ratio"), 0.5)
	assert.Less(t, value("joist.ratio_total"), value("joist.ratio"), "dead load bends them too")
	assert.Less(t, value("joist.bending"), value("joist.bending_allowed"))
	assert.InDelta(t, 10*47.88026+value("deck.pour_load")+0.012*2200*deck.Gravity, value("deck.dead_load"), 0.01, "10 psf of floor, the pour, and 12 mm of tile")
	assert.InEpsilon(t, 0.012*2000*deck.Gravity, value("deck.pour_load"), 1e-9, "12 mm at 2000 kg/m³")
}

func TestTheSpanAllowedShrinksWithAStifferFinish(t *testing.T) {
	spans := map[string]float64{}
	for _, finish := range []string{"small tile", "large tile", "stone"} {
		job := timber(Answers{"joist.size": "2×8", "joist.grade": "c24", "joist.spacing": "16 in", "joist.span": "10 ft"})
		job.Answers["finish.kind"] = finish
		value, _ := proved(t, job)
		spans[finish] = value("joist.span_allowed")
	}
	assert.InEpsilon(t, 1.259921, spans["small tile"]/spans["stone"], 1e-6, "L/360 against L/720: the cube root of two")
	assert.Greater(t, spans["large tile"], spans["stone"])
}

func TestJoistsOfAnySizeAreMeasured(t *testing.T) {
	answers := Answers{"joist.size": "other", "joist.grade": "c24", "joist.spacing": "400 mm", "joist.span": "3.1 m"}
	_, known := proved(t, timber(answers))
	assert.False(t, known("joist.ratio"), "no size, no bend")
	answers["joist.breadth"], answers["joist.depth"] = "47 mm", "195 mm"
	value, known := proved(t, timber(answers))
	want, err := deck.Joists{Size: deck.Size{Breadth: 0.047, Depth: 0.195}, Grade: grade(t, "c24"), Spacing: 0.4, Span: 3.1}.Bend(deck.Loads{Live: 40 * 47.88025898})
	require.NoError(t, err)
	assert.InEpsilon(t, want.LiveRatio, value("joist.ratio"), 1e-8)
	assert.False(t, known("joist.bending"), "no bending stress is known for C24")
	answers["joist.continuous"] = "yes"
	over, _ := proved(t, timber(answers))
	assert.Greater(t, over("joist.ratio"), value("joist.ratio"), "joists that run on bend less")
}

func grade(t *testing.T, id string) deck.Grade {
	t.Helper()
	g, known := deck.GradeNamed(id)
	require.True(t, known, id)
	return g
}

func TestSheetsAreCountedAndTheirJointsFilled(t *testing.T) {
	answers := Answers{"joist.spacing": "400 mm", "deck.sheet_length": "2.4 m", "deck.sheet_width": "1.2 m", "deck.fastener_edge": "150 mm", "deck.fastener_field": "300 mm", "deck.gap": "3 mm"}
	value, _ := proved(t, timber(answers))
	// By hand: rows of 1.2, 1.2 and 0.6 m: two long joints of 4 m; 2.4 in the first and third row, 1.2 and 3.6 in the second: 1.2 + 2 × 1.2 + 0.6 m.
	assert.InDelta(t, 2*4+1.2+2*1.2+0.6, value("deck.joint_length"), 1e-9)
	assert.Equal(t, 7.0, value("deck.sheets"))
	volume := value("deck.joint_length") * 0.003 * 0.018 * 1.15
	assert.InEpsilon(t, volume, value("filler.volume"), 1e-9, "length × gap × thickness and 15 % on the tools")
	mix, err := deck.UsualFiller.MixFor(volume)
	require.NoError(t, err)
	assert.InEpsilon(t, mix.Mass, value("filler.mass"), 1e-9)
	assert.InEpsilon(t, mix.Water, value("filler.water"), 1e-9)
	assert.InEpsilon(t, 2*value("filler.water"), value("filler.powder"), 1e-9, "two of powder to one of water")
	answers["deck.layers"] = "2"
	two, _ := proved(t, timber(answers))
	assert.Greater(t, two("deck.fasteners"), value("deck.fasteners"), "a sheet on a sheet is fastened all over")
}

func TestASlabsTestsAreCountedPlacedAndJudged(t *testing.T) {
	job := square(0)
	answers := job.Rooms[0].Decks[0].Answers
	answers["deck.thickness"], answers["slab.sides"], answers["moisture.method"] = "100 mm", "one", "probes"
	value, _ := proved(t, job)
	assert.Equal(t, 3.0, value("moisture.tests_needed"), "three for the first 1000 ft²")
	assert.InEpsilon(t, 0.040, value("moisture.probe_depth"), 1e-9, "40 % of a slab that dries from one side")
	tests := MakePlan(job, book).Rooms[0].Decks[0].Moisture
	require.Len(t, tests.Spots, 3)
	assert.False(t, tests.Satisfied)
	assert.NotEmpty(t, tests.Open)
	for name, typed := range (Answers{"slab.humidity": "70 %", "slab.probes": "3", "slab.probe_depth": "40 mm", "slab.probe_wait": "24 h", "slab.conditioned": "48 h", "slab.probe_checked": "10 d", "slab.reading_age": "3 d"}) {
		answers[name] = typed
	}
	tests = MakePlan(job, book).Rooms[0].Decks[0].Moisture
	assert.True(t, tests.Satisfied, "%v", tests.Open)
	answers["moisture.method"], answers["slab.sheet_damp"], answers["slab.sheet_tests"], answers["slab.sheet_time"] = "plastic sheet", "no", "1", "16 h"
	value, _ = proved(t, job)
	assert.Equal(t, 1.0, value("moisture.tests_needed"), "one sheet for each 500 ft²")
}

func TestTestSpotsLieOnTheirOwnPartOfTheDeck(t *testing.T) {
	w := workOut(DemoJob("demo"), book)
	found := false
	for i := range w.rooms[0].decks {
		d := &w.rooms[0].decks[i]
		for _, spot := range w.testSpots(d) {
			found = true
			assert.True(t, d.lies(spot.At), "%v", spot.At)
		}
	}
	assert.True(t, found)
	job := square(0)
	job.Rooms[0].Decks = append(job.Rooms[0].Decks, DeckArea{ID: "middle", Shape: &Shape{How: ShapeRectangle, Length: "1.5 m", Width: "1.5 m", At: &Spot{"1 m", "0.5 m"}}, Answers: Answers{"deck.kind": "plywood"}})
	spots := MakePlan(job, book).Rooms[0].Decks[0].Moisture.Spots
	assert.NotEmpty(t, spots)
	for _, spot := range spots {
		in := spot.At.X > 1 && spot.At.X < 2.5 && spot.At.Y > 0.5 && spot.At.Y < 2
		assert.False(t, in, "%v lies on the plywood", spot.At)
	}
}

func TestTheAirIsProvedByThePublishedFormulas(t *testing.T) {
	job := square(0)
	for name, typed := range (Answers{"air.temperature": "20 °C", "air.humidity": "65 %", "deck.temperature": "16 °C", "air.speed": "5 km/h"}) {
		job.Answers[name] = typed
	}
	value, _ := proved(t, job)
	air := climate.Air{Temperature: 293.15, Humidity: 0.65}
	assert.InDelta(t, 273.15+13.227, value("dew.point"), 0.03, "20 °C and 65 %")
	assert.InDelta(t, 16-13.227, value("dew.margin"), 0.03)
	most := climate.Air{Temperature: 293.15, Humidity: value("dew.humidity_most")}
	margin, err := climate.DewMargin(289.15, most)
	require.NoError(t, err)
	assert.InDelta(t, 3, margin, 1e-6, "at that humidity the deck is just 3 °C above")
	rate, err := climate.Evaporation(289.15, air, 5/3.6)
	require.NoError(t, err)
	assert.InEpsilon(t, rate, value("evaporation.rate"), 1e-12)
	atMost, err := climate.Evaporation(289.15, air, value("evaporation.wind_most"))
	require.NoError(t, err)
	assert.InEpsilon(t, 0.5/3600, atMost, 1e-9, "in that draught the pour loses just what it may")
}

func TestTheWaterBringsTheMixJustIntoItsWindow(t *testing.T) {
	job := square(0)
	job.Answers["powder.temperature"] = "18 °C"
	value, _ := proved(t, job)
	powder := pour.Portion{Mass: 25, Temperature: 291.15}
	for word, wanted := range map[string]float64{"water.coldest": 283.15, "water.warmest": 298.15} {
		mixed, err := pour.MixTemperature(pour.Portion{Mass: 5 * waterDensity / 1000, Temperature: value(word)}, powder)
		require.NoError(t, err)
		assert.InDelta(t, wanted, mixed, 1e-9, word)
	}
	job.Answers["powder.temperature"] = "-15 °C"
	_, known := proved(t, job)
	assert.True(t, known("water.warmest"))
}

func TestPeopleAreProvedByThePublishedFormulas(t *testing.T) {
	job := square(0)
	for name, typed := range (Answers{"carry.distance": "20 m", "carry.per_trip": "1", "lift.horizontal": "300 mm", "lift.vertical": "750 mm", "lift.travel": "250 mm", "stack.bags": "4",
		"dust.task": "grinder-shroud", "dust.wheel": "5 in", "dust.hours": "5 h", "dust.indoors": "yes"}) {
		job.Answers[name] = typed
	}
	value, _ := proved(t, job)
	assert.Equal(t, 3.0, value("carry.trips"), "three bags, one at a time")
	carried, err := people.Carry(3, 25, 1, 20)
	require.NoError(t, err)
	assert.Equal(t, carried.Walked, value("carry.walk"))
	assert.InDelta(t, 23*(25.0/30)*1*1*0.97*1, value("lift.limit"), 1e-9, "LC 23 kg, HM 25/30, a lift every two minutes for an hour")
	assert.InEpsilon(t, 25/value("lift.limit"), value("lift.index"), 1e-12)
	assert.InEpsilon(t, 4*25*9.80665/0.24, value("stack.load"), 1e-12)
	assert.InDelta(t, 59.0e-3, value("dust.airflow_needed"), 0.05e-3, "125 cu ft/min at a 5 in wheel")
	assert.Equal(t, 10.0, value("respirator.needed"), "indoors over four hours")
	job.Answers["dust.hours"] = "3 h"
	value, _ = proved(t, job)
	assert.Equal(t, 0.0, value("respirator.needed"))
	job.Units = quantity.US
	us, _ := proved(t, job)
	assert.NotEqual(t, value("lift.limit"), us("lift.limit"), "51 lb and 23 kg are two constants")
	job.Answers["lift.vertical"] = "1.8 m"
	_, known := proved(t, job)
	assert.True(t, known("lift.limit"))
	assert.False(t, known("lift.index"), "over the head nothing may be lifted, and there is no index")
}

func TestARoomIsPrimedWhenItsSlowestDeckIsDry(t *testing.T) {
	job := DemoJob("demo")
	job.Answers["deck.temperature"] = "18 °C"
	value, _ := proved(t, job)
	assert.Equal(t, 4*3600.0, value("prime.ready"), "two coats of two hours on the porous screed")
	assert.Equal(t, 24*3600.0, value("prime.latest"), "the plywood's one coat")
	job.Answers["deck.temperature"] = "12 °C"
	cold, _ := proved(t, job)
	assert.Equal(t, 6*3600.0, cold("prime.ready"), "half as long again below 15 °C")
}

func TestARoomsReachAndItsDeepestPour(t *testing.T) {
	value, _ := proved(t, square(10))
	assert.InDelta(t, 5, value("room.longest"), 1e-12, "3, 4, 5")
	assert.InDelta(t, 0.013, value("pour.greatest"), 1e-12)
}

func TestAnAnswerThatAFormulaRefusesIsNamedWhereItStands(t *testing.T) {
	whole := Answers{"joist.size": "2×10", "joist.grade": "c16", "joist.spacing": "16 in", "joist.span": "12 ft"}
	for _, bad := range []struct{ word, typed, field string }{
		{"joist.span", "90 m", "rooms/0/decks/0/answers/joist.span"},
		{"joist.spacing", "9 m", "rooms/0/decks/0/answers/joist.spacing"},
		{"deck.sheet_length", "99 m", "rooms/0/decks/0/answers/deck.sheet_length"},
		{"air.humidity", "150 %", "answers/air.humidity"},
		{"lift.horizontal", "9 m", "answers/lift.horizontal"},
		{"dust.wheel", "5 m", "answers/dust.wheel"},
		{"stack.footprint", "900 m²", "answers/stack.footprint"},
	} {
		job := timber(whole)
		for name, typed := range (Answers{"air.temperature": "20 °C", "air.humidity": "50 %", "lift.horizontal": "300 mm", "lift.vertical": "1 m", "lift.travel": "300 mm", "dust.task": "grinder-shroud", "dust.wheel": "5 in", "stack.bags": "2"}) {
			job.Answers[name] = typed
		}
		answers := job.Answers
		if wordByName[bad.word].Scope == ScopeDeck {
			answers = job.Rooms[0].Decks[0].Answers
		}
		answers[bad.word] = bad.typed
		plan := MakePlan(job, book)
		require.NotEmpty(t, plan.Problems, bad.word)
		assert.Equal(t, bad.field, plan.Problems[0].Field)
		assert.NotEmpty(t, plan.Problems[0].Remedy, bad.word)
		assert.NotNil(t, plan.Rooms[0].Pour, "the pour is still worked out")
	}
}

func TestOnlyWhatIsStillOpenIsAskedAndOnlyWhereItMakesSense(t *testing.T) {
	asked := func(job *Job) map[string]Question {
		byWord := map[string]Question{}
		for _, q := range MakePlan(job, book).Questions {
			byWord[q.Word] = q
		}
		return byWord
	}
	wood := asked(timber(Answers{"joist.size": "2×10", "joist.grade": "c24", "joist.spacing": "400 mm"}))
	assert.Contains(t, wood, "joist.span")
	for _, word := range []string{"joist.size", "joist.grade", "joist.depth", "deck.contaminated", "moisture.method", "gypsum.skin_off"} {
		assert.NotContains(t, wood, word, "answered, or no question for plywood on 2×10")
	}
	assert.Contains(t, asked(timber(Answers{"joist.size": "other"})), "joist.depth")
	slab := asked(square(0))
	assert.Contains(t, slab, "moisture.method")
	for _, word := range []string{"joist.size", "deck.gap", "slab.emission", "slab.probes", "tile.ground"} {
		assert.NotContains(t, slab, word, "no question for a slab that nobody measured")
	}
}

func TestNotToKnowIsToldWithWhatItRisks(t *testing.T) {
	for _, q := range MakePlan(DemoJob("demo"), book).Questions {
		require.Len(t, q.Risks, len(q.Checks), q.Word)
		for i, risk := range q.Risks {
			assert.Equal(t, q.Checks[i], risk.Rule)
			assert.Contains(t, []string{rules.Stop, rules.Fix, rules.Watch}, risk.Weight)
		}
	}
}

func TestEveryQuestionIsAWholeOneAndWaitsForSomethingThatCanBeTrue(t *testing.T) {
	wider := map[string][]string{ScopeJob: {ScopeJob}, ScopeRoom: {ScopeJob, ScopeRoom}, ScopeDeck: {ScopeJob, ScopeRoom, ScopeDeck}, ScopeDoor: {ScopeJob, ScopeRoom, ScopeDoor},
		ScopePenetration: {ScopeJob, ScopeRoom, ScopePenetration}}
	seen := map[string]bool{}
	for _, word := range vocabulary {
		assert.False(t, seen[word.Name], "%s is there twice", word.Name)
		seen[word.Name] = true
		assert.NotEmpty(t, word.Meaning, word.Name)
		if word.Asked && !isOne(word.Step, SheetKinds...) {
			assert.NotEmpty(t, word.Question, word.Name)
			assert.NotEmpty(t, word.Why, word.Name)
			assert.NotEmpty(t, word.How, word.Name)
		}
		if word.When != "" {
			condition := wordByName[word.When]
			require.NotNil(t, condition, word.When)
			assert.Equal(t, rules.Truth, condition.Type.Kind, word.When)
			assert.Contains(t, wider[word.Scope], condition.Scope, "%s is said of what %s is asked of", word.When, word.Name)
		}
	}
	for word, sources := range derived {
		assert.NotNil(t, wordByName[word], word)
		for _, source := range sources {
			require.NotNil(t, wordByName[source], source)
			assert.True(t, wordByName[source].Asked, "%s can be asked", source)
		}
	}
}

func TestThePageIsToldWhatHolds(t *testing.T) {
	plan := MakePlan(DemoJob("demo"), book)
	assert.Contains(t, plan.Holds, "dust.used")
	byKind := map[string][]string{}
	for _, d := range plan.Rooms[0].Decks {
		byKind[d.Kind] = d.Holds
	}
	assert.Contains(t, byKind["plywood"], "deck.wood")
	assert.NotContains(t, byKind["plywood"], "deck.hard")
	assert.Contains(t, byKind["screed"], "deck.screed")
	assert.Contains(t, plan.Rooms[0].Doors[0].Holds, "door.dammed")
	assert.Contains(t, plan.Rooms[0].Penetrations[0].Holds, "penetration.drain")
	assert.NotNil(t, plan.Rooms[0].Holds)
	for _, p := range plan.Rooms[0].Decks {
		assert.Equal(t, p.Kind == "screed", p.Moisture != nil, p.Kind)
	}
}

func TestTheShippedRulesAreManyAndEachHasItsSource(t *testing.T) {
	checks := 0
	for _, rule := range book.Book.Rules {
		if rule.Check {
			checks++
		}
	}
	assert.GreaterOrEqual(t, checks, 90)
}

func TestTheSpotsOfOneOutlineAreNestedSoThatMoreMayBeAskedFor(t *testing.T) {
	outline := floor.Outline{Outer: floor.Ring{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 5}, {X: 0, Y: 5}}}
	few, err := deck.TestSpots(outline, 3)
	require.NoError(t, err)
	many, err := deck.TestSpots(outline, 9)
	require.NoError(t, err)
	assert.Equal(t, few, many[:3])
}

func TestAWoodDeckListsNoSlabsFiguresAndASlabNoJoists(t *testing.T) {
	listed := func(kind string) (names []string) {
		job := square(5)
		job.Rooms[0].Decks[0].Answers["deck.kind"] = kind
		for _, figure := range MakePlan(job, book).Rooms[0].Decks[0].Figures {
			names = append(names, figure.Name)
		}
		return names
	}
	wood, slab := listed("plywood"), listed("concrete")
	for _, name := range []string{"slab_humidity_most", "emission_most", "probe_depth", "pull_off_least", "screed_least"} {
		assert.NotContains(t, wood, name)
	}
	for _, name := range []string{"joist_spacing_most", "fastener_edge_most", "least_deck", "deck_screws", "screed_least"} {
		assert.NotContains(t, slab, name)
	}
	assert.Contains(t, wood, "joist_spacing_most")
	assert.Contains(t, slab, "emission_most")
	assert.Contains(t, wood, "least_depth")
}
