package engine_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

var shipped = engine.ShippedRulebook()

// worksheet is a room whose list can be worked out on paper: 5 m × 4 m of plywood, poured 14 mm on average as far as anybody knows.
func worksheet() *engine.Job {
	job := engine.NewJob("worksheet", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline = engine.Shape{How: engine.ShapeArea, Area: "5 × 4 m"}
	room.Rough = &engine.Rough{Least: "10 mm", Greatest: "18 mm"}
	room.Decks[0].Answers["deck.kind"] = "plywood"
	room.Decks[0].Answers["deck.screwed"] = "yes"
	return job
}

func lineOf(t *testing.T, list *engine.TakeOff, key string) engine.TakeOffLine {
	t.Helper()
	for _, line := range list.Lines {
		if line.Key == key {
			return line
		}
	}
	require.Fail(t, "not on the list", key)
	return engine.TakeOffLine{}
}

// The sheet as worked by hand, every step of it. Figures are the rulebook's and the typical sheets'.
func TestAKnownRoomIsTakenOffAsOnPaper(t *testing.T) {
	list := engine.MakeTakeOff(worksheet(), shipped, nil)
	require.Empty(t, list.Problems)
	area := 5.0 * 4.0                  // 20 m²
	perimeter := 2 * (5.0 + 4.0)       // 18 m
	mean := (0.010 + 0.018) / 2        // 14 mm, the middle of least and greatest
	volume := area * mean              // 0.28 m³
	bags := volume * 1.03 / 0.014      // 3 % stays in buckets, a bag fills 14 L: 20.6 bags
	primer := area * 1 / 8 * 0.001     // one coat, neat on wood, 8 m² to the litre: 2.5 L
	patch := area * 0.2 * 0.001        // 0.2 L to the square metre: 4 L
	strip := perimeter * 1.05          // 5 % for cuts: 18.9 m
	staples := 45.0                    // 18 m at 16 in (406.4 mm) at most, a closed run: 44.3
	batten := 0.9 * 1.05               // one usual door: 0.945 m
	sealant := 2 * 0.9 * 0.008 * 0.008 // two beads of 8 mm × 8 mm
	foam := perimeter / 4 * 0.025 * 0.025
	pins := 14.0 // 20 m² over 1.44 m² is 13.9
	assert.InDelta(t, 20.6, bags, 1e-9)
	for _, step := range []struct {
		key       string
		need      float64
		packs     int
		tolerance float64
	}{
		{"leveller", bags * 25, list.Bags.Buy, 1e-6}, {"primer", primer, 1, 1e-9}, {"patch", patch, 1, 1e-9}, {"strip", strip, 1, 1e-9}, {"fixings", staples, 1, 0},
		{"dams", batten, 1, 1e-9}, {"sealant", sealant * 1.15, 1, 1e-12}, {"foam", foam * 1.15, 1, 1e-12}, {"indicators", pins, 1, 0},
	} {
		line := lineOf(t, list, step.key)
		assert.InDelta(t, step.need, line.Need.SI, step.tolerance, step.key)
		assert.Equal(t, step.packs, line.Packs, step.key)
		assert.NotEmpty(t, line.Because, step.key)
	}
	assert.InDelta(t, bags, list.Bags.Mean, 1e-9)
}

// The spread by hand: the mean depth's doubt is 15 % of the range of 8 mm, 1.2 mm of 14 mm; a yield within 3 % and a dosing within 2 % count as two
// standard deviations; the three add in quadrature, and what is needed is lognormal.
func TestTheBagsBoughtFollowFromHowRoughTheDepthIs(t *testing.T) {
	list := engine.MakeTakeOff(worksheet(), shipped, nil)
	assert.Equal(t, 21, list.Bags.Half)       // 20.6 / √(1 + 0.0876²) = 20.52
	assert.Equal(t, 23, list.Bags.Ninety)     // 20.52 × e^(1.2816 × 0.0874) = 22.95
	assert.Equal(t, 26, list.Bags.NinetyNine) // 20.52 × e^(2.3263 × 0.0874) = 25.14
	require.NotNil(t, list.Survey)
	assert.Equal(t, "1.2 mm", list.Survey.Doubt.Text)
	assert.Equal(t, "0.5 mm", list.Survey.After.Text)
	assert.Equal(t, 22, list.Survey.Surely) // with 0.5 mm of 14 mm: 20.58 × e^(1.2816 × 0.0400) = 21.66
	assert.Equal(t, 1, list.Survey.Fewer)
}

func TestAGuessOfOneDepthIsDoubtedMoreThanARange(t *testing.T) {
	guessed, ranged := worksheet(), worksheet()
	guessed.Rooms[0].Rough = &engine.Rough{Mean: "14 mm"}
	assert.Greater(t, engine.MakeTakeOff(guessed, shipped, nil).Bags.NinetyNine, engine.MakeTakeOff(ranged, shipped, nil).Bags.NinetyNine)
}

func TestADeckThatNobodyNamedIsAskedAboutAndTakenAsUsual(t *testing.T) {
	job := worksheet()
	job.Rooms[0].Decks[0].Answers = engine.Answers{}
	list := engine.MakeTakeOff(job, shipped, nil)
	line := lineOf(t, list, "primer")
	assert.InDelta(t, 20.0/8*0.001/2, line.Need.SI, 1e-9) // mineral and of normal absorbency: 1:1
	assert.Contains(t, line.Because[len(line.Because)-3].Says, "Nobody has said what the deck is made of")
	var words []string
	for _, q := range list.Asks {
		words = append(words, q.Word)
	}
	assert.Equal(t, []string{"deck.kind"}, words)
	job.Rooms[0].Decks[0].Answers["deck.kind"] = "screed"
	asks := engine.MakeTakeOff(job, shipped, nil).Asks
	require.Len(t, asks, 1)
	assert.Equal(t, "deck.absorbency", asks[0].Word)
}

func TestAggregateFillsWhatNoPowderMust(t *testing.T) {
	job := worksheet()
	job.Rooms[0].Rough = &engine.Rough{Least: "20 mm", Greatest: "50 mm"}
	list := engine.MakeTakeOff(job, shipped, nil)
	// 20 m² × 35 mm × 1.03 = 0.721 m³; a bag with half its mass of grain fills 14 L + 12.5 kg / 2650 kg/m³ = 18.717 L: 38.52 bags, 481.5 kg of grain
	assert.InDelta(t, 0.721/(0.014+12.5/2650), list.Bags.Mean, 1e-6)
	assert.InDelta(t, 481.5, lineOf(t, list, "aggregate").Need.SI, 0.1)
	assert.Equal(t, 20, lineOf(t, list, "aggregate").Packs)
}

func TestWhatNoRuleAsksForIsNotBought(t *testing.T) {
	keys := func(job *engine.Job) string {
		var all []string
		for _, line := range engine.MakeTakeOff(job, shipped, nil).Lines {
			all = append(all, line.Key)
		}
		return strings.Join(all, ",")
	}
	plain := keys(worksheet())
	for _, key := range []string{"barrier", "mesh", "screws", "aggregate"} {
		assert.NotContains(t, plain, key)
	}
	wet := worksheet()
	wet.Rooms[0].Decks[0].Answers = engine.Answers{"deck.kind": "concrete", "slab.humidity": "85 %"}
	assert.Contains(t, keys(wet), "barrier")
	boards := worksheet()
	boards.Rooms[0].Decks[0].Answers = engine.Answers{"deck.kind": "boards"}
	assert.Contains(t, keys(boards), "mesh")
	assert.Contains(t, keys(boards), "screws")
}

func TestTheDemoIsCountedAtTheConfidenceChosenAndItsDoorsAndPinsFromTheMap(t *testing.T) {
	job := engine.DemoJob("demo")
	list := engine.MakeTakeOff(job, shipped, nil)
	study := engine.MakeStudy(job, shipped)
	assert.Equal(t, study.Bags.Buy, lineOf(t, list, "leveller").Packs)
	assert.InDelta(t, float64(len(study.Rooms[0].Indicators.Pins)), lineOf(t, list, "indicators").Need.SI, 0)
	assert.InDelta(t, (0.82+0.90)*1.05, lineOf(t, list, "dams").Need.SI, 1e-9)
	assert.Nil(t, list.Survey)
}

func TestARoomWithoutADepthKeepsTheBagsBack(t *testing.T) {
	job := worksheet()
	job.Rooms = append(job.Rooms, engine.NewRoom("hall", quantity.Metric))
	list := engine.MakeTakeOff(job, shipped, nil)
	assert.False(t, list.Ready)
	assert.Nil(t, list.Bags)
	assert.Equal(t, 1, lineOf(t, list, "primer").Packs)
}

// desk is a shop whose quote can be worked out on paper.
func desk() *engine.Shop {
	shop := engine.NewShop()
	shop.Classes = []engine.ShopClass{{Name: "standard", Rate: "19 %"}, {Name: "reduced", Rate: "7 %"}}
	shop.Delivery, shop.DeliveryClass = "35.00", "standard"
	shop.Prices = []takeoff.Price{
		{Item: "leveller", Pack: "20 kg", Price: 100}, {Item: "Leveller", Pack: "25 kg", Price: 2450, Class: "standard", Code: "L-25", Cost: 1700},
		{Item: "Primer", Pack: "5 L", Price: 3890, Class: "standard"}, {Item: "Primer", Pack: "1 L", Price: 990, Class: "reduced"},
	}
	return &shop
}

func priced() *engine.Job {
	job := worksheet()
	job.Offer = &engine.Offer{Date: "2026-05-02", Discount: "5 %", Delivered: true, Lines: map[string]bool{}}
	return job
}

func TestAQuoteIsTheSumOnPaper(t *testing.T) {
	list := engine.MakeTakeOff(priced(), shipped, desk())
	require.Empty(t, list.Problems)
	leveller, primer := lineOf(t, list, "leveller"), lineOf(t, list, "primer")
	assert.Equal(t, "L-25", leveller.Parts[0].Price.Code, "a bag of another mass is another product")
	assert.Equal(t, "563.50", leveller.Parts[0].Price.Amount) // 23 bags at 24.50
	assert.Equal(t, "29.70", primer.Parts[0].Price.Amount)    // 2.5 L: three tins of 1 L at 9.90 come cheaper than one of 5 L at 38.90
	assert.Equal(t, 3, primer.Packs)
	bill := list.Bill
	// discount 5 %: 28.175 → 28.18 and 1.485 → 1.49; leveller 535.32, primer 28.21; delivery 35.00 without discount
	assert.Equal(t, "29.67", bill.Discount)
	assert.Equal(t, "598.53", bill.Net) // 535.32 + 35.00 + 28.21
	// 19 % of 570.32 is 108.36; 7 % of 28.21 is 1.97
	assert.Equal(t, []engine.BillTax{{Name: "standard", Rate: "19 %", Net: "570.32", Tax: "108.36"}, {Name: "reduced", Rate: "7 %", Net: "28.21", Tax: "1.97"}}, bill.Taxes)
	assert.Equal(t, "708.86", bill.Total)
	assert.Equal(t, "144.32", bill.Margin) // 535.32 less 23 at 17.00
	assert.Contains(t, bill.Unpriced, "Patch")
	assert.Equal(t, "2026-06-01", list.Until) // thirty days on
	assert.Equal(t, "24.50 EUR", list.Survey.Saves)
}

func TestPricesThatHoldTheTaxGiveTheSameTotalHoweverItIsRoundedOut(t *testing.T) {
	shop := desk()
	shop.Inclusive = true
	list := engine.MakeTakeOff(priced(), shipped, shop)
	assert.Equal(t, "598.53", list.Bill.Total)
	// 570.32 × 19 / 119 = 91.06; 28.21 × 7 / 107 = 1.85
	assert.Equal(t, "92.91", list.Bill.Tax)
	assert.Equal(t, "505.62", list.Bill.Net)
}

func TestWhatIsUntickedIsNotBilledAndToolsAreWhenTicked(t *testing.T) {
	job := priced()
	job.Offer.Lines = map[string]bool{"primer": false, "rakes": true}
	list := engine.MakeTakeOff(job, shipped, desk())
	assert.Nil(t, lineOf(t, list, "primer").Parts[0].Price)
	assert.Contains(t, list.Bill.Unpriced, "Pin rakes")
	assert.Equal(t, "570.32", list.Bill.Net)
}

func TestARateThatCantBeReadHoldsTheBillBackAndSaysWhere(t *testing.T) {
	job := priced()
	job.Offer.Discount = "a lot"
	list := engine.MakeTakeOff(job, shipped, desk())
	assert.Nil(t, list.Bill)
	require.Len(t, list.Problems, 1)
	assert.Equal(t, "offer/discount", list.Problems[0].Field)
}

func TestLabourIsTheRulebooksTimesAndTheBags(t *testing.T) {
	job, shop := priced(), desk()
	job.Offer.Labour, job.Offer.Delivered, shop.Hour = true, false, "40.00"
	list := engine.MakeTakeOff(job, shipped, shop)
	require.NotNil(t, list.Labour)
	assert.NotEmpty(t, list.Labour.Steps)
	assert.Greater(t, list.Labour.Hours.SI, 20.6*600) // ten minutes a bag, and making ready
	assert.NotEmpty(t, list.Bill.Labour)
}

func TestAPriceTypedBesideALineJoinsTheListAndLeavesItWhenCleared(t *testing.T) {
	shop, err := engine.SetPrice(*desk(), "Foam", "", "8,90")
	require.NoError(t, err)
	assert.Equal(t, takeoff.Money(890), shop.Prices[len(shop.Prices)-1].Price)
	shop, err = engine.SetPrice(shop, "leveller", "25 kg", "25.00")
	require.NoError(t, err)
	assert.Equal(t, takeoff.Price{Item: "Leveller", Pack: "25 kg", Price: 2500, Class: "standard", Code: "L-25", Cost: 1700}, shop.Prices[len(shop.Prices)-1])
	shop, err = engine.SetPrice(shop, "Foam", "", "")
	require.NoError(t, err)
	assert.Len(t, shop.Prices, 4)
	_, err = engine.SetPrice(shop, "Foam", "", "-1")
	assert.ErrorContains(t, err, "below zero")
}

func TestBagsUsedAndDepthAreHeldAgainstThePlan(t *testing.T) {
	job := worksheet()
	job.After = &engine.AfterPour{Used: "24", Left: "2", Depth: "15 mm"}
	after := engine.MakeAfter(job, shipped)
	assert.Equal(t, 23, after.Planned)
	assert.InDelta(t, 0.3, after.Volume.SI, 1e-9) // 20 m² × 15 mm
	assert.InDelta(t, 0.0125, after.PerBag.SI, 1e-9)
	past := engine.MakePast([]engine.Job{*job, *worksheet()}, shipped, quantity.Metric)
	assert.Equal(t, 1, past.Jobs)
	assert.Equal(t, "12.9 L", past.Yield) // 12.5 L a bag with the rulebook's 3 % put back: 12.875 L
	assert.Contains(t, past.Says, "12 % more powder")
}

func TestARoughDepthThatCantBeIsNamed(t *testing.T) {
	for _, rough := range []engine.Rough{{Greatest: "4 mm"}, {Least: "10 mm"}, {Mean: "0 mm"}, {Mean: "12 kg"}, {Least: "20 mm", Greatest: "10 mm"}} {
		job := worksheet()
		job.Rooms[0].Rough = &rough
		plan := engine.MakePlan(job, shipped)
		require.Len(t, plan.Problems, 1, "%+v", rough)
		assert.Contains(t, plan.Problems[0].Field, "rooms/0/rough/")
		assert.False(t, plan.Totals.Ready)
	}
}

func TestReadingsGoBeforeWhatIsSaid(t *testing.T) {
	job := worksheet()
	job.Rooms[0].Readings.Rows = []engine.Reading{{X: "1", Y: "1", Height: "1200"}, {X: "4", Y: "3", Height: "1205"}, {X: "4", Y: "1", Height: "1203"}}
	plan := engine.MakePlan(job, shipped)
	assert.Nil(t, plan.Rooms[0].Rough)
	assert.NotNil(t, plan.Rooms[0].Pour)
}

func TestAnAreaIsASquareAndLengthTimesWidthARectangle(t *testing.T) {
	for typed, perimeter := range map[string]float64{"36 m²": 24, "9 x 4 m": 26, "9 m × 4 m": 26, "9*4 m": 26, "900 cm x 4 m": 26} {
		job := worksheet()
		job.Rooms[0].Outline.Area = typed
		plan := engine.MakePlan(job, shipped)
		assert.InDelta(t, 36, plan.Rooms[0].Area.SI, 1e-9, typed)
		assert.InDelta(t, perimeter, plan.Rooms[0].Perimeter.SI, 1e-9, typed)
	}
}

func TestEveryPlaneCostsWhatTheQuoteWouldSayWithItChosen(t *testing.T) {
	job := engine.DemoJob("demo")
	job.Offer = &engine.Offer{Date: "2026-05-02", Lines: map[string]bool{}}
	none := engine.MakePlaneCosts(job, shipped, nil)
	assert.Empty(t, none.Rooms)
	assert.Contains(t, none.Why, "price list")
	costs := engine.MakePlaneCosts(job, shipped, desk())
	require.Empty(t, costs.Why)
	study := engine.MakeStudy(job, shipped)
	require.Len(t, costs.Rooms[0].Planes, len(study.Rooms[0].Planes))
	for i, plane := range costs.Rooms[0].Planes {
		assert.Equal(t, study.Rooms[0].Planes[i].Choice, plane.Choice)
		chosen := engine.DemoJob("demo")
		chosen.Offer, chosen.Rooms[0].Plane = job.Offer, plane.Choice
		list := engine.MakeTakeOff(chosen, shipped, desk())
		assert.Equal(t, list.Bill.Total+" EUR", plane.Total)
		assert.Equal(t, list.Bags.Buy, plane.Buy)
	}
	assert.Equal(t, engine.PlaneLevel, job.Rooms[0].Plane.How, "the job itself is left alone")
}
