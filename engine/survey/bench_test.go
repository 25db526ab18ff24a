package survey

import (
	"fmt"
	"math/rand"
	"testing"

	"lowspot/engine/floor"
)

var sizes = []int{15, 60, 200, 400, 2000}

func benchmarkOver(b *testing.B, work func(m *Model)) {
	for _, n := range sizes {
		points, heights := deckSeen(rand.New(rand.NewSource(1)), n, 0.004, 1.5, 0.001)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			m := fitted(b, points, heights, 0.001)
			m.whole()
			for b.Loop() {
				work(m)
			}
		})
	}
}

// BenchmarkFitAndWalls is what a keystroke costs: the fit, and twenty heights along the walls.
func BenchmarkFitAndWalls(b *testing.B) {
	benchmarkOver(b, func(m *Model) {
		again := fitted(b, m.points, m.heights, m.ReadingError)
		for i := range 20 {
			again.At(floor.Point{X: float64(i) * 0.4})
		}
	})
}

func BenchmarkFitVolume(b *testing.B) {
	benchmarkOver(b, func(m *Model) { VolumeOf(m, room, floor.Plane{C: 0.03}) })
}

func BenchmarkFitVolumeNearPlane(b *testing.B) {
	benchmarkOver(b, func(m *Model) { VolumeOf(m, room, floor.Plane{C: 0.012}) })
}

func BenchmarkFitWhole(b *testing.B) {
	benchmarkOver(b, func(m *Model) { m.joined() })
}

func BenchmarkFitNextReading(b *testing.B) {
	benchmarkOver(b, func(m *Model) {
		b.StopTimer()
		v, err := VolumeOf(m, room, floor.Plane{C: 0.03})
		if err != nil {
			b.Fatal(err)
		}
		b.StartTimer()
		v.NextReading(bagYield, 0.25)
	})
}

func BenchmarkFitSuspects(b *testing.B) {
	benchmarkOver(b, func(m *Model) { m.Suspects() })
}

func BenchmarkFitDoubts(b *testing.B) {
	benchmarkOver(b, func(m *Model) { m.DoubtsOver(room, 2000) })
}
