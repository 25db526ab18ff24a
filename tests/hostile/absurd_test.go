// Package hostile holds what nobody ought to enter and somebody will: absurd jobs that can be read all the same. The fuzz targets stand beside the
// packages whose doors they try.
package hostile

import (
	"math"
	"strconv"

	"lowspot/engine"
	"lowspot/engine/quantity"
)

// absurd are jobs that make no sense, by what is wrong with them.
func absurd() map[string]*engine.Job {
	jobs := map[string]*engine.Job{
		"no room":                        {Format: 1},
		"every list and map missing":     {Format: 1, Rooms: []engine.Room{{}, {}}, Record: []engine.PourRecord{{}}, Offer: &engine.Offer{}, After: &engine.AfterPour{}},
		"10,000 rooms":                   manyRooms(10_000),
		"200,000 readings":               engine.Surveyed(200_000),
		"all readings in one spot":       surveyed(500, func(int) (float64, float64, float64) { return 4, 3, 1200 }),
		"all readings in one spot apart": surveyed(500, func(i int) (float64, float64, float64) { return 4, 3, 1200 + float64(i) }),
		"collinear readings":             surveyed(500, func(i int) (float64, float64, float64) { return float64(i) / 100, float64(i) / 100, 1200 }),
		"nearly collinear readings":      surveyed(500, func(i int) (float64, float64, float64) { return float64(i) / 100, 3 + 1e-9*float64(i%3), 1200 }),
		"readings on the walls":          surveyed(100, func(i int) (float64, float64, float64) { return float64(i%2) * 8, float64(i) * 0.06, 1200 }),
		"readings a kilometre away":      surveyed(50, func(i int) (float64, float64, float64) { return 999 - float64(i), float64(-i), 1200 }),
		"readings of 1e300":              surveyed(50, func(i int) (float64, float64, float64) { return 1e300, float64(i), -1e300 }),
		"a floor like a saw": surveyed(900, func(i int) (float64, float64, float64) {
			return float64(i%30) / 4, float64(i/30) / 5, 1200 + 400*float64(i%2)
		}),
		"a pit of a kilometre": surveyed(50, func(i int) (float64, float64, float64) {
			return float64(i%7) + 0.5, float64(i/7) / 2, 1e6 * float64(i%2)
		}),
		"a spiral":                       outlined(spiral(40, 0.2)),
		"a spiral of 1,900 corners":      outlined(spiral(475, 0.02)),
		"a comb of 500 teeth":            outlined(comb(500)),
		"a star":                         outlined(star(400)),
		"an outline that touches itself": outlined([][2]float64{{0, 0}, {4, 0}, {2, 2}, {4, 4}, {0, 4}, {2, 2}}),
		"an outline that crosses itself": outlined([][2]float64{{0, 0}, {4, 4}, {4, 0}, {0, 4}}),
		"an outline that folds back":     outlined([][2]float64{{0, 0}, {4, 0}, {2, 0}, {2, 3}}),
		"an outline of no width":         outlined([][2]float64{{0, 0}, {4, 0}, {4, 0.0001}, {0, 0.0001}}),
		"an outline of 100,000 corners":  outlined(star(100_000)),
		"a floor of a kilometre":         outlined([][2]float64{{-999, -999}, {999, -999}, {999, 999}, {-999, 999}}),
		"100,000 walls":                  walked(100_000),
		"3,000 keep-outs":                crowded(func(r *engine.Room, i int) { r.KeepOuts = append(r.KeepOuts, keepOut(i)) }),
		"3,000 doors":                    crowded(func(r *engine.Room, i int) { r.Doors = append(r.Doors, door(i)) }),
		"3,000 penetrations":             crowded(func(r *engine.Room, i int) { r.Penetrations = append(r.Penetrations, penetration(i)) }),
		"3,000 deck areas":               crowded(func(r *engine.Room, i int) { r.Decks = append(r.Decks, deck(i)) }),
		"everything a hundred times":     crowdedWithAll(100),
		"a record of 20,000 batches":     recorded(20_000),
	}
	for _, typed := range []string{"0", "-1 m", "NaN", "1e300 m", "1e-300 m", "Inf", "∞", "½ in", "999999999 km", "", "0 %", "don't know", "yes", "-0", "1e9 kg", "9999 °C", "-300 °C"} {
		jobs["every quantity "+strconv.Quote(typed)] = everywhere(typed)
	}
	for _, factor := range []float64{1e-6, 1e-3, 1e3, 1e6} {
		jobs["every number of the demo times "+strconv.FormatFloat(factor, 'g', -1, 64)] = scaled(factor)
	}
	return jobs
}

func metres(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) + " m" }

func spot(x, y float64) engine.Spot { return engine.Spot{X: metres(x), Y: metres(y)} }

func manyRooms(count int) *engine.Job {
	job := engine.DemoJob("rooms")
	small := engine.Surveyed(3).Rooms[0]
	small.Outline = engine.Shape{How: engine.ShapeRectangle, Length: "1 m", Width: "0.8 m"}
	for len(job.Rooms) < count {
		job.Rooms = append(job.Rooms, small)
	}
	return job
}

// surveyed is a room of 8 m by 6 m with readings at places in metres and heights in millimetres.
func surveyed(count int, reading func(int) (x, y, height float64)) *engine.Job {
	job := engine.Surveyed(0)
	for i := range count {
		x, y, height := reading(i)
		typed := func(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }
		job.Rooms[0].Readings.Rows = append(job.Rooms[0].Readings.Rows, engine.Reading{X: typed(x), Y: typed(y), Height: typed(height)})
	}
	return job
}

func outlined(corners [][2]float64) *engine.Job {
	job := engine.Surveyed(60)
	shape := &job.Rooms[0].Outline
	shape.How = engine.ShapeCorners
	for _, c := range corners {
		shape.Corners = append(shape.Corners, spot(c[0], c[1]))
	}
	return withExit(job)
}

func withExit(job *engine.Job) *engine.Job {
	job.Rooms[0].Doors = append(job.Rooms[0].Doors, engine.Door{ID: "out", Wall: 0, At: "0 m", Width: "0.1 m", Exit: true})
	return job
}

// spiral is a corridor of a width that winds inwards round and round: a rectangular spiral there and back.
func spiral(turns int, width float64) [][2]float64 {
	var in, out [][2]float64
	x, y := 0.0, 0.0
	for i := range turns {
		reach := float64(turns-i) * width
		way := [4][2]float64{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}[i%4]
		in = append(in, [2]float64{x, y})
		side := [4][2]float64{{1, 1}, {-1, 1}, {-1, -1}, {1, -1}}[i%4]
		out = append(out, [2]float64{x + side[0]*width/3, y + side[1]*width/3})
		x, y = x+way[0]*reach*2, y+way[1]*reach*2
	}
	for i := len(out) - 1; i >= 0; i-- {
		in = append(in, out[i])
	}
	return in
}

func comb(teeth int) [][2]float64 {
	corners := [][2]float64{{0, 0}, {float64(teeth) * 0.02, 0}}
	for i := teeth; i > 0; i-- {
		x := float64(i) * 0.02
		corners = append(corners, [2]float64{x, 3}, [2]float64{x - 0.01, 1})
	}
	return append(corners, [2]float64{0, 3})
}

func star(points int) [][2]float64 {
	corners := make([][2]float64, points)
	for i := range corners {
		angle, reach := 2*math.Pi*float64(i)/float64(points), 1+3*float64(i%2)
		corners[i] = [2]float64{4 + reach*math.Cos(angle), 4 + reach*math.Sin(angle)}
	}
	return corners
}

func walked(walls int) *engine.Job {
	job := engine.Surveyed(20)
	shape := &job.Rooms[0].Outline
	shape.How = engine.ShapeWalk
	for i := range walls {
		shape.Walk = append(shape.Walk, engine.Leg{Length: "1 m", Turn: []string{"left", "right", "179.99", "-45"}[i%4]})
	}
	return job
}

// crowded is a room with 3,000 of one thing.
func crowded(add func(*engine.Room, int)) *engine.Job {
	job := withExit(engine.Surveyed(40))
	for i := range 3000 {
		add(&job.Rooms[0], i)
	}
	return job
}

func crowdedWithAll(count int) *engine.Job {
	job := withExit(engine.Surveyed(40))
	room := &job.Rooms[0]
	for i := range count {
		room.KeepOuts, room.Doors = append(room.KeepOuts, keepOut(i)), append(room.Doors, door(i))
		room.Penetrations, room.Decks = append(room.Penetrations, penetration(i)), append(room.Decks, deck(i))
	}
	return job
}

// place spreads things over the room of 8 m by 6 m.
func place(i int) (x, y float64) { return 0.1 + 0.13*float64(i%59), 0.1 + 0.11*float64(i/59) }

func little(i int) engine.Shape {
	x, y := place(i)
	at := spot(x, y)
	return engine.Shape{How: engine.ShapeRectangle, Length: "0.05 m", Width: "0.05 m", At: &at}
}

func keepOut(i int) engine.KeepOut { return engine.KeepOut{ID: strconv.Itoa(i), Shape: little(i)} }

func door(i int) engine.Door {
	return engine.Door{ID: strconv.Itoa(i), Wall: i % 4, At: metres(float64(i%50) / 10), Width: "0.8 m", Exit: i%2 == 0, Neighbour: strconv.Itoa(i)}
}

func penetration(i int) engine.Penetration {
	x, y := place(i)
	return engine.Penetration{ID: strconv.Itoa(i), Kind: "drain", At: spot(x, y), Diameter: "0.1 m", Height: strconv.Itoa(i)}
}

func deck(i int) engine.DeckArea {
	shape := little(i)
	return engine.DeckArea{ID: strconv.Itoa(i), Shape: &shape, Answers: engine.Answers{"deck.kind": "plywood"}}
}

func recorded(batches int) *engine.Job {
	job := engine.DemoJob("recorded")
	record := engine.PourRecord{Room: job.Rooms[0].ID, Started: "2026-05-02T08:00:00Z"}
	for i := range batches {
		record.Batches = append(record.Batches, engine.BatchRecord{Batch: i - 5, Started: "2026-05-02T08:00:00Z", Done: "1970-01-01T00:00:00Z", Bags: i})
	}
	job.Record = []engine.PourRecord{record, record}
	return job
}

// everywhere is the demo with one text in the place of everything that is typed, and of everything that could be answered.
func everywhere(typed string) *engine.Job {
	job := engine.DemoJob("everywhere")
	retype(job, func(string) string { return typed })
	for _, word := range engine.Vocabulary() {
		job.Answers[word.Name], job.Rooms[0].Answers[word.Name], job.Rooms[0].Decks[0].Answers[word.Name] = typed, typed, typed
	}
	job.Rooms[0].Plane = engine.PlaneChoice{How: engine.PlaneLeastVolume, SlopeLimit: typed, Height: typed, Raise: typed}
	job.Rooms[0].Rough = &engine.Rough{}
	job.After = &engine.AfterPour{Used: typed, Left: typed, Depth: typed}
	job.Offer = &engine.Offer{Discount: typed, Labour: true, Delivered: true}
	return job
}

// scaled is the demo with every length that is typed a number of times as long.
func scaled(factor float64) *engine.Job {
	job := engine.DemoJob("scaled")
	retype(job, func(before string) string {
		length, err := quantity.ReadIn(before, quantity.Length, "mm")
		if err != nil {
			return before
		}
		return metres(length * factor)
	})
	return job
}

// retype changes every typed quantity of a job but the ways to enter it.
func retype(job *engine.Job, change func(string) string) {
	answers := func(all engine.Answers) {
		for word, typed := range all {
			all[word] = change(typed)
		}
	}
	answers(job.Answers)
	for _, sheet := range job.Sheets {
		answers(sheet.Values)
	}
	for i := range job.Rooms {
		room := &job.Rooms[i]
		answers(room.Answers)
		for _, text := range typedIn(room) {
			*text = change(*text)
		}
		for j := range room.Decks {
			answers(room.Decks[j].Answers)
		}
	}
}

func typedIn(room *engine.Room) []*string {
	texts := inShape(&room.Outline)
	for i := range room.KeepOuts {
		texts = append(texts, inShape(&room.KeepOuts[i].Shape)...)
	}
	for i := range room.Decks {
		if room.Decks[i].Shape != nil {
			texts = append(texts, inShape(room.Decks[i].Shape)...)
		}
	}
	for i := range room.Doors {
		texts = append(texts, &room.Doors[i].At, &room.Doors[i].Width, &room.Doors[i].Neighbour)
	}
	for i := range room.Penetrations {
		p := &room.Penetrations[i]
		texts = append(texts, &p.At.X, &p.At.Y, &p.Diameter, &p.Height)
	}
	for i := range room.Readings.Rows {
		row := &room.Readings.Rows[i]
		texts = append(texts, &row.X, &row.Y, &row.Height)
	}
	return texts
}

func inShape(shape *engine.Shape) []*string {
	texts := []*string{&shape.Length, &shape.Width, &shape.Area}
	if shape.At != nil {
		texts = append(texts, &shape.At.X, &shape.At.Y)
	}
	for i := range shape.Walk {
		texts = append(texts, &shape.Walk[i].Length)
	}
	for i := range shape.Corners {
		texts = append(texts, &shape.Corners[i].X, &shape.Corners[i].Y)
	}
	return texts
}
