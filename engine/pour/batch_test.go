package pour

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// bag is an invented sheet: 25 kg making 0.55 L/kg with 4.8 to 5.2 L of water.
var bag = Mix{BagMass: 25, Yield: 0.55e-3, WaterLow: 4.8e-3 / 25, WaterHigh: 5.2e-3 / 25, Water: 5e-3 / 25}

func TestABucketTakesWholeBagsBelowItsHeadRoom(t *testing.T) {
	for _, c := range []struct {
		litres, headRoom float64
		bags             int
	}{{20, 0.25, 1}, {36, 0.25, 1}, {37, 0.25, 2}, {60, 0.2, 3}, {13.75, 0, 1}} {
		bags, err := BagsPerBucket(bag, Bucket{c.litres / 1000, c.headRoom})
		require.NoError(t, err)
		assert.Equal(t, c.bags, bags, "%v L", c.litres)
	}
	_, err := BagsPerBucket(bag, Bucket{15e-3, 0.25})
	assert.EqualError(t, err, "bucket: 15 L with its head-room doesn't hold the 13.75 L that one bag makes; take a bucket of 19 L or more")
}

func TestTheLastBatchIsAPartBatchOfWholeBags(t *testing.T) {
	batches, err := Batches(0.300, bag, Bucket{37e-3, 0.25}, LitreMark)
	require.NoError(t, err)
	require.Len(t, batches, 11)
	sum, bags := 0.0, 0
	for i, b := range batches {
		assert.Equal(t, i+1, b.Number)
		sum += b.Volume
		bags += b.Bags
	}
	assert.InDelta(t, 0.300, sum, 1e-12)
	assert.Equal(t, 22, bags)
	last := batches[10]
	assert.Equal(t, 2, last.Bags)
	assert.InDelta(t, 0.025, last.Volume, 1e-12)
	assert.InDelta(t, 0.0025, last.Left, 1e-12)
	assert.InDelta(t, 0.010, batches[0].Water.Volume, 1e-12)
	assert.Equal(t, 100, batches[0].Water.Marks)
}

func TestAWholeNumberOfBatchesLeavesNone(t *testing.T) {
	batches, err := Batches(10*2*25*0.55e-3, bag, Bucket{37e-3, 0.25}, LitreMark)
	require.NoError(t, err)
	require.Len(t, batches, 10)
	assert.Zero(t, batches[9].Left)
}

func TestNonsenseIsRefusedInWords(t *testing.T) {
	_, err := Batches(-1, bag, Bucket{37e-3, 0.25}, LitreMark)
	assert.ErrorContains(t, err, "volume")
	_, err = Batches(1e9, bag, Bucket{37e-3, 0.25}, LitreMark)
	assert.ErrorContains(t, err, "more than 10000 batches")
	dry := bag
	dry.Water = 4e-3 / 25
	_, err = Batches(0.3, dry, Bucket{37e-3, 0.25}, LitreMark)
	assert.EqualError(t, err, "water: 0.16 L/kg; the sheet allows 0.192 L/kg to 0.208 L/kg")
}

func TestWaterStaysWithinTheSheetWhateverTheMark(t *testing.T) {
	at := func(low, high, chosen, step float64) Water {
		w, err := MeasureWater(1, Mix{WaterLow: low, WaterHigh: high, Water: chosen}, step)
		require.NoError(t, err)
		return w
	}
	quart := at(4.80e-3, 5.20e-3, 5.00e-3, QuartMark)
	assert.Equal(t, 21, quart.Marks)
	assert.InDelta(t, 4.9683530e-3, quart.Volume, 1e-9)
	assert.Empty(t, quart.Note)

	up := at(4.86e-3, 5.0e-3, 4.86e-3, QuartMark) // the nearest mark, 21, is inside; 20.54 rounds to it
	assert.Equal(t, 21, up.Marks)

	inward := at(4.97e-3, 5.25e-3, 4.98e-3, QuartMark) // 21 marks would be 4.968 L, below the least
	assert.Equal(t, 22, inward.Marks)
	assert.Contains(t, inward.Note, "would leave the sheet's")

	between := at(5.01e-3, 5.04e-3, 5.02e-3, LitreMark)
	assert.Zero(t, between.Marks)
	assert.Equal(t, 5.02e-3, between.Volume)
	assert.Contains(t, between.Note, "weigh 5.02 kg")
}

func TestSpreadIsHeldAgainstTheSheet(t *testing.T) {
	for measured, want := range map[float64]string{0.139: SpreadShort, 0.140: SpreadKept, 0.150: SpreadKept, 0.151: SpreadLong} {
		r, err := CheckSpread(measured, 0.140, 0.150)
		require.NoError(t, err)
		assert.Equal(t, want, r.Outcome, "%v m", measured)
		assert.Equal(t, want == SpreadKept, r.Margin >= 0)
	}
	_, err := YieldStress(Ring{0.03, 0.05}, 2000, 0.02)
	assert.ErrorContains(t, err, "can't be less than the ring's own 30 mm")
}

func TestWaterTemperatureMeetsTheWantedMix(t *testing.T) {
	powder := Portion{25, 303.15}
	water, err := WaterTemperature(294.15, powder, 5)
	require.NoError(t, err)
	mixed, err := MixTemperature(Portion{5, water}, powder)
	require.NoError(t, err)
	assert.InDelta(t, 294.15, mixed, 1e-9)

	_, err = WaterTemperature(ZeroCelsius+10, powder, 5)
	assert.EqualError(t, err, "water temperature: a mix at 10 °C would need water at -12 °C; cool the powder or the room first: even water at 0 °C brings the mix to 15.7 °C")
	_, err = WaterTemperature(ZeroCelsius+90, Portion{25, ZeroCelsius + 5}, 5)
	assert.ErrorContains(t, err, "warm the powder")
}

func TestSettingRefusesWhatItCannotKnow(t *testing.T) {
	_, err := CommonSetting.TimeAt(3600, ZeroCelsius+2)
	assert.ErrorContains(t, err, "2 °C; times are worked out from 5 °C to 35 °C only")
	_, err = Setting{Model: "guess", Least: 1, Greatest: 1000}.Rate(300)
	assert.ErrorContains(t, err, "choose nurse-saul, arrhenius or q10")
	assert.Contains(t, CommonSetting.States(), "2 times as fast for every 10 °C")
}
