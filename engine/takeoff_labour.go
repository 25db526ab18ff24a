package engine

import "lowspot/engine/quantity"

// preparing are the pieces of work before the pour that the rulebook times, one pair of hands each.
var preparing = []string{"strip_work", "test_work", "patch_work", "prime_work", "edge_work", "indicator_work", "ready_work"}

// labour adds up hands' hours: the rulebook's times for making ready, and the pour by the clock where there is one.
func (t *buying) labour() {
	plan := &LabourPlan{}
	seconds := 0.0
	for _, name := range preparing {
		seconds += t.usual(name)
		plan.Steps = append(plan.Steps, t.by(name, t.facts))
	}
	poured, steps := t.pouring()
	seconds += poured
	plan.Steps = append(plan.Steps, steps...)
	plan.Hours = Amount{seconds, quantity.WriteIn(seconds, "h")}
	t.out.Labour = plan
}

// pouring is hands' time at the pour, s: the crew's clock where the room has one, else so much a bag.
func (t *buying) pouring() (float64, []Reason) {
	t.workPour()
	seconds, each := 0.0, t.usual("bag_work")
	var steps []Reason
	for i, pours := range t.pours {
		timed := false
		for _, plan := range pours {
			if plan.Clock == nil || plan.Rough {
				continue
			}
			timed = true
			seconds += float64(plan.Clock.Timeline.Crew.People) * plan.Clock.Timeline.Finish
			steps = append(steps, Reason{Says: called(t.rooms[i], nil) + ": " + plan.Clock.Says + " for " + plan.Clock.Lasts.Text + "."})
		}
		if !timed && t.rooms[i].volume > 0 {
			bags := t.bagsWithWaste(t.rooms[i].volume)
			seconds += bags * each
			steps = append(steps, Reason{Says: called(t.rooms[i], nil) + ": " + oneDigit(bags) + " bags at " + t.of(each, quantity.Time).Text + "."})
		}
	}
	return seconds, append(steps, t.by("bag_work", t.facts))
}
