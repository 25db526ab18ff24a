package main

import (
	"fmt"
	"strings"

	"lowspot/engine/quantity"
	"lowspot/rules"
	"lowspot/tests/bench/measure"
)

// Half of the rules are figures, half are checks, each with several comparisons and fallbacks; seven of eight figures read the one before.
const (
	figureText = `figure figure_%[1]d
 for: deck
 dimension: length
 value: deck.wood ? max(sheet.least_depth_wood ?? mm(10), %[2]s) : min(sheet.least_depth ?? mm(3), pour.volume / deck.area + inch(1/8))
`
	checkText = `check check-%[1]d
 weight: stop
 for: deck
 applies: deck.wood && deck.kind in ["plywood", "osb"] && deck.area > m2(1)
 holds: depth.least >= figure_%[1]d && depth.greatest <= mm(30) && ceil(pour.volume * 1.03 / sheet.bag_yield) * sheet.bag_mass < kg(2000) && air.temperature - water.temperature < kelvin(15) || depth.least > mm(40)
 says: The pour is {depth.least} at its thinnest; it needs {figure_%[1]d}.
 remedy: Raise it by {figure_%[1]d - depth.least}.
`
)

// before is what a figure reads: the one before, written by a format, or a depth of 3 mm.
func before(i int, figure, depth string) string {
	if i%8 == 0 {
		return depth
	}
	return fmt.Sprintf(figure, i-1)
}

func text(count int) string {
	var w strings.Builder
	for i := range count / 2 {
		fmt.Fprintf(&w, figureText, i, before(i, "figure_%d", "mm(3)"))
		fmt.Fprintf(&w, checkText, i)
	}
	return w.String()
}

func vocabulary() rules.Vocabulary {
	words := rules.Vocabulary{
		{Name: "deck.kind", Scope: "deck", Type: rules.Type{Kind: rules.Choice, Choices: []string{"plywood", "osb", "concrete"}}},
		{Name: "deck.wood", Scope: "deck", Type: rules.Type{Kind: rules.Truth}},
	}
	for _, w := range []struct {
		name, scope string
		dimension   quantity.Dimension
	}{
		{"deck.area", "deck", quantity.Area}, {"depth.least", "deck", quantity.Length}, {"depth.greatest", "deck", quantity.Length},
		{"pour.volume", "job", quantity.Volume}, {"sheet.bag_yield", "job", quantity.Volume}, {"sheet.bag_mass", "job", quantity.Mass},
		{"sheet.least_depth", "job", quantity.Length}, {"sheet.least_depth_wood", "job", quantity.Length},
		{"air.temperature", "job", quantity.Temperature}, {"water.temperature", "job", quantity.Temperature},
	} {
		words = append(words, rules.Word{Name: w.name, Scope: w.scope, Type: rules.Type{Kind: rules.Quantity, Dimension: w.dimension}})
	}
	return words
}

// numbers are what is known, in SI units. The sheet's least depths are not.
var numbers = map[string]float64{
	"deck.area": 8, "depth.least": 0.012, "depth.greatest": 0.028, "pour.volume": 0.12, "sheet.bag_yield": 0.014, "sheet.bag_mass": 25,
	"air.temperature": 293.15, "water.temperature": 285.15,
}

func facts() rules.Facts {
	given := rules.Facts{
		"deck.wood": {Value: rules.Value{Kind: rules.Truth, Truth: true}},
		"deck.kind": {Value: rules.Value{Kind: rules.Choice, Text: "plywood"}},
	}
	for name, number := range numbers {
		given[name] = rules.Given{Value: rules.Value{Kind: rules.Quantity, Number: number}}
	}
	return given
}

// total is what every machine must come to: the checks kept and, in metres, the figures added up.
func total(kept int, figures float64) float64 { return float64(kept) + figures }

// lowspot works the rules out as a plan does: every check with its outcome and margin, every figure.
func lowspot(count int) measure.Side {
	compiled, given := compiledBook(text(count)), facts()
	var checks []rules.Outcome
	var figures []rules.Result
	return measure.Side{
		Run: func() {
			checks, figures = compiled.Checks("deck", given, quantity.Metric), compiled.Figures("deck", given)
		},
		Result: func() float64 {
			kept, sum := 0, 0.0
			for _, c := range checks {
				if c.State == rules.Kept {
					kept++
				}
			}
			for _, f := range figures {
				sum += f.Value.Number
			}
			return total(kept, sum)
		},
	}
}

// compile reads and compiles the rules' text.
func compile(count int) measure.Side {
	book := text(count)
	return measure.Side{Run: func() { compiledBook(book) }, Result: func() float64 { return float64(count) }}
}

func compiledBook(text string) *rules.Compiled {
	book, wrong := rules.Parse(text)
	if len(wrong) > 0 {
		panic(wrong[0])
	}
	compiled, wrong := rules.Compile(book, vocabulary())
	if len(wrong) > 0 {
		panic(wrong[0])
	}
	return compiled
}
