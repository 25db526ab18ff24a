package engine

import "lowspot/engine/quantity"

// lifts tells the ways to part the pour into lifts, each with what it takes.
func (s *study) lifts(r *roomWork) []LiftsStudy {
	list := []LiftsStudy{}
	for _, way := range s.liftWays(r) {
		list = append(list, s.liftsStudy(r, way))
	}
	return list
}

func (s *study) liftsStudy(r *roomWork, way liftWay) LiftsStudy {
	out := LiftsStudy{Filled: way.share > 0, Most: s.length(way.most), Lifts: []LiftStudy{}}
	if way.err != nil {
		one := reader{}
		one.failShape(r.field+"/plane", way.err)
		out.Problem = &one.problems[0]
	}
	mass, density := s.figure("bag_mass", s.facts, 0), s.figure("grain_density", s.facts, 0)
	for i, l := range way.lifts {
		share := way.share
		last := i == len(way.lifts)-1
		if last {
			share = 0
		}
		bags := bagsFor(l.Volume*(1+s.waste), filledYield(s.yield, share, mass, density))
		one := LiftStudy{
			Below: s.length(l.Below), Whole: l.Whole, Area: s.area(l.Area), Volume: s.volume(l.Volume), Bags: bags,
			Least: s.length(l.Least), Greatest: s.length(l.Greatest), Ground: l.Ground, Edge: l.Edge,
		}
		if share > 0 {
			one.Aggregate = s.pointer(bags*share*mass, quantity.Mass)
		}
		if !last {
			one.Primer = s.pointer(s.primerOver(l.Area), quantity.Volume)
		}
		out.Lifts = append(out.Lifts, one)
		out.Bags += bags
	}
	return out
}

// primerOver is the primer out of the tin for one coat over a lift, before the next one, m³.
func (w *work) primerOver(area float64) float64 {
	coverage, _ := w.book.quantity("primer_coverage", w.facts)
	share, _ := w.book.quantity("lift_primer_share", w.facts)
	if coverage <= 0 {
		return 0
	}
	return area / coverage * share
}
