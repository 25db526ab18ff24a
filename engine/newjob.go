package engine

import (
	"strconv"

	"lowspot/engine/quantity"
)

// NewJob is an empty job with one rectangular room to fill in and the generic sheets.
func NewJob(id string, units quantity.System) *Job {
	return &Job{
		Format: JobFormat, ID: id, Name: "", Units: units,
		Rooms: []Room{NewRoom("room-1", units)}, Answers: Answers{}, Sheets: GenericSheets(units),
	}
}

// NewRoom is a room with one deck area over all of it and a level plane.
func NewRoom(id string, units quantity.System) Room {
	return Room{
		ID: id, Outline: Shape{How: ShapeRectangle}, KeepOuts: []KeepOut{}, Doors: []Door{}, Penetrations: []Penetration{},
		Decks:    []DeckArea{{ID: id + "-deck", Answers: Answers{}}},
		Readings: NewReadings(units), Plane: PlaneChoice{How: PlaneLevel}, Answers: Answers{},
	}
}

// NewReadings is an empty survey with staff readings below a level line.
func NewReadings(units quantity.System) Readings {
	if units == quantity.US {
		return Readings{Sense: ReadBelowLine, PositionUnit: "ft", HeightUnit: "in", Rows: []Reading{}}
	}
	return Readings{Sense: ReadBelowLine, PositionUnit: "m", HeightUnit: "mm", Rows: []Reading{}}
}

// DemoJob is a scenario of our own: the laundry and back hall of an old house, L-shaped, plywood with a patch of old screed by the boiler,
// a floor drain, and a door to a tiled kitchen.
func DemoJob(id string) *Job {
	job := NewJob(id, quantity.Metric)
	job.Name = "Laundry and back hall"
	job.Answers = Answers{
		"air.temperature": "17 °C", "air.humidity": "55 %", "air.speed": "1 km/h", "deck.temperature": "14 °C", "water.temperature": "11 °C", "powder.temperature": "16 °C",
		"crew.people": "2", "crew.mixers": "1", "crew.buckets": "2", "bucket.size": "30 L", "order.confidence": "90 %",
		"finish.kind": "large tile", "finish.thickness": "13 mm",
		"air.sun": "no", "heater.kind": "none", "water.clean": "yes", "prime.wait": "5 h",
		"carry.distance": "25 m", "carry.per_trip": "1", "lift.horizontal": "300 mm", "lift.vertical": "350 mm", "lift.travel": "550 mm", "stack.bags": "2",
		"dust.task": "grinder-shroud", "dust.hours": "1 h", "dust.indoors": "yes", "dust.hepa": "yes", "dust.wheel": "125 mm", "dust.airflow": "65 L/s", "respirator.factor": "10",
		"skin.covered": "yes", "power.protected": "yes", "fumes.used": "yes", "fumes.aired": "yes",
	}
	room := &job.Rooms[0]
	room.Name = "Laundry and hall"
	room.Outline = Shape{How: ShapeWalk, Walk: []Leg{
		{"4.20 m", "left"}, {"1.60 m", "left"}, {"1.80 m", "right"}, {"1.50 m", "left"}, {"2.41 m", "left"}, {"3.10 m", "left"},
	}}
	room.KeepOuts = []KeepOut{{ID: "boiler", Name: "Boiler plinth", Shape: Shape{How: ShapeRectangle, Length: "0.60 m", Width: "0.55 m", At: &Spot{"0 m", "2.55 m"}}}}
	room.Doors = []Door{
		{ID: "kitchen", Name: "Kitchen", Wall: 0, At: "2.90 m", Width: "0.82 m", Exit: true, Neighbour: "1180 mm", Answers: Answers{"door.leaf_gap": "28 mm", "door.dammed": "yes", "door.dam_height": "40 mm"}},
		{ID: "yard", Name: "Yard door", Wall: 5, At: "0.90 m", Width: "0.90 m", Neighbour: "1226 mm", Answers: Answers{"door.leaf_gap": "35 mm"}},
	}
	room.Penetrations = []Penetration{
		{ID: "drain", Name: "Floor drain", Kind: "drain", At: Spot{"1.10 m", "1.90 m"}, Diameter: "110 mm", Height: "1192 mm", Answers: Answers{"penetration.collared": "yes", "penetration.plugged": "yes"}},
		{ID: "waste", Name: "Washer waste", Kind: "pipe", At: Spot{"3.85 m", "1.35 m"}, Diameter: "50 mm", Answers: Answers{"penetration.collared": "yes"}},
	}
	room.Decks = []DeckArea{
		{ID: "ply", Name: "Plywood", Answers: Answers{
			"deck.kind": "plywood", "deck.absorbency": "normal", "deck.thickness": "21 mm", "deck.sound": "yes", "deck.clean": "yes", "deck.gaps_filled": "yes", "deck.screwed": "yes", "deck.moisture": "11 %",
			"joist.size": "other", "joist.breadth": "47 mm", "joist.depth": "195 mm", "joist.grade": "c24", "joist.spacing": "400 mm", "joist.span": "3.1 m", "joist.sound": "yes", "joist.blocked": "yes",
			"deck.layers": "1", "deck.edges_held": "yes", "deck.gap": "3 mm", "deck.lip": "1 mm", "deck.sheet_length": "2.44 m", "deck.sheet_width": "1.22 m",
			"deck.fastener": "screws", "deck.fastener_edge": "150 mm", "deck.fastener_field": "300 mm", "deck.damp_grade": "yes", "primer.suits": "yes"}},
		{ID: "screed", Name: "Old screed by the boiler", Shape: &Shape{How: ShapeRectangle, Length: "1.40 m", Width: "1.10 m", At: &Spot{"0 m", "2.00 m"}}, Answers: Answers{
			"deck.kind": "screed", "deck.absorbency": "porous", "deck.sound": "yes", "deck.clean": "yes", "deck.gaps_filled": "yes", "slab.age": "4000 d", "slab.humidity": DontKnow,
			"deck.thickness": "45 mm", "screed.laid": "bonded", "deck.drop_time": "40 s", "deck.contaminated": "no", "deck.weak_skin": "no", "deck.crack_width": "0.5 mm", "deck.crack_moves": "no",
			"deck.moving_joints": "no", "moisture.method": "none", "slab.on_ground": "no", "primer.suits": "yes"}},
	}
	room.Answers = Answers{"room.occupied_below": "no", "room.heated": "no", "room.wet": "yes", "survey.error": "1 mm",
		"floor.disturbed": "yes", "floor.year": "1978", "floor.tested": "yes",
		"strip.all_round": "yes", "strip.thickness": "5 mm", "strip.height": "60 mm", "strip.spacing": "350 mm", "room.sealed": "yes"}
	room.Readings.Rows = demoReadings()
	return job
}

// demoReadings are staff readings in mm below the laser's line, positions in m: the floor falls to the drain and sags in the hall.
func demoReadings() []Reading {
	rows := [][3]float64{
		{0.15, 0.15, 1203}, {1.10, 0.15, 1206}, {2.10, 0.15, 1211}, {3.20, 0.15, 1208}, {4.05, 0.15, 1204},
		{0.15, 0.85, 1206}, {1.10, 0.85, 1212}, {2.10, 0.85, 1217}, {3.20, 0.85, 1213}, {4.05, 0.85, 1206},
		{0.15, 1.45, 1207}, {1.10, 1.45, 1216}, {2.10, 1.45, 1218}, {3.20, 1.45, 1211}, {4.05, 1.45, 1203},
		{0.15, 2.05, 1205}, {1.10, 2.15, 1217}, {2.00, 2.05, 1212},
		{0.80, 2.45, 1208}, {1.50, 2.60, 1209}, {2.25, 2.55, 1205},
		{0.90, 2.95, 1202}, {1.60, 2.95, 1204}, {2.30, 2.95, 1201},
	}
	readings := make([]Reading, len(rows))
	for i, row := range rows {
		readings[i] = Reading{X: short(row[0]), Y: short(row[1]), Height: short(row[2])}
	}
	return readings
}

func short(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Surveyed is a room of 8 m by 6 m with so many readings on a waving deck, for measuring how the work grows with them.
func Surveyed(readings int) *Job {
	job := NewJob("surveyed", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline.Length, room.Outline.Width = "8 m", "6 m"
	room.Decks[0].Answers["deck.kind"] = "concrete"
	for i := range readings {
		// Steps by the golden ratio's powers spread spots evenly without a random source.
		x, y := fraction(float64(i)*0.7548776662466927), fraction(float64(i)*0.5698402909980532)
		height := 1200 + 9*wave(3*x+y) + 6*wave(5*y-2*x)
		room.Readings.Rows = append(room.Readings.Rows, Reading{X: fixed(8 * x), Y: fixed(6 * y), Height: fixed(height)})
	}
	return job
}

func fraction(x float64) float64 { return x - float64(int(x)) }

// wave is a smooth bump of period one, from polynomials alone.
func wave(x float64) float64 {
	f := fraction(x + 100)
	return 16 * f * f * (1 - f) * (1 - f)
}

func fixed(x float64) string { return strconv.FormatFloat(x, 'f', 4, 64) }
