package engine

import q "lowspot/engine/quantity"

// The words that a person answers about decks that are poured, laid or glued: their surface, their moisture, and the primer that goes on them.

var slabWords = join(
	only("deck.hard", surfaceWords), only("deck.mineral", moistureWords), only("moisture.probes", probeWords), only("moisture.chloride", chlorideWords),
	only("moisture.plastic", plasticWords), only("deck.screed", screedWords), only("deck.gypsum", gypsumWords), only("deck.tiled", tileWords), only("deck.residue", residueWords),
	primingWords,
)

var surfaceWords = []Word{
	asked(ScopeDeck, "surface", "deck.drop_time", of(q.Time), minutes, "How long a drop of water stands on the clean deck.", "4 min",
		"How long does a drop of water stand on it?", "Primer strength goes by what the deck drinks, and a drop tells it better than a look.", "A few drops on clean, dry spots; time until they are gone, or stop at ten minutes."),
	asked(ScopeDeck, "surface", "deck.contaminated", yesNo, counts, "Oil, wax, curing compound, sealer or paint is in the surface.", "no",
		"Is there oil, wax, sealer, paint or curing compound in the surface?", "Primer holds on to what is in the pores, and comes off with it.", "Water that beads on concrete, dark spots, a smell: scratch and wet it to see."),
	asked(ScopeDeck, "surface", "deck.weak_skin", yesNo, counts, "A soft or dusty skin lies on top (laitance).", "no",
		"Is there a soft or dusty skin on top?", "A pour shrinks and pulls; it tears a weak skin off the deck.", "Scratch a cross with a nail or a steel blade: a sound deck only shows a bright line."),
	asked(ScopeDeck, "surface", "deck.pull_off", of(q.Pressure), stresses, "Least pull-off strength of the surface.", "1.5 MPa",
		"What did the pull-off tests give, the lowest of them?", "It is the one test that says what the surface holds, in numbers.", "Glued disks pulled with a gauge (ASTM C1583); usual on trade jobs only."),
	asked(ScopeDeck, "surface", "deck.crack_width", of(q.Length), depths, "Widest crack.", "0 mm",
		"How wide is the widest crack?", "A crack is filled before the pour, or it comes through.", "A crack-width card or a feeler gauge; 0 mm where there is none."),
	asked(ScopeDeck, "surface", "deck.crack_moves", yesNo, counts, "A crack moves: its sides stand at odds, or it opens and closes.", "no",
		"Does any crack move?", "No pour bridges a crack that moves.", "Step on both sides; look for one side higher, for fresh edges, for a filled crack that opened again."),
	asked(ScopeDeck, "surface", "deck.moving_joints", yesNo, counts, "Movement joints of the building cross this deck.", "no",
		"Do movement joints cross this deck?", "Poured over, a movement joint breaks the pour along its own crooked line.", "A straight joint through the whole slab, with sealant or a strip in it, in line with one in the wall."),
	asked(ScopeDeck, "surface", "deck.joints_carried", yesNo, counts, "Movement joints are carried up through the pour and the finish.", "yes",
		"Will the movement joints be carried up through pour and finish?", "Only what is open from bottom to top can move.", "A strip or profile set over the joint, as high as the finish."),
	asked(ScopeDeck, "surface", "deck.ph", of(q.Number), counts, "Acidity of the wetted surface (pH).", "9",
		"What does pH paper show on the wetted surface?", "High alkali attacks adhesives, and acid says that something was spilled or etched.", "A puddle 25 mm (1 in) across, wait a minute, then the paper (ASTM F710); clean it 24 h before."),
}

var moistureWords = []Word{
	asked(ScopeDeck, "moisture", "moisture.method", oneOf("probes", "calcium chloride", "plastic sheet", "none"), counts, "How the moisture was measured.", "probes",
		"How was the moisture measured?", "Each way has its own number of tests, its own wait and its own limit.", "Probes in drilled holes (ASTM F2170) say most; a taped plastic sheet (ASTM D4263) only shows that it is wet."),
	asked(ScopeDeck, "moisture", "slab.on_ground", yesNo, counts, "The slab lies on the ground.", "yes",
		"Does the slab lie on the ground?", "The ground feeds moisture for ever where nothing stops it.", "Think of what is below: earth, or another room."),
	asked(ScopeDeck, "moisture", "slab.membrane", yesNo, counts, "A membrane lies under the slab.", "yes",
		"Is there a membrane under the slab?", "Without one, today's dry reading says little about next spring.", "Drawings, the builder, or a look at the slab's edge."),
	asked(ScopeDeck, "moisture", "deck.barrier", yesNo, counts, "A moisture barrier goes on this deck before the primer.", "no",
		"Will a moisture barrier go on this deck?", "Where a slab would take too long to dry, a barrier holds the damp back.", "Its tin names the humidity that it holds back; see the barrier's sheet."),
}

var probeWords = []Word{
	asked(ScopeDeck, "moisture", "slab.probes", of(q.Number), counts, "Humidity readings taken in the slab.", "3",
		"How many probes were read?", "One hole says nothing about the next corner.", "Count holes that were read, not readings of the same hole."),
	asked(ScopeDeck, "moisture", "slab.sides", oneOf("one", "two"), counts, "Sides that the slab dries from.", "one",
		"From how many sides does the slab dry?", "The probe's depth goes by it.", "One: on the ground, on a membrane or on steel deck. Two: free below."),
	asked(ScopeDeck, "moisture", "slab.probe_depth", of(q.Length), depths, "Depth of the probes.", "40 mm",
		"How deep do the probes sit?", "Nearer the top a slab is always drier.", "Measure the hole after cleaning it."),
	asked(ScopeDeck, "moisture", "slab.probe_wait", of(q.Time), hours, "Time from setting the probes to reading them.", "24 h",
		"How long had the probes stood when they were read?", "Drilling warms and dries the hole; it needs time to settle.", "From closing the hole to the reading."),
	asked(ScopeDeck, "moisture", "slab.conditioned", of(q.Time), hours, "How long the room had been as warm and dry as in use, before the test.", "48 h",
		"How long had the room been as warm and dry as in use?", "Humidity in a slab goes with its temperature.", "Count from when heating or cooling ran as it will in use."),
	asked(ScopeDeck, "moisture", "slab.probe_checked", of(q.Time), days, "Time since the instrument was checked.", "20 d",
		"When was the instrument last checked?", "Probes drift.", "Its certificate or the salt test's date, as days before the reading."),
	asked(ScopeDeck, "moisture", "slab.reading_age", of(q.Time), days, "Age of the readings.", "7 d",
		"How old are the readings?", "A leak, a wet season or a cut-off heating makes old readings worthless.", "Days from the reading to the pour."),
}

var chlorideWords = []Word{
	asked(ScopeDeck, "moisture", "slab.emission", of(q.EvaporationRate), emissions, "Highest vapour emission.", "150 g/(m2 24 h)",
		"What is the highest vapour emission?", "What the slab gives off is what will lift the floor.", "Calcium chloride dishes under domes, weighed before and after (ASTM F1869); the worst counts, never the mean."),
	asked(ScopeDeck, "moisture", "slab.emission_tests", of(q.Number), counts, "Dishes that were weighed.", "3",
		"How many dishes were weighed?", "One dish says nothing about the next corner.", "Only those that stood undisturbed."),
	asked(ScopeDeck, "moisture", "slab.emission_time", of(q.Time), hours, "How long the dishes stood.", "66 h",
		"How long did the dishes stand?", "Too short or too long and the number is another one.", "From setting the dome to taking it off."),
}

var plasticWords = []Word{
	asked(ScopeDeck, "moisture", "slab.sheet_damp", yesNo, counts, "The plastic sheet was damp below, or the slab under it dark.", "no",
		"Was the sheet damp below, or the slab under it dark?", "Then water is on its way up.", "Tape 18 in (457 mm) square of clear sheet tightly all round, lift it after 16 h at least (ASTM D4263)."),
	asked(ScopeDeck, "moisture", "slab.sheet_tests", of(q.Number), counts, "Plastic sheets that were taped down.", "2",
		"How many sheets were taped down?", "One spot says nothing about the next corner.", "One for each 500 sq ft (46 m²) or part of it."),
	asked(ScopeDeck, "moisture", "slab.sheet_time", of(q.Time), hours, "How long the sheets lay.", "16 h",
		"How long did the sheets lay?", "Moisture takes its time.", "From taping to lifting."),
}

var screedWords = []Word{
	asked(ScopeDeck, "surface", "screed.laid", oneOf("bonded", "unbonded", "floating"), counts, "How the screed lies: bonded to the slab, on a membrane, or on insulation.", "bonded",
		"Does the screed stick to the slab, lie on a membrane, or float on insulation?", "The freer it lies, the thicker it must be not to crack.", "Look at a pipe, a hole or the wall's foot: foam, foil, or concrete."),
}

var gypsumWords = []Word{
	asked(ScopeDeck, "surface", "gypsum.skin_off", yesNo, counts, "The skin is sanded off and vacuumed.", "yes",
		"Was the skin sanded off and vacuumed up?", "A soft skin forms as gypsum sets, and cement on it makes a layer that swells and splits off.", "Scratch it: dust on the blade means the skin is still there."),
	asked(ScopeDeck, "moisture", "gypsum.moisture", of(q.Number), percents, "Moisture of the gypsum by mass.", "0.4 %",
		"How wet is the gypsum, by mass?", "Gypsum that stays wet goes soft.", "Carbide bottle or drying a sample at 40 °C, never hotter."),
}

var tileWords = []Word{
	asked(ScopeDeck, "surface", "tile.ground", yesNo, counts, "The glaze or polish is ground dull and degreased.", "yes",
		"Is the glaze or polish ground dull and washed clean of grease and wax?", "Primer needs something to hold on to.", "Wipe with a white cloth; a drop of water should spread."),
	asked(ScopeDeck, "surface", "tile.hollow", of(q.Number), percents, "Share of tiles that sound hollow.", "2 %",
		"What share of the tiles sounds hollow?", "A hollow tile lets go sooner or later, with all that lies on it.", "Tap every tile with a coin or a hammer's handle and mark those that ring."),
}

var residueWords = []Word{
	asked(ScopeDeck, "surface", "residue.kind", oneOf("cement", "dispersion", "bitumen", "unknown"), counts, "What the old adhesive is.", "dispersion",
		"What is the old adhesive?", "Black bitumen adhesive stays soft, bleeds, and may hold asbestos.", "Black and brittle or tarry: bitumen. Yellow or white, soft when wet: dispersion. Grey and hard: cement."),
	asked(ScopeDeck, "surface", "residue.scraped", yesNo, counts, "Scraped to a thin stain with no ridges.", "yes",
		"Is it scraped down to a thin stain?", "Ridges soften under the water in the mix and let go.", "Wet-scrape by hand; what is left should be flat and firm. Never sand before it is tested."),
}

var primingWords = []Word{
	asked(ScopeDeck, "priming", "primer.suits", yesNo, counts, "The tin names this deck.", "yes",
		"Does the primer's tin name this deck?", "A primer for concrete may never dry on tile, and one for tile may seal wood wrongly.", "Read the list of decks on the tin or on its sheet."),
}
