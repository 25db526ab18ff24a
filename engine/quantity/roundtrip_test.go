// What is written reads back within half of the last digit shown, and writing what was read back gives the same text.
package quantity_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	. "lowspot/engine/quantity"
)

var dimensions = []Dimension{
	Number, Length, Area, Volume, Mass, Time, Temperature, TemperatureDifference, Money, Speed, Force, Pressure, Density, Flow, EvaporationRate,
	MassPerArea, Coverage, Yield, AreaPerMass, Number.Over(Area), Money.Over(Area), Length.Power(4), Speed.Over(Time), Mass.Power(2).Over(Temperature.Times(Volume)),
}

func TestWhatIsWrittenReadsBack(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 11))
	for _, d := range dimensions {
		for range 3000 {
			si := math.Pow(10, random.Float64()*18.5-7)
			if random.IntN(3) == 0 && d != Temperature {
				si = -si
			}
			readsBack(t, si, d)
		}
	}
}

// Where one unit hands over to the next, rounding must not carry a value back and forth.
func TestWhatIsWrittenReadsBackNearTheChangeOfUnits(t *testing.T) {
	for _, d := range dimensions {
		for _, u := range Units(d) {
			for _, edge := range []float64{1, 8, 10, 12, 16, 24, 32, 60, 96, 100, 144, 288, 1000, 1e5, 1e6} {
				for _, nudge := range []float64{-0.06, -0.05, -0.005, -0.0005, -1e-5, -1e-12, 0, 1e-12, 1e-5, 0.0005, 0.005, 0.05, 0.06} {
					if si := u.SI(edge + nudge); math.Abs(si) <= Greatest/2 {
						readsBack(t, si, d)
					}
				}
			}
		}
	}
}

func FuzzWrite(f *testing.F) {
	f.Add(0.009525, uint8(1))
	f.Add(0.99996, uint8(1))
	f.Add(3599.95, uint8(5))
	f.Add(-1e12, uint8(6))
	f.Add(math.MaxFloat64, uint8(3))
	f.Fuzz(func(t *testing.T, si float64, which uint8) {
		d := dimensions[int(which)%len(dimensions)]
		if math.IsNaN(si) || math.IsInf(si, 0) {
			require.Equal(t, "—", Write(si, d, Metric))
			return
		}
		if math.Abs(si) > Greatest/2 || d == Temperature && si < 0 {
			require.NotEmpty(t, Write(si, d, US))
			return
		}
		readsBack(t, si, d)
	})
}

func FuzzRead(f *testing.F) {
	for _, c := range typed {
		for i, d := range dimensions {
			if d == c.d {
				f.Add(c.text, uint8(i))
			}
		}
	}
	f.Fuzz(func(t *testing.T, text string, which uint8) {
		d := dimensions[int(which)%len(dimensions)]
		si, err := Read(text, d)
		if err != nil {
			var told *Error
			require.ErrorAs(t, err, &told)
			require.Equal(t, text, told.Given)
			require.NotEmpty(t, told.Message)
			require.NotEmpty(t, told.Remedy)
			require.Zero(t, si)
			return
		}
		require.LessOrEqual(t, math.Abs(si), Greatest)
		if math.Abs(si) <= Greatest/2 {
			readsBack(t, si, d)
		}
	})
}

func readsBack(t *testing.T, si float64, d Dimension) {
	t.Helper()
	for _, s := range []System{Metric, US} {
		text := Write(si, d, s)
		again, err := Read(text, d)
		if err != nil && d == Temperature && si < 1 {
			continue // a hair above absolute zero rounds to below it
		}
		require.NoError(t, err, "%g %s", si, d.Name())
		require.InDelta(t, si, again, halfOfLastDigit(t, text, d)+math.Abs(si)*4e-15, "%g %s as %q", si, d.Name(), text)
		require.Equal(t, text, Write(again, d, s), "%g %s", si, d.Name())
	}
}

// halfOfLastDigit is worked out from the text alone.
func halfOfLastDigit(t *testing.T, text string, d Dimension) float64 {
	t.Helper()
	if d == Length && strings.ContainsAny(text, `'"/`) || strings.HasSuffix(text, " in") {
		return 0.0254 / 32 // inches are shown to a sixteenth
	}
	words := strings.Fields(text)
	number, symbol := words[0], strings.Join(words[1:], " ")
	if d == Time {
		number, symbol = words[len(words)-2], words[len(words)-1]
		if len(words) == 2 && symbol != "s" { // "2 h" leaves out the smaller unit
			symbol = map[string]string{"min": "s", "h": "min", "d": "h"}[symbol]
			if symbol == "" {
				symbol = "s"
			}
		}
	}
	mantissa, power, _ := strings.Cut(number, "e")
	_, decimals, _ := strings.Cut(mantissa, ".")
	exponent, _ := strconv.Atoi(power)
	u, ok := UnitNamed(symbol)
	require.True(t, ok, text)
	return 0.5 * math.Pow(10, float64(exponent-len(decimals))) * u.Factor * (1 + 1e-9)
}
