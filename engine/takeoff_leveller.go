package engine

import (
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

// leveller counts bags at the confidence chosen, and the aggregate that goes with them where the pour is too deep without.
func (t *buying) leveller() {
	if t.doubt == nil || t.yield <= 0 {
		return
	}
	filled := t.filled()
	t.doubt.mean -= filled.saved // what the grain fills no powder must
	t.out.Bags = t.bags(*t.doubt)
	if t.out.Bags == nil {
		return
	}
	mass := t.usual("bag_mass")
	need := takeoff.Need{Amount: t.out.Bags.Mean * mass, Dimension: quantity.Mass}
	reasons := append(t.volumes(), filled.reasons...)
	reasons = append(reasons, t.by("waste_share", t.facts), t.by("bag_yield", t.facts))
	reasons = append(reasons, plainly(t.sure())...)
	t.buy(goods{key: "leveller", group: GroupPour, item: "Leveller", pack: "bag", names: []string{t.sheetName("leveller")}, holds: mass, weighs: mass, onlyPack: true, keeps: "powder_keeps", packs: t.out.Bags.Buy}, need, reasons)
	bag := t.usual("aggregate_bag")
	t.buy(goods{key: "aggregate", group: GroupPour, item: "Aggregate", pack: "bag", names: []string{t.sheetName("aggregate")}, holds: bag, weighs: bag},
		takeoff.Need{Amount: filled.mass, Dimension: quantity.Mass}, append(filled.reasons, t.by("aggregate_bag", t.facts)))
}

// volumes tells where each room's volume comes from.
func (t *buying) volumes() []Reason {
	var reasons []Reason
	for _, r := range t.rooms {
		area, volume := t.area(r.outline.Area()).Text, t.volume(r.volume).Text
		switch {
		case r.rough != nil && r.rough.ranged:
			reasons = append(reasons, Reason{Says: called(r, nil) + ": " + area + " × " + t.length(r.rough.mean).Text + ", the middle of " + t.length(r.rough.least).Text + " and " + t.length(r.rough.greatest).Text + ": " + volume + "."})
		case r.rough != nil:
			reasons = append(reasons, Reason{Says: called(r, nil) + ": " + area + " × " + t.length(r.rough.mean).Text + ", a guess: " + volume + "."})
		default:
			reasons = append(reasons, Reason{Says: called(r, nil) + ": " + strconv.Itoa(len(r.points)) + " readings under a finish plane whose staff reads " + r.plan.Plane.Staff.Text + ", " + t.length(r.plan.Pour.Depths.Mean.SI).Text + " deep on " + area + ": " + volume + "; with the ground between them as it most likely lies " + t.volume(t.likely[r]).Text + "."})
		}
	}
	return reasons
}

// sure tells the bags at every confidence.
func (t *buying) sure() string {
	b := t.out.Bags
	return "That is " + oneDigit(b.Mean) + " bags. With all that is in doubt, enough one time in two: " + strconv.Itoa(b.Half) + "; nine times in ten: " + strconv.Itoa(b.Ninety) +
		"; ninety-nine times in a hundred: " + strconv.Itoa(b.NinetyNine) + ". Chosen: " + b.Confidence + "."
}

func oneDigit(x float64) string { return strconv.FormatFloat(x, 'f', 1, 64) }

// filling is the aggregate of a job: its mass, kg, and the volume that no powder need fill, m³.
type filling struct {
	mass, saved float64
	reasons     []Reason
}

// filled works out the aggregate: of a floor that was read in the lifts under the last one, of a floor that nobody has read deck by deck. A bag of powder
// with aggregate fills its yield and the grains' own volume.
func (t *buying) filled() filling {
	var all filling
	mass, density := t.usual("bag_mass"), t.usual("grain_density")
	if density <= 0 {
		return all
	}
	add := func(name string, share, volume float64) {
		volume *= 1 + t.waste
		if share <= 0 || volume <= 0 {
			return
		}
		bags := volume / filledYield(t.yield, share, mass, density)
		all.mass += bags * share * mass
		all.saved += (volume - bags*t.yield) / (1 + t.waste)
		all.reasons = append(all.reasons, Reason{Says: name + ": " + oneDigit(bags) + " bags with " + t.of(share*mass, quantity.Mass).Text + " of aggregate each fill " + t.volume(volume).Text + "."})
	}
	t.eachDeck(func(r *roomWork, deck *deckWork) {
		if share := t.asked("aggregate_share", deck.facts); r.rough != nil && share > 0 {
			all.reasons = append(all.reasons, t.by("aggregate_share", deck.facts))
			add(called(r, deck), share, deck.facts["deck.area"].Value.Number*r.rough.mean)
		}
	})
	for _, r := range t.rooms {
		if way, parted := t.pouredLifts(r); parted {
			for i, lift := range way.lifts[:len(way.lifts)-1] {
				add(called(r, nil)+", lift "+strconv.Itoa(i+1), way.share, lift.Volume)
			}
		}
	}
	return all
}
