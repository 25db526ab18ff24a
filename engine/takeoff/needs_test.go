// A room's take-off against a sheet worked by hand.
package takeoff_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
	. "lowspot/engine/takeoff"
)

var metric = Writer{quantity.Metric}

const litre = 0.001

// By hand, a room of 4 m × 3 m, 12 m² with 14 m of wall, 10 mm deep:
// leveller 12 m² × 10 mm = 120 L; a bag of 25 kg yields 13.75 L: 8.73, so 9 bags, 3.75 L over, 225 kg;
// primer 2 coats at 5 m²/L: 24 / 5 = 4.8 L applied, 1 part in 4 (3 of water): 1.2 L, so 2 bottles of 1 L, 0.8 L over;
// strip 14 m + 10 % = 15.4 m: 1 roll of 25 m, 9.6 m over; fixings 14 m at 400 mm: 35;
// sealant 14 m × 10 mm × 5 mm = 0.7 L + 10 % = 0.77 L: 3 cartridges of 300 mL, 0.13 L over;
// barrier 12 m² off a roll of 1 m with laps of 50 mm: 12 × 1 / 0.95 = 12.6316 m², + 5 % = 13.2632 m²: 1 roll of 20 m², 6.7368 m² over.
func TestATakeOffOfAKnownRoom(t *testing.T) {
	leveller, err := NewLine("leveller", 0.120, quantity.Volume, 13.75*litre, 25)
	require.NoError(t, err)
	assert.Equal(t, 9, leveller.Packs)
	assert.InDelta(t, 3.75*litre, leveller.Leftover, 1e-12)
	assert.Equal(t, 225.0, leveller.Mass)

	primer, err := metric.Coats(12, 5/litre, 2, 3)
	require.NoError(t, err)
	assert.Equal(t, []string{"Area: 12 m².", "2 coats at 5 m² to 1 L: 4.8 L.", "One part in 4, the rest is water: 1.2 L."}, primer.Because)
	assertLine(t, primer, 1*litre, 2, 0.8*litre)

	strip, err := metric.Run(14, 0.10)
	require.NoError(t, err)
	assert.Equal(t, []string{"Length: 14 m.", "With 10 % for cuts and loss: 15.4 m."}, strip.Because)
	assertLine(t, strip, 25, 1, 9.6)

	fixings, err := metric.Fixings(14, 0.4, true)
	require.NoError(t, err)
	assert.Equal(t, 35.0, fixings.Amount)

	sealant, err := metric.Bead(14, 0.010, 0.005, 0.10)
	require.NoError(t, err)
	assertLine(t, sealant, 0.3*litre, 3, 0.13*litre)

	barrier, err := metric.Sheeting(12, 1, 0.05, 0.05)
	require.NoError(t, err)
	assertLine(t, barrier, 20, 1, 20-12/0.95*1.05)
}

func assertLine(t *testing.T, need Need, pack float64, packs int, leftover float64) {
	t.Helper()
	line, err := need.Line("x", pack, 1)
	require.NoError(t, err)
	assert.Equal(t, packs, line.Packs)
	assert.InDelta(t, leftover, line.Leftover, 1e-12)
	assert.Equal(t, need.Because, line.Because)
}

func TestWholePacksMeetTheNeedAndNoMore(t *testing.T) {
	for need := 0.0; need < 3; need += 0.01 {
		for _, pack := range []float64{0.1, 0.25, 0.3, 1} {
			line, err := NewLine("x", need, quantity.Volume, pack, 1)
			require.NoError(t, err)
			assert.GreaterOrEqual(t, float64(line.Packs)*pack, need-1e-8)
			assert.Less(t, float64(line.Packs-1)*pack, need+1e-8)
			assert.InDelta(t, float64(line.Packs)*pack-need, line.Leftover, 1e-8)
		}
	}
	exact, err := NewLine("x", 0.1+0.2, quantity.Volume, 0.1, 1)
	require.NoError(t, err)
	assert.Equal(t, 3, exact.Packs, "a hair over is the arithmetic's")
	none, err := NewLine("x", 0, quantity.Volume, 0.1, 1)
	require.NoError(t, err)
	assert.Zero(t, none.Packs)
}

// A strip fixed at 16 in (common practice): 14 ft of wall is 168 in, 10.5 spaces, so 11 spaces and 12 fixings; round a closed room of 56 ft 42.
func TestFixingsAlongAStrip(t *testing.T) {
	for _, row := range []struct {
		feet   float64
		closed bool
		count  float64
	}{{14, false, 12}, {56, true, 42}, {16, false, 13}, {0, false, 0}} {
		need, err := metric.Fixings(row.feet*0.3048, 16*0.0254, row.closed)
		require.NoError(t, err)
		assert.Equal(t, row.count, need.Amount, "%v ft", row.feet)
	}
}

func TestPacksShareOutOverJourneys(t *testing.T) {
	lines := []Line{{Item: "primer", Packs: 3, Mass: 15}, {Item: "leveller", Packs: 9, Mass: 225}, {Item: "tape", Packs: 2}, {Item: "none"}}
	loads, err := Loads(lines, 110)
	require.NoError(t, err)
	assert.Equal(t, []Load{{[]int{2, 4, 2, 0}, 110}, {[]int{1, 4, 0, 0}, 105}, {[]int{0, 1, 0, 0}, 25}}, loads)
	_, err = Loads(lines, 20)
	assert.EqualError(t, err, "leveller: One pack is heavier than a journey takes. Carry it otherwise, or part it.")
	_, err = Loads([]Line{{Packs: 100_000, Mass: 100_000}}, 1)
	assert.Error(t, err)
	loads, err = Loads(nil, 100)
	require.NoError(t, err)
	assert.Empty(t, loads)
}

func TestNeedsThatCantBeAreRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, bad := range []float64{nan, inf, -1} {
		_, err := metric.Coats(bad, 5, 1, 0)
		assert.Error(t, err)
		_, err = metric.Coats(1, bad, 1, 0)
		assert.Error(t, err)
		_, err = metric.Coats(1, 5, 1, bad)
		assert.Error(t, err)
		_, err = metric.Run(bad, 0)
		assert.Error(t, err)
		_, err = metric.Run(1, bad)
		assert.Error(t, err)
		_, err = metric.Fixings(1, bad, true)
		assert.Error(t, err)
		_, err = metric.Bead(bad, 0.01, 0.01, 0)
		assert.Error(t, err)
		_, err = metric.Sheeting(bad, 1, 0, 0)
		assert.Error(t, err)
		_, err = NewLine("x", bad, quantity.Volume, 1, 1)
		assert.Error(t, err)
		_, err = NewLine("x", 1, quantity.Volume, bad, 1)
		assert.Error(t, err)
		_, err = NewLine("x", 1, quantity.Volume, 1, bad)
		assert.Error(t, err)
		_, err = Loads([]Line{{Packs: 1, Mass: 1}}, -1)
		assert.Error(t, err)
	}
	_, err := metric.Coats(1, 0, 1, 0)
	assert.EqualError(t, err, "coverage: What the liquid covers isn't known. Give it as on the label, such as 5 m²/L.")
	_, err = metric.Sheeting(1, 0.05, 0.05, 0)
	assert.EqualError(t, err, "lap: The lap must be less than the roll's width. Give both as on the label, such as 50 mm of 1 m.")
}
