package engine

import (
	"math"

	"lowspot/engine/floor"
)

// lifts parts the pour into lifts: of leveller alone and, where the sheet allows thicker ones with aggregate and that makes fewer, with aggregate in
// the lower ones.
func (s *study) lifts(r *roomWork) []LiftsStudy {
	thinnest, thickest := math.Inf(1), 0.0
	for i := range r.decks {
		thinnest, thickest = math.Min(thinnest, r.decks[i].least), math.Max(thickest, r.decks[i].least)
	}
	most := s.figure("greatest_lift", s.facts, 0)
	filled := s.figure("greatest_lift_filled", s.facts, most)
	cells := r.allCells()
	finish := floor.LiftLimits{Least: thinnest, Most: most}
	list := []LiftsStudy{s.liftsOf(r, cells, finish, floor.LiftLimits{Least: thickest, Most: most}, false)}
	if filled <= most {
		return list
	}
	with := s.liftsOf(r, cells, finish, floor.LiftLimits{Least: thickest, Most: filled}, true)
	if plain := list[0]; with.Problem == nil && (plain.Problem != nil || len(with.Lifts) < len(plain.Lifts)) {
		list = append(list, with)
	}
	return list
}

func (s *study) liftsOf(r *roomWork, cells []floor.Cell, finish, lower floor.LiftLimits, filled bool) LiftsStudy {
	out := LiftsStudy{Filled: filled, Most: s.length(lower.Most), Lifts: []LiftStudy{}}
	lifts, err := floor.Lifts(cells, r.plane, finish, lower)
	if err != nil {
		one := reader{}
		one.failShape(r.field+"/plane", err)
		out.Problem = &one.problems[0]
	}
	for _, l := range lifts {
		out.Lifts = append(out.Lifts, LiftStudy{
			Below: s.length(l.Below), Whole: l.Whole, Area: s.area(l.Area), Volume: s.volume(l.Volume), Bags: s.bagsWithWaste(l.Volume),
			Least: s.length(l.Least), Greatest: s.length(l.Greatest), Ground: l.Ground, Edge: l.Edge,
		})
	}
	return out
}
