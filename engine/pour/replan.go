package pour

import (
	"cmp"
	"math"
	"slices"
)

// Actual is what happened to a batch, as tapped: seconds from the start of the pour, nil until then.
type Actual struct {
	Batch   int      `json:"batch"`
	Started *float64 `json:"started"` // its water is being measured
	Carried *float64 `json:"carried"` // the bucket has left the mixing station; where nobody taps it, it counts as still there until it is poured
	Poured  *float64 `json:"poured"`  // the bucket is empty
	Done    *float64 `json:"done"`    // spread, and the bucket back
	Skipped bool     `json:"skipped"` // left out: its floor stays bare
}

// Replan works out the rest of the pour from what has happened by now (seconds from its start), with the crew at hand. The timeline holds only work
// that is still to do, none of it before now; its waits hold every edge, met or still to be met, but those of batches left out.
func Replan(loads []Load, crew Crew, pace Pace, actual []Actual, now float64) (Timeline, error) {
	if err := checkClock(loads, crew, pace); err != nil {
		return Timeline{}, err
	}
	if !(now >= 0 && now < 1e7) {
		return Timeline{}, refuse("now", number(now, 0)+" s", "give the seconds since the pour started")
	}
	happened := make([]Actual, len(loads))
	for _, a := range actual {
		if a.Batch < 1 || a.Batch > len(loads) {
			return Timeline{}, refuse("batch", number(float64(a.Batch), 0), "the pour has batches 1 to "+number(float64(len(loads)), 0))
		}
		if err := a.check(now); err != nil {
			return Timeline{}, err
		}
		happened[a.Batch-1] = a
	}
	s := standingAt(loads, pace, happened, now)
	if least := s.least(); least.Buckets > mostBuckets || least.People > mostPeople || least.Mixers > mostMixers {
		return Timeline{}, refuse("batches started", number(float64(least.Buckets), 0)+" at once", "tap poured and done for those that are down")
	}
	crew.People, crew.Mixers, crew.Buckets = max(crew.People, len(s.people)), max(crew.Mixers, len(s.mixers)), max(crew.Buckets, len(s.ready)+len(s.back))
	return bestOf(crew, pace, s), nil
}

func (a Actual) check(now float64) error {
	before := 0.0
	for _, t := range []*float64{a.Started, a.Carried, a.Poured, a.Done} {
		if t == nil {
			continue
		}
		if !(*t >= before && *t <= now) {
			return refuse("batch "+number(float64(a.Batch), 0), "tapped at "+number(*t, 0)+" s", "started, carried, poured and done come in that order and not after now, "+number(now, 0)+" s")
		}
		before = *t
	}
	return nil
}

// standingAt reads the taps. A batch begun goes on as planned from its start, unless that is over; a batch poured keeps its carrier until it is done.
func standingAt(loads []Load, pace Pace, happened []Actual, now float64) *standing {
	s := fresh(loads)
	s.now, s.order = now, nil
	begun, later := []int{}, []Load{}
	for i, a := range happened {
		switch {
		case a.Poured != nil || a.Done != nil:
			s.pourEnd[i] = *cmp.Or(a.Poured, a.Done)
			s.poured = math.Max(s.poured, s.pourEnd[i])
			if a.Done == nil {
				s.underWay(pace, loads[i], *a.Poured)
			}
		case a.Skipped:
		case a.Carried != nil:
			s.pourEnd[i] = math.Max(now, *a.Carried+(pace.Station+loads[i].Distance)/pace.Speed+pace.Pour)
			s.poured = math.Max(s.poured, s.pourEnd[i])
			s.underWay(pace, loads[i], s.pourEnd[i])
		case a.Started != nil:
			begun = append(begun, i)
		default:
			later = append(later, loads[i])
		}
	}
	slices.SortStableFunc(begun, func(a, b int) int { return cmp.Compare(*happened[a].Started, *happened[b].Started) })
	for _, i := range begun {
		s.inHand(pace, loads[i], *happened[i].Started)
	}
	s.order = append(s.order, later...)
	return s
}

func (s *standing) underWay(pace Pace, l Load, poured float64) {
	back := poured + pace.Agitate + (pace.Station+l.Distance)/pace.Speed
	if back > s.now {
		s.people = append(s.people, back)
	}
	s.back = append(s.back, math.Max(back, s.now))
}

func (s *standing) inHand(pace Pace, l Load, started float64) {
	made := started + pace.Water + float64(l.Bags)*pace.Powder + pace.Mix
	if made > s.now {
		s.people, s.mixers = append(s.people, made), append(s.mixers, made)
	}
	s.order = append(s.order, l)
	s.ready = append(s.ready, made+pace.Rest)
	s.powder = append(s.powder, started+pace.Water)
}
