package pour

import (
	"cmp"
	"math"
	"slices"
)

// Crew is who and what there is to work with. No barrow: buckets are carried by hand.
type Crew struct {
	People  int `json:"people"`
	Mixers  int `json:"mixers"`
	Buckets int `json:"buckets"`
	Barrows int `json:"barrows"`
}

// Pace is how long the work takes, s, and what the sheet allows.
type Pace struct {
	Water   float64 `json:"water"`   // measuring it, a batch
	Powder  float64 `json:"powder"`  // opening and adding, a bag; the mixer runs
	Mix     float64 `json:"mix"`     // a batch, the mixer runs
	Rest    float64 `json:"rest"`    // the least, nobody needed
	Pour    float64 `json:"pour"`    // a batch
	Agitate float64 `json:"agitate"` // spreading and spiking, a batch
	Speed   float64 `json:"speed"`   // m/s, walking with a bucket
	Station float64 `json:"station"` // m from the exit to where it is mixed
	Flow    float64 `json:"flow"`    // from powder in the water to spread on the floor, the most
	WetEdge float64 `json:"wetEdge"` // from an edge's being poured to its being met, the most
}

// Load is a batch as the clock sees it.
type Load struct {
	Batch      int         `json:"batch"`
	Bags       int         `json:"bags"`
	Distance   float64     `json:"distance"`   // m from the exit
	Neighbours []Neighbour `json:"neighbours"` // by batch
}

// The kinds of task, in the order in which a batch goes through them.
const (
	TaskWater   = "water"
	TaskPowder  = "powder"
	TaskMix     = "mix"
	TaskRest    = "rest"
	TaskCarry   = "carry"
	TaskPour    = "pour"
	TaskAgitate = "agitate"
	TaskReturn  = "return"
)

// Task is one piece of work: seconds from the start of the pour, and who and what it takes, numbered from 1; 0 where none.
type Task struct {
	Batch  int     `json:"batch"`
	Kind   string  `json:"kind"`
	Start  float64 `json:"start"`
	End    float64 `json:"end"`
	Person int     `json:"person"`
	Mixer  int     `json:"mixer"`
	Bucket int     `json:"bucket"`
	Barrow int     `json:"barrow"`
}

// Wait is how long a shared edge stands: from the end of the one pour to the end of the other, s.
type Wait struct {
	From    int     `json:"from"` // batch
	To      int     `json:"to"`
	Seconds float64 `json:"seconds"`
	Length  float64 `json:"length"` // m
}

// Timeline is the pour by the clock.
type Timeline struct {
	Crew        Crew    `json:"crew"` // those with work to do; never more than given
	Tasks       []Task  `json:"tasks"`
	Finish      float64 `json:"finish"`      // s, the last bucket back
	Waits       []Wait  `json:"waits"`       // every shared edge, by batches
	LongestWait float64 `json:"longestWait"` // s
	OldestFlow  float64 `json:"oldestFlow"`  // s, the longest from powder in the water to spread
	Kept        bool    `json:"kept"`        // flow time and wet edge both
}

// Loads puts batches and their patches together for the clock.
func Loads(batches []Batch, s Sequence) ([]Load, error) {
	if len(batches) != len(s.Patches) {
		return nil, refuse("batches", number(float64(len(batches)), 0)+" for "+number(float64(len(s.Patches)), 0)+" patches", "make one of each")
	}
	loads := make([]Load, len(batches))
	for i, b := range batches {
		loads[i] = Load{Batch: b.Number, Bags: b.Bags, Distance: s.Patches[i].Distance, Neighbours: s.Patches[i].Neighbours}
	}
	return loads, nil
}

// Clock works out who does what when, for the crew or any part of it: the plan that keeps the flow time and the wet edge best, then finishes
// first, then waits least. Batches are poured in order, one at a time, each by the person who carries it.
func Clock(loads []Load, crew Crew, pace Pace) (Timeline, error) {
	if err := checkClock(loads, crew, pace); err != nil {
		return Timeline{}, err
	}
	return bestOf(crew, pace, fresh(loads)), nil
}

// bestOf tries the crew and every part of it that has enough hands for what is going on, so that more hands never make it slower.
func bestOf(crew Crew, pace Pace, s *standing) Timeline {
	best, top := Timeline{}, score{}
	least := s.least()
	for people := crew.People; people >= least.People; people-- {
		for mixers := max(least.Mixers, min(crew.Mixers, people)); mixers >= least.Mixers; mixers-- {
			for buckets := max(least.Buckets, min(crew.Buckets, 2*people+2)); buckets >= least.Buckets; buckets-- {
				for barrows := min(crew.Barrows, people); barrows >= min(1, crew.Barrows); barrows-- {
					part := Crew{people, mixers, buckets, barrows}
					if best.Kept && newPlanner(part, pace, s).soonest(s.shop(part)) > top.finish+1e-3 {
						continue // even without a moment lost it finishes later
					}
					if t, own := plan(part, pace, s); best.Tasks == nil || own.compare(top) <= 0 {
						best, top = t, own
					}
				}
			}
		}
	}
	sortTasks(best.Tasks)
	return best
}

// score ranks timelines: over the limits by how much, then the finish, then the longest wait.
type score struct{ over, finish, wait float64 }

func (s score) compare(o score) int {
	return cmp.Or(roughly(s.over, o.over), roughly(s.finish, o.finish), roughly(s.wait, o.wait))
}

// roughly compares times to a millisecond, far below what anybody keeps, so that rounding decides nothing.
func roughly(a, b float64) int {
	if math.Abs(a-b) < 1e-3 {
		return 0
	}
	return cmp.Compare(a, b)
}

// The most that the clock plans for.
const mostPeople, mostMixers, mostBuckets, mostBarrows = 8, 4, 12, 8

func checkClock(loads []Load, crew Crew, pace Pace) error {
	for _, r := range []struct {
		name            string
		given, low, top int
	}{{"people", crew.People, 1, mostPeople}, {"mixers", crew.Mixers, 1, mostMixers}, {"buckets", crew.Buckets, 1, mostBuckets}, {"barrows", crew.Barrows, 0, mostBarrows}} {
		if r.given < r.low || r.given > r.top {
			return refuse(r.name, number(float64(r.given), 0), "give "+number(float64(r.low), 0)+" to "+number(float64(r.top), 0))
		}
	}
	for _, d := range []struct {
		name  string
		given float64
	}{{"time for water", pace.Water}, {"time for powder", pace.Powder}, {"mixing time", pace.Mix}, {"rest", pace.Rest}, {"pouring time", pace.Pour},
		{"agitating time", pace.Agitate}, {"way to the mixing station", pace.Station}} {
		if !(d.given >= 0 && d.given <= 86400) {
			return refuse(d.name, number(d.given, 1), "give zero or more, and no more than a day")
		}
	}
	if !(pace.Speed >= 0.01 && pace.Speed <= 10) {
		return refuse("walking speed", number(pace.Speed, 3)+" m/s", "give 0.01 m/s to 10 m/s; about 1 m/s is usual with a bucket")
	}
	if !positive(pace.Flow) || !positive(pace.WetEdge) {
		return refuse("flow time", minutes(pace.Flow)+", wet edge "+minutes(pace.WetEdge), "give the sheet's flow time and wet-edge time")
	}
	return checkLoads(loads)
}

func checkLoads(loads []Load) error {
	if len(loads) == 0 || len(loads) > 1000 {
		return refuse("batches", number(float64(len(loads)), 0), "give 1 to 1000")
	}
	for i, l := range loads {
		if l.Batch != i+1 || l.Bags < 1 || l.Bags > most || !(l.Distance >= 0 && l.Distance < 1e5) {
			return refuse("batch "+number(float64(i+1), 0), "number "+number(float64(l.Batch), 0)+", "+number(float64(l.Bags), 0)+" bags, "+number(l.Distance, 1)+" m away",
				"number the batches from 1, each of a bag or more and some way off")
		}
	}
	return nil
}

// waits lists every shared edge with how long it stands.
func waits(loads []Load, pourEnd []float64) ([]Wait, float64) {
	list, longest := []Wait{}, 0.0
	for i, l := range loads {
		for _, n := range l.Neighbours {
			if n.Batch <= l.Batch || n.Batch > len(loads) || math.IsNaN(pourEnd[i]) || math.IsNaN(pourEnd[n.Batch-1]) {
				continue
			}
			w := Wait{l.Batch, n.Batch, pourEnd[n.Batch-1] - pourEnd[i], n.Length}
			list = append(list, w)
			longest = math.Max(longest, w.Seconds)
		}
	}
	return list, longest
}

var kindOrder = []string{TaskWater, TaskPowder, TaskMix, TaskRest, TaskCarry, TaskPour, TaskAgitate, TaskReturn}

func sortTasks(tasks []Task) {
	slices.SortStableFunc(tasks, func(a, b Task) int {
		return cmp.Or(cmp.Compare(a.Start, b.Start), cmp.Compare(a.Batch, b.Batch), cmp.Compare(slices.Index(kindOrder, a.Kind), slices.Index(kindOrder, b.Kind)))
	})
}
