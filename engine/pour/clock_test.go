package pour

import (
	"fmt"
	"math"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// usual is a pace of common practice: two bags a batch, three minutes of mixing, two of rest.
var usual = Pace{Water: 30, Powder: 30, Mix: 150, Rest: 120, Pour: 60, Agitate: 60, Speed: 1, Station: 5, Flow: 20 * 60, WetEdge: 10 * 60}

// lane is a pour of n batches, each beside the next, nearer to the exit batch by batch.
func lane(n int) []Load {
	loads := make([]Load, n)
	for i := range loads {
		loads[i] = Load{Batch: i + 1, Bags: 2, Distance: float64(n - i)}
		if i > 0 {
			loads[i].Neighbours = append(loads[i].Neighbours, Neighbour{i, 3})
		}
		if i < n-1 {
			loads[i].Neighbours = append(loads[i].Neighbours, Neighbour{i + 2, 3})
		}
	}
	return loads
}

// wellFormed checks what holds of every timeline: nothing used twice at once, a batch's tasks in order without overlap, pours in order.
func wellFormed(t *testing.T, line Timeline, pace Pace) {
	for _, sort := range []struct {
		name  string
		of    func(Task) int
		count int
	}{
		{"person", func(k Task) int { return k.Person }, line.Crew.People},
		{"mixer", func(k Task) int { return k.Mixer }, line.Crew.Mixers},
		{"barrow", func(k Task) int { return k.Barrow }, line.Crew.Barrows},
	} {
		until := map[int]float64{}
		for _, k := range line.Tasks {
			if n := sort.of(k); n > 0 {
				require.LessOrEqual(t, n, sort.count, sort.name)
				require.LessOrEqual(t, until[n], k.Start+1e-6, "%s %d is used twice at once, batch %d %s", sort.name, n, k.Batch, k.Kind)
				until[n] = k.End
			}
		}
	}
	bucketsHoldOneBatch(t, line)
	ends, poured := map[string]float64{}, 0.0
	for _, kind := range kindOrder {
		for _, k := range line.Tasks {
			if k.Kind == kind {
				ends[fmt.Sprint(k.Batch, kind)] = k.End
				if before := slices.Index(kindOrder, kind) - 1; before >= 0 {
					if end, known := ends[fmt.Sprint(k.Batch, kindOrder[before])]; known {
						require.InDelta(t, end, math.Max(end, k.Start), 1e-6, "batch %d: no %s before %s ends", k.Batch, kind, kindOrder[before])
						require.GreaterOrEqual(t, k.Start, end-1e-6)
					}
				}
			}
		}
	}
	for _, k := range line.Tasks {
		switch k.Kind {
		case TaskPour:
			require.GreaterOrEqual(t, k.Start, poured-1e-6, "batch %d is poured after the one before it", k.Batch)
			poured = k.End
		case TaskRest:
			require.GreaterOrEqual(t, k.End-k.Start, pace.Rest-1e-6)
		}
	}
}

func bucketsHoldOneBatch(t *testing.T, line Timeline) {
	type span struct{ from, to float64 }
	spans := map[[2]int]span{}
	for _, k := range line.Tasks {
		key := [2]int{k.Bucket, k.Batch}
		s, known := spans[key]
		if !known {
			s = span{k.Start, k.End}
		}
		spans[key] = span{math.Min(s.from, k.Start), math.Max(s.to, k.End)}
	}
	for a, s := range spans {
		require.LessOrEqual(t, a[0], line.Crew.Buckets)
		for b, o := range spans {
			if a[0] == b[0] && a[1] < b[1] {
				require.True(t, s.to <= o.from+1e-6 || o.to <= s.from+1e-6, "bucket %d holds batches %d and %d", a[0], a[1], b[1])
			}
		}
	}
}

func TestNothingIsUsedTwiceAtOnce(t *testing.T) {
	random := rand.New(rand.NewSource(2))
	for range 60 {
		pace := usual
		pace.Mix, pace.Pour, pace.Rest = 60+200*random.Float64(), 20+200*random.Float64(), 200*random.Float64()
		crew := Crew{1 + random.Intn(4), 1 + random.Intn(2), 1 + random.Intn(5), random.Intn(3)}
		line, err := Clock(lane(1+random.Intn(20)), crew, pace)
		require.NoError(t, err)
		wellFormed(t, line, pace)
		assert.LessOrEqual(t, line.Crew.People, crew.People)
		assert.LessOrEqual(t, line.Crew.Buckets, crew.Buckets)
	}
}

func TestMoreHandsNeverMakeItSlower(t *testing.T) {
	loads := lane(12)
	tight := usual
	tight.WetEdge = 330
	for _, pace := range []Pace{usual, tight} {
		for people := 1; people <= 4; people++ {
			for buckets := 1; buckets <= 5; buckets++ {
				few, err := Clock(loads, Crew{people, 1, buckets, 0}, pace)
				require.NoError(t, err)
				for _, crew := range []Crew{{people + 1, 1, buckets, 0}, {people, 2, buckets, 0}, {people, 1, buckets + 1, 0}} {
					many, err := Clock(loads, crew, pace)
					require.NoError(t, err)
					if few.Kept {
						assert.True(t, many.Kept)
						assert.LessOrEqual(t, many.Finish, few.Finish+1e-3, "%v after %d people, %d buckets", crew, people, buckets)
					}
				}
			}
		}
	}
}

// The trade's usual way: one alone mixes and pours by turns; two people with two or more buckets going at once keep the edge wet.
func TestTwoBucketsGoingAtOnceKeepTheEdgeWet(t *testing.T) {
	alone, err := Clock(lane(10), Crew{1, 1, 1, 0}, usual)
	require.NoError(t, err)
	two, err := Clock(lane(10), Crew{2, 1, 3, 0}, usual)
	require.NoError(t, err)
	assert.Less(t, two.LongestWait, alone.LongestWait)
	assert.True(t, two.Kept)
	least, err := FewestHands(lane(10), Crew{4, 2, 6, 0}, usual)
	require.NoError(t, err)
	assert.True(t, least.Kept)
	t.Log(alone.LongestWait, two.LongestWait, two.Finish, least.Crew, least.LongestWait)
}

func TestFewestHandsIsLeastByTryingEveryCrew(t *testing.T) {
	for _, wet := range []float64{200, 260, 320, 420, 600} {
		pace := usual
		pace.WetEdge = wet
		least, err := FewestHands(lane(8), Crew{4, 2, 5, 0}, pace)
		require.NoError(t, err)
		for people := 1; people <= 4; people++ {
			for mixers := 1; mixers <= 2; mixers++ {
				for buckets := 1; buckets <= 5; buckets++ {
					line, err := Clock(lane(8), Crew{people, mixers, buckets, 0}, pace)
					require.NoError(t, err)
					if line.Kept {
						require.True(t, least.Kept)
						assert.GreaterOrEqual(t, people, least.Crew.People, "wet edge %v s", wet)
						if people == least.Crew.People {
							assert.GreaterOrEqual(t, buckets, least.Crew.Buckets, "wet edge %v s", wet)
						}
					}
				}
			}
		}
	}
}

// usage counts how many of a sort are in use in each second.
type usage []int

func (u usage) fits(from, to, top int) bool {
	for s := from; s < to; s++ {
		if u[s] >= top {
			return false
		}
	}
	return true
}

func (u usage) add(from, to, n int) {
	for s := from; s < to; s++ {
		u[s] += n
	}
}

// exhaustive tries every whole-second start of every turn, and returns the earliest finish that keeps the flow time: +Inf where none does by the limit.
func exhaustive(loads []Load, crew Crew, pace Pace, limit int) float64 {
	p := newPlanner(crew, pace, fresh(loads))
	people, mixers, buckets := make(usage, limit+1), make(usage, limit+1), make(usage, limit+1)
	best := limit + 1
	var try func(i, from, poured, finish int)
	try = func(i, from, poured, finish int) {
		if i == len(loads) {
			best = min(best, finish)
			return
		}
		making, placing, carry := int(p.making(i)), int(p.placing(i)), int(p.carry(i))
		for start := from; start+making+int(pace.Rest)+placing < best; start++ {
			wet, made := start+int(pace.Water), start+making
			if !people.fits(start, made, crew.People) || !mixers.fits(wet, made, crew.Mixers) {
				continue
			}
			people.add(start, made, 1)
			mixers.add(wet, made, 1)
			for at := max(made+int(pace.Rest), poured-carry); at+placing < best; at++ {
				down := at + carry + int(pace.Pour)
				if float64(down+int(pace.Agitate)-wet) > pace.Flow {
					break
				}
				if people.fits(at, at+placing, crew.People) && buckets.fits(start, at+placing, crew.Buckets) {
					people.add(at, at+placing, 1)
					buckets.add(start, at+placing, 1)
					try(i+1, start, down, max(finish, at+placing))
					buckets.add(start, at+placing, -1)
					people.add(at, at+placing, -1)
				}
			}
			mixers.add(wet, made, -1)
			people.add(start, made, -1)
		}
	}
	try(0, 0, 0, 0)
	if best > limit {
		return math.Inf(1)
	}
	return float64(best)
}

// Whole seconds stand for half minutes here, so that every start can be tried.
func TestTheClockFinishesAsEarlyAsTryingEverything(t *testing.T) {
	random := rand.New(rand.NewSource(3))
	for n := range 200 {
		whole := func(low, high int) float64 { return float64(low + random.Intn(high-low+1)) }
		pace := Pace{Water: whole(0, 1), Powder: 1, Mix: whole(1, 4), Rest: whole(0, 3), Pour: whole(1, 3), Agitate: whole(0, 2), Speed: 1, Flow: whole(9, 22), WetEdge: 1000}
		crew := Crew{1 + random.Intn(3), 1 + random.Intn(2), 1 + random.Intn(3), 0}
		loads := lane(2 + random.Intn(2))
		for i := range loads {
			loads[i].Distance, loads[i].Bags = whole(0, 2), 1+random.Intn(2)
		}
		line, err := Clock(loads, crew, pace)
		require.NoError(t, err)
		best := exhaustive(loads, crew, pace, 60)
		if math.IsInf(best, 1) {
			assert.False(t, line.Kept, "case %d: %+v %+v", n, crew, pace)
			continue
		}
		if assert.True(t, line.Kept, "case %d: %+v %+v best %v oldest %v", n, crew, pace, best, line.OldestFlow) {
			assert.InDelta(t, best, line.Finish, 1e-6, "case %d: %+v %+v", n, crew, pace)
		}
	}
}

func BenchmarkClockThreePeopleSixtyBatches(b *testing.B) {
	loads := lane(60)
	for b.Loop() {
		if _, err := Clock(loads, Crew{3, 1, 4, 0}, usual); err != nil {
			b.Fatal(err)
		}
	}
}
