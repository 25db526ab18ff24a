package engine

import (
	"errors"
	"strconv"
	"strings"

	"lowspot/engine/floor"
	"lowspot/engine/pour"
	"lowspot/engine/quantity"
)

// MakePour works out the pour of a job: batches and their patches in order, the clock of the crew there is and of the smallest that does it, the
// mix's temperature and the run sheet. It is slower than MakePlan and is asked for only where it is shown. Pure, as MakePlan is.
func MakePour(job *Job, book *Rulebook) *PourDay {
	p := newPourWork(job, book)
	day := &PourDay{Units: string(p.units), Rooms: []RoomPour{}, Mix: p.mixPlan(), Setting: p.settingPlan()}
	for _, room := range p.rooms {
		day.Rooms = append(day.Rooms, p.roomPours(room)...)
	}
	day.Sheet = p.runSheet()
	day.Findings = p.pourFindings()
	day.Problems = some(p.problems)
	return day
}

// pourWork is a pour in the making.
type pourWork struct {
	*work
	demand  pour.Demand
	setting times
	poured  []poured // by room
	ready   bool     // every figure of the pour is known
}

// poured is one pour worked out.
type poured struct {
	part
	room  *roomWork
	loads []pour.Load
	fault error // why it can't be shared out
	clock pour.Timeline
	timed bool
}

func newPourWork(job *Job, book *Rulebook) *pourWork {
	p := &pourWork{work: workOut(job, book)}
	p.problems = nil
	p.readDemand()
	return p
}

// cannotPour says why a room's pour can't be planned; empty where it can.
func (p *pourWork) cannotPour(r *roomWork) string {
	switch {
	case r.site == nil:
		return "Give this room its size first."
	case r.rough != nil && p.ready:
		return ""
	case !r.hasPour && r.rough == nil:
		return "Enter readings first: without heights there is nothing to share out into batches."
	case !(r.volume > 1e-9):
		return "Nothing is poured here: the deck lies at or above the finish plane everywhere."
	case len(r.doors) == 0:
		return "Give this room a door and mark it as the way out: the pour ends there."
	case !p.ready:
		return "A figure that the pour goes by can't be worked out; the list of problems says which."
	}
	return ""
}

// pourRoom is the room as the pour takes it. Where no door is marked as the way out, every door is taken for one.
func (p *pourWork) pourRoom(r *roomWork) pour.Room {
	room := pour.Room{Outline: r.outline}
	for _, marked := range []bool{true, false} {
		for _, d := range r.doors {
			if d.door.Exit == marked {
				room.Exits = append(room.Exits, floor.Point{X: (d.from.X + d.to.X) / 2, Y: (d.from.Y + d.to.Y) / 2})
			}
		}
		if len(room.Exits) > 0 {
			break
		}
	}
	for _, deck := range r.decks {
		room.Cells = append(room.Cells, pour.CellsUnder(deck.cells, r.plane)...)
	}
	return room
}

// roomPours are a room's pours in order. One that can't be planned says why.
func (p *pourWork) roomPours(r *roomWork) []RoomPour {
	if why := p.cannotPour(r); why != "" {
		return []RoomPour{{ID: r.plan.ID, Name: r.plan.Name, Lift: 1, Lifts: 1, Bay: 1, Bays: 1, Exits: []floor.Point{}, Dams: []pour.Dam{}, Batches: []BatchPlan{}, Outline: r.plan.Outline, Why: why}}
	}
	list := []RoomPour{}
	for _, work := range p.pours(r) {
		list = append(list, p.roomPour(work))
	}
	p.factPours(r)
	return list
}

// pours are a room's pours shared out into batches and laid over the floor.
func (p *pourWork) pours(r *roomWork) []poured {
	if r.rough != nil {
		work, err := p.roughPart(r)
		work.fault = err
		return []poured{work}
	}
	list := []poured{}
	for _, one := range p.parts(r) {
		work := poured{part: one, room: r}
		work.fault = p.order(&work)
		list = append(list, work)
	}
	return list
}

func (p *pourWork) roomPour(work poured) RoomPour {
	r := work.room
	plan := RoomPour{
		ID: r.plan.ID, Name: r.plan.Name, Part: work.id(), Lift: work.lift, Lifts: work.lifts, Bay: work.bay, Bays: work.bays, Rough: r.rough != nil, Note: work.note,
		Outline: r.plan.Outline, Exits: some(work.part.room.Exits), Dams: some(work.dams), Batches: []BatchPlan{},
	}
	if work.bays > 1 {
		plan.Outline = work.part.room.Outline
		plan.Outline.Holes = some(plan.Outline.Holes)
	}
	if plan.Rough {
		plan.Note = p.roughSays(r)
	}
	if work.fault != nil {
		plan.Why = p.failPour(work.fault)
		return plan
	}
	plan.Batches = p.batchPlans(work)
	for _, b := range work.batches {
		plan.Bags += b.Bags
	}
	for _, load := range work.loads {
		plan.Walk.SI = max(plan.Walk.SI, load.Distance)
	}
	plan.Walk = p.length(plan.Walk.SI)
	if err := p.time(&work, &plan); err != nil {
		plan.Why = p.failPour(err)
	}
	p.poured = append(p.poured, work)
	return plan
}

// order shares the pour out into batches and lays them over the floor.
func (p *pourWork) order(work *poured) error {
	if work.part.batches == nil {
		var err error
		if work.batches, err = pour.Batches(work.part.room.Volume(), p.mixWith(work.share), p.demand.Bucket, p.demand.Step); err != nil {
			return err
		}
		if work.sequence, err = pour.Order(work.part.room, pour.Volumes(work.batches), p.demand.Strip); err != nil {
			return err
		}
	}
	var err error
	work.loads, err = pour.Loads(work.batches, work.sequence)
	return err
}

// pace is the crew's, from where a part is mixed.
func (p *pourWork) pace(work *poured) pour.Pace {
	pace := p.demand.Pace
	pace.Station = work.station
	return pace
}

// mostCrew is the largest crew that the fewest hands are looked for in.
var mostCrew = pour.Crew{People: 6, Mixers: 3, Buckets: 8}

// time works out the clock for the crew there is, and the smallest crew that keeps the limits.
func (p *pourWork) time(work *poured, plan *RoomPour) error {
	own, err := pour.Clock(work.loads, p.demand.Most, p.pace(work))
	if err != nil {
		return err
	}
	work.clock, work.timed = own, true
	clock := p.clockPlan(own)
	plan.Clock = &clock
	most := mostCrew
	most.Barrows = p.demand.Most.Barrows
	fewest, err := pour.FewestHands(work.loads, most, p.pace(work))
	if err != nil {
		return err
	}
	least := p.clockPlan(fewest)
	plan.Fewest = &least
	return nil
}

func (p *pourWork) clockPlan(t pour.Timeline) ClockPlan {
	plan := ClockPlan{
		Timeline: t, Lasts: p.of(t.Finish, quantity.Time), LongestWait: p.of(t.LongestWait, quantity.Time), OldestBatch: p.of(t.OldestFlow, quantity.Time),
	}
	plan.Timeline.Tasks, plan.Timeline.Waits = some(t.Tasks), some(t.Waits)
	plan.Says = crewSays(t.Crew)
	return plan
}

func crewSays(c pour.Crew) string {
	says := counted(c.People, "person", "people") + ", " + counted(c.Mixers, "mixer", "mixers") + ", " + counted(c.Buckets, "bucket", "buckets")
	if c.Barrows > 0 {
		says += ", " + counted(c.Barrows, "barrow", "barrows")
	}
	return says
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

func (p *pourWork) batchPlans(work poured) []BatchPlan {
	plans := make([]BatchPlan, len(work.batches))
	for i, b := range work.batches {
		plan := BatchPlan{
			Number: b.Number, Bags: b.Bags, Powder: p.of(b.Powder, quantity.Mass), Water: p.measured(b.Water.Volume), Least: p.measured(b.Water.Low), Most: p.measured(b.Water.High),
			Marks: b.Water.Marks, Mark: p.measured(p.demand.Step), Note: b.Water.Note, Volume: p.of(b.Volume, quantity.Volume), Left: p.of(b.Left, quantity.Volume),
			Distance: p.length(work.loads[i].Distance), Polygons: []floor.Ring{},
		}
		if work.share > 0 {
			plan.Aggregate = p.pointer(work.share*b.Powder, quantity.Mass)
		}
		if i < len(work.sequence.Patches) {
			patch := work.sequence.Patches[i]
			plan.Area, plan.Polygons, plan.Label, plan.Exit = p.of(patch.Area, quantity.Area), patch.Polygons, patch.Label, patch.Exit
		}
		plans[i] = plan
	}
	return plans
}

// measured is a volume of water in the unit that the measure is marked in.
func (p *pourWork) measured(volume float64) Amount {
	if p.units == quantity.US {
		return Amount{volume, quantity.WriteIn(volume, "qt")}
	}
	return Amount{volume, quantity.WriteIn(volume, "L")}
}

// failPour reports why a room's pour could not be worked out, and gives it in words.
func (p *pourWork) failPour(err error) string {
	problem := p.refusal(err)
	p.fail(problem)
	return problem.Message + " " + problem.Remedy
}

// refused tells where the person enters what the pour refuses.
var refused = map[string]string{
	"bucket": "answers/bucket.size", "people": "answers/crew.people", "mixers": "answers/crew.mixers", "buckets": "answers/crew.buckets", "barrows": "answers/crew.barrows",
	"bag": "sheets/leveller/values/sheet.bag_mass", "yield": "sheets/leveller/values/sheet.bag_yield", "water range": "sheets/leveller/values/sheet.water_least",
	"water": "sheets/leveller/values/sheet.water_least", "way to the mixing station": "answers/mix.station", "temperature": "answers/air.temperature", "start": "start",
}

func (p *pourWork) refusal(err error) Problem {
	var bad *pour.Refusal
	if !errors.As(err, &bad) {
		return Problem{Code: "pour", Field: "answers", Message: err.Error(), Remedy: "Check the crew, the bucket and the sheet."}
	}
	field := refused[bad.Field]
	if field == "" {
		field = "answers"
	}
	return Problem{Code: "pour", Field: field, Given: bad.Given, Message: "The pour can't be worked out, " + bad.Field + ": " + bad.Given + ".", Remedy: sentence(bad.Works)}
}

// sentence makes a sentence of a remedy.
func sentence(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:] + "."
}
