package engine

import (
	"math"
	"strconv"
	"strings"

	"lowspot/engine/quantity"
)

// What came of a pour against what was planned, and what a person's own bags fill over all past jobs.

// AfterPlan is one job's outcome. Amounts that nobody gave are nil.
type AfterPlan struct {
	Planned  int       `json:"planned"` // bags that the take-off asked for
	Used     *Amount   `json:"used"`    // bags
	Left     *Amount   `json:"left"`
	Meant    *Amount   `json:"meant"`  // mean depth as planned
	Depth    *Amount   `json:"depth"`  // as measured
	Volume   *Amount   `json:"volume"` // that was poured: area by the measured depth, or else as planned
	PerBag   *Amount   `json:"perBag"` // that volume over the bags used: what a bag fills, waste and all
	Says     string    `json:"says"`
	Problems []Problem `json:"problems"`
	bags     float64
	poured   float64
	stated   float64 // what a bag fills by its sheet
}

// MakeAfter holds a job's outcome against its plan.
func MakeAfter(job *Job, book *Rulebook) *AfterPlan {
	t := newBuying(job, book)
	t.leveller()
	t.problems = nil
	out := &AfterPlan{Problems: []Problem{}, stated: t.yield}
	if t.out.Bags != nil {
		out.Planned = t.out.Bags.Buy
	}
	if after := job.After; after != nil && t.out.Ready {
		t.outcome(after, out)
	}
	out.Problems = append(out.Problems, t.problems...)
	return out
}

func (t *buying) outcome(after *AfterPour, out *AfterPlan) {
	area, volume := t.totals.Area.SI, t.totals.Volume.SI
	if area <= 0 {
		return
	}
	out.Meant, out.poured = t.pointer(volume/area, quantity.Length), volume
	if depth, ok := t.typed("after/depth", after.Depth, quantity.Length); ok {
		out.Depth, out.poured = t.pointer(depth, quantity.Length), depth*area
	}
	out.Volume = t.pointer(out.poured, quantity.Volume)
	if left, ok := t.typed("after/left", after.Left, quantity.Number); ok {
		amount := t.counting(left, quantity.Number)
		out.Left = &amount
	}
	used, ok := t.typed("after/used", after.Used, quantity.Number)
	if !ok || used == 0 {
		return
	}
	amount := t.counting(used, quantity.Number)
	out.Used, out.bags, out.PerBag = &amount, used, t.pointer(out.poured/used, quantity.Volume)
	out.Says = "Each bag filled " + out.PerBag.Text + ", waste and all; its sheet says " + t.volume(out.stated).Text + "."
}

// typed reads an amount that may be left open; below zero nothing came of a pour.
func (t *buying) typed(field, text string, d quantity.Dimension) (float64, bool) {
	if strings.TrimSpace(text) == "" {
		return 0, false
	}
	value, ok := t.quantity(field, text, d)
	if ok && value < 0 {
		t.fail(Problem{Code: "not-positive", Field: field, Given: text, Message: "This can't be less than nothing.", Remedy: "Give what was counted or measured."})
		return 0, false
	}
	return value, ok
}

// Past is what a person's bags filled over all jobs whose bags were counted.
type Past struct {
	Jobs   int     `json:"jobs"`
	Bags   float64 `json:"bags"`
	Volume Amount  `json:"volume"`
	PerBag Amount  `json:"perBag"` // waste and all
	Yield  string  `json:"yield"`  // what to state as the bag's yield, so that with the rulebook's waste it comes out as it did
	Says   string  `json:"says"`
}

// moreOrLess tells by which share more powder was used than the sheets' yields ask.
func moreOrLess(share float64) string {
	percent := strconv.FormatFloat(math.Round(1000*math.Abs(share))/10, 'f', -1, 64)
	if share < 0 {
		return "That is " + percent + " % less powder than the sheets' yields ask."
	}
	return "That is " + percent + " % more powder than the sheets' yields ask."
}

// MakePast adds up the outcomes of past jobs. Jobs whose bags weren't counted don't count.
func MakePast(jobs []Job, book *Rulebook, units quantity.System) Past {
	p := Past{}
	poured, stated := 0.0, 0.0
	for i := range jobs {
		if jobs[i].After == nil {
			continue
		}
		if one := MakeAfter(&jobs[i], book); one.bags > 0 && one.poured > 0 {
			p.Jobs++
			p.Bags += one.bags
			poured += one.poured
			stated += one.bags * one.stated
		}
	}
	if p.Jobs == 0 || stated == 0 {
		p.Says = "No past job has its bags counted yet."
		return p
	}
	waste, _ := book.quantity("waste_share", nil)
	a := amounts{units}
	p.Volume, p.PerBag = a.of(poured, quantity.Volume), a.of(poured/p.Bags, quantity.Volume)
	p.Yield = quantity.Write(poured/p.Bags*(1+waste), quantity.Volume, units)
	p.Says = "Bags used over " + counted(p.Jobs, "past job", "past jobs") + ": " + strconv.FormatFloat(p.Bags, 'f', -1, 64) + ". They filled " + p.Volume.Text + ": " + p.PerBag.Text + " a bag, waste and all. " + moreOrLess(stated/poured-1)
	return p
}
