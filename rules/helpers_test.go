package rules

import (
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

// A small vocabulary with a word of every kind and scope.
func words() Vocabulary {
	of := func(name, scope string, d quantity.Dimension, example string) Word {
		return Word{Name: name, Scope: scope, Type: Type{Kind: Quantity, Dimension: d}, Example: example}
	}
	return Vocabulary{
		{Name: "deck.kind", Scope: "deck", Type: Type{Kind: Choice, Choices: []string{"plywood", "osb", "concrete"}}, Asked: true},
		{Name: "deck.wood", Scope: "deck", Type: Type{Kind: Truth}},
		{Name: "deck.sound", Scope: "deck", Type: Type{Kind: Truth}, Asked: true},
		{Name: "deck.note", Scope: "deck", Type: Type{Kind: Text}},
		of("depth.least", "deck", quantity.Length, "6 mm"),
		of("depth.greatest", "deck", quantity.Length, "28 mm"),
		of("deck.area", "deck", quantity.Area, "7.5 m²"),
		of("room.area", "room", quantity.Area, "7.5 m²"),
		of("door.step", "door", quantity.Length, "8 mm"),
		of("air.temperature", "job", quantity.Temperature, "18 °C"),
		of("water.temperature", "job", quantity.Temperature, "12 °C"),
		of("air.humidity", "job", quantity.Number, "55 %"),
		of("job.bags", "job", quantity.Number, "10"),
		of("crew.people", "job", quantity.Number, "2"),
		of("pour.volume", "job", quantity.Volume, "120 L"),
		of("sheet.bag_mass", "job", quantity.Mass, "25 kg"),
		of("sheet.bag_yield", "job", quantity.Volume, "14 L"),
		of("sheet.least_depth", "job", quantity.Length, "3 mm"),
		of("sheet.least_depth_wood", "job", quantity.Length, "10 mm"),
		of("bag.price", "job", quantity.Money, "30"),
	}
}

// given reads facts as a rule's examples write them.
func given(t testing.TB, v Vocabulary, text string) Facts {
	t.Helper()
	c := &Compiled{names: nameWords(v)}
	e := c.readExample(text+" => kept", nil)
	require.Nil(t, e.err, "%s: %v", text, e.err)
	return e.given
}

// compiled is a book that must be right.
func compiled(t testing.TB, text string) *Compiled {
	t.Helper()
	book, errors := Parse(text)
	require.Empty(t, errors)
	c, errors := Compile(book, words())
	require.Empty(t, errors)
	return c
}

// judged is the outcome of one check for a deck with that condition, on those facts.
func judged(t testing.TB, condition, facts string) Outcome {
	t.Helper()
	c := compiled(t, "check it\n weight: stop\n for: deck\n holds: "+condition+"\n says: No.\n")
	return c.Checks("deck", given(t, words(), facts), quantity.Metric)[0]
}

// comesTo works a job's or deck's figure out and shows it.
func comesTo(t testing.TB, header, value, facts string) string {
	t.Helper()
	c := compiled(t, "figure it\n for: deck\n "+header+"\n value: "+value+"\n")
	r := c.Figure("it", given(t, words(), facts))
	switch r.State {
	case Known:
		return c.Show("it", r.Value, quantity.Metric)
	case Unanswered:
		return "unanswered: " + strings.Join(r.Missing, ", ")
	}
	return r.Fault.Message
}

// complaints are the errors of one condition, as "column: message remedy".
func complaints(condition string) []string {
	book, errors := Parse("check it\n weight: stop\n for: deck\n holds: " + condition + "\n says: No.\n")
	_, more := Compile(book, words())
	var told []string
	for _, e := range append(errors, more...) {
		told = append(told, e.Message+" "+e.Remedy)
	}
	return told
}

func sorted(list []string) []string {
	out := append([]string{}, list...)
	sort.Strings(out)
	return out
}
