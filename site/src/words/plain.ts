// What the engine's own names of answers are called in English, where the name is not what people say.
export const plain: Record<string, string> = {
	osb: "OSB",
	c16: "C16",
	c24: "C24",
	"douglas-fir-larch": "Douglas fir-larch",
	"douglas-fir-larch-2012": "Douglas fir-larch, 2012 and before",
	"southern-pine": "southern pine",
	"southern-pine-before-2013": "southern pine, before 2013",
	"grinder-water": "handheld grinder, wet",
	"grinder-shroud": "handheld grinder, dry, with shroud and dust collector",
	mortar: "handheld grinder in joints, with shroud and dust collector",
	"floor-grinder": "walk-behind grinder or milling machine, with dust collector",
	drill: "drill, with shroud and dust collector",
	chipping: "chipping hammer, with water or dust collector",
	"saw-water": "power saw, wet",
};
