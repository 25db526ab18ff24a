package engine

import q "lowspot/engine/quantity"

// The words that the plan works out. A figure that the surface waits for may not use them.
var workedOutWords = []Word{
	worked(ScopeRoom, "room.area", of(q.Area), "Floor area less keep-outs.", "7.5 m²"),
	worked(ScopeRoom, "room.perimeter", of(q.Length), "Length of the walls and of the keep-outs' edges.", "11.2 m"),
	worked(ScopeRoom, "room.longest", of(q.Length), "Greatest straight distance across the room.", "4 m"),
	worked(ScopeRoom, "survey.count", of(q.Number), "Readings in use.", "14"),
	worked(ScopeRoom, "survey.range", of(q.Length), "Highest reading less lowest.", "22 mm"),
	worked(ScopeRoom, "survey.density", of(q.Number.Over(q.Area)), "Readings to the area.", ""),
	worked(ScopeRoom, "plane.fall", of(q.Number), "Slope of the finish plane.", "0 %"),
	worked(ScopeRoom, "plane.drop", of(q.Length), "Fall of the finish plane across the room.", "0 mm"),
	worked(ScopeRoom, "pour.volume", of(q.Volume), "Volume between deck and finish plane.", "120 L"),
	worked(ScopeRoom, "pour.dry_area", of(q.Area), "Area where the deck stands above the finish plane.", "0 m²"),
	worked(ScopeRoom, "exits.count", of(q.Number), "Doors marked as the way out.", "1"),
	worked(ScopeDeck, "deck.area", of(q.Area), "Area of this deck.", "7.5 m²"),
	worked(ScopeDeck, "deck.wood", yesNo, "The deck is plywood, OSB, chipboard or boards.", "yes"),
	worked(ScopeDeck, "deck.mineral", yesNo, "The deck is concrete, screed or gypsum.", "no"),
	worked(ScopeDeck, "depth.least", of(q.Length), "Pour at its thinnest over this deck.", "6 mm"),
	worked(ScopeDeck, "depth.greatest", of(q.Length), "Pour at its deepest over this deck.", "28 mm"),
	worked(ScopeDeck, "depth.mean", of(q.Length), "Mean depth over this deck.", "14 mm"),
	worked(ScopeDoor, "door.step", of(q.Length), "Finished floor less the floor beyond the door; below zero it is lower.", "8 mm"),
	worked(ScopeDoor, "door.pour_depth", of(q.Length), "Depth of the pour at this door.", "12 mm"),
	worked(ScopeDoor, "door.rise", of(q.Length), "Finished floor over the bare deck at this door.", "24 mm"),
	worked(ScopeDoor, "door.exit", yesNo, "The way out on pour day.", "yes"),
	worked(ScopeDoor, "stair.variation", of(q.Length), "Highest less lowest riser of the stair once the floor is in.", "4 mm"),
	worked(ScopePenetration, "penetration.proud", of(q.Length), "Its top over the finished floor; below zero it is under.", "4 mm"),
	worked(ScopePenetration, "penetration.kind", oneOf("drain", "flange", "pipe"), "What comes through the floor.", "drain"),
	worked(ScopeJob, "job.area", of(q.Area), "Area of all rooms.", "7.5 m²"),
	worked(ScopeJob, "job.volume", of(q.Volume), "Volume of all pours, before waste.", "120 L"),
	worked(ScopeJob, "job.bags", of(q.Number), "Bags of leveller to buy.", "10"),
	worked(ScopeJob, "job.powder", of(q.Mass), "Leveller powder to carry.", "250 kg"),
	worked(ScopeJob, "job.water", of(q.Volume), "Water to mix it.", "50 L"),
	worked(ScopeJob, "mix.temperature", of(q.Temperature), "What powder and water come to when mixed.", "15 °C"),
}
