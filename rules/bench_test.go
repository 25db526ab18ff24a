package rules

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

// eighty heavy rules: forty figures and forty checks, each with several comparisons, fallbacks and figures of figures.
func eighty() string {
	var w strings.Builder
	for i := 0; i < 40; i++ {
		n := strconv.Itoa(i)
		before := "mm(3)"
		if i > 0 && i%8 != 0 {
			before = "figure_" + strconv.Itoa(i-1)
		}
		w.WriteString("figure figure_" + n + "\n for: deck\n dimension: length\n value: deck.wood ? max(sheet.least_depth_wood ?? mm(10), " + before +
			") : min(sheet.least_depth ?? mm(3), pour.volume / deck.area + inch(1/8))\n")
		w.WriteString("check check-" + n + "\n weight: stop\n for: deck\n applies: deck.wood && deck.kind in [\"plywood\", \"osb\"] && deck.area > m2(1)\n holds: depth.least >= figure_" + n +
			" && depth.greatest <= mm(30) && ceil(pour.volume * 1.03 / sheet.bag_yield) * sheet.bag_mass < kg(2000) && air.temperature - water.temperature < kelvin(15) || depth.least > mm(40)\n" +
			" says: The pour is {depth.least} at its thinnest; it needs {figure_" + n + "}.\n remedy: Raise it by {figure_" + n + " - depth.least}.\n")
	}
	return w.String()
}

const eightyFacts = "deck.wood = yes, deck.kind = plywood, deck.area = 8 m², depth.least = 12 mm, depth.greatest = 28 mm, pour.volume = 120 L, sheet.bag_yield = 14 L, sheet.bag_mass = 25 kg, air.temperature = 20 °C, water.temperature = 12 °C"

func BenchmarkEightyHeavyRules(b *testing.B) {
	c := compiled(b, eighty())
	facts := given(b, words(), eightyFacts)
	for _, o := range c.Checks("deck", facts, quantity.Metric) {
		require.Equal(b, Kept, o.State)
	}
	b.ReportAllocs()
	for b.Loop() {
		c.Checks("deck", facts, quantity.Metric)
		c.Figures("deck", facts)
	}
}

func BenchmarkCompilingEighty(b *testing.B) {
	text := eighty()
	for b.Loop() {
		book, _ := Parse(text)
		Compile(book, words())
	}
}

func BenchmarkTracingOneRule(b *testing.B) {
	c := compiled(b, eighty())
	facts := given(b, words(), eightyFacts)
	for b.Loop() {
		c.Trace("check-7", facts, quantity.Metric)
	}
}
