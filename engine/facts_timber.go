package engine

import (
	"lowspot/engine/deck"
	q "lowspot/engine/quantity"
)

// The words that a person answers about a wood deck: what carries it, and how its sheets lie.

var timberWords = join(only("deck.wood", joistWords), only("joist.other", joistSectionWords), only("deck.wood", sheetLayWords))

var joistWords = []Word{
	asked(ScopeDeck, "joists", "joist.size", oneOf(sizeNames()...), counts, "Size of the joists.", "2×10",
		"What size are the joists?", "How far the floor bends goes by the third power of their depth.", "Look from below or through a hatch; sawn sizes are smaller than their names: a 2×10 is 1 1/2 in by 9 1/4 in. Choose other for any other size."),
	asked(ScopeDeck, "joists", "joist.grade", oneOf(gradeNames()...), counts, "Species and grade of the joists.", "spruce-pine-fir",
		"What wood are the joists, and which grade?", "Stiffness differs by a third between species, and tables changed with editions.", "Read the stamp on a joist. Where there is none, take the weaker one and ask an engineer."),
	asked(ScopeDeck, "joists", "joist.spacing", of(q.Length), depths, "Joists from middle to middle.", "400 mm",
		"How far apart are the joists, from middle to middle?", "Each joist carries its share of the floor, and the sheets bend between them.", "Follow the screw lines, or measure from below."),
	asked(ScopeDeck, "joists", "joist.span", of(q.Length), lengths, "Joists from support to support.", "3.4 m",
		"How far do the joists span?", "The bend goes by the fourth power of the span: half a metre more is much more.", "From the face of one wall or beam to the face of the next, along the joists."),
	asked(ScopeDeck, "joists", "joist.continuous", yesNo, counts, "The joists run on over a middle support.", "no",
		"Do the joists run on over a beam or wall in the middle?", "A joist that runs on bends less under the same load. Left open, it is taken as ending at both supports.", "Look from below: one piece over the beam, not two that lap there."),
	asked(ScopeDeck, "joists", "joist.sound", yesNo, counts, "Joists whole: no rot, no splits, no notches in the middle third.", "yes",
		"Are the joists whole: no rot, no splits, no deep notches?", "No arithmetic holds for a joist that has been cut or that rots.", "Look from below with a lamp, push a screwdriver into the ends and under bathrooms."),
	asked(ScopeDeck, "joists", "joist.blocked", yesNo, counts, "Blocking or bridging stands between the joists.", "yes",
		"Is there blocking or bridging between the joists?", "It makes neighbours share a load, so that no joist bends alone beside a stiff one.", "Look from below: short pieces or crosses between joists, every 2.4 m (8 ft) or closer."),
}

var joistSectionWords = []Word{
	asked(ScopeDeck, "joists", "joist.breadth", of(q.Length), depths, "Thickness of a joist.", "47 mm",
		"How thick is a joist?", "The bend goes by it.", "Measure the joist itself, not its name."),
	asked(ScopeDeck, "joists", "joist.depth", of(q.Length), depths, "Depth of a joist.", "195 mm",
		"How deep is a joist?", "The bend goes by its third power.", "Measure from the deck's underside to the joist's lower edge."),
}

var sheetLayWords = []Word{
	asked(ScopeDeck, "sheets", "deck.layers", of(q.Number), counts, "Layers of sheets over the joists.", "2",
		"How many layers of sheets lie over the joists?", "Two layers with staggered joints take the movement out of a joint.", "Look at a cut edge, a pipe or a register."),
	asked(ScopeDeck, "sheets", "deck.staggered", yesNo, counts, "Joints of one layer lie away from those of the other.", "yes",
		"Are the layers' joints staggered?", "Where joints lie over each other the pour cracks along them.", "Compare the screw lines; where it can't be seen, answer don't know."),
	asked(ScopeDeck, "sheets", "deck.edges_held", yesNo, counts, "Every sheet edge lies on a joist, on blocking, or in tongue and groove.", "yes",
		"Is every sheet edge held: on a joist, on blocking, or by tongue and groove?", "A free edge dips under a foot, and the pour cracks over it.", "Step on both sides of each joint and look for one that moves alone."),
	asked(ScopeDeck, "sheets", "deck.gap", of(q.Length), depths, "Gap between the sheets.", "3 mm",
		"How wide are the gaps between the sheets?", "Sheets swell: without a gap they push each other up, and a wide one drinks the pour.", "A coin or a drill bit as a gauge; a few joints, take the mean."),
	asked(ScopeDeck, "sheets", "deck.lip", of(q.Length), depths, "Greatest step from sheet to sheet.", "1 mm",
		"How much does one sheet stand over the next?", "A lip is the pour's thinnest spot, and it says that an edge is not held.", "A short straightedge across the joints."),
	asked(ScopeDeck, "sheets", "deck.sheet_length", of(q.Length), lengths, "Length of a sheet.", "2.4 m",
		"How long is a sheet?", "It tells how many joints there are to close and how many screws to drive.", "Leave it open for 2.44 m by 1.22 m (8 ft by 4 ft)."),
	asked(ScopeDeck, "sheets", "deck.sheet_width", of(q.Length), lengths, "Width of a sheet.", "1.2 m",
		"How wide is a sheet?", "It tells how many joints there are to close and how many screws to drive.", "Leave it open for 2.44 m by 1.22 m (8 ft by 4 ft)."),
	asked(ScopeDeck, "sheets", "deck.fastener", oneOf("screws", "ring-shank nails", "smooth nails", "staples"), counts, "What the sheets are fastened with.", "screws",
		"What are the sheets fastened with?", "Smooth nails and staples work loose; then the deck squeaks, and the pour cracks.", "Look at a few heads; pull one if in doubt."),
	asked(ScopeDeck, "sheets", "deck.fastener_edge", of(q.Length), depths, "Spacing of the fasteners along sheet edges.", "150 mm",
		"How far apart are the fasteners along the sheets' edges?", "Edges lift first.", "Measure along one joint."),
	asked(ScopeDeck, "sheets", "deck.fastener_field", of(q.Length), depths, "Spacing of the fasteners between the edges.", "300 mm",
		"How far apart are the fasteners on the joists between?", "A sheet that is held at its edges alone drums and bends.", "Measure along one joist in the middle of a sheet."),
	asked(ScopeDeck, "sheets", "deck.damp_grade", yesNo, counts, "The sheets are of a grade made for damp.", "yes",
		"Are the sheets of a grade made for damp?", "Primer and pour bring water, and wet rooms go on doing so; other grades swell at their edges.", "Read the stamp on a sheet; where there is none, answer don't know."),
}

// sizeOther is the choice of a joist that the list of sizes doesn't hold.
const sizeOther = "other"

func sizeNames() (names []string) {
	for _, size := range deck.Sizes {
		names = append(names, size.Name)
	}
	return append(names, sizeOther)
}

func gradeNames() (names []string) {
	for _, grade := range deck.Grades {
		names = append(names, grade.ID)
	}
	return names
}
