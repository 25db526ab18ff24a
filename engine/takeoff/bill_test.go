// Bills, each against sums done by hand.
package takeoff_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/takeoff"
)

const percent Rate = 10_000

func packs(n int) Thousandths { return Thousandths(n) * 1000 }

func bill(t *testing.T, terms Terms, lines ...Priced) Bill {
	t.Helper()
	b, err := NewBill(lines, terms)
	require.NoError(t, err)
	return b
}

// By hand: 23 × 18.49 = 425.27; 2 × 34.90 = 69.80; 10 % off: 42.527 → 42.53 and 6.98; left 382.74 and 62.82; 19 % of them: 72.7206 → 72.72 and
// 11.9358 → 11.94, together 84.66; of the sum 445.56: 84.6564 → 84.66. To pay 530.22.
func TestABillWithTaxOnTopAndDiscount(t *testing.T) {
	for _, rounding := range []string{RoundByLine, RoundBySum} {
		b := bill(t, Terms{Classes: []TaxClass{{"standard", 19 * percent}}, Rounding: rounding, Discount: 10 * percent},
			Priced{Item: "leveller", Count: packs(23), Price: 1849, Class: "standard"}, Priced{Item: "primer", Count: packs(2), Price: 3490, Class: "standard"})
		assert.Equal(t, Billed{Item: "leveller", Class: "standard", Amount: 42527, Discount: 4253, After: 38274, Tax: 7272}, b.Lines[0])
		assert.Equal(t, Billed{Item: "primer", Class: "standard", Amount: 6980, Discount: 698, After: 6282, Tax: 1194}, b.Lines[1])
		assert.Equal(t, [4]Money{4951, 44556, 8466, 53022}, [4]Money{b.Discount, b.Net, b.Tax, b.Total}, rounding)
	}
}

// By hand: three things of 0.33 each with 19 %: 0.0627 → 0.06 each, 0.18 by line; of the sum 0.99: 0.1881 → 0.19.
func TestTaxRoundedByLineAndBySumDiffer(t *testing.T) {
	lines := []Priced{{Item: "a", Count: packs(1), Price: 33, Class: "s"}, {Item: "b", Count: packs(1), Price: 33, Class: "s"}, {Item: "c", Count: packs(1), Price: 33, Class: "s"}}
	classes := []TaxClass{{"s", 19 * percent}}
	byLine := bill(t, Terms{Classes: classes, Rounding: RoundByLine}, lines...)
	bySum := bill(t, Terms{Classes: classes, Rounding: RoundBySum}, lines...)
	assert.Equal(t, [3]Money{99, 18, 117}, [3]Money{byLine.Net, byLine.Tax, byLine.Total})
	assert.Equal(t, [3]Money{99, 19, 118}, [3]Money{bySum.Net, bySum.Tax, bySum.Total})
}

// By hand: 119.00 holds 119 × 19 / 119 = 19.00. Three times 9.99 at 19 % hold 1.5950 → 1.60 each (9.99 × 19 / 119 = 1.595042), 4.80 by line; their sum
// 29.97 holds 4.785126 → 4.79. To pay is what the prices say, either way.
func TestABillWithTaxInThePrices(t *testing.T) {
	classes := []TaxClass{{"s", 19 * percent}}
	b := bill(t, Terms{Classes: classes, Inclusive: true, Rounding: RoundByLine}, Priced{Item: "a", Count: packs(1), Price: 11900, Class: "s"})
	assert.Equal(t, [3]Money{10000, 1900, 11900}, [3]Money{b.Net, b.Tax, b.Total})

	three := []Priced{{Item: "a", Count: packs(1), Price: 999, Class: "s"}, {Item: "b", Count: packs(1), Price: 999, Class: "s"}, {Item: "c", Count: packs(1), Price: 999, Class: "s"}}
	byLine := bill(t, Terms{Classes: classes, Inclusive: true, Rounding: RoundByLine}, three...)
	bySum := bill(t, Terms{Classes: classes, Inclusive: true, Rounding: RoundBySum}, three...)
	assert.Equal(t, [3]Money{2517, 480, 2997}, [3]Money{byLine.Net, byLine.Tax, byLine.Total})
	assert.Equal(t, [3]Money{2518, 479, 2997}, [3]Money{bySum.Net, bySum.Tax, bySum.Total})
}

// By hand, a US bill at 8.875 %: 12 × 41.97 = 503.64, 5 % off 25.182 → 25.18, left 478.46; delivery 75.00 without tax and discount; labour 2.5 h at 65.00 =
// 162.50 without tax and discount. Tax 478.46 × 0.08875 = 42.463325 → 42.46. To pay 478.46 + 75.00 + 162.50 + 42.46 = 758.42.
func TestABillWithDeliveryAndLabourOfAnotherClass(t *testing.T) {
	b := bill(t, Terms{Classes: []TaxClass{{"taxed", 88_750}, {"not taxed", 0}, {"unused", 20 * percent}}, Rounding: RoundBySum, Discount: 5 * percent},
		Priced{Item: "leveller", Count: packs(12), Price: 4197, Class: "taxed"},
		Priced{Item: "delivery", Count: packs(1), Price: 7500, Class: "not taxed", NoDiscount: true},
		Priced{Item: "labour", Count: 2500, Price: 6500, Class: "not taxed", NoDiscount: true})
	assert.Equal(t, []ClassSum{{"taxed", 88_750, 47846, 4246}, {"not taxed", 0, 23750, 0}}, b.Classes)
	assert.Equal(t, Money(75842), b.Total)
}

// By hand: 3 h 20 min is 3.333 h; at 45.45 that is 151.48485 → 151.48. Half a coin goes up: 5 % of 0.10 is 0.005 → 0.01; 5 % of 0.30 is 0.015 → 0.02.
func TestHalfACoinGoesUp(t *testing.T) {
	b := bill(t, Terms{Classes: []TaxClass{{"s", 5 * percent}}, Rounding: RoundByLine}, Priced{Item: "labour", Count: 3333, Price: 4545, Class: "s"},
		Priced{Item: "screw", Count: packs(1), Price: 10, Class: "s"}, Priced{Item: "washer", Count: packs(1), Price: 30, Class: "s"})
	assert.Equal(t, Money(15148), b.Lines[0].Amount)
	assert.Equal(t, Money(1), b.Lines[1].Tax)
	assert.Equal(t, Money(2), b.Lines[2].Tax)
	assert.Equal(t, Money(-1), (5 * percent).Of(-10), "a credit mirrors its bill")
}

func TestABillThatCantBeIsRefusedInWords(t *testing.T) {
	one := Priced{Item: "leveller", Count: 1000, Price: 100, Class: "s"}
	fair := Terms{Classes: []TaxClass{{"s", 0}}, Rounding: RoundByLine}
	for _, row := range []struct {
		change func(*Terms, *Priced)
		says   string
	}{
		{func(x *Terms, _ *Priced) { x.Rounding = "" }, "rounding: Tax is rounded by line or by sum. Choose one of them."},
		{func(x *Terms, _ *Priced) { x.Discount = 101 * percent }, "discount: A discount lies between 0 % and 100 %. Give it so."},
		{func(x *Terms, _ *Priced) { x.Classes[0].Rate = -1 }, "tax class s: This isn't a tax rate. Give it between 0 % and 1000 %."},
		{func(x *Terms, _ *Priced) { x.Classes = append(x.Classes, x.Classes[0]) }, "tax class s: Two tax classes have this name. Give each its own."},
		{func(_ *Terms, p *Priced) { p.Class = "reduced" }, "line 1, leveller: No tax class is called “reduced”. Add the class with its rate, or give this item one of the others."},
		{func(_ *Terms, p *Priced) { p.Price = -1 }, "line 1, leveller: A price can't be below zero or beyond all measure. Check the price list."},
		{func(_ *Terms, p *Priced) { p.Count = -1 }, "line 1, leveller: So many can't be billed. Check how many are needed."},
		{func(_ *Terms, p *Priced) { p.Price, p.Count = MostMoney, MostThousandths }, "line 1, leveller: So many can't be billed. Check how many are needed."},
	} {
		terms, line := fair, one
		terms.Classes = append([]TaxClass(nil), fair.Classes...)
		row.change(&terms, &line)
		_, err := NewBill([]Priced{line}, terms)
		assert.EqualError(t, err, row.says)
	}
}

// Whatever the prices, a bill adds up to the coin, and its tax is that of exact arithmetic to half a coin a line.
func FuzzBill(f *testing.F) {
	f.Add(int64(1849), int64(23000), int64(190000), int64(100000), true, true)
	f.Add(int64(1), int64(1), int64(10_000_000), int64(0), false, true)
	f.Add(int64(MostMoney), int64(1000), int64(88750), int64(1_000_000), true, false)
	f.Fuzz(func(t *testing.T, price, count, rate, discount int64, inclusive, bySum bool) {
		terms := Terms{Classes: []TaxClass{{"s", Rate(rate)}, {"z", 0}}, Inclusive: inclusive, Rounding: RoundByLine, Discount: Rate(discount)}
		if bySum {
			terms.Rounding = RoundBySum
		}
		b, err := NewBill([]Priced{{Item: "a", Count: Thousandths(count), Price: Money(price), Class: "s"}, {Item: "b", Count: 1000, Price: 5, Class: "z"}}, terms)
		if err != nil {
			return
		}
		after := b.Lines[0].After + b.Lines[1].After
		assert.Equal(t, b.Total, b.Net+b.Tax)
		if inclusive {
			assert.Equal(t, after, b.Total)
		} else {
			assert.Equal(t, after, b.Net)
		}
		exact := float64(b.Lines[0].After) * float64(rate) / 1e6
		if inclusive {
			exact = float64(b.Lines[0].After) * float64(rate) / (1e6 + float64(rate))
		}
		assert.InDelta(t, exact, float64(b.Tax), 0.5+exact*1e-12)
	})
}
