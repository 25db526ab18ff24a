package engine

import (
	"strconv"
	"testing"

	"lowspot/engine/quantity"
)

// wide is a hall of 40 m by 30 m with readings on a grid of 2,000.
func wide() *Job {
	job := NewJob("wide", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline.Length, room.Outline.Width = "40 m", "30 m"
	room.Decks[0].Answers["deck.kind"] = "concrete"
	for i := range 2000 {
		x, y := float64(i%50)*0.8+0.3, float64(i/50)*0.74+0.3
		room.Readings.Rows = append(room.Readings.Rows, Reading{X: short(x), Y: short(y), Height: strconv.Itoa(1200 + (i*37+i/50*11)%9)})
	}
	return job
}

func BenchmarkMakePlan2000(b *testing.B) {
	job := wide()
	for b.Loop() {
		MakePlan(job, book)
	}
}
