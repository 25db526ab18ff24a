package engine

import q "lowspot/engine/quantity"

// The words that a person answers about a heated or old floor, and about closing the room.

var closingWords = join(only("room.heated", heatingWords), oldFloorWords, stripWords)

var heatingWords = []Word{
	asked(ScopeRoom, "heating", "heating.located", yesNo, counts, "The cables or pipes are found and marked.", "yes",
		"Are the cables or pipes found and marked?", "A pin, a screw or a grinder through one floods the room or kills.", "A thermal camera while it warms up, or the layer's own drawing; never guess."),
	asked(ScopeRoom, "heating", "heating.tested", yesNo, counts, "Tested and written down: cable by resistance and insulation, pipes under pressure.", "yes",
		"Was the heating tested before the pour and is it written down?", "After the pour nobody can tell who broke it.", "Cables: a licensed electrician measures. Pipes: the heating trade leaves them under pressure during the pour."),
	asked(ScopeRoom, "heating", "heating.cover", of(q.Length), depths, "Least cover of the pour over cables or pipes.", "10 mm",
		"How much pour will stand over the cables or pipes?", "Thin cover cracks and makes hot stripes.", "From the top of the highest cable or pipe to the finish plane."),
	asked(ScopeRoom, "heating", "heating.off", of(q.Time), days, "How long it will have been off when the pour starts.", "2 d",
		"How long will the heating have been off?", "A warm floor dries the primer wrong and sets the pour from below.", "Switch it off at the thermostat and the breaker or valve, and note the day."),
}

var oldFloorWords = []Word{
	asked(ScopeRoom, "old floor", "floor.disturbed", yesNo, counts, "Something old is lifted, scraped, sanded or ground.", "no",
		"Will anything old be lifted, scraped, sanded or ground?", "What old floors hold harms only when it becomes dust, and then for good.", "Old tile, sheet, adhesive, levelling compound and paint count."),
	asked(ScopeRoom, "old floor", "floor.year", of(q.Number), counts, "Year in which the old floor was laid.", "1974",
		"In which year was the old floor laid?", "Asbestos was put into floors and adhesives for most of the last century, and lead into paint and glaze.", "Papers, the owner, or the house's age; where nobody knows, take the house's."),
	asked(ScopeRoom, "old floor", "floor.tested", yesNo, counts, "A laboratory found no asbestos or lead in samples of all its layers.", "yes",
		"Did a laboratory find it free of asbestos and lead?", "Nobody can tell by looking.", "Have a trained person take samples of each layer; until the paper is there the answer is no."),
}

var stripWords = []Word{
	asked(ScopeRoom, "edges", "strip.all_round", yesNo, counts, "A perimeter strip stands along every wall, post and pipe.", "yes",
		"Will a strip stand along every wall, post and pipe?", "A pour that touches the walls has nowhere to go and cracks or drums.", "Foam strip, set before the pour and cut off after."),
	asked(ScopeRoom, "edges", "strip.thickness", of(q.Length), depths, "Thickness of the perimeter strip.", "5 mm",
		"How thick is the strip?", "It is the room's movement joint.", "It is printed on the roll."),
	asked(ScopeRoom, "edges", "strip.height", of(q.Length), depths, "Height of the strip over the deck.", "60 mm",
		"How high is the strip over the deck?", "The pour must not run over it.", "From the deck, not from the roll's edge."),
	asked(ScopeRoom, "edges", "strip.spacing", of(q.Length), depths, "Spacing of the strip's fixings.", "300 mm",
		"How far apart is the strip fixed?", "Between fixings it leans, and the pour runs behind it.", "Staples or adhesive dots; measure from one to the next."),
	asked(ScopeRoom, "edges", "room.sealed", yesNo, counts, "Joints at walls, pipes and sheets are sealed.", "yes",
		"Are the joints at walls, pipes and sheets sealed?", "The pour runs through any gap that water would find.", "Sealant or foam, left to cure; then pour a cup of water where you doubt it."),
}

var doorClosingWords = only("door.dammed", []Word{
	asked(ScopeDoor, "edges", "door.dam_height", of(q.Length), depths, "Height of the dam over the deck.", "40 mm",
		"How high is the dam over the deck?", "A dam that is overrun is none.", "From the deck to the batten's top."),
})

var penetrationWords = join([]Word{
	asked(ScopePenetration, "edges", "penetration.collared", yesNo, counts, "A collar of strip stands round it.", "yes",
		"Is there a collar round it?", "A pipe grows and shrinks with what runs through it and breaks a pour that holds it.", "Foam strip wound round and taped."),
}, only("penetration.drain", []Word{
	asked(ScopePenetration, "edges", "penetration.plugged", yesNo, counts, "The drain is plugged and dammed for the pour.", "yes",
		"Is the drain plugged and dammed?", "What runs in sets in the trap.", "A test plug or taped sheet below the grate, and a ring as high as the pour."),
}), only("penetration.flange", []Word{
	asked(ScopePenetration, "edges", "flange.fixed", yesNo, counts, "The flange is screwed to the structure, its fasteners don't rust.", "yes",
		"Is the flange screwed to the structure?", "A flange that moves breaks its seal, and the pour is no base to screw to.", "Try to turn it; look at its screws."),
}))
