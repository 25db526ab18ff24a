package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
)

// spread is a pour's volume and how sure it is, cubic metres and their squares.
type spread struct {
	mean            float64
	ground, reading float64 // variances: of ground that nobody measured, and of the readings' own error
}

func (a spread) and(b spread) spread {
	return spread{a.mean + b.mean, a.ground + b.ground, a.reading + b.reading}
}

// spreadOf parts a volume's doubt: what would be left if every reading were exact comes from the ground between them, the rest from the readings.
func (s *study) spreadOf(r *roomWork, volume *survey.Volume) spread {
	all := spread{mean: volume.Mean, ground: volume.Deviation * volume.Deviation}
	exact, err := survey.Fit(r.points, r.heights, finestReading, survey.Options{Kind: r.model.Kind, Unevenness: r.model.Unevenness, Reach: r.model.Reach})
	if err != nil {
		return all
	}
	if v, err := survey.VolumeOf(exact, r.outline, r.plane); err == nil {
		ground := math.Min(v.Deviation*v.Deviation, all.ground)
		all.ground, all.reading = ground, all.ground-ground
	}
	return all
}

// bags turns a volume and its doubt into bags to buy, with the doubt of what a bag fills and of how it is mixed.
func (s *study) bags(all spread) *BagsStudy {
	yield := s.figure("yield_tolerance", s.facts, 0)
	dosing := s.figure("dosing_tolerance", s.facts, 0)
	more := 1 + s.waste
	bags, err := survey.BagsFor(all.mean*more, math.Sqrt(all.ground+all.reading)*more, yield, dosing, s.yield)
	if err != nil {
		return nil
	}
	mean := s.bagsWithWaste(all.mean)
	out := &BagsStudy{
		Mean: mean, Deviation: mean * bags.Spread, Half: s.wholeBags(float64(bags.Half)), Ninety: s.wholeBags(float64(bags.Ninety)), NinetyNine: s.wholeBags(float64(bags.NinetyNine)),
		Confidence: s.confidence(),
	}
	out.Buy = map[string]int{"50 %": out.Half, "90 %": out.Ninety, "99 %": out.NinetyNine}[out.Confidence]
	out.Causes = causes(CauseStudy{Cause: CauseGround, Bags: s.bagsWithWaste(math.Sqrt(all.ground))}, CauseStudy{Cause: CauseReading, Bags: s.bagsWithWaste(math.Sqrt(all.reading))},
		CauseStudy{Cause: CauseYield, Bags: mean * yield / 2}, CauseStudy{Cause: CauseDosing, Bags: mean * dosing / 2})
	return out
}

// causes gives each its share of the whole.
func causes(list ...CauseStudy) []CauseStudy {
	sum := 0.0
	for _, c := range list {
		sum += c.Bags * c.Bags
	}
	for i, c := range list {
		if sum > 0 {
			list[i].Share = c.Bags * c.Bags / sum
		}
	}
	return list
}

// confidence is how sure the person wants to be; nine in ten where nobody says (common practice).
func (s *study) confidence() string {
	if given, stated := s.facts["order.confidence"]; stated {
		return given.Value.Text
	}
	return "90 %"
}

func (s *study) next(volume *survey.Volume) *NextStudy {
	next, err := volume.NextReading(s.yield/(1+s.waste), s.figure("worthwhile_bags", s.facts, 0.25))
	if err != nil || !next.Possible {
		return nil
	}
	out := &NextStudy{At: next.At, Bags: next.Bags, Enough: next.Enough}
	out.X, out.Y = s.place(next.At)
	return out
}

// doubtSquares is in about how many squares the doubt is drawn; doubtSteps in how many shades.
const doubtSquares, doubtSteps = 600, 5

func (s *study) doubts(r *roomWork) []DoubtStudy {
	squares, err := r.model.DoubtsOver(r.outline, doubtSquares)
	if err != nil || len(squares) == 0 {
		return []DoubtStudy{}
	}
	most := 0.0
	for _, d := range squares {
		most = math.Max(most, d.Deviation)
	}
	list := make([]DoubtStudy, len(squares))
	for i, d := range squares {
		step := 0
		if most > 0 {
			step = min(int(doubtSteps*d.Deviation/most), doubtSteps-1)
		}
		list[i] = DoubtStudy{Corners: append([]floor.Point{}, d.Corners[:]...), Text: s.length(d.Deviation).Text, Step: step}
	}
	return list
}
