package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTheNumbersOfAnExpressionAreFoundWithTheirUnits(t *testing.T) {
	r := Rule{Name: "least_depth", Value: "deck.wood ? (sheet.least_depth_wood ?? mm(10)) : max(inch(3/8), mm(3) * 2)"}
	list := r.Literals()
	require.Len(t, list, 4)
	var shown, text []string
	for _, l := range list {
		shown, text = append(shown, l.Shown), append(text, l.Text)
		assert.Equal(t, l.Text, r.Value[l.From:l.To])
	}
	assert.Equal(t, []string{"10 mm", "3/8 in", "3 mm", "2"}, shown)
	assert.Equal(t, []string{"mm(10)", "inch(3/8)", "mm(3)", "2"}, text)
}

func TestANumberChangedInAFormLeavesTheRestOfTheExpressionAlone(t *testing.T) {
	const value = "deck.wood ? mm(10) : (sheet.least_depth ?? mm(3)) // “as typed” 🪵"
	for _, c := range []struct{ typed, want string }{
		{"12", "mm(12)"},
		{"12 mm", "mm(12)"},
		{"1.2 cm", "cm(1.2)"},
		{"1,5", "mm(1.5)"},
		{"3/8 in", "inch(3/8)"},
		{`1 1/2"`, "mm(38.1)"},
		{"0.5 ft", "ft(0.5)"},
	} {
		r := Rule{Name: "least_depth", Value: value}
		l := r.Literals()[0]
		text, err := r.Rewrite("value", l.From, c.typed)
		require.Nil(t, err, c.typed)
		assert.Equal(t, "deck.wood ? "+c.want+" : (sheet.least_depth ?? mm(3)) // “as typed” 🪵", text)
	}
}

func TestANumberOfTheWrongKindIsRefusedInWords(t *testing.T) {
	r := Rule{Name: "least_depth", Value: "mm(10)"}
	for _, typed := range []string{"10 kg", "thick", ""} {
		_, err := r.Rewrite("value", 0, typed)
		require.NotNil(t, err, typed)
		assert.NotEmpty(t, err.Message)
		assert.Equal(t, "least_depth", err.Rule)
	}
	_, err := r.Rewrite("value", 3, "10 mm")
	assert.NotNil(t, err, "no number begins there")
}

func TestExponentsAndHalfWrittenExpressionsOfferNoNumbers(t *testing.T) {
	r := Rule{Check: true, Name: "a-check", Applies: "room.area ** 2 > m2(1) ^ 2", Holds: "mm( >= "}
	list := r.Literals()
	require.Len(t, list, 1)
	assert.Equal(t, "1 m2", list[0].Shown)
}
