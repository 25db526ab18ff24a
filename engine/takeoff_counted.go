package engine

import (
	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
	"lowspot/rules"
)

// tool is a thing that a figure of the job counts, one to a pack unless a figure says how much a pack holds.
type tool struct {
	key, group, item, pack, figure, holds string
	dimension                             quantity.Dimension
	mass                                  float64 // of a pack, kg: common practice
}

var tools = []tool{
	{"buckets", GroupTools, "Mixing buckets", "bucket", "buckets_needed", "", quantity.Number, 1.5},
	{"paddles", GroupTools, "Mixing paddles", "paddle", "paddles_needed", "", quantity.Number, 1},
	{"measures", GroupTools, "Measuring jugs", "jug", "measures_needed", "", quantity.Number, 0.3},
	{"rakes", GroupTools, "Pin rakes", "rake", "rakes_needed", "", quantity.Number, 1.5},
	{"rollers", GroupTools, "Spiked rollers", "roller", "rollers_needed", "", quantity.Number, 1},
	{"primer rollers", GroupTools, "Rollers or brushes for primer", "roller", "primer_rollers_needed", "", quantity.Number, 0.3},
	{"soles", GroupTools, "Spiked soles", "pair", "soles_needed", "", quantity.Number, 1},
	{"gloves", GroupProtect, "Waterproof gloves", "pair", "gloves_needed", "", quantity.Number, 0.1},
	{"masks", GroupProtect, "Dust masks", "mask", "masks_needed", "", quantity.Number, 0.02},
	{"goggles", GroupProtect, "Safety goggles", "pair", "goggles_needed", "", quantity.Number, 0.1},
	{"film", GroupProtect, "Covering film", "roll", "film_needed", "film_roll", quantity.Area, 2},
}

// counted lists the tools and the protection once there is a floor to work on.
func (t *buying) counted() {
	if t.totals.Area.SI <= 0 {
		return
	}
	for _, one := range tools {
		need, result := t.book.quantity(one.figure, t.facts)
		if result.State != rules.Known {
			continue
		}
		holds := 1.0
		if one.holds != "" {
			holds = t.usual(one.holds)
		}
		t.buy(goods{key: one.key, group: one.group, item: one.item, pack: one.pack, holds: holds, weighs: one.mass}, takeoff.Need{Amount: need, Dimension: one.dimension}, []Reason{t.by(one.figure, t.facts)})
	}
}

// choose marks what is quoted: material is, tools and protection aren't, unless the person says otherwise.
func (t *buying) choose() {
	for i := range t.out.Lines {
		line := &t.out.Lines[i]
		line.Quoted = line.Group != GroupTools && line.Group != GroupProtect
		if t.job.Offer == nil {
			continue
		}
		if said, given := t.job.Offer.Lines[line.Key]; given {
			line.Quoted = said
		}
	}
}

// carry shares what is quoted out over journeys.
func (t *buying) carry() {
	var lines []takeoff.Line
	mass := 0.0
	for i := range t.out.Lines {
		line := &t.out.Lines[i]
		if !line.Quoted {
			continue
		}
		for _, part := range line.Parts {
			own := float64(part.Packs) * part.mass
			lines = append(lines, takeoff.Line{Item: line.Item, Packs: part.Packs, Mass: own})
			mass += own
		}
	}
	t.out.Mass = t.of(mass, quantity.Mass)
	t.out.Hand = t.journeys(lines, t.usual("hand_load"))
	t.out.Vehicle = t.journeys(lines, t.usual("vehicle_load"))
}

func (t *buying) journeys(lines []takeoff.Line, capacity float64) Journeys {
	j := Journeys{Capacity: t.of(capacity, quantity.Mass)}
	loads, err := takeoff.Loads(lines, capacity)
	if err != nil {
		j.Says = err.Error()
	}
	j.Count = len(loads)
	return j
}
