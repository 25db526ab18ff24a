package engine

import (
	"lowspot/engine/people"
	q "lowspot/engine/quantity"
)

// The words that a person answers about the air's further circumstances and about those who do the work.

var primingTimeWords = []Word{
	asked(ScopeJob, "priming", "prime.wait", of(q.Time), hours, "Time planned from priming to the pour.", "4 h",
		"How long after priming will you pour?", "Too early the primer is wet, too late it no longer holds on to the pour.", "Count from the last coat to the first bucket."),
}

var siteWords = []Word{
	asked(ScopeJob, "air", "air.sun", yesNo, counts, "Sun falls on the floor.", "no",
		"Does the sun fall on the floor?", "A sunny patch sets first and curls.", "Think of the hours after the pour, not only of the pour."),
	asked(ScopeJob, "air", "heater.kind", oneOf("none", "electric", "fuel"), counts, "How the room is warmed for the pour.", "none",
		"Is the room warmed for the pour, and how?", "Burning fuel gives off carbon monoxide, water and carbon dioxide, which dusts the pour's skin.", "Electric: radiator or fan heater. Fuel: gas, oil or paraffin without a flue."),
	asked(ScopeJob, "air", "water.clean", yesNo, counts, "The mixing water is fit to drink.", "yes",
		"Is the mixing water fit to drink?", "Salt, soil and soap change the setting.", "From the mains; not from a rain barrel, nor a bucket that held anything."),
}

var peopleWords = join(bagWords, dustWords, only("dust.used", dustControlWords), only("dust.wheel_driven", wheelWords), safetyWords)

var bagWords = []Word{
	asked(ScopeJob, "lifting", "carry.distance", of(q.Length), lengths, "Way from the vehicle to where it is mixed.", "20 m",
		"How far are the bags carried?", "Twenty bags over twenty metres are close to a kilometre on foot, half of it loaded.", "Pace it out, stairs counted as three times their length."),
	asked(ScopeJob, "lifting", "carry.per_trip", of(q.Number), counts, "Bags that one person carries at a time.", "1",
		"How many bags does one person carry at a time?", "One is already at the limit.", "On a trolley, count what is on it."),
	asked(ScopeJob, "lifting", "lift.horizontal", of(q.Length), depths, "Hands in front of the ankles when a bag is lifted.", "300 mm",
		"How far in front of the ankles are the hands when lifting a bag?", "Each hand's breadth away from the body takes kilograms off what a back stands.", "From the middle between the ankles to the middle between the hands; close to the body is 250 mm."),
	asked(ScopeJob, "lifting", "lift.vertical", of(q.Length), depths, "Hands above the floor when the lift starts.", "400 mm",
		"How high are the hands when the lift starts?", "From the floor is worst; from a table at 750 mm best.", "From the floor to the hands on the bag."),
	asked(ScopeJob, "lifting", "lift.travel", of(q.Length), depths, "How far up a bag is lifted.", "500 mm",
		"How far up is a bag lifted?", "Further is harder.", "From where the hands start to where they stop, for example the bucket's rim."),
	asked(ScopeJob, "lifting", "lift.per_minute", of(q.Number), counts, "Lifts a minute while mixing.", "0.5",
		"How many bags are lifted in a minute?", "The oftener, the less.", "One bag every two minutes is 0.5. Leave it open for that."),
	asked(ScopeJob, "lifting", "stack.bags", of(q.Number), counts, "Bags in one stack on the deck.", "5",
		"How many bags stand in one stack?", "A stack of twenty weighs half a tonne on a quarter of a square metre.", "Count the bags of the highest stack that will stand on a deck."),
	asked(ScopeJob, "lifting", "stack.footprint", of(q.Area), areas, "What one stack stands on.", "0.24 m²",
		"What area does a stack stand on?", "The load goes by it.", "Length times width of a bag, or of the pallet. Leave it open for a bag of 0.24 m²."),
	asked(ScopeJob, "lifting", "floor.live_load", of(q.Pressure), areaPressure, "What the floor is meant to carry.", "1.92 kPa",
		"What is the floor meant to carry?", "Joists and stacks are held against it.", "Drawings or the local code; leave it open for 40 psf (1.92 kPa), usual in homes."),
}

var dustWords = []Word{
	asked(ScopeJob, "dust", "dust.task", oneOf(dustTasks()...), counts, "What makes dust on this job, the worst of it.", "none",
		"What makes dust here: which tool, and how is the dust held down?", "Silica dust scars lungs for good, and each tool has a rule of its own.", "Choose what is used longest; none where nothing is ground, drilled or sawn in concrete, mortar or tile."),
}

var dustControlWords = []Word{
	asked(ScopeJob, "dust", "dust.hours", of(q.Time), hours, "How long in one shift.", "2 h",
		"How long in one shift?", "Beyond four hours more is asked for.", "Add up the time that the tool runs, with short breaks."),
	asked(ScopeJob, "dust", "dust.indoors", yesNo, counts, "Indoors or in an enclosed place.", "yes",
		"Is it done indoors?", "Dust stays indoors.", "A room with open windows is still indoors."),
	asked(ScopeJob, "dust", "dust.hepa", yesNo, counts, "The vacuum has a HEPA filter.", "yes",
		"Has the vacuum a HEPA filter?", "Other filters blow the finest dust back into the room.", "It is printed on the filter: 99.97 % at 0.3 µm, or class H."),
	asked(ScopeJob, "dust", "respirator.factor", of(q.Number), counts, "Protection factor of the respirator worn; 0 for none.", "10",
		"Which protection factor has the respirator that is worn?", "It must be at least what the task asks for.", "A fitted half mask with P100 or P3 filters counts as 10, a full-face mask 50; a loose paper mask counts as 0."),
}

var wheelWords = []Word{
	asked(ScopeJob, "dust", "dust.wheel", of(q.Length), depths, "Diameter of the wheel.", "125 mm",
		"How big is the wheel?", "The vacuum's airflow goes by it.", "It is printed on the wheel: 4 1/2, 5 or 7 in are usual."),
	asked(ScopeJob, "dust", "dust.airflow", of(q.Flow), airflows, "Air that the vacuum draws.", "60 L/s",
		"How much air does the vacuum draw?", "A weak vacuum leaves the dust in the air.", "Its plate, as L/s, m³/h or cu ft/min; a clogged filter halves it."),
}

var safetyWords = []Word{
	asked(ScopeJob, "people", "skin.covered", yesNo, counts, "Waterproof gloves, long sleeves, boots and goggles for everybody.", "yes",
		"Does everybody have waterproof gloves, long sleeves, boots and goggles?", "Wet cement burns skin and eyes, without pain at first.", "Lay them out the day before, with a bottle of clean water for eyes."),
	asked(ScopeJob, "people", "power.protected", yesNo, counts, "Every mixer is plugged into a residual-current device (ground-fault interrupter).", "yes",
		"Is every mixer plugged into a residual-current device (ground-fault interrupter)?", "Mixers stand in water.", "Press its test button; use a plug-in one where the socket has none."),
	asked(ScopeJob, "people", "fumes.used", yesNo, counts, "Foam, solvent sealant, resin primer or a resin barrier is used.", "no",
		"Is foam, solvent sealant, or a resin primer or barrier used?", "Their vapours burn and harm.", "Look for a flame or a health sign on the label."),
	asked(ScopeJob, "people", "fumes.aired", yesNo, counts, "The room is aired and free of flames and pilot lights while they are used.", "yes",
		"Will the room be aired, with every flame and pilot light out?", "Vapour runs along the floor to the boiler.", "Before the pour: windows open, gas off. For the pour itself the windows are closed again."),
}

// dustNone is a job without dust.
const dustNone = "none"

func dustTasks() []string {
	names := []string{dustNone}
	for _, task := range people.DustTasks {
		names = append(names, task.ID)
	}
	return names
}
