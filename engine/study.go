package engine

import (
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
	"lowspot/engine/survey"
	"lowspot/rules"
)

// MakeStudy works out what stands behind a job's plan and is too slow to be part of it. Pure like MakePlan.
func MakeStudy(job *Job, book *Rulebook) *Study {
	s := &study{work: workOut(job, book)}
	s.waste, _ = book.quantity("waste_share", s.facts)
	s.yield, _ = book.quantity("bag_yield", s.facts)
	out := &Study{Rooms: []RoomStudy{}}
	ready := len(s.rooms) > 0
	var all spread
	for _, r := range s.rooms {
		room, volume := s.room(r)
		out.Rooms = append(out.Rooms, room)
		ready = ready && volume != nil
		if volume != nil {
			all = all.and(*volume)
		}
	}
	if ready {
		out.Bags = s.bags(all)
	}
	return out
}

// study is a study in the making.
type study struct {
	*work
	waste, yield float64
}

// room studies one room and gives its volume with its doubt; nil without a pour.
func (s *study) room(r *roomWork) (RoomStudy, *spread) {
	out := RoomStudy{ID: r.plan.ID, Problems: []Problem{}}
	if r.rough != nil {
		said := r.roughSpread()
		return out, &said
	}
	if !r.hasPour || s.yield <= 0 {
		return out, nil
	}
	fail := func(field string, err error) {
		one := reader{}
		one.failShape(r.field+field, err)
		out.Problems = append(out.Problems, one.problems...)
	}
	volume, err := survey.VolumeOf(r.model, r.outline, r.plane)
	if err != nil {
		fail("/readings", err)
		return out, nil
	}
	all := s.spreadOf(r, volume)
	out.Ready = true
	out.Bags = s.bags(all)
	out.Next = s.next(volume)
	out.Doubts = s.doubts(r)
	out.Suspects, out.Screened = s.suspects(r)
	out.Planes = s.planes(r)
	out.Lifts = s.lifts(r)
	out.Heights = s.heights(r)
	if out.Flatness, err = s.flatness(r); err != nil {
		fail("/readings", err)
	}
	if out.Grinding, err = s.grinding(r); err != nil {
		fail("/decks", err)
	}
	if out.Indicators, err = s.indicators(r); err != nil {
		fail("/readings", err)
	}
	return out, &all
}

// bagsWithWaste is a volume in bags, with what stays in buckets and on tools.
func (s *study) bagsWithWaste(volume float64) float64 { return bagsFor(volume*(1+s.waste), s.yield) }

// figure is a length of the rulebook's, or a usual one where the rulebook says nothing.
func (s *study) figure(name string, facts rules.Facts, usual float64) float64 {
	value, result := s.book.quantity(name, facts)
	if result.State != rules.Known {
		return usual
	}
	return value
}

func (s *study) place(p floor.Point) (x, y Amount) { return s.length(p.X), s.length(p.Y) }

// asRead writes a height in the sense in which the room was read.
func (s *study) asRead(r *roomWork, height float64) Amount {
	if r.room.Readings.Sense == ReadBelowLine {
		height = -height
	}
	return s.length(height)
}

// allCells are the cells of every deck.
func (r *roomWork) allCells() []floor.Cell {
	var all []floor.Cell
	for i := range r.decks {
		all = append(all, r.decks[i].cells...)
	}
	return all
}

func (s *study) area(squareMetres float64) Amount { return s.of(squareMetres, quantity.Area) }

func (s *study) volume(cubicMetres float64) Amount { return s.of(cubicMetres, quantity.Volume) }
