// Packs of two sizes, shelf life and journeys of a take-off, each against a sum on paper.
package engine_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/engine/takeoff"
)

// 56 m² of plywood take 7 L of primer at 8 m² to the litre: a tin of 5 L and two of 1 L at 38.90 + 19.80 = 58.70, against 77.80 for two of 5 L and
// 69.30 for seven of 1 L.
func TestPrimerIsBoughtInTheCheapestMixOfTins(t *testing.T) {
	job := priced()
	job.Rooms[0].Outline.Area = "8 × 7 m"
	job.Offer.Lines = map[string]bool{"leveller": false}
	list := engine.MakeTakeOff(job, shipped, desk())
	require.Empty(t, list.Problems)
	primer := lineOf(t, list, "primer")
	require.Len(t, primer.Parts, 2)
	assert.Equal(t, 3, primer.Packs)
	assert.Equal(t, []int{1, 2}, []int{primer.Parts[0].Packs, primer.Parts[1].Packs})
	assert.Equal(t, []string{"5 L", "1 L"}, []string{primer.Parts[0].Pack.Text, primer.Parts[1].Pack.Text})
	assert.Equal(t, []string{"38.90", "19.80"}, []string{primer.Parts[0].Price.Amount, primer.Parts[1].Price.Amount})
	assert.InDelta(t, 0, primer.Leftover.SI, 1e-12)
	assert.InDelta(t, 7*1.03, primer.Mass.SI, 1e-9)
	assert.Equal(t, "Whole packs, the cheapest mix: 1 × 5 L and 2 × 1 L; 0 mL over.", primer.Because[len(primer.Because)-1].Says)
	// less 5 %, 1.945 → 1.95 and 0.99; delivery 35.00: 36.95 + 18.81 + 35.00
	assert.Equal(t, "90.76", list.Bill.Net)
}

func TestASmallerTinStatedOnTheSheetIsMixedInWithoutPrices(t *testing.T) {
	job := worksheet()
	job.Rooms[0].Outline.Area = "8 × 7 m"
	assert.Equal(t, 2, lineOf(t, engine.MakeTakeOff(job, shipped, nil), "primer").Packs, "two of 5 L")
	job.Sheets["primer"].Values["primer.pack_small"] = "1 L"
	primer := lineOf(t, engine.MakeTakeOff(job, shipped, nil), "primer")
	assert.Equal(t, "Whole packs, the mix that leaves least over: 1 × 5 L and 2 × 1 L; 0 mL over.", primer.Because[len(primer.Because)-1].Says)
}

// Work that begins on Monday 4 May 2026 comes to its pour on the fifth; 180 days before that is 6 November 2025, 365 days 5 May 2025.
func TestWhatIsTooOldOnTheDayOfThePourIsToldByItsDate(t *testing.T) {
	job := engine.DemoJob("demo")
	leveller := lineOf(t, engine.MakeTakeOff(job, shipped, nil), "leveller")
	assert.Equal(t, "180 d", leveller.Keeps.Text)
	assert.Empty(t, leveller.TooOld, "no day is chosen yet")
	job.Start = "2026-05-04T08:00"
	list := engine.MakeTakeOff(job, shipped, nil)
	assert.Equal(t, "2025-11-06", lineOf(t, list, "leveller").TooOld)
	assert.Equal(t, "2025-05-05", lineOf(t, list, "primer").TooOld)
	assert.Equal(t, "2025-05-05", lineOf(t, list, "sealant").TooOld)
	assert.Empty(t, lineOf(t, list, "strip").TooOld, "a strip doesn't age")
	job.Sheets["leveller"].Values["sheet.keeps"] = "270 d"
	assert.Equal(t, "2025-08-08", lineOf(t, engine.MakeTakeOff(job, shipped, nil), "leveller").TooOld)
}

// By hand 25 kg at a time: every bag of 25 kg is a way of its own, and what is lighter goes along as it fits. By vehicle 500 kg at a time.
func TestJourneysAreCountedByHandAndByVehicle(t *testing.T) {
	list := engine.MakeTakeOff(worksheet(), shipped, nil)
	bags, light, mass := 0, 0.0, 0.0
	for _, line := range list.Lines {
		if !line.Quoted {
			continue
		}
		mass += line.Mass.SI
		if line.Key == "leveller" {
			bags = line.Packs
		} else {
			light += line.Mass.SI
		}
	}
	assert.Equal(t, 23, bags)
	// patch 10 kg, primer 5.15 kg, strip 1.2 kg, staples 0.3 kg, batten 1.6 kg, cartridge 0.45 kg, can 0.9 kg, indicators 0.5 kg: 20.1 kg, one way
	assert.InDelta(t, 20.1, light, 1e-9)
	assert.Equal(t, 24, list.Hand.Count)
	assert.InDelta(t, 595.1, mass, 1e-9)
	assert.InDelta(t, mass, list.Mass.SI, 1e-9)
	assert.Equal(t, int(math.Ceil(mass/500)), list.Vehicle.Count)
}

// Labour is priced by hands' hours: those for making ready and, at the pour, everybody of the crew for as long as the clock runs.
func TestLabourGoesByTheCrewsClock(t *testing.T) {
	job := engine.DemoJob("demo")
	job.Offer = &engine.Offer{Labour: true, Lines: map[string]bool{}}
	shop := desk()
	shop.Prices, shop.Hour = []takeoff.Price{}, "48.00"
	list := engine.MakeTakeOff(job, shipped, shop)
	clock := engine.MakePour(job, shipped).Rooms[0].Clock
	poured := list.Labour.Steps[len(list.Labour.Steps)-2]
	assert.Contains(t, poured.Says, clock.Lasts.Text)
	assert.Greater(t, list.Labour.Hours.SI, float64(clock.Timeline.Crew.People)*clock.Timeline.Finish, "making ready takes time too")
	thousandths := math.Ceil(list.Labour.Hours.SI / 3600 * 1000)
	cents := takeoff.Money(math.Round(thousandths * 4800 / 1000))
	assert.Equal(t, takeoff.Currency{Code: "EUR", Digits: 2}.Write(cents), list.Bill.Labour)
	job.Offer.Labour = false
	assert.Nil(t, engine.MakeTakeOff(job, shipped, shop).Labour, "only where it is wanted")
}
