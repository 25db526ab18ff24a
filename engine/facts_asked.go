package engine

import q "lowspot/engine/quantity"

// The words that a person answers about the place and the work. Their order is the order of the work, and so the order of the questions.

var roomWords = []Word{
	asked(ScopeRoom, "room", "room.occupied_below", yesNo, counts, "Somebody's room is below this one.", "yes",
		"Is there a room below?", "A leak finds the ceiling below before you find the leak.", "Think of the floor's other side: a flat, a hall, a cellar that is used."),
	asked(ScopeRoom, "room", "room.heated", yesNo, counts, "Heating cables or pipes lie in or on the deck.", "no",
		"Is there heating in or on this floor?", "Drilling, grinding and screwing into a heated floor can hit what carries heat, water or mains power.", "Look for a thermostat with a floor sensor or a manifold; ask the owner."),
	asked(ScopeRoom, "room", "survey.error", of(q.Length), depths, "How far off one reading may be (one standard deviation).", "1 mm",
		"How exact is one reading?", "The doubt of every reading is part of the doubt of the bag count.", "Read the same spot five times: if the readings lie within 2 mm of each other, answer 1 mm."),
	asked(ScopeRoom, "room", "room.wet", yesNo, counts, "The room gets wet: shower, bath, laundry.", "yes",
		"Will this floor get wet in use?", "Wet rooms want waterproofing over the pour, and some pours must not stay wet.", "Shower rooms, bathrooms and laundries count as wet."),
}

var deckWords = []Word{
	asked(ScopeDeck, "deck", "deck.kind", oneOf("plywood", "osb", "chipboard", "boards", "concrete", "screed", "gypsum", "tile", "stone", "adhesive residue", "metal"), counts,
		"What the pour lands on.", "plywood",
		"What is the deck made of?", "Primer, least depth and how the deck must be made ready all follow from it.", "Look at a cut edge or a bare spot: sheets, boards, or something poured."),
	asked(ScopeDeck, "deck", "deck.absorbency", oneOf("porous", "normal", "dense"), counts, "How fast the deck drinks a drop of water.", "normal",
		"How fast does a drop of water soak in?", "The primer's strength and number of coats go by it.", "Put down a few drops: gone in a minute is porous, still standing after ten minutes is dense, between is normal."),
	asked(ScopeDeck, "deck", "deck.thickness", of(q.Length), depths, "Thickness of the sheets or boards over the joists, or of the slab.", "18 mm",
		"How thick is it?", "A thin deck bends between the joists and cracks what is poured on it.", "Measure at a hole, a pipe or the edge of a hatch."),
	asked(ScopeDeck, "deck", "deck.sound", yesNo, counts, "Solid everywhere: nothing loose, hollow or springing.", "yes",
		"Is the deck solid everywhere?", "What is loose under a pour breaks the pour.", "Walk all of it, tap with a hammer handle, listen for a hollow sound, look for boards that move."),
	asked(ScopeDeck, "deck", "deck.clean", yesNo, counts, "Free of dust, wax, paint, oil and old adhesive.", "yes",
		"Is it clean to the bare deck?", "Primer sticks to the deck or to the dirt, not to both.", "Vacuum, then wipe with a dark cloth: it should stay dark."),
	asked(ScopeDeck, "deck", "deck.gaps_filled", yesNo, counts, "Joints, holes and edges are filled or taped.", "yes",
		"Are all gaps and holes closed?", "A pour runs through any gap that water would find.", "Look for light from below; check pipes, sheet joints, the gap under the plasterboard."),
	asked(ScopeDeck, "deck", "deck.screwed", yesNo, counts, "Sheets or boards are screwed to every joist.", "yes",
		"Is it screwed down to every joist?", "A sheet that lifts by a hair breaks the bond above it.", "Count screws along one joist; add some where a foot can move the sheet.").where("deck.wood"),
	asked(ScopeDeck, "moisture", "slab.age", of(q.Time), days, "How long ago the slab or screed was placed.", "90 d",
		"How old is the slab or screed?", "Young concrete still gives off water and still shrinks.", "Ask the builder; over a year old, answer 1000 d.").where("deck.mineral"),
	asked(ScopeDeck, "moisture", "slab.humidity", of(q.Number), percents, "Relative humidity in the slab at the probe's depth.", "75 %",
		"What is the relative humidity in the slab?", "Too much of it lifts primer, pour and floor years later.", "Probes in drilled holes, read after a day at least.").where("deck.mineral"),
	asked(ScopeDeck, "moisture", "deck.moisture", of(q.Number), percents, "Moisture of the wood by mass.", "10 %",
		"How wet is the wood?", "Wet wood shrinks under the pour and cracks it.", "Pin meter, several places, near walls and pipes too.").where("deck.wood"),
	asked(ScopeDeck, "deck", "deck.grind_most", of(q.Length), depths, "The most that may be ground off.", "5 mm",
		"How much may be ground off this deck?", "High spots that come off save bags all over the room.", "Concrete: well above the steel; ask who built it. Leave it empty for what the rulebook says."),
}

var doorWords = []Word{
	asked(ScopeDoor, "edges", "door.leaf_gap", of(q.Length), depths, "Gap between the bare deck and the door leaf's lower edge.", "20 mm",
		"How much gap is there under the door?", "A raised floor can stop the door.", "Measure from the deck to the leaf with the door closed and half open."),
	asked(ScopeDoor, "edges", "door.dammed", yesNo, counts, "A dam closes this door before the pour.", "yes",
		"Will this door be dammed?", "An open door is where the pour leaves the room.", "A batten set in sealant, as high as the pour and a bit."),
	asked(ScopeDoor, "edges", "stair.place", oneOf("none", "foot", "head"), counts, "Whether a stair starts or ends here.", "foot",
		"Does a stair meet the floor here?", "A raised floor makes the first or the last riser odd, and people fall on an odd riser.", "Foot: it goes up from this floor. Head: it comes up to it."),
	asked(ScopeDoor, "edges", "stair.nearest", of(q.Length), depths, "Riser next to this floor, from the bare deck.", "180 mm",
		"How high is the riser next to this floor, from the bare deck?", "It is the one that the new floor changes.", "Measure from the deck to the tread, or from the last tread up to the deck."),
	asked(ScopeDoor, "edges", "stair.riser", of(q.Length), depths, "The stair's other risers.", "178 mm",
		"How high are the stair's other risers?", "All risers of a stair should be the same within 3/8 in (9.5 mm).", "Measure from tread to tread, the finish on it included."),
}

var airWords = []Word{
	asked(ScopeJob, "air", "air.temperature", of(q.Temperature), degrees, "Air in the room on pour day.", "18 °C",
		"How warm will the room be?", "Every time on the bag goes with the temperature.", "A thermometer at knee height, away from sun and heater."),
	asked(ScopeJob, "air", "air.humidity", of(q.Number), percents, "Relative humidity of the air.", "55 %",
		"How humid is the air?", "Dry air dries the skin of the pour, wet air puts dew on a cold deck.", "A hygrometer, an hour in the room."),
	asked(ScopeJob, "air", "air.speed", of(q.Speed), windSpeeds, "Draught over the floor.", "2 km/h",
		"Is there a draught?", "Moving air dries and cracks the surface.", "Closed room 0; a thread that leans is about 2 km/h; papers that move are about 10 km/h."),
	asked(ScopeJob, "air", "deck.temperature", of(q.Temperature), degrees, "The deck's own surface.", "15 °C",
		"How warm is the deck itself?", "The pour takes the deck's temperature, not the air's.", "Contact or infrared thermometer at the coldest corner."),
	asked(ScopeJob, "air", "water.temperature", of(q.Temperature), degrees, "Mixing water.", "12 °C",
		"How warm is the mixing water?", "It sets the mix's temperature quicker than anything else.", "Thermometer in a bucket after the tap has run for a minute."),
	asked(ScopeJob, "air", "powder.temperature", of(q.Temperature), degrees, "The bags, where they are stored.", "18 °C",
		"How warm are the bags?", "Cold bags from a van set late, hot ones at once.", "Thermometer between two bags for ten minutes."),
}

var crewWords = []Word{
	asked(ScopeJob, "crew", "crew.people", of(q.Number), counts, "Hands on pour day.", "2",
		"How many people pour?", "One person can't mix and spread at once for long.", "Count only who stays from the first bucket to the last."),
	asked(ScopeJob, "crew", "crew.mixers", of(q.Number), counts, "Mixing drills or mixers.", "1",
		"How many mixers?", "The mixer is most often what the others wait for.", "Only those with the right paddle and power."),
	asked(ScopeJob, "crew", "crew.buckets", of(q.Number), counts, "Mixing buckets.", "2",
		"How many mixing buckets?", "Two buckets or more keep the floor fed.", "Clean, straight-sided, all the same size."),
	asked(ScopeJob, "crew", "bucket.size", of(q.Volume), liquids, "What a bucket holds to the brim.", "30 L",
		"How big is a bucket?", "It limits the bags mixed at once.", "It is printed on most; else fill it with a measuring jug."),
	asked(ScopeJob, "crew", "crew.barrows", of(q.Number), counts, "Barrows to carry buckets in; none where they are carried by hand.", "0",
		"How many barrows?", "By hand or by barrow, each bucket has a way to go.", "Count only those that fit through every door on the way."),
	asked(ScopeJob, "crew", "mix.station", of(q.Length), lengths, "Way from the room's door to where it is mixed.", "5 m",
		"How far from the door is it mixed?", "A long way with a full bucket eats into the time that the mix flows.", "Pace it out: a stride is about 0.75 m."),
	asked(ScopeJob, "crew", "order.confidence", oneOf("50 %", "90 %", "99 %"), counts, "How sure you want to be not to run out.", "90 %",
		"How sure do you want to be that the bags last?", "Running out in the middle of a pour costs the floor; spare bags cost their price.", "90 % is a fair start; 99 % where no shop is near."),
	asked(ScopeJob, "finish", "finish.kind", oneOf("large tile", "small tile", "stone", "resilient", "wood", "carpet", "none"), counts, "What goes on top.", "large tile",
		"What goes on top of it?", "Each finish asks for its own flatness and stiffness.", "A tile is large when any edge is 15 in (381 mm) or more."),
	asked(ScopeJob, "finish", "finish.thickness", of(q.Length), depths, "Thickness of the finish with its adhesive.", "12 mm",
		"How thick is the finish with what it is laid in?", "Doors, stairs and the next room meet the finish, not the pour.", "Tile plus about 3 mm to 6 mm of adhesive."),
	asked(ScopeJob, "finish", "finish.tolerance", oneOf(toleranceNames()...), counts, "The flatness wanted.", "BS 8204 SR2",
		"How flat must the floor be?", "The pour is judged by it, and so is who pays for a second one.", "The contract or the finish's own sheet says; leave it open for what suits the finish."),
}

// stepPourDay is when these are known: at the pour. The plan doesn't ask for them before, nor show the checks that wait for them.
const stepPourDay = "pour day"

var pourDayWords = []Word{
	asked(ScopeJob, stepPourDay, "mix.spread", of(q.Length), depths, "Spread of the flow ring with the first batch.", "140 mm",
		"How far did the flow ring spread?", "It is the one test of the mix that takes a minute and needs no laboratory.", "Fill the ring on a flat, clean, dry pane, lift it in one go, and measure two diameters when it has come to rest."),
	atPour("pour.longest_wait", q.Time, "The longest that an edge waits for the next batch.", "6 min"),
	atPour("pour.wet_edge", q.Time, "How long an edge joins the next batch at the temperatures there are.", "10 min"),
	atPour("pour.oldest_batch", q.Time, "The longest from powder in the water to spread.", "8 min"),
	atPour("pour.flow_time", q.Time, "How long a batch flows at the temperatures there are.", "20 min"),
	atPour("pour.batches", q.Number, "Batches to mix for this room.", "9"),
	atPour("pour.lasts", q.Time, "From the first water to the last bucket back.", "40 min"),
}

// atPour makes a word that only the pour's clock works out.
func atPour(name string, d q.Dimension, meaning, example string) Word {
	word := worked(ScopeRoom, name, of(d), meaning, example)
	word.Step = stepPourDay
	return word
}
