package engine

import (
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// workPour makes the surface, places the finish plane and works out the pour between the two.
func (w *work) workPour(r *roomWork) {
	if !w.fitSurvey(r) {
		return
	}
	w.reportMerges(r, r.merges)
	for i := range r.decks {
		r.decks[i].cells = floor.CellsOf(r.surface, r.decks[i].region)
	}
	r.plan.Surface = surfaceSays(len(r.points))
	finish, highest, ok := w.placePlane(r)
	if !ok {
		return
	}
	r.plane, r.hasPour = finish.Plane, true
	r.plan.Plane = w.planePlan(r, finish, highest)
	w.workDepths(r)
	w.drawReadings(r)
}

func surfaceSays(readings int) string {
	switch readings {
	case 1:
		return "One reading: the deck is taken as level."
	case 2:
		return "Two readings: the deck is taken as level round them."
	}
	return ""
}

func (w *work) reportMerges(r *roomWork, merges []floor.Merge) {
	for _, merge := range merges {
		if len(merge.Indexes) > 1 && merge.Spread > 0.002 {
			at := merge.At
			w.fail(Problem{
				Code: "read-twice", Field: r.field + "/readings/rows", At: &at,
				Message: "One spot was read more than once and the readings differ by " + w.length(merge.Spread).Text + "; their mean is used.",
				Remedy:  "Read it again and take out the wrong one.",
			})
		}
	}
}

// ground lists every corner of the deck's facets with the least depth that its area asks for.
func (r *roomWork) ground() floor.Ground {
	corners := 0
	for _, deck := range r.decks {
		for _, cell := range deck.cells {
			corners += len(cell.Corners)
		}
	}
	g := floor.Ground{Points: make([]floor.Point, 0, corners), Heights: make([]float64, 0, corners), Least: make([]float64, 0, corners)}
	for _, deck := range r.decks {
		for _, cell := range deck.cells {
			g.Points, g.Heights = append(g.Points, cell.Corners...), append(g.Heights, cell.Heights...)
			for range cell.Corners {
				g.Least = append(g.Least, deck.least)
			}
		}
	}
	return g
}

// placePlane puts the finish plane where the person wants it. A choice that can't be met is a problem, and the plane is then level.
func (w *work) placePlane(r *roomWork) (floor.Finish, *floor.Point, bool) {
	ground := r.ground()
	level, err := floor.LevelOver(ground)
	if err != nil {
		w.failShape(r.field+"/readings", err)
		return floor.Finish{}, nil, false
	}
	finish, err := w.chosenPlane(r, r.room.Plane, ground, level)
	if err != nil {
		w.failShape(r.field+"/plane", err)
		finish = level
	}
	var highest *floor.Point
	if len(finish.Carriers) > 0 {
		at := ground.Points[finish.Carriers[0]]
		highest = &at
	}
	return finish, highest, true
}

func (w *work) chosenPlane(r *roomWork, choice PlaneChoice, ground floor.Ground, level floor.Finish) (floor.Finish, error) {
	middle := r.outline.Centroid()
	switch choice.How {
	case PlaneLeastVolume:
		limit, ok := w.slopeLimit(r, choice, usualSlopeLimit)
		if !ok {
			return level, nil
		}
		return floor.LeastVolume(ground, limit, middle)
	case PlaneDoor:
		limit, ok := w.slopeLimit(r, choice, 0)
		if door := r.doorNamed(choice.Door); ok && door != nil && door.hasNeighbour {
			return floor.ThroughPoint(ground, limit, middle, door.middle(), door.neighbour-r.finish)
		}
		return level, &floor.Error{Code: "no-neighbour", Message: "The finish plane is to meet a door, but the floor beyond it has no height.", Remedy: "Read the floor beyond the door and enter it with the door."}
	case PlaneHand:
		height, ok := w.readHeight(&r.room.Readings, r.field+"/plane/height", choice.Height)
		if !ok {
			return level, nil
		}
		return floor.ByHand(ground, middle, height, 0, middle)
	}
	if choice.Raise == "" {
		return level, nil
	}
	raise, ok := w.span(r.field+"/plane/raise", choice.Raise, true)
	if !ok {
		return level, nil
	}
	return floor.ByHand(ground, middle, level.Plane.C+raise, 0, middle)
}

// usualSlopeLimit is the steepest a least-volume plane may be where nobody says (common practice for a dry room's floor: not seen, not felt).
const usualSlopeLimit = 0.01

// slopeLimit is the steepest that the chosen plane may be.
func (w *work) slopeLimit(r *roomWork, choice PlaneChoice, usual float64) (float64, bool) {
	if choice.SlopeLimit == "" {
		return usual, true
	}
	limit, ok := w.quantity(r.field+"/plane/slopeLimit", choice.SlopeLimit, quantity.Number)
	if ok && (limit < 0 || limit > 0.1) {
		w.fail(Problem{Code: "slope", Field: r.field + "/plane/slopeLimit", Given: choice.SlopeLimit, Message: "A levelled floor slopes between 0 % and 10 %.", Remedy: "Give for example 1 %."})
		return 0, false
	}
	return limit, ok
}

func (r *roomWork) doorNamed(id string) *doorSite {
	for i := range r.doors {
		if r.doors[i].door.ID == id {
			return &r.doors[i]
		}
	}
	return nil
}

func (w *work) planePlan(r *roomWork, finish floor.Finish, highest *floor.Point) *PlanePlan {
	staff := finish.Plane.At(r.outline.Centroid())
	if r.room.Readings.Sense == ReadBelowLine {
		staff = -staff
	}
	how := r.room.Plane.How
	if how == "" {
		how = PlaneLevel
	}
	return &PlanePlan{
		How: how, A: finish.Plane.A, B: finish.Plane.B, C: finish.Plane.C, Highest: highest,
		Fall: w.of(finish.Slope, quantity.Number), Staff: w.length(staff),
	}
}

// workDepths works out the pour over each deck area and over the room.
func (w *work) workDepths(r *roomWork) {
	var all []floor.Cell
	for i := range r.decks {
		deck := &r.decks[i]
		deck.depths = floor.DepthsOf(deck.cells, r.plane)
		w.factDepths(deck)
		all = append(all, deck.cells...)
	}
	depths := floor.DepthsOf(all, r.plane)
	r.volume = depths.Volume
	worksOut(r.facts, "pour.volume", number(depths.Volume))
	worksOut(r.facts, "pour.dry_area", number(depths.Dry))
	worksOut(r.facts, "plane.fall", number(r.plan.Plane.Fall.SI))
	worksOut(r.facts, "plane.drop", number(floor.Fall(r.plane, r.outline).Fall))
	var contours []ContourPlan
	var bands []BandPlan
	if w.before == nil {
		contours, bands = w.draw(all, r.plane, depths)
	}
	r.plan.Pour = &PourPlan{
		Volume: w.of(depths.Volume, quantity.Volume), Depths: w.depths(depths), Contours: contours, Bands: bands,
		Poured: w.of(depths.Area-depths.Dry, quantity.Area), Dry: w.of(depths.Dry, quantity.Area),
	}
}

func (w *work) factDepths(deck *deckWork) {
	worksOut(deck.facts, "depth.least", number(deck.depths.Least))
	worksOut(deck.facts, "depth.greatest", number(deck.depths.Greatest))
	worksOut(deck.facts, "depth.mean", number(deck.depths.Mean()))
}

func (w *work) depths(d floor.Depths) Depths {
	return Depths{
		Least: w.length(d.Least), LeastAt: d.LeastAt, Mean: w.length(d.Mean()),
		Greatest: w.length(d.Greatest), GreatestAt: d.GreatestAt,
	}
}

// mostDrawn is how many readings a plan shows at most: dots of more would be all that is seen.
const mostDrawn = 400

// drawReadings puts the readings in plan.
func (w *work) drawReadings(r *roomWork) {
	lowest, highest := r.heights[0], r.heights[0]
	for _, h := range r.heights {
		if h < lowest {
			lowest = h
		}
		if h > highest {
			highest = h
		}
	}
	worksOut(r.facts, "survey.range", number(highest-lowest))
	if len(r.points) > mostDrawn {
		return
	}
	r.plan.Readings = make([]ReadingPlan, len(r.points))
	for i, p := range r.points {
		r.plan.Readings[i] = ReadingPlan{Row: r.rows[i], At: toTenths(p), Depth: w.length(r.plane.At(p) - r.heights[i]).Text}
	}
}

// deckPlan tells one deck area with the figures that the rulebook gives for it.
func (w *work) deckPlan(deck *deckWork) DeckPlan {
	plan := DeckPlan{
		ID: deck.area.ID, Name: deck.area.Name, Kind: deck.facts["deck.kind"].Value.Text, Outline: deck.outline, Covering: deck.whole,
		Area: w.of(deck.facts["deck.area"].Value.Number, quantity.Area), Least: w.length(deck.least), Figures: w.figures(ScopeDeck, deck.facts),
		Holds: holding(ScopeDeck, deck.facts), Moisture: w.moisturePlan(deck),
	}
	if plan.Outline.Holes == nil {
		plan.Outline.Holes = []floor.Ring{}
	}
	if len(deck.cells) > 0 {
		depths := w.depths(deck.depths)
		plan.Depths = &depths
	}
	return plan
}

// figures works out every figure of a scope for the page.
func (w *work) figures(scope string, facts rules.Facts) []FigurePlan {
	list := []FigurePlan{}
	for _, result := range w.book.Compiled.Figures(scope, facts) {
		figure := FigurePlan{Name: result.Name, Words: result.Words, State: result.State, Missing: result.Missing, Changed: w.book.touched[result.Name]}
		if result.State == rules.Known {
			figure.Text = w.book.Compiled.Show(result.Name, result.Value, w.units)
		}
		if figure.Missing == nil {
			figure.Missing = []string{}
		}
		list = append(list, figure)
	}
	return list
}
