package engine

// The usual cautions, where the work meets them. Each defers to local codes, the product's own sheet and licensed practice.
const (
	cautionOld      = "Old tile, sheet flooring, adhesive and paint may hold asbestos or lead. Have them tested before you sand, grind or break them; taking them out can be licensed work. Local codes go first."
	cautionSilica   = "Grinding concrete, screed, tile or mortar makes silica dust, which harms the lungs for good. Grind with a shroud and a fitting vacuum, wear a fitted respirator of the class that local codes name, never dry sweep."
	cautionServices = "Find cables, heating and pipes before you drill, screw or cut into the deck."
	cautionCement   = "Wet cement burns skin and eyes, without pain at first. Waterproof gloves, long sleeves, boots, goggles; wash splashes off at once and follow the bag's own safety sheet."
	cautionAir      = "Follow the tin's own safety sheet, and air the room while the primer dries."
	cautionLifting  = "Bags and full buckets are heavy: two people to a lift, or a barrow, and no more on one spot of a floor than it can carry. If in doubt about the deck, ask an engineer."
	cautionPower    = "Water and power meet here: a residual-current device (GFCI) on every mixer, leads off the floor, plugs dry."
	cautionHeating  = "A heated floor holds cables or pipes: never drill, screw or grind into it. Work on the heating itself is licensed work in many places."
	cautionDraught  = "Windows and doors closed, fans and blowers off. Heaters that burn fuel need fresh air from outside: carbon monoxide has no smell."
	cautionMoisture = "Measure the pour's moisture before you go on; the finish's own sheet goes first."
)
