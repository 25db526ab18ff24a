package pour

import (
	"math"
	"slices"
)

// standing is the work as it stands when a plan is made: at the start of the pour nothing is begun.
type standing struct {
	loads   []Load    // every batch
	order   []Load    // those still to place, the begun ones first
	now     float64   // s from the start of the pour
	people  []float64 // until when those at work are busy
	mixers  []float64
	ready   []float64 // when each begun batch has rested, the first of the order
	powder  []float64 // when its powder went in
	back    []float64 // when each bucket under way comes back
	poured  float64   // the end of the last pour
	pourEnd []float64 // of every batch, NaN where still to come
}

func fresh(loads []Load) *standing {
	s := &standing{loads: loads, order: loads, pourEnd: make([]float64, len(loads))}
	for i := range s.pourEnd {
		s.pourEnd[i] = math.NaN()
	}
	return s
}

// shop is the state that the search begins from.
func (s *standing) shop(crew Crew) *shop {
	first := &shop{made: len(s.ready), poured: s.poured, free: crew.Buckets - len(s.ready)}
	fill := func(times, busy []float64) {
		for i := range times {
			times[i] = s.now
		}
		copy(times, busy)
		slices.Sort(times)
	}
	fill(first.people[:crew.People], s.people)
	fill(first.mixers[:crew.Mixers], s.mixers)
	fill(first.buckets[:first.free], s.back)
	fill(first.barrows[:crew.Barrows], nil)
	for i, t := range s.ready {
		first.ready[i] = t
	}
	return first
}

// held is until when each bucket in use is taken: those of batches begun until they are placed, those under way until they are back.
func (s *standing) held() []float64 {
	until := make([]float64, len(s.ready))
	for i := range until {
		until[i] = math.Inf(1)
	}
	return append(until, s.back...)
}

// least is the smallest crew that can be doing what is going on.
func (s *standing) least() Crew {
	return Crew{People: max(1, len(s.people)), Mixers: max(1, len(s.mixers)), Buckets: max(1, len(s.ready)+len(s.back))}
}

// finish is when the work under way ends.
func (s *standing) finish() float64 {
	end := s.poured
	for _, t := range s.back {
		end = math.Max(end, t)
	}
	return end
}
