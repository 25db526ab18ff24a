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
		day.Rooms = append(day.Rooms, p.roomPour(room))
	}
	day.Sheet = p.runSheet()
	day.Findings = p.pourFindings()
	day.Problems = some(p.problems)
	return day
}

// MakeBays plans one room in bays: where the crew there is can't keep the wet edge in one pour, it is dammed off at the shortest lines.
func MakeBays(job *Job, book *Rulebook, id string) PourBays {
	p := newPourWork(job, book)
	for _, room := range p.rooms {
		if room.room == nil || room.room.ID != id {
			continue
		}
		if why := p.cannotPour(room); why != "" {
			return PourBays{Bays: []BayPlan{}, Why: why}
		}
		bays, err := pour.Bays(p.pourRoom(room), p.demand)
		if err != nil {
			return PourBays{Bays: []BayPlan{}, Why: p.refusal(err).Message + " " + p.refusal(err).Remedy}
		}
		return PourBays{Bays: p.bayPlans(bays)}
	}
	return PourBays{Bays: []BayPlan{}, Why: "There is no such room any more."}
}

// pourWork is a pour in the making.
type pourWork struct {
	*work
	demand  pour.Demand
	setting times
	poured  []poured // by room
	ready   bool     // every figure of the pour is known
}

// poured is one room's pour worked out.
type poured struct {
	room     *roomWork
	batches  []pour.Batch
	sequence pour.Sequence
	loads    []pour.Load
	clock    pour.Timeline
	timed    bool
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
	case !r.hasPour:
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

func (p *pourWork) roomPour(r *roomWork) RoomPour {
	plan := RoomPour{ID: r.plan.ID, Name: r.plan.Name, Exits: []floor.Point{}, Batches: []BatchPlan{}}
	if plan.Why = p.cannotPour(r); plan.Why != "" {
		return plan
	}
	room := p.pourRoom(r)
	plan.Exits = room.Exits
	work, err := p.order(r, room)
	if err != nil {
		plan.Why = p.failPour(r, err)
		return plan
	}
	plan.Batches = p.batchPlans(work.batches, work.sequence.Patches)
	for _, b := range work.batches {
		plan.Bags += b.Bags
	}
	for _, patch := range work.sequence.Patches {
		if patch.Distance > plan.Walk.SI {
			plan.Walk.SI = patch.Distance
		}
	}
	plan.Walk = p.length(plan.Walk.SI)
	if err := p.time(&work, &plan); err != nil {
		plan.Why = p.failPour(r, err)
	}
	p.poured = append(p.poured, work)
	p.factPour(r, work)
	return plan
}

// order shares the pour out into batches and lays them over the floor.
func (p *pourWork) order(r *roomWork, room pour.Room) (poured, error) {
	work := poured{room: r}
	var err error
	if work.batches, err = pour.Batches(r.volume, p.demand.Mix, p.demand.Bucket, p.demand.Step); err != nil {
		return work, err
	}
	if work.sequence, err = pour.Order(room, pour.Volumes(work.batches), p.demand.Strip); err != nil {
		return work, err
	}
	work.loads, err = pour.Loads(work.batches, work.sequence)
	return work, err
}

// mostCrew is the largest crew that the fewest hands are looked for in.
var mostCrew = pour.Crew{People: 6, Mixers: 3, Buckets: 8}

// time works out the clock for the crew there is, and the smallest crew that keeps the limits.
func (p *pourWork) time(work *poured, plan *RoomPour) error {
	own, err := pour.Clock(work.loads, p.demand.Most, p.demand.Pace)
	if err != nil {
		return err
	}
	work.clock, work.timed = own, true
	clock := p.clockPlan(own)
	plan.Clock = &clock
	most := mostCrew
	most.Barrows = p.demand.Most.Barrows
	fewest, err := pour.FewestHands(work.loads, most, p.demand.Pace)
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

func (p *pourWork) batchPlans(batches []pour.Batch, patches []pour.Patch) []BatchPlan {
	plans := make([]BatchPlan, len(batches))
	for i, b := range batches {
		patch := patches[i]
		plans[i] = BatchPlan{
			Number: b.Number, Bags: b.Bags, Powder: p.of(b.Powder, quantity.Mass), Water: p.measured(b.Water.Volume), Least: p.measured(b.Water.Low), Most: p.measured(b.Water.High),
			Marks: b.Water.Marks, Mark: p.measured(p.demand.Step), Note: b.Water.Note, Volume: p.of(b.Volume, quantity.Volume), Left: p.of(b.Left, quantity.Volume),
			Area: p.of(patch.Area, quantity.Area), Distance: p.length(patch.Distance), Polygons: patch.Polygons, Label: patch.Label, Exit: patch.Exit,
		}
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

func (p *pourWork) bayPlans(bays []pour.Bay) []BayPlan {
	plans := make([]BayPlan, len(bays))
	for i, b := range bays {
		plans[i] = BayPlan{Outline: b.Room.Outline, Dams: some(b.Dams), Area: p.of(b.Area, quantity.Area), Batches: p.batchPlans(b.Batches, b.Sequence.Patches), Clock: p.clockPlan(b.Timeline)}
		plans[i].Outline.Holes = some(plans[i].Outline.Holes)
		for _, batch := range b.Batches {
			plans[i].Bags += batch.Bags
		}
		dammed := 0.0
		for _, dam := range b.Dams {
			dammed += dam.Length
		}
		plans[i].Dammed = p.length(dammed)
	}
	return plans
}

// failPour reports why a room's pour could not be worked out, and gives it in words.
func (p *pourWork) failPour(r *roomWork, err error) string {
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
