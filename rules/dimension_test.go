package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Each expression is wrong where the carets stand.
func TestWhatDoesNotGoTogetherIsToldAtItsColumn(t *testing.T) {
	for _, c := range []struct{ expression, carets, says string }{
		{`depth.least + sheet.bag_mass > mm(3)`,
			`^^^^^^^^^^^^^^^^^^^^^^^^^^^^`, "A length and a mass can't be added."},
		{`sheet.bag_yield > sheet.bag_mass`,
			`^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^`, "A volume can't be compared with a mass. Volume and mass meet through a density or a yield"},
		{`depth.least >= 10`,
			`               ^^`, "“10” is a bare number where a length belongs. Give it a unit: mm(10) or inch(10)."},
		{`10 <= depth.least`,
			`^^`, "“10” is a bare number where a length belongs."},
		{`depth.least + 3 > mm(2)`,
			`              ^`, "Give it a unit: mm(3) or inch(3)."},
		{`air.temperature + water.temperature > celsius(20)`,
			`^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^`, "Two temperatures can't be added. Add a difference: celsius(20) + kelvin(3)"},
		{`air.temperature * 2 > celsius(20)`,
			`^^^^^^^^^^^^^^^^^^^`, "A temperature on its scale can't be multiplied or divided."},
		{`air.temperature > kelvin(3)`,
			`^^^^^^^^^^^^^^^^^^^^^^^^^^^`, "A temperature can't be compared with a temperature difference."},
		{`-air.temperature < celsius(3)`,
			`^^^^^^^^^^^^^^^^`, "A temperature on its scale has no opposite."},
		{`abs(air.temperature) < celsius(3)`,
			`^^^^^^^^^^^^^^^^^^^^`, "A temperature on its scale has no size without a sign."},
		{`deck.kind == "plywod"`,
			`             ^^^^^^^^`, `“plywod” is not one of the options. Did you mean "plywood"?`},
		{`deck.kind in ["osb", "marble"]`,
			``, `“marble” is not one of the options.`},
		{`deck.kind == plywood`,
			`             ^^^^^^^`, `Nothing is called “plywood”. Put an option in quotes: "plywood".`},
		{`deck.kind > mm(3)`,
			`^^^^^^^^^`, "“deck.kind” is a choice; quantities belong on both sides of “>”."},
		{`deck.knd == "osb"`,
			`^^^^^^^^`, "Nothing is called “deck.knd”. Did you mean “deck.kind”?"},
		{`depth.least > mmm(3)`,
			`              ^^^^^^`, "No function is called “mmm”. Did you mean “mm”?"},
		{`depth.least > mm`,
			`              ^^`, "Put the number in brackets: mm(10)."},
		{`door.step < mm(3)`,
			`^^^^^^^^^`, "“door.step” belongs to a door; this rule is for a deck"},
		{`mm(depth.least) > mm(3)`,
			`   ^^^^^^^^^^^`, "“depth.least” is a length already"},
		{`depth.least`,
			`^^^^^^^^^^^`, "“depth.least” is a length; yes or no belongs here."},
		{`deck.sound && depth.least`,
			`              ^^^^^^^^^^^`, "“depth.least” is a length; yes or no belongs after “&&”."},
		{`!depth.least`,
			` ^^^^^^^^^^^`, "yes or no belongs after “!”"},
		{`(deck.wood ? mm(3) : kg(3)) > mm(2)`,
			`             ^^^^^^^^^^^^^`, "The two sides of “:” must be of one kind: one is a length, the other a mass."},
		{`(sheet.least_depth ?? 3) < mm(5)`,
			`                      ^`, "“3” is a bare number where a length belongs."},
		{`(depth.least + mm(1) ?? mm(3)) < mm(5)`,
			`               ^^^^^`, "Only a word or a figure can be missing; “mm(1)” is neither. Put the name and its other value in brackets"},
		{`(sheet.least_depth ?? mm(3) + mm(1)) < mm(5)`,
			`                            ^`, "“??” and another operator stand side by side without brackets."},
		{`((depth.least + mm(1)) ?? mm(3)) < mm(5)`,
			`  ^^^^^^^^^^^^^^^^^^^`, "Only a word or a figure can be missing"},
		{`max(depth.least, pour.volume) > mm(3)`,
			`    ^^^^^^^^^^^^^^^^^^^^^^^^`, "A length can't be compared with a volume."},
		{`max(depth.least, 3) > mm(3)`,
			`                 ^`, "“3” is a bare number"},
		{`ceil(depth.least) > mm(3)`,
			`^^^^^^^^^^^^^^^^^`, "What a whole number of a length is goes by the unit. Say the step: ceil(depth.least, mm(1))."},
		{`sqrt(depth.least) > mm(3)`,
			`^^^^^^^^^^^^^^^^^`, "A length has no square root."},
		{`depth.least ** 0.5 > mm(3)`,
			`^^^^^^^^^^^^^^^^^^`, "A length can only be raised to a whole power written out"},
		{`depth.least ** depth.least > mm(3)`,
			`               ^^^^^^^^^^^`, "An exponent must be a number"},
		{`let x = mm(3); x + kg(1) > mm(3)`,
			`               ^^^^^^^^^`, "A length and a mass can't be added."},
		{`let deck = 3; deck > 2`, ``, "The name “deck” is taken."},
		{`any([mm(3), kg(3)], # > mm(2))`,
			`     ^^^^^^^^^^^^`, "The values of a list must be of one kind"},
		{`any([mm(3), mm(4)], # > kg(2))`,
			`                    ^^^^^^^^^`, "A length can't be compared with a mass."},
		{`sum([celsius(3), celsius(4)]) > celsius(5)`,
			`^^^^^^^^^^^^^^^^^^^^^^^^^^^^^`, "sum() adds quantities"},
		{`bag.price > 30`,
			`            ^^`, "Give it a unit: money(30)."},
		{`deck.sound == "yes"`,
			`^^^^^^^^^^^^^^^^^^^`, "Yes or no can't be compared with a text."},
		{`depth.least / 0 > mm(3)`,
			`              ^`, "This divides by zero."},
		{`known(mm(3))`,
			`      ^^^^^`, "Only a word or a figure can be missing"},
	} {
		book, _ := Parse("check it\n weight: stop\n for: deck\n holds: " + c.expression + "\n says: No.\n")
		_, errors := Compile(book, words())
		require.NotEmpty(t, errors, c.expression)
		e := errors[0]
		assert.Contains(t, e.Message+" "+e.Remedy, c.says, c.expression)
		if c.carets != "" {
			assert.Equal(t, c.carets, strings.Repeat(" ", e.From)+strings.Repeat("^", e.To-e.From), "%s\n%s", c.expression, e.Message)
			assert.Equal(t, 4, e.Line)
			assert.Equal(t, len(" holds: ")+e.From+1, e.Column, c.expression)
		}
		assert.Len(t, errors, 1, "%s: %v", c.expression, errors)
	}
}

func TestSeveralErrorsOfOneExpressionAreToldAtOnce(t *testing.T) {
	told := complaints(`depth.least > 3 && pour.volume < 4 && deck.knd == "x"`)
	assert.Len(t, told, 3)
}

func TestColumnsCountCharactersAndOffsetsCountAsAPageDoes(t *testing.T) {
	book, _ := Parse("check it\n weight: stop\n for: deck\n holds: deck.note == \"😀ä\" &&\n     deck.knd == \"osb\"\n says: No.\n")
	_, errors := Compile(book, words())
	require.Len(t, errors, 1)
	assert.Equal(t, 5, errors[0].Line)
	assert.Equal(t, 6, errors[0].Column)
	assert.Equal(t, len(`deck.note == "`)+2+1+len("\" &&\n"), errors[0].From, "the face counts twice, the umlaut once")
	assert.Equal(t, "deck.knd", errors[0].Found)
}

func TestFiguresThatGoInACircleAreNamed(t *testing.T) {
	book, _ := Parse("figure a\n dimension: length\n value: b + mm(1)\nfigure b\n dimension: length\n value: c\nfigure c\n dimension: length\n value: a\nfigure d\n dimension: length\n value: a\n")
	c, errors := Compile(book, words())
	require.Len(t, errors, 1)
	assert.Equal(t, "These figures go in a circle: a → b → c → a.", errors[0].Message)
	for _, name := range []string{"a", "b", "c", "d"} {
		r := c.Figure(name, nil)
		assert.Equal(t, Faulty, r.State, name)
		assert.Equal(t, CodeCircle, r.Fault.Code)
	}
}

func TestAFigureOfAWiderScopeMayNotUseANarrowerOne(t *testing.T) {
	book, _ := Parse("figure a\n for: deck\n dimension: length\n value: depth.least\nfigure b\n dimension: length\n value: a\n")
	_, errors := Compile(book, words())
	require.Len(t, errors, 1)
	assert.Equal(t, "“a” belongs to a deck; this rule is for a job, which may have several or none.", errors[0].Message)
}

func TestAnErrorInAFiguresHeaderIsToldOnceAndNotAgainWhereItIsUsed(t *testing.T) {
	book, _ := Parse("figure a\n dimension: lenght\n value: mm(3)\ncheck b\n weight: stop\n holds: a > mm(2)\n says: No.\n")
	c, errors := Compile(book, words())
	require.Len(t, errors, 1)
	assert.Contains(t, errors[0].Remedy, "Did you mean “length”?")
	assert.Equal(t, Faulty, c.Checks("job", nil, "metric")[0].State)
}
