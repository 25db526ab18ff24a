// What the help says, entry by entry, in plain words. The vocabulary's own words are added from the engine.
import { said, t } from "../words/words";

export type HelpEntry = { id: string; title: string; says: string[]; picture?: string };
export type HelpPart = { title: string; entries: HelpEntry[] };

/** The entry behind the “?” of a section. */
export const entryOfSection: Record<string, string> = {
	room: "room",
	readings: "survey-laser",
	deck: "deck",
	edges: "doors",
	plane: "plane",
	sheets: "bag",
	air: "air",
};

export function helpParts(): HelpPart[] {
	return [
		{ title: t("How to survey a room"), entries: surveying() },
		{ title: t("The bag and pour day"), entries: bagAndDay() },
		{ title: t("What the marks mean"), entries: marks() },
		{ title: t("Words"), entries: words() },
		{ title: t("Take care"), entries: cautions() },
	];
}

function surveying(): HelpEntry[] {
	return [
		{
			id: "survey-laser",
			title: t("With a laser and a staff"),
			picture: "laser",
			says: [
				t(
					"Set the laser on its tripod where it sees the whole room, let it level itself, and leave it there until the last reading.",
				),
				t(
					"Stand a staff, a folding rule or a batten with a tape upright on each spot and read where the beam crosses it. A larger number is lower ground.",
				),
				t(
					"Read the first spot again at the end. If it has changed by more than 2 mm (1/16 in), the laser moved: read the room again.",
				),
				t(
					"Check the laser itself: read two spots from one end of the room, then from the other. The difference must be the same both times.",
				),
			],
		},
		{
			id: "survey-board",
			title: t("With a straight board and a level"),
			picture: "board",
			says: [
				t("Find the highest spot: lay a straight board of 2 m or more here and there, and see where it rocks."),
				t(
					"Rest one end on that spot, put the level on the board and lift the other end until it is level. The board’s lower edge is the line.",
				),
				t("Measure from that edge down to the floor at each spot under the board. On the high spot itself you read 0."),
				t(
					"To go on, rest the board on a block as high as the last reading and level it again. Each move adds a little error, so go back to the first spot at the end.",
				),
				t("Turn the board end for end once: a bent board or a level that is off shows itself."),
			],
		},
		{
			id: "survey-spots",
			title: t("Where to read"),
			says: [
				t(
					"One reading to the square metre (10 sq ft), four at least, is a fair start. The page lays the spots out, and the field sheet takes them into the room on paper.",
				),
				t("Read close to the walls, at every door, at drains, and wherever your foot feels a dip or a ridge."),
				t(
					"A reading that differs from those around it is more often a stone under the staff than a hole. Read it again.",
				),
			],
		},
		{
			id: "room",
			title: t("Measuring the room"),
			picture: "tape",
			says: [
				t("Lay the tape flat on the floor, wall to wall. Measure both walls of a pair: rooms are seldom square."),
				t(
					"A room with more than four corners is walked: each wall’s length, then the turn at its end. The page shows by how much the walk misses its start and shares the error out.",
				),
			],
		},
	];
}

function bagAndDay(): HelpEntry[] {
	return [
		{
			id: "bag",
			title: t("How to read a bag"),
			picture: "bag",
			says: [
				t(
					"Mass of powder: on the front. What it fills: “yield”, “consumption” or “coverage”. 1 m² at 1 mm takes 1 L of mix; {mass} of powder to the square metre and millimetre means that {bag} fill about {volume}.",
					{ mass: said("1.7 kg"), bag: said("25 kg"), volume: said("14.7 L") },
				),
				t(
					"Water: as litres for one bag, often with a least and a most. More water than that makes a weak, dusty floor; less won’t flow.",
				),
				t(
					"Thickness: the least and the greatest, often different on wood and with aggregate. Below the least it cracks; above the greatest it goes in two lifts.",
				),
				t(
					"Time: working or flow time from the first water; when it may be walked on, tiled and covered. All at about 20 °C (68 °F): slower when cold, faster when warm.",
				),
				t(
					"Primer: which one for which deck, how much water, how long it dries. The bag in your hand goes before anything that this page says.",
				),
			],
		},
		{
			id: "air",
			title: t("Air, deck and water on pour day"),
			picture: "thermometer",
			says: [
				t(
					"Deck and air between 10 °C and 30 °C (50 °F and 86 °F) are usual; the bag says which. A cold deck slows the mix, a hot one sets it under the rake.",
				),
				t("Close windows and turn fans off until it has set: a draught dries the skin before the middle."),
			],
		},
	];
}

function marks(): HelpEntry[] {
	return [
		{
			id: "marks",
			title: t("Don’t pour, Put right first, Keep an eye on it"),
			says: [
				t(
					"Don’t pour: with this as it is, the floor may fail or somebody may come to harm. Change it, then plan again.",
				),
				t("Put right first: it can be done before pour day, and it must be. What to do stands under the mark."),
				t("Keep an eye on it: it may go well. Know of it, and look at it on the day."),
				t(
					"In order: checked, and nothing found. Not answered: nobody has said what the check needs, so nobody has checked. A mark is never left out because an answer is missing.",
				),
			],
		},
	];
}

function words(): HelpEntry[] {
	const entry = (id: string, title: string, ...says: string[]): HelpEntry => ({ id, title, says });
	return [
		entry(
			"deck",
			t("Deck"),
			t("What the pour lands on: its kind, how stiff, dry and sound it is. One room may have several."),
		),
		entry(
			"reading",
			t("Reading"),
			t("One measured height at one spot: how far the floor lies under a level line, or over a mark."),
		),
		entry(
			"surface",
			t("Surface"),
			t("The deck’s shape worked out from the readings, with how sure it is between them."),
		),
		entry(
			"plane",
			t("Finish plane"),
			t(
				"Where the top of the pour goes. Level at the highest ground plus the least depth; or flat with a slight fall, which takes fewer bags; or brought to the height of a door.",
			),
		),
		entry(
			"lift",
			t("Lift"),
			t(
				"One layer of a pour. Where the floor is deeper than the bag allows at once, it is poured in lifts, with primer between.",
			),
		),
		entry(
			"sheet",
			t("Sheet"),
			t(
				"The figures of one product as its bag states them. Sheets that come with the page are typical values, no product’s.",
			),
		),
		entry("batch", t("Batch"), t("What one bucket holds: whole bags with their water.")),
		entry(
			"wet-edge",
			t("Wet edge"),
			t("The poured front that the next batch must meet while it still flows. Come too late, and a ridge stays."),
		),
		entry("take-off", t("Take-off"), t("The list of everything to buy, with quantities and prices.")),
		entry("run-sheet", t("Run sheet"), t("The work in order, with the clock, the waits and who does what.")),
		entry(
			"rulebook",
			t("Rulebook"),
			t(
				"Every figure and check that the page goes by, with its source. You can change any of them, and see what it changes.",
			),
		),
		entry("margin", t("Margin"), t("How far a check is from breaking, in its own unit.")),
		entry(
			"doors",
			t("Doors, dams and the way out"),
			t(
				"Every door of the room needs a dam as high as the pour. The pour ends at the way out: mark the door by which you leave.",
			),
		),
		entry(
			"indicator",
			t("Height indicator"),
			t("A pin or a screw set to the finished height before the pour, so that you see when the mix has reached it."),
		),
		entry(
			"sure",
			t("90 % sure"),
			t("The bag count is a guess with a spread. Bags for 90 % last in nine pours out of ten like this one."),
		),
	];
}

function cautions(): HelpEntry[] {
	const entry = (id: string, title: string, says: string): HelpEntry => ({ id, title, says: [says] });
	return [
		entry(
			"dust",
			t("Dust"),
			t(
				"Grinding, sweeping and opening bags raise dust with silica, which scars the lungs. Use a vacuum made for it, a fitting mask, and wet where you can.",
			),
		),
		entry(
			"old",
			t("Old floors"),
			t(
				"Old tiles, backing, glue and paint may hold asbestos or lead. Have them tested before you cut, grind or scrape; the law where you live says who may take them out.",
			),
		),
		entry(
			"cement",
			t("Wet cement"),
			t(
				"It burns skin and eyes. Waterproof gloves, goggles, long sleeves; wash off at once with much water, and see a doctor for the eyes.",
			),
		),
		entry(
			"lifting",
			t("Lifting"),
			t("Bags weigh 20 kg to 25 kg and there are many. Two people, a barrow, and the stack near the mixer."),
		),
		entry(
			"power",
			t("Water and power"),
			t(
				"Buckets of water and mixing drills stand together: only from an outlet with a residual current device (a GFCI), and no cable across the pour.",
			),
		),
		entry(
			"heating",
			t("Heated floors"),
			t(
				"Cables and pipes lie just under the surface. Don’t drill, screw or grind unless you know where. Switch it off before and after, as its maker says.",
			),
		),
		entry(
			"structure",
			t("Structure"),
			t(
				"A pour of 20 mm weighs about 40 kg on every square metre. A springy or old floor may need somebody licensed to look at it first.",
			),
		),
		entry(
			"defer",
			t("What goes before this page"),
			t("Local codes, the product’s own sheet and licensed practice go before anything that is worked out here."),
		),
	];
}
