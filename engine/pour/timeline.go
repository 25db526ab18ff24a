package pour

import (
	"cmp"
	"math"
	"slices"
)

// turnOf is one turn as it was given out, with who and what does it, numbered from 0.
type turnOf struct {
	batch          int // from 0
	making         bool
	start          float64
	length         float64
	person         int
	mixer          int // making only
	bucket, barrow int
}

func (t turnOf) end() float64 { return t.start + t.length }

// plan is the timeline for one crew, all of it, and how good it is.
func plan(crew Crew, pace Pace, s *standing) (Timeline, score) {
	p := newPlanner(crew, pace, s)
	best, top := Timeline{}, score{}
	for _, end := range p.search(s.shop(crew)) {
		turns := p.turns(end)
		p.assign(turns)
		p.later(turns)
		if t, own := p.timeline(turns); best.Tasks == nil || own.compare(top) < 0 {
			best, top = t, own
		}
	}
	return best, top
}

// turns lists what led to a state, by start.
func (p *planner) turns(s *shop) []turnOf {
	turns := []turnOf{}
	for ; s.from != nil; s = s.from {
		t := turnOf{making: s.making, start: s.start, batch: s.placed - 1}
		if s.making {
			t.batch = s.made - 1
			t.length = p.making(t.batch)
		} else {
			t.length = p.placing(t.batch)
		}
		turns = append(turns, t)
	}
	slices.Reverse(turns)
	slices.SortStableFunc(turns, func(a, b turnOf) int { return cmp.Compare(a.start, b.start) })
	return turns
}

// assign names the people and tools of each turn. Whoever did the same kind of work last goes on with it, where free.
func (p *planner) assign(turns []turnOf) {
	people, mixers := newHands(p.crew.People, p.stand.people), newHands(p.crew.Mixers, p.stand.mixers)
	buckets, barrows := newHands(p.crew.Buckets, p.stand.held()), newHands(p.crew.Barrows, nil)
	bucketOf := map[int]int{}
	for i := range p.stand.ready {
		bucketOf[i] = i
	}
	for i := range turns {
		t := &turns[i]
		if t.making {
			t.person = people.take(t.start, t.end(), 1)
			t.mixer = mixers.take(t.start+p.pace.Water, t.end(), 0)
			t.bucket = buckets.take(t.start, math.Inf(1), 0)
			bucketOf[t.batch] = t.bucket
			continue
		}
		t.person = people.take(t.start, t.end(), 2)
		t.bucket = bucketOf[t.batch]
		buckets.free[t.bucket] = t.end()
		t.barrow = -1
		if p.crew.Barrows > 0 {
			t.barrow = barrows.take(t.start, t.end(), 0)
		}
	}
}

// hands are people or tools of one sort: when each is free, and what it did last.
type hands struct {
	free []float64
	did  []int
}

func newHands(n int, busy []float64) *hands {
	h := &hands{make([]float64, n), make([]int, n)}
	copy(h.free, busy)
	return h
}

// take busies one that is free: the one that did the same work last, else an idle one, else any, the lowest number first.
func (h *hands) take(start, end float64, work int) int {
	best, rank := 0, math.MaxInt
	for i, free := range h.free {
		r := 2
		if h.did[i] == work {
			r = 0
		} else if h.did[i] == 0 {
			r = 1
		}
		if free > start+1e-6 {
			r += 3 // not free: only if nobody is, which doesn't happen
		}
		if r < rank {
			best, rank = i, r
		}
	}
	h.free[best], h.did[best] = end, work
	return best
}

// later moves every making as late as it can be without holding anything up, so that batches stand about no longer than they must.
func (p *planner) later(turns []turnOf) {
	for i := len(turns) - 1; i >= 0; i-- {
		t := &turns[i]
		if !t.making {
			continue
		}
		limit := math.Inf(1)
		for k := range turns {
			o := turns[k]
			switch {
			case k == i:
			case !o.making && o.batch == t.batch:
				limit = math.Min(limit, o.start-p.pace.Rest)
			case o.start < t.start || (o.start == t.start && k < i):
			case o.person == t.person:
				limit = math.Min(limit, o.start)
			}
			if o.making && o.mixer == t.mixer && o.batch > t.batch {
				limit = math.Min(limit, o.start+p.pace.Water)
			}
		}
		if limit < math.Inf(1) && limit-t.length > t.start {
			t.start = limit - t.length
		}
	}
}

// timeline spells the turns out as tasks, not yet sorted, and measures them against the limits.
func (p *planner) timeline(turns []turnOf) (Timeline, score) {
	t := Timeline{Crew: p.crew, Tasks: make([]Task, 0, 8*len(p.loads)), Finish: p.stand.finish()}
	pourEnd, powder := slices.Clone(p.stand.pourEnd), make([]float64, len(p.loads))
	rested := make([]Task, len(p.loads))
	for i, made := range p.stand.ready {
		powder[i] = p.stand.powder[i]
		rested[i] = Task{Batch: p.loads[i].Batch, Kind: TaskRest, Start: made - p.pace.Rest, Bucket: i + 1}
	}
	over := 0.0
	for _, turn := range turns {
		if turn.making {
			powder[turn.batch] = turn.start + p.pace.Water
			t.Tasks = append(t.Tasks, p.makeTasks(turn)...)
			rested[turn.batch] = Task{Batch: p.loads[turn.batch].Batch, Kind: TaskRest, Start: turn.end(), Bucket: turn.bucket + 1}
			continue
		}
		rested[turn.batch].End = turn.start
		t.Tasks = append(t.Tasks, rested[turn.batch])
		tasks := p.placeTasks(turn)
		t.Tasks = append(t.Tasks, tasks...)
		pourEnd[p.loads[turn.batch].Batch-1] = tasks[1].End
		age := tasks[2].End - powder[turn.batch]
		t.OldestFlow = math.Max(t.OldestFlow, age)
		over += math.Max(0, age-p.pace.Flow)
		t.Finish = math.Max(t.Finish, turn.end())
	}
	t.Waits, t.LongestWait = waits(p.stand.loads, pourEnd)
	for _, w := range t.Waits {
		over += math.Max(0, w.Seconds-p.pace.WetEdge)
	}
	t.Kept = over <= 1e-6
	return t, score{over, t.Finish, t.LongestWait}
}

func (p *planner) makeTasks(t turnOf) []Task {
	task := Task{Batch: p.loads[t.batch].Batch, Person: t.person + 1, Bucket: t.bucket + 1}
	return spell(task, t.start, []leg{
		{TaskWater, p.pace.Water, 0, 0},
		{TaskPowder, p.mixing(t.batch) - p.pace.Mix, t.mixer + 1, 0},
		{TaskMix, p.pace.Mix, t.mixer + 1, 0},
	})
}

func (p *planner) placeTasks(t turnOf) []Task {
	task := Task{Batch: p.loads[t.batch].Batch, Person: t.person + 1, Bucket: t.bucket + 1}
	return spell(task, t.start, []leg{
		{TaskCarry, p.carry(t.batch), 0, t.barrow + 1},
		{TaskPour, p.pace.Pour, 0, t.barrow + 1},
		{TaskAgitate, p.pace.Agitate, 0, t.barrow + 1},
		{TaskReturn, p.carry(t.batch), 0, t.barrow + 1},
	})
}

// leg is one task of a turn.
type leg struct {
	kind          string
	length        float64
	mixer, barrow int
}

// spell lays legs end to end.
func spell(task Task, at float64, legs []leg) []Task {
	tasks := []Task{}
	for _, l := range legs {
		task.Kind, task.Mixer, task.Barrow, task.Start, task.End = l.kind, l.mixer, l.barrow, at, at+l.length
		tasks = append(tasks, task)
		at += l.length
	}
	return tasks
}
