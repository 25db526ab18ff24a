package engine

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
	"lowspot/engine/pour"
)

// part is what is poured of a room in one go: all of it, one lift of it, or one bay of a lift.
type part struct {
	lift, lifts int // from 1
	bay, bays   int // from 1
	share       float64
	area        float64 // primed again before the next lift, m²
	room        pour.Room
	dams        []pour.Dam
	station     float64       // m from its way out to where it is mixed
	batches     []pour.Batch  // of a bay; else they are still to be made
	sequence    pour.Sequence // of a bay
	note        string
}

// id names a part within its room; the only one has none.
func (a part) id() string {
	id := ""
	if a.lifts > 1 {
		id = "lift " + strconv.Itoa(a.lift)
	}
	if a.bays > 1 {
		if id != "" {
			id += ", "
		}
		id += "bay " + strconv.Itoa(a.bay)
	}
	return id
}

// parts are a room's pours in order: its lifts from below, and each in bays where the person wants bays and the crew needs them.
func (p *pourWork) parts(r *roomWork) []part {
	room := p.pourRoom(r)
	var list []part
	for _, lift := range p.liftParts(r, room) {
		list = append(list, p.bayParts(r, lift)...)
	}
	return list
}

func (p *pourWork) liftParts(r *roomWork, room pour.Room) []part {
	way, parted := p.pouredLifts(r)
	if !parted {
		return []part{{lift: 1, lifts: 1, room: room, station: p.demand.Pace.Station}}
	}
	list := make([]part, len(way.lifts))
	for i, lift := range way.lifts {
		var under *floor.Lift
		if i > 0 {
			under = &way.lifts[i-1]
		}
		one := part{lift: i + 1, lifts: len(way.lifts), share: way.share, area: lift.Area, room: room, station: p.demand.Pace.Station}
		one.room.Cells = pour.CellsOfLift(room.Cells, lift, under)
		if i == len(way.lifts)-1 {
			one.share = 0
		}
		list[i] = one
	}
	return list
}

// bayParts parts a lift into bays. Where that can't be done it stays one pour, and the note says why.
func (p *pourWork) bayParts(r *roomWork, lift part) []part {
	lift.bay, lift.bays = 1, 1
	if !r.room.InBays {
		return []part{lift}
	}
	demand := p.demand
	demand.Mix = p.mixWith(lift.share)
	bays, err := pour.Bays(lift.room, demand)
	if err != nil {
		bad := p.refusal(err)
		lift.note = bad.Message + " " + bad.Remedy
	}
	if len(bays) < 2 {
		return []part{lift}
	}
	list := make([]part, len(bays))
	for i, b := range bays {
		list[i] = lift
		list[i].bay, list[i].bays, list[i].room, list[i].dams, list[i].station = i+1, len(bays), b.Room, b.Dams, b.Station
		list[i].batches, list[i].sequence = b.Batches, b.Sequence
	}
	return list
}

// mixWith is the mix with a share of aggregate in it: a bag fills more.
func (p *pourWork) mixWith(share float64) pour.Mix {
	mix := p.demand.Mix
	if share > 0 {
		more := filledYield(p.figure("bag_yield"), share, mix.BagMass, p.figure("grain_density")) / p.figure("bag_yield")
		mix.Yield *= more
	}
	return mix
}

// roughPart is the pour of a floor that nobody has read: batches one after the other, without a place on the floor. Each is taken to meet the one
// before it across the room's whole width, and to be carried half the way across.
func (p *pourWork) roughPart(r *roomWork) (poured, error) {
	work := poured{room: r, part: part{lift: 1, lifts: 1, bay: 1, bays: 1, station: p.demand.Pace.Station}}
	var err error
	if work.batches, err = pour.Batches(r.volume, p.demand.Mix, p.demand.Bucket, p.demand.Step); err != nil {
		return work, err
	}
	across := math.Sqrt(r.outline.Area())
	for i, b := range work.batches {
		load := pour.Load{Batch: b.Number, Bags: b.Bags, Distance: across / 2}
		if i > 0 {
			load.Neighbours = append(load.Neighbours, pour.Neighbour{Batch: b.Number - 1, Length: across})
		}
		if i < len(work.batches)-1 {
			load.Neighbours = append(load.Neighbours, pour.Neighbour{Batch: b.Number + 1, Length: across})
		}
		work.loads = append(work.loads, load)
	}
	return work, nil
}

// roughSays tells what the pour of a floor that nobody has read leaves open.
func (p *pourWork) roughSays(r *roomWork) string {
	says := "Nobody has read this floor: bags, batches and clock go by the depth given, and the batches have no place on the map until it is read."
	if most, _ := p.book.quantity("greatest_lift", p.facts); r.rough.ranged && most > 0 && r.rough.greatest > most {
		says += " It is deeper than one lift may be: it takes several, with primer between, and the readings tell how many."
	}
	return says
}
