package engine

import (
	"errors"
	"strconv"

	"lowspot/engine/quantity"
	"lowspot/engine/survey"
	"lowspot/engine/takeoff"
	"lowspot/rules"
)

// MakeTakeOff lists everything to buy for a job and prices it by the shop's list; without a shop nothing is priced. Pure, as MakePlan is, and slower:
// how sure the bags are is worked out too.
func MakeTakeOff(job *Job, book *Rulebook, shop *Shop) *TakeOff {
	return takeOffOf(workOut(job, book), shop)
}

// takeOffOf lists and prices what a job that is worked out takes.
func takeOffOf(w *work, shop *Shop) *TakeOff {
	t := buyingFor(w)
	t.leveller()
	t.primer()
	t.patch()
	t.barrier()
	t.mesh()
	t.edges()
	t.counted()
	if shop != nil {
		t.price(shop)
	}
	t.explainPacks()
	t.keep()
	t.choose()
	t.carry()
	t.quickSurvey()
	if offer := t.job.Offer; offer != nil && offer.Labour {
		t.labour()
	}
	if t.shop != nil {
		t.bill()
	}
	t.out.Problems = some(t.problems)
	return t.out
}

// buying is a take-off in the making.
type buying struct {
	*study
	writer takeoff.Writer
	out    *TakeOff
	doubt  *spread               // of the whole volume; nil until every room has a depth
	likely map[*roomWork]float64 // a read room's volume with the ground between the readings as it most likely lies, m³
	shop   *pricing              // nil where nothing is priced
	day    *pourWork             // the pour, once something asks for it
	pours  [][]RoomPour          // by room, worked out with it
}

func newBuying(job *Job, book *Rulebook) *buying { return buyingFor(workOut(job, book)) }

func buyingFor(w *work) *buying {
	t := &buying{study: &study{work: w}, writer: takeoff.Writer{System: w.job.Units}, likely: map[*roomWork]float64{}}
	t.problems = nil
	t.waste, _ = t.book.quantity("waste_share", t.facts)
	t.yield, _ = t.book.quantity("bag_yield", t.facts)
	t.out = &TakeOff{Units: string(t.units), Ready: t.totals.Ready, Lines: []TakeOffLine{}, Asks: []Question{}}
	if t.out.Ready {
		t.doubt = t.spreads()
	}
	return t
}

// spreads adds up how sure the rooms' volumes are: from the survey where the floor was read, from the guess where not.
func (t *buying) spreads() *spread {
	var all spread
	for _, r := range t.rooms {
		one := spread{mean: r.volume}
		if r.rough != nil {
			one = r.roughSpread()
		} else if volume, err := survey.VolumeOf(r.model, r.outline, r.plane); err == nil {
			one = spread{mean: volume.Mean, ground: volume.Deviation * volume.Deviation}
			t.likely[r] = volume.Mean
		}
		all = all.and(one)
	}
	return &all
}

// goods is one thing to buy as the list knows it.
type goods struct {
	key, group, item, pack string // pack is what one is called: bag, tin, roll
	names                  []string
	holds, weighs          float64 // one pack, SI and kg
	small                  float64 // what a smaller pack holds that it comes in too; zero for none
	onlyPack               bool    // what is bought must come in this very pack
	keeps                  string  // the figure that tells how long it keeps
	packs                  int     // to buy, where more than the need alone decides; else zero
}

// buy puts a need on the list in whole packs. What isn't needed isn't listed.
func (t *buying) buy(g goods, need takeoff.Need, reasons []Reason) {
	if need.Amount <= 1e-12 {
		return
	}
	line, err := need.Line(g.item, g.holds, g.weighs)
	if err != nil {
		t.refuse(g.key, err)
		return
	}
	d := need.Dimension
	entry := TakeOffLine{
		Key: g.key, Group: g.group, Item: g.item, PackName: g.pack, line: line, names: append([]string{g.item, g.key}, g.names...),
		Need: t.counting(line.Need, d), Because: reasons,
	}
	if g.onlyPack {
		entry.fixed = g.holds
	}
	if g.keeps != "" {
		entry.Keeps = t.pointer(t.usual(g.keeps), quantity.Time)
	}
	t.pack(&entry, t.unpriced(g, line))
	t.out.Lines = append(t.out.Lines, entry)
}

func (t *buying) counting(si float64, d quantity.Dimension) Amount {
	if d == quantity.Number {
		return Amount{si, strconv.FormatFloat(si, 'f', -1, 64)}
	}
	return t.of(si, d)
}

// refuse reports what the take-off can't use.
func (t *buying) refuse(key string, err error) {
	var bad *takeoff.Error
	if errors.As(err, &bad) {
		t.fail(Problem{Code: "takeoff", Field: "takeoff/" + key, Given: bad.Given, Message: bad.Message, Remedy: bad.Remedy})
		return
	}
	t.fail(Problem{Code: "takeoff", Field: "takeoff/" + key, Message: err.Error(), Remedy: "Check the figures in the rulebook."})
}

// usual is a figure of the job; one that can't be worked out is zero and told.
func (t *buying) usual(name string) float64 { return t.asked(name, t.facts) }

// asked is a figure's number by some facts. Where an answer is missing it is zero: the question is on the list already.
func (t *buying) asked(name string, facts rules.Facts) float64 {
	value, result := t.book.quantity(name, facts)
	if result.State == rules.Faulty {
		t.fail(Problem{Code: "figure", Field: "book/" + name, Message: "The rulebook's figure " + name + " can't be worked out.", Remedy: "Look at it in the rulebook."})
	}
	return value
}

// yes tells whether a figure of truth is so.
func (t *buying) yes(name string, facts rules.Facts) bool {
	result := t.book.Compiled.Figure(name, facts)
	return result.State == rules.Known && result.Value.Truth
}

// by gives a figure as a reason: what it is, its value, and who says so.
func (t *buying) by(name string, facts rules.Facts) Reason {
	rule := t.book.Book.Find(name)
	result := t.book.Compiled.Figure(name, facts)
	if rule == nil || result.State != rules.Known {
		return Reason{Says: name, Rule: name}
	}
	return Reason{Says: withoutStop(rule.Words) + ": " + t.book.Compiled.Show(name, result.Value, t.units) + ".", Rule: name, Source: rule.Source}
}

func withoutStop(text string) string {
	if text != "" && text[len(text)-1] == '.' {
		return text[:len(text)-1]
	}
	return text
}

// plainly makes reasons of sentences.
func plainly(sentences ...string) []Reason {
	reasons := make([]Reason, len(sentences))
	for i, says := range sentences {
		reasons[i] = Reason{Says: says}
	}
	return reasons
}

// called is how a room or a deck of it is named in a sum.
func called(r *roomWork, deck *deckWork) string {
	name := r.room.Name
	if name == "" {
		name = "Room"
	}
	if deck == nil {
		return name
	}
	switch kind := deck.facts["deck.kind"].Value.Text; {
	case deck.area.Name != "":
		return name + ", " + deck.area.Name
	case kind != "":
		return name + ", " + kind
	}
	return name
}

// eachDeck visits every deck of every room that can be drawn.
func (t *buying) eachDeck(visit func(*roomWork, *deckWork)) {
	for _, r := range t.rooms {
		for i := range r.decks {
			visit(r, &r.decks[i])
		}
	}
}

// sheetName is what the job's sheet of a kind is called, by which the price list may name it.
func (t *buying) sheetName(kind string) string { return t.job.Sheets[kind].Name }
