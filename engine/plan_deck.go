package engine

// Proving the deck: how far joists bend under what is coming, what its sheets take to close, how many moisture tests it needs and where.

import (
	"lowspot/engine/deck"
	"lowspot/rules"
)

// factKind tells what follows from a deck's kind, and from how its joists and its moisture are named.
func factKind(facts rules.Facts) {
	if kind, stated := facts["deck.kind"]; stated {
		is := func(word string, kinds ...string) { worksOut(facts, word, truth(isOne(kind.Value.Text, kinds...))) }
		is("deck.wood", "plywood", "osb", "chipboard", "boards")
		is("deck.mineral", "concrete", "screed", "gypsum")
		is("deck.hard", "concrete", "screed", "gypsum", "tile", "stone", "adhesive residue")
		is("deck.gypsum", "gypsum")
		is("deck.screed", "screed")
		is("deck.tiled", "tile", "stone")
		is("deck.residue", "adhesive residue")
	}
	if size, stated := facts["joist.size"]; stated {
		worksOut(facts, "joist.other", truth(size.Value.Text == sizeOther))
	}
	if method, stated := facts["moisture.method"]; stated {
		worksOut(facts, "moisture.probes", truth(method.Value.Text == "probes"))
		worksOut(facts, "moisture.chloride", truth(method.Value.Text == "calcium chloride"))
		worksOut(facts, "moisture.plastic", truth(method.Value.Text == "plastic sheet"))
	}
}

// proveDecks works out what the checks on each deck read.
func (w *work) proveDecks(r *roomWork) {
	for i := range r.decks {
		d := &r.decks[i]
		switch {
		case isTrue(d.facts, "deck.wood"):
			w.proveJoists(r, d)
			w.proveSheets(d)
		case isTrue(d.facts, "deck.mineral"):
			w.readTests(d)
			w.proveMoisture(d)
			w.factTests(d)
		}
	}
}

func isTrue(facts rules.Facts, word string) bool { return facts[word].Value.Truth }

// given are several answers at once, by their names; false where one is open.
func given(facts rules.Facts, names ...string) ([]float64, bool) {
	values := make([]float64, len(names))
	for i, name := range names {
		fact, known := facts[name]
		if !known {
			return nil, false
		}
		values[i] = fact.Value.Number
	}
	return values, true
}

// set are several figures at once; false where the rulebook can't say one of them.
func (w *work) set(facts rules.Facts, names ...string) ([]float64, bool) {
	values := make([]float64, len(names))
	for i, name := range names {
		value, result := w.book.quantity(name, facts)
		if result.State != rules.Known {
			return nil, false
		}
		values[i] = value
	}
	return values, true
}

// joistsOf puts the joists together from what is said of them.
func joistsOf(facts rules.Facts) (deck.Joists, bool) {
	laid, known := given(facts, "joist.spacing", "joist.span")
	grade, graded := deck.GradeNamed(facts["joist.grade"].Value.Text)
	size, sized := deck.SizeNamed(facts["joist.size"].Value.Text)
	if isTrue(facts, "joist.other") {
		section, measured := given(facts, "joist.breadth", "joist.depth")
		if measured {
			size, sized = deck.Size{Name: sizeOther, Breadth: section[0], Depth: section[1]}, true
		}
	}
	if !known || !graded || !sized {
		return deck.Joists{}, false
	}
	return deck.Joists{Size: size, Grade: grade, Spacing: laid[0], Span: laid[1], Continuous: isTrue(facts, "joist.continuous")}, true
}

// proveJoists works out the bend under live load, and under all load once pour and finish are known.
func (w *work) proveJoists(r *roomWork, d *deckWork) {
	loads, complete := w.loads(r, d)
	joists, known := joistsOf(d.facts)
	limit, set := w.set(d.facts, "stiffness_needed")
	if !known || !set || loads.Live <= 0 || limit[0] <= 0 {
		return
	}
	bent, err := joists.Bend(loads)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	span, err := joists.SpanAt(limit[0], loads.Live)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	worksOut(d.facts, "joist.deflection_live", number(bent.Live))
	worksOut(d.facts, "joist.ratio", number(bent.LiveRatio))
	if !complete {
		return
	}
	worksOut(d.facts, "joist.deflection_total", number(bent.Total))
	worksOut(d.facts, "joist.ratio_total", number(bent.TotalRatio))
	if bending, known := joists.SpanInBending(loads); known {
		worksOut(d.facts, "joist.bending", number(bent.Bending))
		worksOut(d.facts, "joist.bending_allowed", number(bent.Allowed))
		span = min(span, bending)
	}
	worksOut(d.facts, "joist.span_allowed", number(span))
}

// loads are what the deck carries; complete once the pour's depth and the finish are known too.
func (w *work) loads(r *roomWork, d *deckWork) (loads deck.Loads, complete bool) {
	design, set := w.set(d.facts, "live_load", "dead_load", "pour_density")
	if !set {
		return loads, false
	}
	loads.Live, loads.Dead = design[0], design[1]
	depth, known := d.facts["depth.mean"]
	if !known {
		return loads, false
	}
	pour, err := deck.AddedLoad(depth.Value.Number, design[2])
	if err != nil {
		w.failAnswer(d.field, err)
		return loads, false
	}
	loads.Pour = pour
	worksOut(d.facts, "deck.pour_load", number(pour))
	finish, ok := w.finishLoad(r, d)
	if !ok {
		return loads, false
	}
	loads.Finish = finish
	worksOut(d.facts, "deck.dead_load", number(loads.Dead+loads.Pour+loads.Finish))
	return loads, true
}

func (w *work) finishLoad(r *roomWork, d *deckWork) (float64, bool) {
	density, set := w.set(d.facts, "finish_density")
	if !set || !r.finishStated {
		return 0, false
	}
	if density[0] == 0 {
		return 0, true
	}
	load, err := deck.AddedLoad(r.finish, density[0])
	if err != nil {
		w.failAnswer(d.field, err)
	}
	return load, err == nil
}

// mostSheetWork is the area times walls up to which sheets are counted while somebody types.
const mostSheetWork = 20_000

// proveSheets lays the sheets and reckons what fills their joints.
func (w *work) proveSheets(d *deckWork) {
	if d.facts["deck.kind"].Value.Text == "boards" || d.facts["deck.area"].Value.Number*float64(len(d.outline.Outer)) > mostSheetWork {
		return
	}
	layout, err := sheetsOf(d.facts).LayOut(d.outline)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	worksOut(d.facts, "deck.joint_length", number(layout.Joints))
	worksOut(d.facts, "deck.sheets", number(float64(layout.Pieces)))
	worksOut(d.facts, "deck.fasteners", number(float64(layout.Fasteners)))
	w.proveFiller(d, layout.Joints)
}

// sheetsOf is how the sheets lie: as answered, and as usual where nobody said. The upper of two layers is fastened all over its field.
func sheetsOf(facts rules.Facts) deck.Sheets {
	sheets := deck.UsualSheets
	for name, into := range map[string]*float64{
		"deck.sheet_length": &sheets.Length, "deck.sheet_width": &sheets.Width, "deck.fastener_edge": &sheets.Edge,
		"deck.fastener_field": &sheets.Field, "joist.spacing": &sheets.Apart,
	} {
		if fact, known := facts[name]; known {
			*into = fact.Value.Number
		}
	}
	if facts["deck.layers"].Value.Number >= 2 {
		sheets.Apart = 0
	}
	return sheets
}

func (w *work) proveFiller(d *deckWork, joints float64) {
	gap, known := given(d.facts, "deck.gap", "deck.thickness")
	mixed, set := w.set(d.facts, "patch_powder_to_water", "filler_waste")
	if !known || !set {
		return
	}
	volume, err := deck.JointVolume(joints, gap[0], gap[1], mixed[1])
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	filler := deck.UsualFiller
	filler.Powder, filler.Water = mixed[0], 1
	mix, err := filler.MixFor(volume)
	if err != nil {
		w.failAnswer(d.field, err)
		return
	}
	worksOut(d.facts, "filler.volume", number(mix.Volume))
	worksOut(d.facts, "filler.powder", number(mix.Powder))
	worksOut(d.facts, "filler.mass", number(mix.Mass))
	worksOut(d.facts, "filler.water", number(mix.Water))
}
