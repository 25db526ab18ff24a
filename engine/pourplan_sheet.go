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
	steps, primed := p.priming(steps)
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
	return append(steps, p.pourSteps(append([]string{"ready"}, primed))...)
}

// priming adds a step for each coat; every coat dries before the next, and the pour must meet the last one's window.
func (p *pourWork) priming(steps []pour.Step) ([]pour.Step, string) {
	after := "patch"
	coats := p.coats()
	for i := 1; i <= coats; i++ {
		id, title, latest := "prime", "Prime", p.figure("primer_dry_most")
		if coats > 1 {
			id, title = "prime-"+strconv.Itoa(i), "Prime, coat "+strconv.Itoa(i)+" of "+strconv.Itoa(coats)
		}
		steps = append(steps, hold(p.step(id, title, "prime_work", []string{after}, p.cautionsAt(people.StepPrime)...), "Primer dries", p.figure("primer_dry_least"), latest))
		after = id
	}
	return steps, after
}

// coats is the most that any deck of the job asks for; one where nobody can say yet.
func (p *pourWork) coats() int {
	most := 1.0
	for _, room := range p.rooms {
		for _, deck := range room.decks {
			if coats, result := p.book.quantity("primer_coats", deck.facts); result.State == rules.Known && coats > most && coats <= 5 {
				most = coats
			}
		}
	}
	return int(most)
}

// pourSteps are the pours, room by room, and what waits for them.
func (p *pourWork) pourSteps(after []string) []pour.Step {
	steps, poured := []pour.Step{}, []string{}
	for i, one := range p.poured {
		id, title := "pour", "Pour"
		if len(p.poured) > 1 {
			id = "pour-" + strconv.Itoa(i+1)
		}
		if name := one.room.room.Name; name != "" {
			title += ": " + name
		}
		steps = append(steps, pour.Step{ID: id, Title: title, Who: everyone, Work: one.clock.Finish, After: after, Cautions: append(p.cautionsAt(people.StepMix, people.StepPour, people.StepClean), cautionDraught)})
		after, poured = []string{id}, append(poured, id)
	}
	steps = append(steps,
		waiting("off-it", "Nobody on it, no draught, no sun", poured, p.setting.walk),
		p.step("walk", "Walk it, take out the dams, check it with a straightedge", "indicator_work", []string{"off-it"}),
		waiting("no-tile", "No tile yet", poured, p.setting.tile),
		pour.Step{ID: "tile", Title: "Tile may be laid", After: []string{"no-tile", "walk"}, Cautions: []string{cautionMoisture}},
		waiting("no-cover", "No tight cover yet", poured, p.setting.cover),
		pour.Step{ID: "cover", Title: "What lets no moisture out may be laid", After: []string{"no-cover", "walk"}, Cautions: []string{cautionMoisture}},
	)
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
