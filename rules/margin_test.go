package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestAMarginIsHowFarAComparisonIsFromTippingOver(t *testing.T) {
	for _, c := range []struct{ condition, facts, margin string }{
		{"depth.least >= mm(10)", "depth.least = 12 mm", "2 mm"},
		{"depth.least >= mm(10)", "depth.least = 6 mm", "-4 mm"},
		{"depth.least >= mm(10)", "depth.least = 10 mm", "0 mm"},
		{"depth.least <= mm(10)", "depth.least = 6 mm", "4 mm"},
		{"mm(10) < depth.least", "depth.least = 6 mm", "-4 mm"},
		{"!(depth.least < mm(10))", "depth.least = 6 mm", "-4 mm"},
		{"not (depth.least < mm(10))", "depth.least = 12 mm", "2 mm"},
		{"air.temperature >= celsius(10)", "air.temperature = 12 °C", "2 °C"},
		{"air.humidity <= percent(75)", "air.humidity = 70 %", "5 %"},
		{"job.bags == 3", "job.bags = 5", "-2"},
		{"job.bags != 3", "job.bags = 5", "2"},
		// of two that must hold the smaller, of two of which one may hold the larger
		{"depth.least >= mm(10) && depth.greatest <= mm(30)", "depth.least = 12 mm, depth.greatest = 29 mm", "1 mm"},
		{"mm(10) <= depth.least <= mm(30)", "depth.least = 29 mm", "1 mm"},
		{"depth.least >= mm(10) && depth.greatest <= mm(30)", "depth.least = 6 mm, depth.greatest = 29 mm", "-4 mm"},
		{"depth.least >= mm(10) || depth.greatest <= mm(30)", "depth.least = 6 mm, depth.greatest = 31 mm", "-1 mm"},
		{"depth.least >= mm(10) || depth.greatest <= mm(30)", "depth.least = 12 mm, depth.greatest = 31 mm", "2 mm"},
		// of different dimensions the one with the smaller share of its limit: 1 of 10 people is less than 20 of 30 mm
		{"depth.greatest <= mm(30) && crew.people <= 10", "depth.greatest = 10 mm, crew.people = 9", "1"},
		{"depth.greatest <= mm(30) && crew.people <= 10", "depth.greatest = 29 mm, crew.people = 1", "1 mm"},
		{"deck.wood ? depth.least >= mm(10) : depth.least >= mm(3)", "deck.wood = yes, depth.least = 12 mm", "2 mm"},
		{"deck.wood ? depth.least >= mm(10) : depth.least >= mm(3)", "deck.wood = no, depth.least = 12 mm", "9 mm"},
		{"let thick = depth.least >= mm(10); deck.sound && thick", "deck.sound = yes, depth.least = 12 mm", "2 mm"},
		// where something other than a quantity decides there is none
		{"deck.sound && depth.least >= mm(10)", "deck.sound = no, depth.least = 12 mm", ""},
		{"depth.least >= mm(10) && deck.sound", "deck.sound = no, depth.least = 12 mm", ""},
		{"depth.least >= mm(10) && deck.sound", "deck.sound = yes, depth.least = 12 mm", "2 mm"},
		{`deck.kind == "osb"`, "deck.kind = osb", ""},
	} {
		out := judged(t, c.condition, c.facts)
		require.Contains(t, []State{Kept, Broken}, out.State, c.condition)
		if c.margin == "" {
			assert.Nil(t, out.Margin, c.condition)
			continue
		}
		require.NotNil(t, out.Margin, c.condition)
		assert.Equal(t, c.margin, out.Margin.Text, c.condition)
	}
}
