package engine

import "lowspot/engine/quantity"

// planned are the words that change a first pour's plan, by chapter: the bags, the primer, the plane, the clock, or whether there may be a pour at all.
var planned = map[string]string{
	"deck.kind": "deck", "deck.absorbency": "deck", "deck.thickness": "deck", "deck.sound": "deck",
	"room.heated": "deck", "room.wet": "deck", "floor.disturbed": "deck",
	"finish.kind": "finish", "finish.thickness": "finish",
	"crew.people": "crew", "crew.mixers": "crew", "crew.buckets": "crew", "order.confidence": "crew",
}

// alwaysAsked are words that a first pour needs answered even where no check waits for them: figures and the pour's clock go by them.
var alwaysAsked = map[string]bool{
	"deck.kind": true, "deck.absorbency": true, "room.wet": true, "finish.kind": true, "finish.thickness": true,
	"crew.people": true, "crew.mixers": true, "crew.buckets": true, "order.confidence": true,
}

// madeTrue are what can be seen to only shortly before the pour: by the step of the work, and single words of others.
var madeTrue = map[string]bool{
	"air": true, "edges": true, "priming": true, "lifting": true, "dust": true, "people": true,
	"deck.clean": true, "deck.gaps_filled": true, "room.occupied_below": true,
}

// standing are words of such a step that are settled long before.
var standing = map[string]bool{"door.leaf_gap": true, "stair.place": true, "stair.nearest": true, "stair.riser": true}

func chapterOf(word *Word) string {
	if chapter, plans := planned[word.Name]; plans {
		return chapter
	}
	if madeTrue[word.Name] || madeTrue[word.Step] && !standing[word.Name] {
		return "before"
	}
	return "proof"
}

// offers are answers that many would give (common practice), metric and US.
var offers = map[string][2][]string{
	"deck.thickness":     {{"18 mm", "21 mm", "25 mm"}, {"5/8 in", "3/4 in", "1 1/8 in"}},
	"finish.thickness":   {{"5 mm", "12 mm", "15 mm", "20 mm"}, {"3/16 in", "1/2 in", "5/8 in", "3/4 in"}},
	"crew.people":        {{"1", "2", "3"}, {"1", "2", "3"}},
	"crew.mixers":        {{"1", "2"}, {"1", "2"}},
	"crew.buckets":       {{"1", "2", "3", "4"}, {"1", "2", "3", "4"}},
	"air.temperature":    {{"15 °C", "18 °C", "21 °C"}, {"60 °F", "65 °F", "70 °F"}},
	"deck.temperature":   {{"12 °C", "15 °C", "18 °C"}, {"55 °F", "60 °F", "65 °F"}},
	"water.temperature":  {{"10 °C", "15 °C", "20 °C"}, {"50 °F", "60 °F", "70 °F"}},
	"powder.temperature": {{"12 °C", "15 °C", "18 °C"}, {"55 °F", "60 °F", "65 °F"}},
	"air.humidity":       {{"40 %", "55 %", "70 %"}, {"40 %", "55 %", "70 %"}},
	"door.leaf_gap":      {{"5 mm", "15 mm", "25 mm"}, {"1/4 in", "1/2 in", "1 in"}},
}

func offersOf(word string, units quantity.System) []string {
	if units == quantity.US {
		return some(offers[word][1])
	}
	return some(offers[word][0])
}
