package engine

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// planes works out every way to place the finish plane, so that they stand side by side. Those that can't be placed are left out.
func (s *study) planes(r *roomWork) []PlaneStudy {
	ground := r.ground()
	list := []PlaneStudy{}
	level, err := floor.LevelOver(ground)
	if err != nil {
		return list
	}
	cells := r.allCells()
	for _, choice := range r.planeChoices() {
		finish, err := s.chosenPlane(r, choice, ground, level)
		if err != nil {
			continue
		}
		list = append(list, s.plane(r, choice, ground, finish, cells))
	}
	return list
}

// planeChoices are the room's ways to place the plane: level, of least volume, through each door whose floor beyond was read (level, and tilted
// within the slope limit), and by hand where a height was given.
func (r *roomWork) planeChoices() []PlaneChoice {
	now := r.room.Plane
	limit := now.SlopeLimit
	if limit == "" {
		limit = "1 %"
	}
	choices := []PlaneChoice{
		{How: PlaneLevel, Raise: now.Raise, Height: now.Height},
		{How: PlaneLeastVolume, SlopeLimit: limit, Raise: now.Raise, Height: now.Height},
	}
	for _, d := range r.doors {
		if d.hasNeighbour {
			through := PlaneChoice{How: PlaneDoor, Door: d.door.ID, Raise: now.Raise, Height: now.Height}
			choices = append(choices, through)
			through.SlopeLimit = limit
			choices = append(choices, through)
		}
	}
	if now.Height != "" {
		choices = append(choices, PlaneChoice{How: PlaneHand, Height: now.Height, Raise: now.Raise})
	}
	return choices
}

func (s *study) plane(r *roomWork, choice PlaneChoice, ground floor.Ground, finish floor.Finish, cells []floor.Cell) PlaneStudy {
	depths := floor.DepthsOf(cells, finish.Plane)
	out := PlaneStudy{
		Choice: choice, Chosen: r.hasChosen(choice), Bags: s.bagsWithWaste(depths.Volume), Volume: s.volume(depths.Volume),
		Least: s.length(depths.Least), Greatest: s.length(depths.Greatest), Slope: percent(finish.Slope),
		Fall: s.length(floor.Fall(finish.Plane, r.outline).Fall), Dry: s.of(depths.Dry, quantity.Area),
		Carriers: []CarrierStudy{}, Doors: []PlaneDoorStudy{},
	}
	if finish.ShortAt >= 0 {
		at := ground.Points[finish.ShortAt]
		out.Short, out.ShortAt = s.pointer(finish.Shortfall, quantity.Length), &at
	}
	for _, i := range finish.Carriers {
		out.Carriers = append(out.Carriers, CarrierStudy{ground.Points[i], r.rowAt(ground.Points[i])})
	}
	if door := r.doorNamed(choice.Door); choice.How == PlaneDoor && door != nil {
		out.Door = door.door.Name
	}
	for i := range r.doors {
		if door, ok := s.planeDoor(r, &r.doors[i], finish.Plane); ok {
			out.Doors = append(out.Doors, door)
		}
	}
	return out
}

// percent writes a slope.
func percent(share float64) Amount {
	return Amount{SI: share, Text: strconv.FormatFloat(math.Round(share*1e4)/1e2, 'f', -1, 64) + " %"}
}

// hasChosen tells whether a way is the one that the room goes by.
func (r *roomWork) hasChosen(choice PlaneChoice) bool {
	now := r.room.Plane
	if now.How == "" {
		now.How = PlaneLevel
	}
	if now.How != choice.How {
		return false
	}
	if now.How == PlaneDoor {
		return now.Door == choice.Door && (now.SlopeLimit == "") == (choice.SlopeLimit == "")
	}
	return true
}

// rowAt is the row of the reading at a spot; -1 where nobody read.
func (r *roomWork) rowAt(spot floor.Point) int {
	const same = 1e-6 // metres
	for i, p := range r.points {
		if floor.Distance(p, spot) < same {
			return r.rows[i]
		}
	}
	return -1
}

func (s *study) planeDoor(r *roomWork, d *doorSite, plane floor.Plane) (PlaneDoorStudy, bool) {
	top := r.topAt(plane, d.middle())
	deck, ok := heightAt(r, d.middle())
	if !ok {
		return PlaneDoorStudy{}, false
	}
	out := PlaneDoorStudy{ID: d.door.ID, Name: d.door.Name, Depth: s.length(top - deck)}
	if d.hasNeighbour && r.finishStated {
		step := floor.StepAt(top+r.finish, d.neighbour)
		out.Step, out.Class = s.pointer(step.Height, quantity.Length), step.Class
	}
	return out, true
}
