package survey

import (
	"math"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestBagsToBuy(t *testing.T) {
	for _, c := range []struct {
		name                                string
		mean, deviation, yield, dosing, bag float64
		want                                Bags
	}{
		{"nothing in doubt", 0.36, 0, 0, 0, 0.012, Bags{30, 30, 30, 0}},
		{"a hair over thirty", 0.3601, 0, 0, 0, 0.012, Bags{31, 31, 31, 0}},
		{"a tenth in doubt", 0.36, 0.036, 0, 0, 0.012, Bags{30, 34, 38, 0.1}},
		{"nothing to pour", 0, 0, 0.03, 0.02, 0.012, Bags{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := BagsFor(c.mean, c.deviation, c.yield, c.dosing, c.bag)
			require.NoError(t, err)
			assert.InDelta(t, c.want.Spread, got.Spread, 1e-12)
			got.Spread = c.want.Spread
			assert.Equal(t, c.want, got)
		})
	}
}

// Twenty thousand pours with everything drawn normal: the bags for nine in ten are enough nine times in ten.
func TestBagsAreEnoughAsOftenAsStated(t *testing.T) {
	const mean, deviation, yield, dosing, bag = 3.6, 0.25, 0.06, 0.04, 0.012
	bags, err := BagsFor(mean, deviation, yield, dosing, bag)
	require.NoError(t, err)
	r := rand.New(rand.NewSource(1))
	needed := make([]float64, 20000)
	for i := range needed {
		needed[i] = (mean + deviation*r.NormFloat64()) / bag * (1 + dosing/2*r.NormFloat64()) / (1 + yield/2*r.NormFloat64())
	}
	slices.Sort(needed)
	for at, got := range map[float64]int{0.5: bags.Half, 0.9: bags.Ninety, 0.99: bags.NinetyNine} {
		assert.InEpsilon(t, needed[int(at*float64(len(needed)))], float64(got), 0.01, "%g of all", at)
	}
}

func TestBagsThatCannotBeCountedAreRefused(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		code string
		in   [5]float64
	}{
		{"volume", [5]float64{nan, 0, 0, 0, 1}},
		{"volume", [5]float64{-1, 0, 0, 0, 1}},
		{"volume", [5]float64{1, math.Inf(1), 0, 0, 1}},
		{"tolerance", [5]float64{1, 0, nan, 0, 1}},
		{"tolerance", [5]float64{1, 0, 0, 3, 1}},
		{"yield", [5]float64{1, 0, 0, 0, 0}},
		{"yield", [5]float64{1, 0, 0, 0, nan}},
	} {
		_, err := BagsFor(c.in[0], c.in[1], c.in[2], c.in[3], c.in[4])
		var e *Error
		require.ErrorAs(t, err, &e)
		assert.Equal(t, c.code, e.Code)
	}
}
