package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// indicators sets the height indicators.
func (s *study) indicators(r *roomWork) (*IndicatorsStudy, error) {
	spacing, clearance := s.figure("indicator_spacing", r.facts, 1.2), s.figure("indicator_clearance", r.facts, 0.15)
	out := &IndicatorsStudy{Spacing: s.length(spacing), Clearance: s.length(clearance), Pins: []IndicatorStudy{}, Heated: r.facts["room.heated"].Value.Truth}
	var avoid floor.Avoid
	for _, p := range r.penetrations {
		avoid.Pipes = append(avoid.Pipes, floor.Pipe{At: p.at, Radius: p.radius})
	}
	pins, err := floor.Indicators(r.outline, r.allCells(), r.plane, spacing, clearance, avoid)
	for _, pin := range pins {
		one := IndicatorStudy{At: pin.At, Head: s.length(pin.Head)}
		one.X, one.Y = s.place(pin.At)
		out.Pins = append(out.Pins, one)
	}
	return out, err
}

// heights works out what the new floor does to everything that it meets.
func (s *study) heights(r *roomWork) *HeightsStudy {
	out := &HeightsStudy{Doors: []DoorHeightsStudy{}, Passed: []PassedHeightsStudy{}}
	if r.finishStated {
		out.Finish = s.pointer(r.finish, quantity.Length)
		out.Rise = s.pointer(r.finish+r.plan.Pour.Depths.Mean.SI, quantity.Length)
	}
	for i := range r.doors {
		out.Doors = append(out.Doors, s.doorHeights(r, i))
	}
	for i := range r.penetrations {
		p := &r.penetrations[i]
		if p.hasTop && r.finishStated {
			extension := floor.Extension(r.topAt(r.plane, p.at)+r.finish, p.top)
			out.Passed = append(out.Passed, PassedHeightsStudy{p.penetration.ID, p.penetration.Name, p.penetration.Kind, s.length(extension)})
		}
	}
	return out
}

func (s *study) doorHeights(r *roomWork, i int) DoorHeightsStudy {
	d := &r.doors[i]
	out := DoorHeightsStudy{ID: d.door.ID, Name: d.door.Name, Dam: s.length(r.deepestAlong(d))}
	deck, ok := heightAt(r, d.middle())
	if !ok || !r.finishStated {
		return out
	}
	finished := r.topAt(r.plane, d.middle()) + r.finish
	out.Rise = s.pointer(finished-deck, quantity.Length)
	if d.hasNeighbour {
		step := floor.StepAt(finished, d.neighbour)
		out.Step, out.Class = s.pointer(step.Height, quantity.Length), step.Class
		if step.Run > 0 {
			out.Run, out.LeastRun = s.pointer(step.Run, quantity.Length), s.pointer(step.LeastRun, quantity.Length)
		}
	}
	facts := r.doorFacts[i]
	if gap, stated := facts["door.leaf_gap"]; stated {
		leaf := floor.LeafOver(deck+gap.Value.Number, finished, s.figure("leaf_clearance", s.facts, 0.003))
		out.Clearance, out.Trim = s.pointer(leaf.Clearance, quantity.Length), s.pointer(leaf.Trim, quantity.Length)
	}
	if flight, ok := flightOf(facts); ok {
		out.Stair = s.stair(flight, facts["stair.place"].Value.Text == "head")
	}
	return out
}

func (s *study) stair(f floor.Flight, head bool) *StairStudy {
	near, other := f.Risers[0], f.Risers[1]
	if head {
		near, other = other, near
	}
	return &StairStudy{Riser: s.length(near), Other: s.length(other), Variation: s.length(f.Variation), Uniform: f.Uniform, Low: f.Low}
}

// alongDoor is in how many parts an opening is looked at: a leaf of 80 cm every 5 cm.
const alongDoor = 16

// deepestAlong is the deepest that the pour stands along an opening.
func (r *roomWork) deepestAlong(d *doorSite) float64 {
	deepest := 0.0
	for k := range alongDoor + 1 {
		share := float64(k) / alongDoor
		p := floor.Point{X: d.from.X + share*(d.to.X-d.from.X), Y: d.from.Y + share*(d.to.Y-d.from.Y)}
		if deck, ok := heightAt(r, p); ok {
			deepest = math.Max(deepest, r.plane.At(p)-deck)
		}
	}
	return deepest
}
