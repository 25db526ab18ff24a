package rules

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

func TestFiguresComeTo(t *testing.T) {
	for _, c := range []struct{ header, value, facts, comes string }{
		{"dimension: length", "depth.least + mm(2)", "depth.least = 6 mm", "8 mm"},
		{"dimension: length", "inch(3/8)", "", "9.5 mm"},
		{"dimension: length", "pour.volume / deck.area", "pour.volume = 120 L, deck.area = 8 m²", "15 mm"},
		{"dimension: area", "depth.least ** 2", "depth.least = 2 m", "4 m²"},
		{"dimension: length", "sqrt(deck.area)", "deck.area = 9 m²", "3 m"},
		{"dimension: yield", "sheet.bag_yield / sheet.bag_mass", "sheet.bag_yield = 14 L, sheet.bag_mass = 25 kg", "0.56 L/kg"},
		{"dimension: temperature", "air.temperature + kelvin(3)", "air.temperature = 18 °C", "21 °C"},
		{"dimension: temperature", "fahrenheit(68)", "", "20 °C"},
		{"dimension: temperature", "air.temperature + (water.temperature - air.temperature) / 2", "air.temperature = 20 °C, water.temperature = 10 °C", "15 °C"},
		{"dimension: temperature difference", "air.temperature - water.temperature", "air.temperature = 20 °C, water.temperature = 12 °C", "8 °C"},
		{"dimension: temperature difference", "fahrenheit_degrees(9)", "", "5 °C"},
		{"dimension: number", "percent(50) * 3", "", "1.5"},
		{"dimension: number", "ceil(job.bags * 1.1)", "job.bags = 10", "11"},
		{"dimension: number", "min(job.bags, 3, crew.people)", "job.bags = 10, crew.people = 2", "2"},
		{"dimension: number", "max([job.bags, 3])", "job.bags = 10", "10"},
		{"dimension: length", "ceil(depth.least, mm(5))", "depth.least = 6 mm", "10 mm"},
		{"dimension: length", "floor(depth.least, mm(5))", "depth.least = 6 mm", "5 mm"},
		{"dimension: length", "round(depth.least, mm(5))", "depth.least = 8 mm", "10 mm"},
		{"dimension: length", "abs(mm(-3))", "", "3 mm"},
		{"dimension: length", "-depth.least + mm(10)", "depth.least = 6 mm", "4 mm"},
		{"dimension: length", "let d = depth.least; d > mm(5) ? d : mm(5)", "depth.least = 6 mm", "6 mm"},
		{"dimension: length", "if deck.wood { mm(10) } else { mm(3) }", "deck.wood = no", "3 mm"},
		{"dimension: length", "sheet.least_depth_wood ?? sheet.least_depth ?? mm(10)", "sheet.least_depth = 4 mm", "4 mm"},
		{"dimension: length", "sheet.least_depth ?? mm(10)", "", "10 mm"},
		{"dimension: number", "count([depth.least, depth.greatest], # > mm(5))", "depth.least = 3 mm, depth.greatest = 9 mm", "1"},
		{"dimension: length", "sum([depth.least, depth.greatest])", "depth.least = 3 mm, depth.greatest = 9 mm", "12 mm"},
		{"dimension: length", "[depth.least, depth.greatest] | sum(# * 2)", "depth.least = 3 mm, depth.greatest = 9 mm", "24 mm"},
		{"dimension: money", "bag.price * job.bags", "bag.price = 30, job.bags = 3", "90.00"},
		{"dimension: money", "money(2.5) * 2", "", "5.00"},
		{"kind: truth", `deck.kind in ["plywood", "osb"]`, "deck.kind = osb", "yes"},
		{"kind: truth", `deck.kind not in ["plywood", "osb"]`, "deck.kind = osb", "no"},
		{"kind: truth", "any([depth.least], # > mm(5)) && none([depth.least], # > mm(9)) && one([depth.least], # > mm(1)) && all([depth.least], # < m(1))", "depth.least = 6 mm", "yes"},
		{"kind: truth", "mm(3) < depth.least < mm(9)", "depth.least = 6 mm", "yes"},
		{"kind: truth", "known(deck.area)", "", "no"},
		{"kind: choice\n choices: thin, thick", `depth.least < mm(5) ? "thin" : "thick"`, "depth.least = 3 mm", "thin"},
		{"kind: text", `deck.note == "" ? "none" : deck.note`, "deck.note = ask the owner", "ask the owner"},
	} {
		assert.Equal(t, c.comes, comesTo(t, c.header, c.value, c.facts), c.value)
	}
}

// 3/8 in is 9.525 mm by definition of the inch (25.4 mm, NIST Handbook 44, Appendix C), whatever the last bit says.
func TestQuantitiesThatAreEqualButForRoundingCountAsEqual(t *testing.T) {
	for _, c := range []struct {
		condition, facts string
		state            State
	}{
		{"depth.least >= mm(9.525)", "depth.least = 3/8 in", Kept},
		{"depth.least <= mm(9.525)", "depth.least = 3/8 in", Kept},
		{"depth.least > mm(9.525)", "depth.least = 3/8 in", Broken},
		{"depth.least == mm(9.525)", "depth.least = 3/8 in", Kept},
		{"depth.least != mm(9.525)", "depth.least = 3/8 in", Broken},
		{"mm(0.1) + mm(0.2) == mm(0.3)", "", Kept},
		{"ceil(mm(254) / inch(1)) == 10", "", Kept},
		{"ceil(3 * 1.1 / 0.11) == 30", "", Kept},
		{"floor(0.3 / 0.1) == 3", "", Kept},
	} {
		assert.Equal(t, c.state, judged(t, c.condition, c.facts).State, c.condition)
	}
}

func TestAMissingWordLeavesACheckUnansweredAndNamesWhatIsWanted(t *testing.T) {
	for _, c := range []struct {
		condition, facts string
		state            State
		missing          string
	}{
		{"depth.least >= mm(3)", "", Unanswered, "depth.least"},
		{"depth.least + depth.greatest >= mm(3) * job.bags", "", Unanswered, "depth.least depth.greatest job.bags"},
		{"depth.least + depth.greatest >= mm(3)", "depth.least = 3 mm", Unanswered, "depth.greatest"},
		{"deck.sound && depth.least > mm(3)", "deck.sound = no", Broken, ""},
		{"deck.sound && depth.least > mm(3)", "deck.sound = yes", Unanswered, "depth.least"},
		{"deck.sound && depth.least > mm(3)", "", Unanswered, "deck.sound"},
		{"deck.sound || depth.least > mm(3)", "deck.sound = yes", Kept, ""},
		{"(deck.wood ? depth.least : depth.greatest) > mm(3)", "deck.wood = yes", Unanswered, "depth.least"},
		{"(deck.wood ? depth.least : depth.greatest) > deck.area / m(1)", "deck.wood = yes", Unanswered, "depth.least"},
		{"(sheet.least_depth ?? mm(3)) > mm(2)", "", Kept, ""},
		{"(sheet.least_depth ?? depth.least) > mm(2)", "", Unanswered, "depth.least"},
		{"known(depth.least) && depth.least > mm(2)", "", Broken, ""},
		{`deck.kind != "osb"`, "", Unanswered, "deck.kind"},
		{`!(deck.kind in ["osb"])`, "", Unanswered, "deck.kind"},
		{"none([depth.least], # > mm(3))", "", Unanswered, "depth.least"},
	} {
		out := judged(t, c.condition, c.facts)
		assert.Equal(t, c.state, out.State, c.condition)
		assert.Equal(t, c.missing, strings.Join(out.Missing, " "), c.condition)
	}
}

func TestWhatAFigureMissesIsMissedByWhateverUsesIt(t *testing.T) {
	c := compiled(t, `
figure share
  for: deck
  dimension: length
  value: pour.volume / deck.area

check shared
  weight: watch
  for: deck
  holds: share > depth.least
  says: No.
  asks: How big is it?

check softened
  weight: watch
  for: deck
  holds: (share ?? mm(9)) > mm(3)
  says: No.
`)
	outs := c.Checks("deck", given(t, words(), "deck.area = 3 m²"), quantity.Metric)
	assert.Equal(t, []string{"pour.volume", "depth.least"}, outs[0].Missing)
	assert.Equal(t, "How big is it?", outs[0].Asks)
	assert.Equal(t, Kept, outs[1].State)
	assert.Equal(t, []string{"deck.area", "pour.volume"}, sorted(c.Needs("softened")))
	assert.Equal(t, []string{"deck.area", "depth.least", "pour.volume"}, sorted(c.Needs("shared")))
	assert.Equal(t, []string{"deck.area", "pour.volume"}, sorted(c.Needs("share")))

	over := Facts{"share": {Value: Value{Kind: Quantity, Number: 0.004}, From: FromTyped}}
	r := c.Figure("share", over)
	assert.True(t, r.Given, "facts go before the rulebook")
	assert.Equal(t, 0.004, r.Value.Number)
}

func TestWhatCannotBeWorkedOutIsFaultyAndSaysWhere(t *testing.T) {
	huge := Facts{"job.bags": {Value: Value{Kind: Quantity, Number: 1e300}}, "crew.people": {Value: Value{Kind: Quantity, Number: 0}}}
	for _, c := range []struct{ value, says string }{
		{"1 / crew.people", "“1 / crew.people” divides by zero."},
		{"crew.people / crew.people", "“crew.people / crew.people” divides by zero."},
		{"min(3, 2 + 1 / crew.people)", "“1 / crew.people” divides by zero."},
		{"1 / (job.bags * job.bags)", "“1 / (job.bags * job.bags)” meets a number that is too large or undefined."},
		{"job.bags * job.bags", "“job.bags * job.bags” comes to a number that is too large or undefined."},
		{"min(3, job.bags * job.bags)", "“min(3, job.bags * job.bags)” meets a number that is too large or undefined."},
		{"job.bags * job.bags > 3 ? 1 : 2", "“job.bags * job.bags > 3” meets a number that is too large or undefined."},
		{"job.bags * job.bags - job.bags * job.bags", "comes to a number that is too large or undefined."},
		{"sqrt(0 - job.bags)", "takes the root of something below zero."},
		{"crew.people ** -1", "“crew.people ** -1” divides by zero."},
		{"(0 - job.bags) ** 0.5", "comes to a number that is too large or undefined."},
		{"job.bags ** 9", "comes to a number that is too large or undefined."},
		{"ceil(job.bags, crew.people)", "rounds by a step of zero."},
		{"9223372036854775807 + 1 > 0 ? 1 : 2", ""},
	} {
		compiled := compiled(t, "figure it\n dimension: number\n value: "+c.value+"\n")
		r := compiled.Figure("it", huge)
		if c.says == "" {
			assert.Equal(t, 1.0, r.Value.Number, "whole numbers don't wrap: %s", c.value)
			continue
		}
		require.Equal(t, Faulty, r.State, c.value)
		assert.Contains(t, r.Fault.Message, c.says, c.value)
		assert.Equal(t, "it", r.Fault.Rule)
		assert.Equal(t, 3, r.Fault.Line, c.value)
	}
}

func TestFactsThatAreNotWhatTheyShouldBeAreFaulty(t *testing.T) {
	c := compiled(t, "check it\n weight: stop\n for: deck\n holds: depth.least > mm(3) && deck.kind == \"osb\"\n says: No.\n")
	for _, facts := range []Facts{
		{"depth.least": {Value: Value{Kind: Quantity, Number: math.NaN()}}},
		{"depth.least": {Value: Value{Kind: Quantity, Number: math.Inf(1)}}},
		{"depth.least": {Value: Value{Kind: Text, Text: "6 mm"}}},
		{"depth.least": {}},
		{"depth.least": {Value: Value{Kind: Quantity, Number: 1}}, "deck.kind": {Value: Value{Kind: Choice, Text: "marble"}}},
	} {
		out := c.Checks("deck", facts, quantity.Metric)[0]
		require.Equal(t, Faulty, out.State)
		assert.Equal(t, "Enter it again.", out.Fault.Remedy)
	}
}

func TestSentencesPutValuesIn(t *testing.T) {
	c := compiled(t, `
figure least
  for: deck
  dimension: length
  value: sheet.least_depth ?? mm(10)

check it
  weight: stop
  for: deck
  holds: depth.least >= least
  says: At its thinnest {depth.least}
      over {deck.kind}; it needs {least}, {{so}}. Air {air.humidity}.
  remedy: Raise it by {least - depth.least}; {1 / (job.bags - job.bags)}.
  caution: Mind the dust.
`)
	facts := given(t, words(), "depth.least = 6 mm, air.humidity = 55 %, job.bags = 2")
	out := c.Checks("deck", facts, quantity.Metric)[0]
	assert.Equal(t, "At its thinnest 6 mm over (not known); it needs 10 mm, {so}. Air 55 %.", out.Says)
	assert.Equal(t, "Raise it by 4 mm; (can't be worked out).", out.Remedy)
	assert.Equal(t, "Mind the dust.", out.Caution)
	assert.Equal(t, "At its thinnest 1/4 in over (not known); it needs 3/8 in, {so}. Air 55 %.", c.Checks("deck", facts, quantity.US)[0].Says)
}

func TestARuleThatIsSwitchedOffGivesItsReason(t *testing.T) {
	c := compiled(t, `
figure least
  for: deck
  dimension: length
  value: mm(10)
  off: the bag says nothing
  example: => 10 mm

check it
  weight: stop
  for: deck
  holds: depth.least >= least
  says: No.

check that
  weight: stop
  for: deck
  holds: deck.sound
  says: No.
  off: we screw it down ourselves
  example: deck.sound = no => broken
`)
	outs := c.Checks("deck", given(t, words(), "depth.least = 3 mm, deck.sound = no"), quantity.Metric)
	assert.Equal(t, Unanswered, outs[0].State)
	assert.Equal(t, []string{"least"}, outs[0].Missing)
	assert.Equal(t, Off, outs[1].State)
	assert.Equal(t, "we screw it down ourselves", outs[1].Off)
	for _, e := range c.Examples() {
		assert.True(t, e.Passed, "%s: %s", e.Rule, e.Text)
	}
}

func TestOneBadRuleLeavesTheOthersWorking(t *testing.T) {
	book, errors := Parse("check bad\n weight: stop\n holds: nothing.here\n says: No.\ncheck good\n weight: stop\n holds: job.bags > 1\n says: No.\n")
	require.Empty(t, errors)
	c, errors := Compile(book, words())
	require.Len(t, errors, 1)
	outs := c.Checks("job", given(t, words(), "job.bags = 2"), quantity.Metric)
	assert.Equal(t, Faulty, outs[0].State)
	assert.Equal(t, errors[0], outs[0].Fault)
	assert.Equal(t, Kept, outs[1].State)
}

func TestAFigureIsToldOnlyWhereItAppliesAndReadEverywhere(t *testing.T) {
	b, errors := Parse("figure slab_limit\n  for: deck\n  dimension: number\n  applies: !deck.wood\n  value: percent(75)\n\nfigure twice\n  for: deck\n  dimension: number\n  value: slab_limit * 2\n")
	require.Empty(t, errors)
	c, errors := Compile(b, words())
	require.Empty(t, errors)
	told := func(facts Facts) (names []string) {
		for _, r := range c.Figures("deck", facts) {
			names = append(names, r.Name)
		}
		return names
	}
	wood := Facts{"deck.wood": {Value: Value{Kind: Truth, Truth: true}}}
	assert.Equal(t, []string{"twice"}, told(wood))
	assert.Equal(t, []string{"slab_limit", "twice"}, told(nil), "nobody has said what the deck is")
	assert.InDelta(t, 1.5, c.Figure("twice", wood).Value.Number, 1e-12)
	again, errors := Parse(b.Text())
	require.Empty(t, errors)
	assert.Equal(t, "!deck.wood", again.Rules[0].Applies)
}
