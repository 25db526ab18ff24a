package engine

import (
	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// The steps of height in which the curve of grinding goes: a millimetre, or 1/32 in.
const metricCut, usCut = 0.001, 0.0254 / 32

// mostSpots is how many high spots of one step are listed.
const mostSpots = 8

// grinding works out what taking down the high spots saves, within what the rulebook lets come off each deck.
func (s *study) grinding(r *roomWork) (*GrindStudy, error) {
	out := &GrindStudy{Limits: []GrindLimitStudy{}, Cuts: []CutStudy{}}
	var areas []floor.GrindArea
	for i := range r.decks {
		deck := &r.decks[i]
		most := s.figure("greatest_grind", deck.facts, 0)
		areas = append(areas, floor.GrindArea{Cells: deck.cells, Least: deck.least, Most: most})
		name := deck.area.Name
		if name == "" {
			name = deck.facts["deck.kind"].Value.Text
		}
		out.Limits = append(out.Limits, GrindLimitStudy{name, s.length(most)})
	}
	step := metricCut
	if s.units == quantity.US {
		step = usCut
	}
	cuts, err := floor.Grinding(areas, r.plane, step)
	for _, cut := range cuts {
		out.Cuts = append(out.Cuts, s.cut(cut))
	}
	return out, err
}

func (s *study) cut(cut floor.Cut) CutStudy {
	out := CutStudy{
		Height: s.length(cut.Height), Bags: s.bagsWithWaste(cut.Saved), Area: s.of(cut.Area, quantity.Area), Volume: s.volume(cut.Volume), Spots: []SpotStudy{},
	}
	for i, spot := range cut.Spots {
		if i == mostSpots {
			out.Others = len(cut.Spots) - mostSpots
			break
		}
		one := SpotStudy{At: spot.At, Height: s.length(spot.Height), Area: s.of(spot.Area, quantity.Area), Volume: s.volume(spot.Volume)}
		one.X, one.Y = s.place(spot.At)
		out.Spots = append(out.Spots, one)
	}
	return out
}
