package engine

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

// Masses of one pack of small goods, kg: common practice; they only count in the loads.
const (
	stripRollMass, stapleBoxMass, screwBoxMass, cartridgeMass, foamCanMass, battenMass, indicatorBoxMass = 1.2, 0.3, 1.0, 0.45, 0.9, 1.6, 0.5
)

// edges closes the room: strip, staples, sealant, foam, dams; and sets the heights.
func (t *buying) edges() {
	t.strip()
	t.screws()
	t.dams()
	t.foam()
	t.indicatorPins()
}

func (t *buying) strip() {
	length, reasons := t.overRooms("strip_length")
	need, err := t.writer.Run(length, t.usual("cut_allowance"))
	if err != nil {
		t.refuse("strip", err)
		return
	}
	reasons = append(reasons, plainly(need.Because...)...)
	t.buy(goods{key: "strip", group: GroupEdges, item: "Perimeter strip", pack: "roll", holds: t.usual("strip_roll"), weighs: stripRollMass}, need, append(reasons, t.by("strip_roll", t.facts)))
	staples, err := t.writer.Fixings(length, t.usual("fixing_spacing"), true)
	if err != nil {
		t.refuse("fixings", err)
		return
	}
	t.buy(goods{key: "fixings", group: GroupEdges, item: "Staples for the strip", pack: "box", names: []string{"Fixings"}, holds: t.usual("fixing_box"), weighs: stapleBoxMass}, staples,
		append(plainly(staples.Because...), t.by("fixing_spacing", t.facts)))
}

// overRooms adds a figure up over every room that can be drawn.
func (t *buying) overRooms(figure string) (float64, []Reason) {
	sum := 0.0
	var reasons []Reason
	for _, r := range t.rooms {
		if r.site == nil {
			continue
		}
		sum += t.asked(figure, r.facts)
		by := t.by(figure, r.facts)
		by.Says = called(r, nil) + ": " + by.Says
		reasons = append(reasons, by)
	}
	return sum, reasons
}

func (t *buying) screws() {
	need := takeoff.Need{Dimension: quantity.Number}
	var reasons []Reason
	t.eachDeck(func(r *roomWork, deck *deckWork) {
		if count := t.asked("deck_screws", deck.facts); count > 0 {
			need.Amount += count
			reasons = append(reasons, Reason{Says: called(r, deck) + ": " + t.area(deck.facts["deck.area"].Value.Number).Text + "."}, t.by("deck_screws", deck.facts))
		}
	})
	t.buy(goods{key: "screws", group: GroupPrepare, item: "Deck screws", pack: "box", holds: t.usual("screw_box"), weighs: screwBoxMass}, need, reasons)
}

// dams close the doors; sealant sets them, one bead on either side, and goes round every pipe and drain.
func (t *buying) dams() {
	width, round := 0.0, 0.0
	var reasons []Reason
	for _, r := range t.rooms {
		if r.site == nil {
			continue
		}
		own, says := t.doorWidths(r)
		width += own
		reasons = append(reasons, says...)
		for _, p := range r.penetrations {
			round += 2 * math.Pi * p.radius
		}
	}
	need, err := t.writer.Run(width, t.usual("cut_allowance"))
	if err != nil {
		t.refuse("dams", err)
		return
	}
	reasons = append(reasons, plainly(need.Because...)...)
	t.buy(goods{key: "dams", group: GroupEdges, item: "Battens for dams", pack: "batten", names: []string{"Dams"}, holds: t.usual("dam_batten"), weighs: battenMass}, need, append(reasons, t.by("dam_batten", t.facts)))
	joint := t.usual("sealant_joint")
	bead, err := t.writer.Bead(2*width+round, joint, joint, t.usual("sealant_waste"))
	if err != nil {
		t.refuse("sealant", err)
		return
	}
	beads := plainly("Two beads along every dam, " + t.length(2*width).Text + ", and round pipes and drains, " + t.length(round).Text + ".")
	beads = append(append(beads, plainly(bead.Because...)...), t.by("sealant_joint", t.facts), t.by("sealant_cartridge", t.facts))
	t.buy(goods{key: "sealant", group: GroupEdges, item: "Sealant", pack: "cartridge", holds: t.usual("sealant_cartridge"), weighs: cartridgeMass, keeps: "cartridge_keeps"}, bead, beads)
}

// doorWidths is what a room's dams must span. Where no door is drawn one of usual width is counted.
func (t *buying) doorWidths(r *roomWork) (float64, []Reason) {
	if len(r.doors) == 0 {
		width := t.asked("doors_guessed", r.facts) * t.usual("door_width")
		return width, []Reason{t.by("doors_guessed", r.facts), t.by("door_width", t.facts)}
	}
	width := 0.0
	for _, d := range r.doors {
		width += floor.Distance(d.from, d.to)
	}
	return width, plainly(called(r, nil) + ": " + counted(len(r.doors), "door", "doors") + ", " + t.length(width).Text + " together.")
}

func (t *buying) foam() {
	length, reasons := t.overRooms("foam_length")
	joint := t.usual("foam_joint")
	need, err := t.writer.Bead(length, joint, joint, t.usual("sealant_waste"))
	if err != nil {
		t.refuse("foam", err)
		return
	}
	reasons = append(append(reasons, plainly(need.Because...)...), t.by("foam_joint", t.facts), t.by("foam_can", t.facts))
	t.buy(goods{key: "foam", group: GroupEdges, item: "Foam", pack: "can", holds: t.usual("foam_can"), weighs: foamCanMass, keeps: "cartridge_keeps"}, need, reasons)
}

// indicatorPins are counted where the map sets them, or guessed where the floor wasn't read.
func (t *buying) indicatorPins() {
	need := takeoff.Need{Dimension: quantity.Number}
	var reasons []Reason
	for _, r := range t.rooms {
		switch {
		case r.hasPour:
			set, err := t.indicators(r)
			if err != nil {
				continue
			}
			need.Amount += float64(len(set.Pins))
			reasons = append(reasons, Reason{Says: called(r, nil) + ": " + strconv.Itoa(len(set.Pins)) + " set on the map."}, t.by("indicator_spacing", r.facts))
		case r.rough != nil:
			need.Amount += t.asked("indicator_guess", r.facts)
			reasons = append(reasons, t.by("indicator_guess", r.facts))
		}
	}
	t.buy(goods{key: "indicators", group: GroupEdges, item: "Height indicators", pack: "pack", holds: t.usual("indicator_box"), weighs: indicatorBoxMass}, need, reasons)
}
