package people

// Caution is one hazard of the work, shown where the work meets it: at its steps in the run sheet, and in print.
type Caution struct {
	ID     string   `json:"id"`
	Steps  []string `json:"steps"`
	Text   string   `json:"text"`
	Source string   `json:"source"`
}

// The steps that cautions belong to, in the order of the work.
const (
	StepStrip = "strip" // take up the old floor
	StepGrind = "grind"
	StepFix   = "fix" // screw, drill, saw
	StepCarry = "carry"
	StepPatch = "patch"
	StepClose = "close" // foam, sealant, dams
	StepPrime = "prime"
	StepMix   = "mix"
	StepPour  = "pour"
	StepClean = "clean"
)

// Steps are all of them.
var Steps = []string{StepStrip, StepGrind, StepFix, StepCarry, StepPatch, StepClose, StepPrime, StepMix, StepPour, StepClean}

// Cautions are the usual ones, in the order of the work. Local codes, the product's own sheet and licensed practice go first.
var Cautions = []Caution{
	{"asbestos", []string{StepStrip, StepGrind}, "Old tile, sheet flooring, adhesive and levelling compound may hold asbestos. Have them tested before you lift, sand or grind; leave what holds it to licensed people.",
		"common practice; law in most countries"},
	{"lead", []string{StepStrip, StepGrind}, "Old paint and glazed tile may hold lead. Have them tested before you sand or grind; keep children and pregnant women away.",
		"common practice; law in most countries"},
	{"silica", []string{StepStrip, StepGrind, StepFix, StepMix}, "Concrete, mortar, tile and dry powder give off silica dust, which scars lungs for good. Draw it off at the tool with a HEPA vacuum; wear the respirator that the task asks for; never sweep dry.",
		"29 CFR 1926.1153 (reproduction)"},
	{"hidden", []string{StepGrind, StepFix}, "Pipes, cables and floor heating may lie where you grind, drill or screw. Find them and switch them off first.", "common practice"},
	{"structure", []string{StepStrip, StepFix}, "Don't cut or notch joists, and don't load a deck that gives: have it looked at by an engineer.", "common practice"},
	{"lifting", []string{StepCarry, StepMix}, "Lift bags close to the body, from a table rather than the floor, one at a time; two people or a trolley where the load is over the limit.", "NIOSH 94-110 rev. 2021 (title read)"},
	{"stacks", []string{StepCarry}, "Spread stacked bags along walls and over beams: a pallet of powder is more than a home's floor is meant to carry.", "common practice"},
	{"wet-cement", []string{StepPatch, StepMix, StepPour, StepClean}, "Wet cement burns skin and eyes, often without pain at first (pH about 12 to 13). Wear gloves, goggles, long sleeves and waterproof boots; rinse at once with plenty of water; see a doctor for eyes.",
		"OSHA and HSE guidance, as recalled, documents not at hand"},
	{"power-near-water", []string{StepMix, StepClean}, "Mixers stand in water and wet mortar: use a residual-current device (ground-fault interrupter), whole cables, and no joints on the floor.", "common practice"},
	{"mixer", []string{StepMix}, "A mixing paddle catches gloves, sleeves and wrists: both hands on the drill, stop it before you reach in.", "common practice"},
	{"fumes", []string{StepClose, StepPrime}, "Foam, sealant and some primers give off vapours that harm or burn: air the room, put out flames and pilot lights, read the label.", "common practice"},
	{"resin", []string{StepPrime}, "Resin primers and moisture barriers sensitise skin: gloves for good, and never wash them off with solvent.", "common practice"},
	{"slip", []string{StepPrime, StepPour}, "Primed and poured floors are slippery: spiked soles on wet pour, a plank at the door.", "common practice"},
	{"heated-floor", []string{StepPrime, StepPour}, "Switch floor heating off before priming, and leave it off as long as the sheet on the bag says.", "common practice"},
	{"drains", []string{StepClean}, "Never wash mix down a drain: it sets there. Let it harden, and dispose of it as local rules ask.", "common practice"},
}

// CautionsAt are the cautions of one step, in order.
func CautionsAt(step string) (at []Caution) {
	for _, c := range Cautions {
		for _, s := range c.Steps {
			if s == step {
				at = append(at, c)
			}
		}
	}
	return at
}
