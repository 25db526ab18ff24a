package engine

import (
	"slices"
	"strconv"
	"strings"

	"lowspot/engine/people"
	"lowspot/engine/pour"
	"lowspot/rules"
)

// firstDay is how the first day of a run sheet without a chosen start is written: a Monday, so that weekdays count from it.
const firstDay = "2001-01-01T"

// runSheet puts the whole job in order, from stripping to covering.
func (p *pourWork) runSheet() RunSheet {
	sheet := RunSheet{Relative: strings.TrimSpace(p.job.Start) == "", Entries: []pour.Entry{}}
	if sheet.Why = p.noSheet(); sheet.Why != "" {
		return sheet
	}
	hours := pour.Workday{Opens: p.figure("work_opens"), Closes: p.figure("work_closes")}
	steps := p.steps()
	if !p.ready {
		sheet.Why = "A figure of the run sheet can't be worked out; the list of problems says which."
		return sheet
	}
	start := p.job.Start
	if sheet.Relative {
		start = firstDay + "08:00"
	}
	entries, err := pour.RunSheet(steps, start, hours)
	if err != nil {
		problem := p.refusal(err)
		p.fail(problem)
		sheet.Why = problem.Message + " " + problem.Remedy
		return sheet
	}
	slices.SortStableFunc(entries, func(a, b pour.Entry) int { return strings.Compare(a.Start, b.Start) })
	sheet.Entries = entries
	return sheet
}

func (p *pourWork) noSheet() string {
	if !p.ready {
		return "A figure that the pour goes by can't be worked out; the list of problems says which."
	}
	timed := 0
	for _, one := range p.poured {
		if one.timed {
			timed++
		}
	}
	if timed < len(p.rooms) || timed == 0 {
		return "The run sheet comes when every room's pour can be worked out."
	}
	return ""
}

// everyone is who does the work: its steps don't overlap.
const everyone = "crew"

// steps lists the work. A wait for the pour's strength is a step that needs nobody, so that walking, tiling and covering each count from the pour.
func (p *pourWork) steps() []pour.Step {
	steps := []pour.Step{
		p.step("strip", "Take up the old floor, clean to the bare deck, vacuum", "strip_work", nil, p.cautionsAt(people.StepStrip, people.StepGrind)...),
		p.step("test", "Walk, tap and measure: moisture, soundness, drops for absorbency; screw down what moves", "test_work", []string{"strip"}, p.cautionsAt(people.StepFix)...),
		hold(p.step("patch", "Fill holes, joints and gaps with patch", "patch_work", []string{"test"}, p.cautionsAt(people.StepPatch)...), "Patch cures", p.figure("patch_cure"), 0),
	}
	steps, sealed := p.barrier(steps)
	steps, primed := p.priming(steps, sealed)
	steps = append(steps,
		p.step("edge", "Set the strip along every wall, post and pipe", "edge_work", []string{primed}, p.cautionsAt(people.StepClose)...),
		p.step("indicators", "Set the height indicators and check them against the line", "indicator_work", []string{"edge"}),
		p.step("dams", "Dam the doors and drains, seal, and look again for ways out", "indicator_work", []string{"indicators"}, p.cautionsAt(people.StepClose)...),
	)
	before := []string{"dams", primed}
	if p.heated() {
		steps = append(steps, hold(pour.Step{ID: "heating-off", Title: "Switch the floor heating off", Cautions: []string{cautionHeating}}, "Floor heating stays off", p.figure("heating_off"), 0))
		before = append(before, "heating-off")
	}
	steps = append(steps, p.step("ready", "Put bags, water, mixers and tools ready; agree the way out; flow-ring test with the first batch", "ready_work", before, p.cautionsAt(people.StepCarry, people.StepMix)...))
	return append(steps, p.pourSteps("ready", primed)...)
}

// barrier adds a step for each coat of the moisture barrier, where a deck gets one; every coat cures before what follows.
func (p *pourWork) barrier(steps []pour.Step) ([]pour.Step, string) {
	after := "patch"
	asked := p.anyDeck(func(deck *deckWork) bool {
		result := p.book.Compiled.Figure("barrier_asked", deck.facts)
		return result.State == rules.Known && result.Value.Truth
	})
	if !asked {
		return steps, after
	}
	coats := max(1, min(p.whole("barrier_coats"), mostCoats))
	for i := 1; i <= coats; i++ {
		id := "barrier-" + strconv.Itoa(i)
		step := p.step(id, "Moisture barrier, coat "+strconv.Itoa(i)+" of "+strconv.Itoa(coats), "barrier_work", []string{after}, p.cautionsAt(people.StepPrime)...)
		steps, after = append(steps, hold(step, "Moisture barrier cures", p.figure("barrier_dry"), 0)), id
	}
	return steps, after
}

func (p *pourWork) anyDeck(is func(*deckWork) bool) bool {
	for _, room := range p.rooms {
		for i := range room.decks {
			if is(&room.decks[i]) {
				return true
			}
		}
	}
	return false
}

// mostCoats is more than any tin asks for.
const mostCoats = 5

// priming adds a step for each coat; every coat dries before the next, and the pour must meet the last one's window. A deck that takes fewer coats than
// another gets its own with the last ones, so that the window counts for all of them from one step.
func (p *pourWork) priming(steps []pour.Step, after string) ([]pour.Step, string) {
	dries := p.coatsDry()
	for i, dry := range dries {
		id, title := "prime", "Prime"
		if len(dries) > 1 {
			id, title = "prime-"+strconv.Itoa(i+1), "Prime, coat "+strconv.Itoa(i+1)+" of "+strconv.Itoa(len(dries))
			if i < len(dries)-1 {
				title += ": the decks that take so many"
			}
		}
		steps = append(steps, hold(p.step(id, title, "prime_work", []string{after}, p.cautionsAt(people.StepPrime)...), "Primer dries", dry, p.figure("primer_dry_most")))
		after = id
	}
	return steps, after
}

// coatsDry is how long each coat of primer dries, the first one first: as long as on the slowest deck that gets it. Where no deck tells, it is one coat
// and the tin's least.
func (p *pourWork) coatsDry() []float64 {
	var last []float64 // counted back from the last coat
	p.anyDeck(func(deck *deckWork) bool {
		coats, counted := p.book.quantity("primer_coats", deck.facts)
		dry, known := p.book.quantity("primer_dry_here", deck.facts)
		if counted.State != rules.Known || known.State != rules.Known || !(coats >= 1) {
			return false
		}
		for i := 0; i < int(coats) && i < mostCoats; i++ {
			if i == len(last) {
				last = append(last, 0)
			}
			last[i] = max(last[i], dry/coats)
		}
		return false
	})
	if len(last) == 0 {
		return []float64{p.figure("primer_dry_least")}
	}
	slices.Reverse(last)
	return last
}

// pourSteps are the pours in order, and what waits for them.
func (p *pourWork) pourSteps(ready, primed string) []pour.Step {
	steps, poured, deck := []pour.Step{}, []string{}, primed // the primer on the deck itself
	after := []string{ready, primed}
	for i, work := range p.poured {
		n := strconv.Itoa(i + 1)
		id := "pour"
		if len(p.poured) > 1 {
			id += "-" + n
		}
		if work.bay > 1 {
			step := p.step("bay-"+n, "Take out the dam, prime the cut edge, set the next dam, put bags and water ready", "ready_work", after, p.cautionsAt(people.StepClose)...)
			steps, after = append(steps, step), append([]string{step.ID}, after...)
		}
		step := p.pourStep(id, work, after)
		follows := i+1 < len(p.poured) && p.poured[i+1].room == work.room
		switch {
		case follows && p.poured[i+1].lift > work.lift:
			steps = append(steps, hold(step, "The lift sets: nobody on it", p.setting.walk, 0))
			over := p.step("prime-over-"+n, "Prime over the lift", "prime_work", []string{id}, p.cautionsAt(people.StepPrime)...)
			steps = append(steps, hold(over, "Primer dries", p.figure("primer_dry_least"), p.figure("primer_dry_most")))
			primed = over.ID
			after = []string{primed}
		case follows:
			steps = append(steps, hold(step, "The bay sets: nobody on it", p.setting.walk, 0))
			after = []string{id, primed}
		default:
			steps, poured = append(steps, step), append(poured, id)
			primed, after = deck, []string{id, deck}
		}
	}
	return append(steps, p.laterSteps(poured)...)
}

func (p *pourWork) pourStep(id string, work poured, after []string) pour.Step {
	title := "Pour"
	if name := work.room.room.Name; name != "" {
		title += ": " + name
	}
	if part := work.id(); part != "" {
		title += ", " + part
	}
	cautions := append(p.cautionsAt(people.StepMix, people.StepPour, people.StepClean), cautionDraught)
	return pour.Step{ID: id, Title: title, Who: everyone, Hands: pour.HandsOf(work.clock), Work: work.clock.Finish, After: after, Cautions: cautions}
}

// laterSteps wait for the last pour of every room.
func (p *pourWork) laterSteps(poured []string) []pour.Step {
	steps := []pour.Step{
		waiting("off-it", "Nobody on it, no draught, no sun", poured, p.setting.walk),
		p.step("walk", "Walk it, take out the dams, check it with a straightedge", "indicator_work", []string{"off-it"}),
		waiting("no-tile", "No tile yet", poured, p.setting.tile),
		{ID: "tile", Title: "Tile may be laid", After: []string{"no-tile", "walk"}, Cautions: []string{cautionMoisture}},
		waiting("no-cover", "No tight cover yet", poured, p.setting.cover),
		{ID: "cover", Title: "What lets no moisture out may be laid", After: []string{"no-cover", "walk"}, Cautions: []string{cautionMoisture}},
	}
	if p.heated() {
		steps = append(steps, waiting("heating", "Floor heating stays off", poured, p.setting.heated),
			pour.Step{ID: "heating-on", Title: "Switch the floor heating on, a few degrees a day", After: []string{"heating"}})
	}
	return steps
}

func (p *pourWork) step(id, title, work string, after []string, cautions ...string) pour.Step {
	return pour.Step{ID: id, Title: title, Who: everyone, Work: p.figure(work), After: after, Cautions: cautions}
}

func hold(s pour.Step, title string, earliest, latest float64) pour.Step {
	s.Hold = &pour.Hold{Title: title, Earliest: earliest, Latest: latest}
	return s
}

func waiting(id, title string, after []string, seconds float64) pour.Step {
	return hold(pour.Step{ID: id, Title: title, After: after}, title, seconds, 0)
}

func (p *pourWork) heated() bool {
	for _, room := range p.rooms {
		if heated, known := room.facts["room.heated"]; known && heated.Value.Truth {
			return true
		}
	}
	return false
}
