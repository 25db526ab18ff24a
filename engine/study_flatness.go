package engine

import (
	"strconv"

	"lowspot/engine/floor"
)

// flatness holds the deck against the flatness wanted, and says what the pour leaves.
func (s *study) flatness(r *roomWork) (*FlatnessStudy, error) {
	named, stated := s.facts["finish.tolerance"]
	wanted := flatnessFor(named.Value.Text, s.facts["finish.kind"].Value.Text)
	out := &FlatnessStudy{Name: wanted.name, Stated: stated, Gaps: []GapStudy{}, Cures: s.uncured(r), Lines: []FNumbersStudy{}, Classes: []FNumberClasses{}}
	for _, tolerance := range wanted.tolerances() {
		out.Gaps = append(out.Gaps, s.gap(r, tolerance))
	}
	return out, s.fNumbers(r, out)
}

func (s *study) gap(r *roomWork, tolerance floor.Tolerance) GapStudy {
	out := GapStudy{Name: tolerance.Name, Source: tolerance.Source, Length: s.length(tolerance.Length), Limit: s.length(tolerance.Limit)}
	gap, err := floor.LargestGap(r.surface, r.outline, tolerance.Length)
	if err != nil {
		out.Fault = err.Error()
		return out
	}
	out.Depth, out.Kept, out.From, out.At, out.To = s.length(gap.Depth), gap.Depth <= tolerance.Limit, gap.From, gap.At, gap.To
	return out
}

// uncured says what no pour takes away. The pour's own top is as flat as the finish plane, which has no gap at all.
func (s *study) uncured(r *roomWork) []string {
	says := []string{}
	if pour := r.plan.Pour; pour.Dry.SI > 1e-6 {
		says = append(says, pour.Dry.Text+" of deck stands above the finish plane, up to "+s.length(-pour.Depths.Least.SI).Text+": it stays a bump in the new floor.")
	}
	if fall := floor.Fall(r.plane, r.outline).Fall; fall > 0.0005 {
		says = append(says, "The finish plane falls "+s.length(fall).Text+" across the room: flat, but not level.")
	}
	return append(says,
		"A deck that springs, sheets that lift and joints that move show through any pour: they are put right before it.",
		"A pour runs flat within its flow time only; what is poured late, thick or past a dead wet edge stands as a ridge.")
}

func (s *study) fNumbers(r *roomWork, out *FlatnessStudy) error {
	lines, err := floor.FLines(r.points)
	if err != nil {
		return err
	}
	var all []floor.FNumbers
	for _, line := range lines {
		heights := make([]float64, len(line))
		for k, i := range line {
			heights[k] = r.heights[i]
		}
		first, last := r.points[line[0]], r.points[line[len(line)-1]]
		numbers, err := floor.LineFNumbers(heights, floor.Distance(first, last)/float64(len(line)-1))
		if err != nil {
			continue
		}
		all = append(all, numbers)
		out.Lines = append(out.Lines, fWords(numbers, first, last))
	}
	if len(all) == 0 {
		return nil
	}
	together := floor.CombineFNumbers(all)
	words := fWords(together, floor.Point{}, floor.Point{})
	out.All = &words
	for _, class := range floor.FClasses() {
		kept := reaches(together.Flatness, class.Flatness) && reaches(together.Levelness, class.Levelness)
		out.Classes = append(out.Classes, FNumberClasses{class.Name, class.Flatness, class.Levelness, kept})
	}
	return nil
}

func reaches(f floor.FNumber, least float64) bool { return f.Unbounded || f.Value >= least }

func fWords(n floor.FNumbers, from, to floor.Point) FNumbersStudy {
	return FNumbersStudy{From: from, To: to, Readings: n.Readings, Flatness: fWord(n.Flatness), Levelness: fWord(n.Levelness), Rescaled: n.Rescaled}
}

func fWord(f floor.FNumber) string {
	if f.Unbounded {
		return "no departure"
	}
	return strconv.FormatFloat(f.Value, 'f', 1, 64)
}
