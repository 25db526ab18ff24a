package engine

import (
	"encoding/json"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
	"lowspot/rules"
)

// TestWhatClearsACheckClearsItWhenItIsDone holds the promise of every remedy: written into the job, the check no longer breaks, the bags are those
// that were told, and a step nearer to what stood there would not have done.
func TestWhatClearsACheckClearsItWhenItIsDone(t *testing.T) {
	book := ShippedRulebook()
	for _, units := range []quantity.System{quantity.Metric, quantity.US} {
		job := DemoJob("demo")
		job.Units = units
		job.Rooms[0].Doors[0].Answers["door.leaf_gap"] = "15 mm"
		job.Rooms[0].Decks[0].Answers["deck.moisture"], job.Rooms[0].Decks[0].Answers["deck.clean"] = "22 %", "no"
		job.Answers["water.temperature"], job.Answers["powder.temperature"] = "2 °C", "4 °C"
		document, _ := json.Marshal(job)
		promised := 0
		for _, f := range MakePlan(job, book).Findings {
			if f.State != rules.Broken {
				continue
			}
			cleared, found := Clear(job, book, nil, f.Rule, f.Subject)
			require.True(t, found)
			for _, r := range cleared.Remedies {
				promised++
				done := job
				for _, s := range r.Sets {
					var ok bool
					done, ok = done.with(s)
					require.True(t, ok, s.Field)
				}
				after := workOut(done, book)
				assert.NotEqual(t, rules.Broken, after.find(f.Rule, f.Subject).State, "%s: %s to %s", f.Rule, r.Label, r.To)
				assert.Equal(t, after.totals.Bags, r.Effect.BagsAfter)
				assert.NotEqual(t, r.From, r.To)
			}
		}
		assert.Greater(t, promised, 3)
		unchanged, _ := json.Marshal(job)
		assert.Equal(t, string(document), string(unchanged), "looking for what clears a check leaves the job as it is")
	}
}

func TestAThinPourIsClearedByRaisingThePlaneByWhatIsMissing(t *testing.T) {
	job := flatJob()
	job.Rooms[0].Plane = PlaneChoice{How: PlaneHand, Height: "1196 mm"}
	deck := Subject{Scope: ScopeDeck, Room: "room-1", ID: "room-1-deck"}
	cleared, found := Clear(job, ShippedRulebook(), nil, "thin-over-wood", deck)
	require.True(t, found)
	byLabel := map[string]Remedy{}
	for _, r := range cleared.Remedies {
		byLabel[r.Label] = r
		byLabel[r.Label+" "+r.To] = r
	}
	assert.Equal(t, "1190 mm", byLabel["Reading on the finished pour"].To, "staff readings go down as the plane goes up: 10 mm over ground read at 1200 mm")
	level, offered := byLabel["Where the finish plane goes level"]
	require.True(t, offered)
	sheet := byLabel["Least depth on wood"]
	assert.Equal(t, "4 mm", sheet.To)
	assert.Equal(t, SortSheet, sheet.Sort, "what a bag says is not the person's to choose")
	assert.Equal(t, SortDecided, cleared.Remedies[0].Sort)
	assert.Positive(t, level.Effect.BagsAfter-level.Effect.BagsBefore)
}

// By hand: flat ground of 12 m² under a plane 4 mm above it takes 0.048 m³; raised to 10 mm, 0.12 m³. Whatever else is on the list stays as it is, so
// that with only the leveller priced the bill is the bags' alone.
func TestWhatARemedyCostsIsTold(t *testing.T) {
	job := flatJob()
	job.Rooms[0].Plane = PlaneChoice{How: PlaneHand, Height: "1196 mm"}
	deck := Subject{Scope: ScopeDeck, Room: "room-1", ID: "room-1-deck"}
	shop := NewShop()
	without, _ := Clear(job, ShippedRulebook(), &shop, "thin-over-wood", deck)
	for _, r := range without.Remedies {
		assert.Nil(t, r.Effect.Money, "nothing is priced")
	}
	shop.Prices = []takeoff.Price{{Item: "Leveller", Pack: "25 kg", Price: 2000}}
	cleared, _ := Clear(job, ShippedRulebook(), &shop, "thin-over-wood", deck)
	told := 0
	for _, r := range cleared.Remedies {
		done, _ := job.with(r.Sets[0])
		for _, s := range r.Sets[1:] {
			done, _ = done.with(s)
		}
		before, after := MakeTakeOff(job, ShippedRulebook(), &shop), MakeTakeOff(done, ShippedRulebook(), &shop)
		money := r.Effect.Money
		require.NotNil(t, money, r.Label)
		assert.Equal(t, strconv.Itoa(20*before.Bags.Buy)+".00 EUR", money.Before)
		assert.Equal(t, strconv.Itoa(20*after.Bags.Buy)+".00 EUR", money.After)
		if by := 20 * (after.Bags.Buy - before.Bags.Buy); by > 0 {
			told++
			assert.Equal(t, "+"+strconv.Itoa(by)+".00 EUR", money.By)
		}
	}
	assert.Positive(t, told)
}

// flatJob is a flat plywood floor of 4 m by 3 m, read at 1200 mm all over.
func flatJob() *Job {
	job := NewJob("flat", quantity.Metric)
	room := &job.Rooms[0]
	room.Outline.Length, room.Outline.Width = "4 m", "3 m"
	room.Decks[0].Answers["deck.kind"] = "plywood"
	for _, at := range [][2]string{{"0.1", "0.1"}, {"3.9", "0.1"}, {"3.9", "2.9"}, {"0.1", "2.9"}, {"2", "1.5"}} {
		room.Readings.Rows = append(room.Readings.Rows, Reading{X: at[0], Y: at[1], Height: "1200"})
	}
	return job
}

func TestACheckThatHoldsNeedsNoClearing(t *testing.T) {
	job := flatJob()
	cleared, found := Clear(job, ShippedRulebook(), nil, "thin-over-wood", Subject{Scope: ScopeDeck, Room: "room-1", ID: "room-1-deck"})
	assert.True(t, found)
	assert.Empty(t, cleared.Remedies)
	_, found = Clear(job, ShippedRulebook(), nil, "no-such-check", Subject{Scope: ScopeJob})
	assert.False(t, found)
}

func TestALargeSurveyIsNotTriedWithoutEnd(t *testing.T) {
	assert.Equal(t, 24, runsFor(Surveyed(20_000)))
	assert.Greater(t, runsFor(DemoJob("demo")), 500)
}

func TestFieldsOfAJobAreWrittenIntoACopy(t *testing.T) {
	job := DemoJob("demo")
	for _, field := range []string{
		"answers/finish.thickness", "sheets/leveller/values/sheet.bag_mass", "rooms/0/answers/room.heated", "rooms/0/decks/1/answers/deck.moisture",
		"rooms/0/doors/0/answers/door.leaf_gap", "rooms/0/doors/1/exit", "rooms/0/penetrations/0/answers/x", "rooms/0/penetrations/0/height", "rooms/0/plane/raise",
	} {
		before, ok := job.at(field)
		require.True(t, ok, field)
		after, ok := job.with(FieldSet{field, "yes"})
		require.True(t, ok, field)
		now, _ := after.at(field)
		assert.Equal(t, "yes", now, field)
		still, _ := job.at(field)
		assert.Equal(t, before, still, field)
	}
	for _, field := range []string{"", "rooms", "rooms/9/plane/raise", "rooms/x/plane/raise", "rooms/0/decks/7/answers/a", "rooms/0/plane/no", "sheets/none/values/a", "name", "rooms/0/decks/-1/answers/a"} {
		_, ok := job.with(FieldSet{field, "yes"})
		assert.False(t, ok, field)
	}
}
