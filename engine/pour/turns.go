package pour

import (
	"cmp"
	"math"
	"slices"
)

// A batch takes two turns of somebody's time: making it (water, powder, mix) and placing it (carry, pour, agitate, return). Turns are taken as
// early as hands and tools allow; what is searched is only whether the next free hands make a batch or place one.

// shop is the state of the work when some turns have been given out: when each person, mixer, bucket and barrow is free, earliest first.
type shop struct {
	people  [mostPeople]float64
	mixers  [mostMixers]float64
	buckets [mostBuckets]float64 // of those in use, only those that are on the way back
	barrows [mostBarrows]float64
	free    int // buckets listed
	made    int
	placed  int
	poured  float64 // the end of the last pour
	from    *shop   // the state before the last turn
	start   float64 // of the last turn
	making  bool    // what the last turn was
	ready   [mostBuckets]float64
	promise float64
}

// width is how many states of the same count of batches made and placed are followed side by side.
const width = 6

// planner holds what one search needs. loads are the batches still to place, in order; the first few may be made already.
type planner struct {
	loads []Load
	crew  Crew
	pace  Pace
	stand *standing

	pourLeft, placeLeft []float64 // s of work in the batches from each on
	makeLeft, mixLeft   []float64
}

func newPlanner(crew Crew, pace Pace, s *standing) *planner {
	p := &planner{loads: s.order, crew: crew, pace: pace, stand: s}
	n := len(p.loads) + 1
	p.pourLeft, p.placeLeft, p.makeLeft, p.mixLeft = make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
	for i := n - 2; i >= 0; i-- {
		p.pourLeft[i] = p.pourLeft[i+1] + pace.Pour
		p.placeLeft[i] = p.placeLeft[i+1] + p.placing(i)
		p.makeLeft[i] = p.makeLeft[i+1] + p.making(i)
		p.mixLeft[i] = p.mixLeft[i+1] + p.mixing(i)
	}
	return p
}

func (p *planner) making(i int) float64 { return p.pace.Water + p.mixing(i) }

func (p *planner) mixing(i int) float64 { return float64(p.loads[i].Bags)*p.pace.Powder + p.pace.Mix }

func (p *planner) carry(i int) float64 { return (p.pace.Station + p.loads[i].Distance) / p.pace.Speed }

func (p *planner) placing(i int) float64 { return 2*p.carry(i) + p.pace.Pour + p.pace.Agitate }

// search returns the last states of the most promising courses of turns.
func (p *planner) search(start *shop) []*shop {
	turns := 2*len(p.loads) - start.made - start.placed
	states := []*shop{start}
	for range turns {
		next := []*shop{}
		for _, s := range states {
			if s.made < len(p.loads) && s.free > 0 {
				next = append(next, p.make(s))
			}
			if s.placed < s.made {
				next = append(next, p.place(s))
			}
		}
		states = p.keep(next)
	}
	return states
}

// make gives out the making of the next batch.
func (p *planner) make(s *shop) *shop {
	n := *s
	i := s.made
	at := math.Max(s.people[0], math.Max(s.buckets[0], s.mixers[0]-p.pace.Water))
	n.from, n.start, n.making = s, at, true
	retime(n.people[:p.crew.People], at+p.making(i))
	retime(n.mixers[:p.crew.Mixers], at+p.making(i))
	copy(n.buckets[:], s.buckets[1:s.free])
	n.free--
	n.ready[i%mostBuckets] = at + p.making(i) + p.pace.Rest
	n.made++
	n.promise = p.promise(&n)
	return &n
}

// place gives out the placing of the next batch.
func (p *planner) place(s *shop) *shop {
	n := *s
	i := s.placed
	at := math.Max(math.Max(s.people[0], s.ready[i%mostBuckets]), s.poured-p.carry(i))
	if p.crew.Barrows > 0 {
		at = math.Max(at, s.barrows[0])
		retime(n.barrows[:p.crew.Barrows], at+p.placing(i))
	}
	n.from, n.start, n.making = s, at, false
	retime(n.people[:p.crew.People], at+p.placing(i))
	n.buckets[n.free] = at + p.placing(i)
	n.free++
	settle(n.buckets[:n.free])
	n.poured = at + p.carry(i) + p.pace.Pour
	n.placed++
	n.promise = p.promise(&n)
	return &n
}

// retime busies the one who is free first until a time.
func retime(free []float64, until float64) {
	free[0] = until
	for i := 1; i < len(free) && free[i] < free[i-1]; i++ {
		free[i], free[i-1] = free[i-1], free[i]
	}
}

// settle puts the last of a sorted list where it belongs.
func settle(free []float64) {
	for i := len(free) - 1; i > 0 && free[i] < free[i-1]; i-- {
		free[i], free[i-1] = free[i-1], free[i]
	}
}

// keep keeps the few most promising of the states alike in batches made and placed: the last pour early, then hands free early.
func (p *planner) keep(states []*shop) []*shop {
	slices.SortStableFunc(states, func(a, b *shop) int {
		return cmp.Or(cmp.Compare(a.made, b.made), cmp.Compare(a.promise, b.promise))
	})
	kept := states[:0]
	alike := 0
	for i, s := range states {
		if i > 0 && s.made == states[i-1].made {
			alike++
		} else {
			alike = 0
		}
		if alike < width {
			kept = append(kept, s)
		}
	}
	return kept
}

// promise is a floor under the time by which all is done: the pours one after another, the hands' work shared out, and the mixers'. A little of each
// tells states apart that one of them binds alike.
func (p *planner) promise(s *shop) float64 {
	pours, hands, mixers := s.poured+p.pourLeft[s.placed], p.makeLeft[s.made]+p.placeLeft[s.placed], p.mixLeft[s.made]
	for _, t := range s.people[:p.crew.People] {
		hands += t
	}
	for _, t := range s.mixers[:p.crew.Mixers] {
		mixers += t
	}
	hands /= float64(p.crew.People)
	mixers /= float64(p.crew.Mixers)
	return math.Max(pours, math.Max(hands, mixers)) + 1e-3*(pours+hands+mixers)
}

// soonest is a floor under the finish with a crew, s.
func (p *planner) soonest(s *shop) float64 {
	hands, mixers, buckets := p.makeLeft[s.made]+p.placeLeft[s.placed], p.mixLeft[s.made], p.makeLeft[s.made]+p.placeLeft[s.made]
	buckets += p.pace.Rest * float64(len(p.loads)-s.made)
	from := p.stand.now
	return from + math.Max(hands/float64(p.crew.People), math.Max(mixers/float64(p.crew.Mixers), buckets/float64(p.crew.Buckets)))
}
