package engine

import (
	"strings"

	"lowspot/engine/quantity"
)

// A floor that nobody has read yet: what is said of it at the counter, with how wrong that may be. Once it is read, the readings count.

// Rough is how deep the pour will be as far as anybody knows: on average, or at its least and its greatest. Without a least depth the pour
// is taken to start at what the deck needs.
type Rough struct {
	Mean     string `json:"mean,omitempty"`
	Least    string `json:"least,omitempty"`
	Greatest string `json:"greatest,omitempty"`
}

// RoughPlan is a pour over a floor that nobody has read.
type RoughPlan struct {
	Mean     Amount  `json:"mean"`
	Least    *Amount `json:"least"` // nil where only a mean is said
	Greatest *Amount `json:"greatest"`
	Doubt    Amount  `json:"doubt"` // of the mean depth, one standard deviation
	Volume   Amount  `json:"volume"`
	Bags     float64 `json:"bags"` // exact, before waste and rounding
}

// roughFloor is what is said of a floor, metres. Doubt is the mean's standard deviation.
type roughFloor struct {
	mean, least, greatest, doubt float64
	ranged                       bool // least and greatest are known
}

func (r *Rough) empty() bool {
	return r == nil || strings.TrimSpace(r.Mean+r.Least+r.Greatest) == ""
}

// workRough works out the pour of a room from what is said of it.
func (w *work) workRough(r *roomWork) {
	if r.room.Rough.empty() {
		return
	}
	rough, ok := w.readRough(r)
	if !ok {
		return
	}
	area := r.outline.Area()
	r.rough, r.volume = &rough, area*rough.mean
	worksOut(r.facts, "pour.volume", number(r.volume))
	for i := range r.decks {
		facts := r.decks[i].facts
		worksOut(facts, "depth.mean", number(rough.mean))
		if rough.ranged {
			worksOut(facts, "depth.least", number(rough.least))
			worksOut(facts, "depth.greatest", number(rough.greatest))
		}
	}
	r.plan.Rough = w.roughPlan(r)
}

func (w *work) roughPlan(r *roomWork) *RoughPlan {
	plan := &RoughPlan{Mean: w.length(r.rough.mean), Doubt: w.length(r.rough.doubt), Volume: w.of(r.volume, quantity.Volume)}
	if r.rough.ranged {
		plan.Least, plan.Greatest = w.pointer(r.rough.least, quantity.Length), w.pointer(r.rough.greatest, quantity.Length)
	}
	return plan
}

// readRough reads a mean depth, or else the least and the greatest, whose middle is the mean.
func (w *work) readRough(r *roomWork) (roughFloor, bool) {
	said, field := r.room.Rough, r.field+"/rough"
	if strings.TrimSpace(said.Greatest) == "" {
		return w.readMean(r, said, field)
	}
	rough := roughFloor{ranged: true, least: r.leastOfAll()}
	ok := true
	if strings.TrimSpace(said.Least) != "" {
		rough.least, ok = w.span(field+"/least", said.Least, true)
	}
	greatest, okGreatest := w.span(field+"/greatest", said.Greatest, false)
	if !ok || !okGreatest {
		return roughFloor{}, false
	}
	if greatest < rough.least {
		w.fail(Problem{Code: "rough-range", Field: field + "/greatest", Given: said.Greatest, Message: "The greatest depth is less than the least, which is " + w.length(rough.least).Text + ".", Remedy: "Give the depth over the lowest spot."})
		return roughFloor{}, false
	}
	share, _ := w.book.quantity("rough_range_doubt", w.facts)
	rough.greatest, rough.mean, rough.doubt = greatest, (rough.least+greatest)/2, (greatest-rough.least)*share
	return rough, true
}

func (w *work) readMean(r *roomWork, said *Rough, field string) (roughFloor, bool) {
	if strings.TrimSpace(said.Mean) == "" {
		w.fail(Problem{Code: "rough-range", Field: field + "/greatest", Message: "The least depth alone doesn't tell how much is poured.", Remedy: "Give the greatest depth too, or the mean."})
		return roughFloor{}, false
	}
	mean, ok := w.span(field+"/mean", said.Mean, false)
	share, _ := w.book.quantity("rough_doubt", w.facts)
	return roughFloor{mean: mean, doubt: mean * share}, ok
}

// roughSpread is the volume of a floor that nobody has read, with how sure it is.
func (r *roomWork) roughSpread() spread {
	deviation := r.rough.doubt * r.outline.Area()
	return spread{mean: r.volume, ground: deviation * deviation}
}

// leastOfAll is the greatest of the least depths that the room's decks need.
func (r *roomWork) leastOfAll() float64 {
	least := 0.0
	for i := range r.decks {
		if r.decks[i].least > least {
			least = r.decks[i].least
		}
	}
	return least
}
