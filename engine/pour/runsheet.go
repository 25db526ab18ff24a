package pour

import (
	"math"
	"strings"
	"time"
)

// Step is one piece of the whole job, from stripping to tiling.
type Step struct {
	ID       string   `json:"id"`
	Title    string   `json:"title"`
	Who      string   `json:"who"`   // steps of the same who don't overlap; empty: nobody is needed
	Hands    []Hand   `json:"hands"` // who of them does what, where that is known
	Work     float64  `json:"work"`  // s
	After    []string `json:"after"` // IDs of the steps that come first, with their holds
	Hold     *Hold    `json:"hold"`  // what must pass before the steps after it
	Cautions []string `json:"cautions"`
}

// Hold is a wait after a step: those after it start no sooner than Earliest and, where Latest is above zero, no later, s from the step's end.
type Hold struct {
	Title    string  `json:"title"`
	Earliest float64 `json:"earliest"`
	Latest   float64 `json:"latest"`
}

// Workday is when work may go on, s from midnight. The zero Workday is round the clock.
type Workday struct {
	Opens  float64 `json:"opens"`
	Closes float64 `json:"closes"`
}

// Entry is a step with its clock times, local, as 2006-01-02T15:04:05. The hold's times are empty where there is none, and HoldLatest where it has no end.
type Entry struct {
	ID           string   `json:"id"`
	Title        string   `json:"title"`
	Who          string   `json:"who"`
	Hands        []Hand   `json:"hands"`
	Start        string   `json:"start"`
	End          string   `json:"end"`
	Hold         string   `json:"hold"`
	HoldEarliest string   `json:"holdEarliest"`
	HoldLatest   string   `json:"holdLatest"`
	Cautions     []string `json:"cautions"`
	Missed       string   `json:"missed"` // which window this step comes too late for, and what to do
}

// civil is how local times are written: no zone. A night on which the clocks change makes one hold an hour longer or shorter by the wall clock.
const civil = "2006-01-02T15:04:05"

const day = 86400.0

// RunSheet puts the steps in order and gives them clock times from a chosen local start (2006-01-02T15:04, with or without seconds or a zone, which
// is left aside). A step is held back where a window after it would otherwise close overnight. Steps are whole minutes apart.
func RunSheet(steps []Step, start string, hours Workday) ([]Entry, error) {
	from, err := readCivil("start", start)
	if err != nil {
		return nil, err
	}
	if err := checkSteps(steps, hours); err != nil {
		return nil, err
	}
	order, err := orderSteps(steps)
	if err != nil {
		return nil, err
	}
	midnight := time.Date(from.Year(), from.Month(), from.Day(), 0, 0, 0, 0, time.UTC)
	s := &sheet{steps: steps, order: order, hours: hours, begin: from.Sub(midnight).Seconds(), held: make([]float64, len(steps))}
	s.settle()
	entries := make([]Entry, 0, len(steps))
	for _, i := range order {
		entries = append(entries, s.entry(i, midnight))
	}
	return entries, nil
}

// sheet is the run sheet while it is worked out: seconds from the midnight before its start.
type sheet struct {
	steps      []Step
	order      []int
	hours      Workday
	begin      float64
	held       []float64 // no sooner than this, so that a window later stays open
	start, end []float64
}

// settle runs through the steps, and where one comes too late for a window, holds back the step that opens the window and runs through again.
func (s *sheet) settle() {
	for range 20 * (len(s.steps) + 1) {
		s.forward()
		moved := false
		for _, i := range s.order {
			for _, d := range s.before(i) {
				if late := s.lateFor(i, d); late > 0 && late < 7*day {
					if held := s.open(s.start[d]+late, s.steps[d].Work); held > s.held[d] && s.held[d] < s.begin+30*day {
						s.held[d], moved = held, true
						break
					}
				}
			}
			if moved {
				break
			}
		}
		if !moved {
			return
		}
	}
}

// forward starts every step as early as what comes before it, its people and the hours allow.
func (s *sheet) forward() {
	s.start, s.end = make([]float64, len(s.steps)), make([]float64, len(s.steps))
	free := map[string]float64{}
	for _, i := range s.order {
		step := s.steps[i]
		at := math.Max(s.begin, s.held[i])
		for _, d := range s.before(i) {
			at = math.Max(at, s.end[d])
			if h := s.steps[d].Hold; h != nil {
				at = math.Max(at, s.end[d]+h.Earliest)
			}
		}
		if step.Who != "" {
			at = math.Max(at, free[step.Who])
		}
		at = math.Ceil(at/60-1e-6) * 60
		if step.Who != "" {
			at = s.open(at, step.Work)
		}
		s.start[i], s.end[i] = at, at+step.Work
		if step.Who != "" {
			free[step.Who] = s.end[i]
		}
	}
}

// open is the first moment from which a piece of work may start: within hours, and over by closing if a day is long enough for it.
func (s *sheet) open(at, work float64) float64 {
	if s.hours == (Workday{}) {
		return at
	}
	midnight := math.Floor(at/day) * day
	long := work > s.hours.Closes-s.hours.Opens
	switch {
	case at < midnight+s.hours.Opens:
		return midnight + s.hours.Opens
	case at+work <= midnight+s.hours.Closes+1e-6, long && at <= midnight+s.hours.Opens:
		return at
	}
	return midnight + day + s.hours.Opens
}

func (s *sheet) before(i int) []int {
	list := []int{}
	for _, id := range s.steps[i].After {
		for d := range s.steps {
			if s.steps[d].ID == id {
				list = append(list, d)
			}
		}
	}
	return list
}

// lateFor is how long after the window of d has closed step i starts, s.
func (s *sheet) lateFor(i, d int) float64 {
	h := s.steps[d].Hold
	if h == nil || h.Latest <= 0 {
		return 0
	}
	return s.start[i] - (s.end[d] + h.Latest)
}

func (s *sheet) entry(i int, midnight time.Time) Entry {
	step := s.steps[i]
	clock := func(at float64) string {
		return midnight.Add(time.Duration(math.Round(at)) * time.Second).Format(civil)
	}
	e := Entry{ID: step.ID, Title: step.Title, Who: step.Who, Hands: append([]Hand{}, step.Hands...), Start: clock(s.start[i]), End: clock(s.end[i]), Cautions: append([]string{}, step.Cautions...)}
	if h := step.Hold; h != nil {
		e.Hold, e.HoldEarliest = h.Title, clock(s.end[i]+h.Earliest)
		if h.Latest > 0 {
			e.HoldLatest = clock(s.end[i] + h.Latest)
		}
	}
	for _, d := range s.before(i) {
		if late := s.lateFor(i, d); late > 1e-6 {
			e.Missed = "Starts " + minutes(late) + " after “" + s.steps[d].Title + "” stops holding: do that step again, or work longer hours."
		}
	}
	return e
}

func readCivil(field, text string) (time.Time, error) {
	bare := text
	if at := strings.IndexByte(text, 'T'); at > 0 {
		if zone := strings.IndexAny(text[at:], "Z+-"); zone > 0 {
			bare = text[:at+zone]
		}
	}
	for _, layout := range []string{civil, "2006-01-02T15:04"} {
		if t, err := time.Parse(layout, bare); err == nil && t.Year() >= 1970 {
			return t, nil
		}
	}
	return time.Time{}, refuse(field, "“"+text+"”", "give a date and time such as 2026-05-02T08:00")
}

func checkSteps(steps []Step, hours Workday) error {
	if hours != (Workday{}) && !(hours.Opens >= 0 && hours.Closes > hours.Opens && hours.Closes <= day) {
		return refuse("working hours", number(hours.Opens/3600, 2)+" h to "+number(hours.Closes/3600, 2)+" h", "give an opening and a later closing within one day")
	}
	if len(steps) > 500 {
		return refuse("steps", number(float64(len(steps)), 0), "give 500 at the most")
	}
	seen := map[string]bool{}
	for _, s := range steps {
		seen[s.ID] = true
	}
	if len(seen) < len(steps) || seen[""] {
		return refuse("steps", "two of one ID, or one without", "give every step an ID of its own")
	}
	const year = 366 * day
	for _, s := range steps {
		if !(s.Work >= 0 && s.Work <= year) {
			return refuse("step “"+s.ID+"”", "work of "+number(s.Work, 0)+" s", "give zero or more, and no more than a year")
		}
		if h := s.Hold; h != nil && (!(h.Earliest >= 0 && h.Earliest <= year) || !(h.Latest >= 0 && h.Latest <= year) || (h.Latest > 0 && h.Latest < h.Earliest)) {
			return refuse("step “"+s.ID+"”", "a hold of "+minutes(h.Earliest)+" to "+minutes(h.Latest), "give a latest that isn't before the earliest, or none")
		}
		for _, before := range s.After {
			if !seen[before] {
				return refuse("step “"+s.ID+"”", "comes after “"+before+"”, which isn't there", "add that step or take it off")
			}
		}
	}
	return nil
}

// orderSteps puts every step after those it waits for, and otherwise keeps the order given. A circle is named.
func orderSteps(steps []Step) ([]int, error) {
	index := map[string]int{}
	for i, s := range steps {
		index[s.ID] = i
	}
	order, state := []int{}, make([]int, len(steps)) // 1 being visited, 2 placed
	path := []string{}
	var visit func(i int) error
	visit = func(i int) error {
		if state[i] == 2 {
			return nil
		}
		path = append(path, steps[i].ID)
		if state[i] == 1 {
			first := 0
			for path[first] != steps[i].ID {
				first++
			}
			return refuse("steps", "they go in a circle: "+strings.Join(path[first:], " waits for "), "take one of these off")
		}
		state[i] = 1
		for _, before := range steps[i].After {
			if err := visit(index[before]); err != nil {
				return err
			}
		}
		path = path[:len(path)-1]
		state[i] = 2
		order = append(order, i)
		return nil
	}
	for i := range steps {
		if err := visit(i); err != nil {
			return nil, err
		}
	}
	return order, nil
}
