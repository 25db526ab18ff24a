package takeoff_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "lowspot/engine/takeoff"
)

// Tins of 5 L and of 1 L, worked by hand.
func TestTwoSizesOfTinAreMixedByWhatTheyCost(t *testing.T) {
	for _, row := range []struct {
		need        float64 // L
		five, one   Money   // cents
		fives, ones int
		because     string
	}{
		{2.5, 3890, 990, 0, 3, "29.70 against 38.90"},
		{4.2, 3890, 990, 1, 0, "38.90 against five at 49.50"},
		{7.3, 3890, 990, 1, 3, "68.60 against 77.80 for two of 5 L and 79.20 for eight of 1 L"},
		{9.1, 3890, 990, 2, 0, "77.80 against 88.40 for one and five"},
		{6.0, 3890, 500, 0, 6, "30.00 against 43.90: the small tin is cheaper by the litre"},
		{10, 3890, 990, 2, 0, "nothing over"},
		{0, 3890, 990, 0, 0, "nothing needed"},
	} {
		counts := Mix(row.need, []Size{{5, row.five}, {1, row.one}})
		assert.Equal(t, []int{row.fives, row.ones}, counts, "%v L: %s", row.need, row.because)
		counts = Mix(row.need, []Size{{1, row.one}, {5, row.five}})
		assert.Equal(t, []int{row.ones, row.fives}, counts, "whichever stands first on the list")
	}
}

func TestWithoutPricesLeastIsLeftOverInTheFewestTins(t *testing.T) {
	for _, row := range []struct {
		need        float64
		fives, ones int
	}{{2.5, 0, 3}, {4.2, 1, 0}, {7.3, 1, 3}, {9.1, 2, 0}, {5, 1, 0}} {
		assert.Equal(t, []int{row.fives, row.ones}, Mix(row.need, []Size{{Holds: 5}, {Holds: 1}}), "%v L", row.need)
	}
}

// Every mix meets the need, and none of up to 40 packs of each is cheaper.
func TestNoMixOfTwoSizesIsCheaper(t *testing.T) {
	for need := 0.3; need < 30; need += 0.7 {
		for _, sizes := range [][]Size{{{5, 3890}, {1, 990}}, {{4.5, 2000}, {0.75, 400}}, {{10, 100}, {3, 31}}} {
			counts := Mix(need, sizes)
			cost := Money(counts[0])*sizes[0].Price + Money(counts[1])*sizes[1].Price
			assert.GreaterOrEqual(t, float64(counts[0])*sizes[0].Holds+float64(counts[1])*sizes[1].Holds, need-1e-9)
			for a := range 41 {
				for b := range 41 {
					if float64(a)*sizes[0].Holds+float64(b)*sizes[1].Holds >= need {
						assert.LessOrEqual(t, cost, Money(a)*sizes[0].Price+Money(b)*sizes[1].Price)
					}
				}
			}
		}
	}
}

func TestOfManySizesNoMoreThanTwoAreTaken(t *testing.T) {
	taken := 0
	for _, n := range Mix(8.4, []Size{{5, 3890}, {2.5, 2100}, {1, 990}, {1, 980}}) {
		if n > 0 {
			taken++
		}
	}
	assert.LessOrEqual(t, taken, 2)
	assert.Equal(t, []int{0, MostPacks}, Mix(1e12, []Size{{1, MostMoney}, {2, 1}}), "a need past all bounds is bounded")
	assert.Equal(t, []int{}, Mix(1, nil))
}
