package rules

import (
	"math"
	"math/rand"
	"strconv"
	"strings"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

// Units of one dimension: the second's number is the first's times the factor. Exact by NIST Handbook 44, Appendix C.
var sameUnits = []struct {
	metric, us string
	factor     float64
}{
	{"mm", "inch", 1 / 25.4}, {"m2", "sqft", 1 / (0.3048 * 0.3048)}, {"litres", "qt", 1 / 0.946352946}, {"kg", "lb", 1 / 0.45359237},
	{"kelvin", "fahrenheit_degrees", 1.8},
}

// inUS writes an expression's metric units in US units.
func inUS(expression string) string {
	for _, u := range sameUnits {
		parts := strings.Split(expression, u.metric+"(")
		for i := 1; i < len(parts); i++ {
			number, rest, _ := strings.Cut(parts[i], ")")
			value, err := strconv.ParseFloat(number, 64)
			if err != nil {
				parts[i] = u.metric + "(" + parts[i]
				continue
			}
			parts[i] = u.us + "(" + strconv.FormatFloat(value*u.factor, 'g', -1, 64) + ")" + rest
		}
		expression = strings.Join(parts, "")
	}
	return expression
}

func TestARuleWrittenInUSUnitsComesToTheSame(t *testing.T) {
	conditions := []string{
		"depth.least >= mm(10)", "depth.least > mm(10)", "depth.least == mm(10)", "depth.least != mm(10)", "mm(3) <= depth.least <= mm(12)",
		"ceil(depth.least / mm(1)) <= 10", "ceil(depth.least, mm(5)) >= mm(10)", "floor(depth.least, mm(2)) < mm(10)",
		"deck.area >= m2(4) && depth.least * deck.area > litres(40)", "sheet.bag_mass / kg(25) >= 1", "sheet.bag_mass - kg(5) < kg(20)",
		"ceil(depth.least * deck.area / litres(14)) == 3", "air.temperature - water.temperature <= kelvin(10)",
		"max(depth.least, mm(10)) <= mm(10)", "any([depth.least, mm(4)], # >= mm(10))", "round(deck.area, m2(0.5)) == m2(4)",
	}
	random := rand.New(rand.NewSource(4))
	pick := func(values ...string) string { return values[random.Intn(len(values))] }
	for _, condition := range conditions {
		us := inUS(condition)
		require.NotEqual(t, condition, us)
		for i := 0; i < 60; i++ {
			facts := "depth.least = " + pick("10 mm", "1 cm", "3/8 in", "9.525 mm", "12 mm", "3 mm", "0.010 m", "15/32 in") +
				", deck.area = " + pick("4 m²", "43.0556 sq ft", "4.2 m²", "1.5 m²") + ", sheet.bag_mass = " + pick("25 kg", "50 lb", "55.11556554621939 lb", "20 kg") +
				", air.temperature = " + pick("20 °C", "68 °F") + ", water.temperature = " + pick("10 °C", "50 °F", "12 °C")
			assert.Equal(t, judged(t, condition, facts).State, judged(t, us, facts).State, "%s\n%s\n%s", condition, us, facts)
		}
	}
}

// On plain numbers a rule comes to what expr itself makes of it.
func TestExpressionsMeanWhatTheyMeanInTheirOwnLanguage(t *testing.T) {
	random := rand.New(rand.NewSource(7))
	env := map[string]any{"job": map[string]any{"bags": 10.0}, "crew": map[string]any{"people": 2.5}}
	facts := Facts{"job.bags": {Value: Value{Kind: Quantity, Number: 10}}, "crew.people": {Value: Value{Kind: Quantity, Number: 2.5}}}
	agreed := 0
	for i := 0; i < 3000; i++ {
		text := numberExpression(random, 3)
		book, _ := Parse("figure it\n dimension: number\n value: " + text + "\n")
		c, errors := Compile(book, words())
		want, err := expr.Eval(text, env)
		require.NoError(t, err)
		if len(errors) > 0 {
			require.Contains(t, []string{CodeFault, CodeLimit}, errors[0].Code, "%s: %v", text, errors) // a division by what is plainly zero, or too long
			continue
		}
		r := c.Figure("it", facts)
		number := asNumber(want)
		if math.IsNaN(number) || math.IsInf(number, 0) || r.State == Faulty {
			continue
		}
		require.InDelta(t, number, r.Value.Number, 1e-9*math.Max(1, math.Abs(number)), text)
		agreed++
	}
	assert.Greater(t, agreed, 1500)
}

func asNumber(v any) float64 {
	switch n := v.(type) {
	case float64:
		return n
	case int:
		return float64(n)
	}
	return math.NaN()
}

func numberExpression(r *rand.Rand, depth int) string {
	if depth == 0 {
		return []string{"job.bags", "crew.people", "3", "0.25", "7.0", "-2.0"}[r.Intn(6)]
	}
	a, b, c := numberExpression(r, depth-1), numberExpression(r, r.Intn(depth)), numberExpression(r, r.Intn(depth))
	switch r.Intn(10) {
	case 0:
		return a + " + " + b
	case 1:
		return a + " - (" + b + ")"
	case 2:
		return "(" + a + ") * " + b
	case 3:
		return a + " / (" + b + ")"
	case 4:
		return "max(" + a + ", " + b + ")"
	case 5:
		return "(" + a + " > " + b + " ? " + b + " : " + c + ")"
	case 6:
		return "abs(" + a + ")"
	case 7:
		return "(" + a + " < " + b + " && " + b + " <= " + c + " || !(" + a + " == " + c + ") ? " + a + " : " + c + ")"
	case 8:
		return "sum([" + a + ", " + b + "], # * 2.0)"
	}
	return "count([" + a + ", " + b + "], # > " + c + ")"
}

// Whatever is typed as a rule, it is refused with an error that helps or comes out as one of the states; nothing panics.
func FuzzExpression(f *testing.F) {
	for _, seed := range []string{
		"depth.least >= mm(10)", "deck.kind in [\"osb\", 'plywood'] && !deck.sound", "let a = mm(3); a ** 2 > m2(1)", "any([1, 2], # > 1) ? true : false",
		"(sheet.least_depth ?? mm(3)) < inch(3/8)", "count([mm(1)], # > mm(0)) | abs() > 1", "1 < 2 < 3", "if true { 1 } else { 2 } > 1", "known(deck.area)",
		"air.temperature - celsius(-40) > kelvin(3) or not (job.bags == 1e3)", "\"\\u00e9\" == deck.note", "/* a */ job.bags > 1 // b", "((((", "a.b.c?.d[1:2]", "`raw` == deck.note",
	} {
		f.Add(seed)
	}
	v := words()
	f.Fuzz(func(t *testing.T, text string) {
		book := &Book{Rules: []Rule{{Check: true, Name: "it", For: "deck", Weight: Stop, Holds: text, Says: "{" + text + "}"}}}
		c, errors := Compile(book, v)
		for _, e := range errors {
			if e.Message == "" || e.From > e.To || e.From < 0 {
				t.Fatalf("an error that helps nobody: %+v", e)
			}
		}
		facts := Facts{"job.bags": {Value: Value{Kind: Quantity, Number: 3}}, "deck.sound": {Value: Value{Kind: Truth, Truth: true}}, "deck.note": {Value: Value{Kind: Text, Text: "é"}},
			"depth.least": {Value: Value{Kind: Quantity, Number: 1e308}}, "deck.kind": {Value: Value{Kind: Choice, Text: "osb"}}}
		out := c.Checks("deck", facts, quantity.US)[0]
		switch out.State {
		case Kept, Broken, Unanswered:
			if len(errors) > 0 && errors[0].Field == "holds" {
				t.Fatalf("refused, yet %s: %v", out.State, errors[0])
			}
		case Faulty:
			if out.Fault == nil {
				t.Fatal("faulty without a fault")
			}
		default:
			t.Fatalf("no state: %q", out.State)
		}
		if (out.State == Unanswered) != (len(out.Missing) > 0) {
			t.Fatalf("%s with missing %v", out.State, out.Missing)
		}
		c.Trace("it", facts, quantity.Metric)
	})
}
