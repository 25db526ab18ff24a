package engine

// Proving the work itself: what is carried and lifted, what stands on the deck, what gets into the air.

import (
	"lowspot/engine/people"
	"lowspot/engine/quantity"
)

// provePeople works out what the checks on people read, once the bags are counted.
func (w *work) provePeople() {
	w.proveCarrying()
	w.proveLifting()
	w.proveStacks()
	w.proveDust()
}

func (w *work) proveCarrying() {
	said, known := given(w.facts, "job.bags", "carry.per_trip", "carry.distance")
	bag, set := w.set(w.facts, "bag_mass")
	if !known || !set {
		return
	}
	carried, err := people.Carry(int(said[0]), bag[0], whole(said[1]), said[2])
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "carry.trips", number(float64(carried.Trips)))
	worksOut(w.facts, "carry.walk", number(carried.Walked))
}

// whole is a count as typed; what is no whole number within reason is refused further down as none.
func whole(x float64) int {
	if x >= 1 && x <= 1000 {
		return int(x)
	}
	return 0
}

// Bags are lifted over an hour, held from below, and turned with the feet.
const liftingLasts = 3600

// proveLifting goes by the equation's form in the job's units: its two load constants are not one.
func (w *work) proveLifting() {
	said, known := given(w.facts, "lift.horizontal", "lift.vertical", "lift.travel")
	assumed, set := w.set(w.facts, "bag_mass", "lifts_per_minute")
	if !known || !set {
		return
	}
	lift := people.Lift{Horizontal: said[0], Vertical: said[1], Travel: said[2], Rate: assumed[1] / 60, Lasting: liftingLasts, Grip: people.GripFair}
	form, constant := lift.Metric, people.LoadMetric
	if w.units == quantity.US {
		form, constant = lift.US, people.LoadUS
	}
	multipliers, err := form()
	if err != nil {
		w.failAnswer("", err)
		return
	}
	lifting, err := multipliers.Against(assumed[0], constant)
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "lift.limit", number(lifting.Limit))
	if !lifting.None {
		worksOut(w.facts, "lift.index", number(lifting.Index))
	}
}

func (w *work) proveStacks() {
	bags, known := w.facts["stack.bags"]
	assumed, set := w.set(w.facts, "bag_mass", "stack_area", "live_load")
	if !known || !set {
		return
	}
	stack, err := people.Stack(whole(bags.Value.Number), assumed[0], assumed[1], assumed[2])
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "stack.load", number(stack.Load))
	worksOut(w.facts, "stack.most", number(float64(stack.Highest)))
}

func (w *work) proveDust() {
	named, known := w.facts["dust.task"]
	if !known {
		return
	}
	task, dusty := people.DustTaskNamed(named.Value.Text)
	worksOut(w.facts, "dust.used", truth(dusty))
	worksOut(w.facts, "dust.wheel_driven", truth(task.PerWheel))
	if !dusty {
		return
	}
	hours, timed := w.facts["dust.hours"]
	_, placed := w.facts["dust.indoors"]
	indoors := isTrue(w.facts, "dust.indoors")
	if timed && placed && !(indoors && task.OutOnly) {
		factor, err := task.Factor(hours.Value.Number, indoors)
		if err != nil {
			w.failAnswer("", err)
			return
		}
		worksOut(w.facts, "respirator.needed", number(float64(factor)))
	}
	w.proveAirflow(task)
}

func (w *work) proveAirflow(task people.DustTask) {
	wheel, known := w.facts["dust.wheel"]
	if !task.PerWheel || !known {
		return
	}
	flow, err := people.Airflow(wheel.Value.Number)
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "dust.airflow_needed", number(flow))
}
