package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
)

// What the expression language could do to its host, each tried.
func TestARuleCannotReachOrCostMoreThanItMay(t *testing.T) {
	deep := func(open, inside, shut string, n int) string {
		return strings.Repeat(open, n) + inside + strings.Repeat(shut, n)
	}
	for _, c := range []struct{ name, expression, code string }{
		{"brackets too deep for the stack", deep("(", "1", ")", 2000) + " > 0", CodeLimit},
		{"brackets one level too deep", deep("(", "job.bags", ")", limitDepth+1) + " > 0", CodeLimit},
		{"lists too deep", deep("[", "1", "]", 100) + " == 1", CodeLimit},
		{"calls too deep", deep("abs(", "1", ")", 200) + " > 0", CodeLimit},
		{"brackets that a text only seems to close", `(` + strings.Repeat(`"))))" == "" || (`, 70) + `true` + strings.Repeat(")", 71), CodeLimit},
		{"nots too deep", strings.Repeat("!", 4000) + "true", CodeLimit},
		{"minuses too deep", strings.Repeat("-", 2000) + "1 > 0", CodeLimit},
		{"powers to the right", "1 > " + strings.Repeat("1**", 1300) + "1", CodeLimit},
		{"ternaries to the right", strings.Repeat("true?true:", 400) + "true", CodeLimit},
		{"lets to the right", strings.Repeat("let a=1;", 500) + "true", CodeLimit},
		{"too many nodes", strings.Repeat("1+", 300) + "1 > 0", CodeLimit},
		{"too long", "job.bags > 1" + strings.Repeat(" ", LimitField), CodeLimit},
		{"the environment", "$env != 1", CodeForbidden},
		{"the environment's parts", `$env["job"] == 1`, CodeForbidden},
		{"the environment in a function", `get($env, "job") == 1`, CodeUnknown},
		{"the environment as a name", "let $env = 1; $env > 0", CodeUnknown},
		{"a method", `job.bags.String() == "a"`, CodeForbidden},
		{"a method of a text", `"a".ToUpper() == "a"`, CodeForbidden},
		{"a range that fills memory", "sum(1..1000000000) > 1", CodeForbidden},
		{"a repeat that fills memory", `repeat("a", 1000000000) == "a"`, CodeUnknown},
		{"a pattern", `deck.note matches "(a+)+$"`, CodeForbidden},
		{"the clock", "now() > 1", CodeUnknown},
		{"a map", `{"a": 1}.a > 0`, CodeForbidden},
		{"a built-in by its other call", "::len([1]) > 0", CodeUnknown},
		{"a built-in by a pipe", "[1] | len() > 0", CodeUnknown},
		{"filter", "count(filter([1], # > 0), # > 0) > 0", CodeUnknown},
		{"reduce", "reduce([1], #acc + #, 0) > 0", CodeUnknown},
		{"the loop's number", "any([1], #index > 0)", CodeForbidden},
		{"a loop's value outside", "# > 0", CodeSyntax},
		{"a primitive by its name", "·number(1) > 0", CodeSyntax},
		{"a nil", "nil == nil", CodeForbidden},
		{"a series", "1; true", CodeForbidden},
		{"a slice", "[1, 2][0:1] == [1]", CodeForbidden},
		{"an element", "[1, 2][0] > 0", CodeForbidden},
		{"an optional member", `deck?.kind == "osb"`, CodeForbidden},
		{"whole numbers that are too large to write", "9223372036854775808 > 0", CodeSyntax},
		{"a dimension that wraps round", "let a = mm(1) ** 6; let b = a * a; b * b * b * b * b * b * b * b * b * b * b > mm(1)", CodeDimension},
	} {
		book, _ := Parse("check it\n weight: stop\n for: deck\n says: No.\n")
		book.Rules[0].Holds = c.expression
		_, errors := Compile(book, words())
		require.NotEmpty(t, errors, c.name)
		assert.Equal(t, c.code, errors[0].Code, "%s: %v", c.name, errors[0])
	}
}

func TestALoopInALoopStaysWithinReach(t *testing.T) {
	list := "[" + strings.Repeat("1,", 19) + "1]"
	inner := "count(a, count(a, # > 0) > 0)"
	book, _ := Parse("figure two\n dimension: number\n value: let a = " + list + "; " + inner + "\nfigure three\n dimension: number\n value: let a = " + list + "; count(a, " + inner + " > 0)\n")
	c, errors := Compile(book, words())
	require.Len(t, errors, 1)
	assert.Equal(t, CodeLimit, errors[0].Code)
	assert.Equal(t, 20.0, c.Figure("two", nil).Value.Number)

	book, _ = Parse("figure it\n dimension: number\n value: count(" + longList(190) + ", count(" + longList(190) + ", # > 0) > 0)\n")
	c, errors = Compile(book, words())
	require.Empty(t, errors)
	r := c.Figure("it", nil)
	assert.Equal(t, Faulty, r.State, "the machine's memory is counted")
	assert.Equal(t, "it", r.Fault.Rule)
	assert.Contains(t, r.Fault.Message, "goes through more than a rule may.")
}

func longList(n int) string { return "[" + strings.Repeat("1,", n-1) + "1]" }

func TestABookCannotCostMoreThanItMay(t *testing.T) {
	_, errors := Parse(strings.Repeat("# a comment that goes on\n", 20000))
	require.NotEmpty(t, errors)
	assert.Equal(t, CodeLimit, errors[0].Code)

	book, errors := Parse(strings.Repeat("check a\n", LimitRules+3))
	assert.NotEmpty(t, errors)
	assert.Len(t, book.Rules, LimitRules)

	book, errors = Parse("check a\n" + strings.Repeat(" example: => kept\n", LimitExamples+2))
	assert.Len(t, errors, 2)
	assert.Len(t, book.Rules[0].Examples, LimitExamples)
	assert.Len(t, book.Ending, 2, "what is too much is kept as comments")

	_, errors = Parse(strings.Repeat("nonsense\n", 5000))
	assert.Len(t, errors, limitErrors)

	fat := strings.Repeat("{1},a=", LimitField)
	one := &Book{Rules: []Rule{{Check: true, Name: "it", For: "job", Weight: Stop, Holds: "true", Says: strings.Repeat("{1}", limitPieces+1), Remedy: fat, Examples: []string{fat}}}}
	_, errors = Compile(one, words())
	require.Len(t, errors, 4)
	for _, e := range errors {
		assert.Equal(t, CodeLimit, e.Code)
	}

	many := &Book{Rules: make([]Rule, LimitRules+1)}
	_, errors = Compile(many, words())
	assert.Len(t, errors, limitErrors)
}

func TestAChainOfFiguresIsCutBeforeItCostsTheStack(t *testing.T) {
	var w strings.Builder
	w.WriteString("figure f0\n dimension: number\n value: 1\n")
	for i := 1; i < LimitRules; i++ {
		name := func(i int) string { return "f" + strings.Repeat("a", i/26) + string(rune('a'+i%26)) }
		before := "f0"
		if i > 1 {
			before = name(i - 1)
		}
		w.WriteString("figure " + name(i) + "\n dimension: number\n value: " + before + " + 1\n")
	}
	book, errors := Parse(w.String())
	require.Empty(t, errors)
	c, errors := Compile(book, words())
	require.NotEmpty(t, errors)
	assert.Equal(t, CodeLimit, errors[0].Code)
	for _, r := range c.Figures("job", nil) {
		assert.Contains(t, []State{Known, Faulty}, r.State)
	}
}

// A word that nobody has given reads as nothing at all: never as zero, "" or no.
func TestNothingIsEverReadAsZero(t *testing.T) {
	for _, condition := range []string{
		"job.bags == 0", "job.bags < 1", "job.bags >= 0", "!deck.sound", "deck.sound == false", `deck.note == ""`, `deck.note != "a"`, `deck.kind != "osb"`,
		`deck.kind not in ["osb"]`, "depth.least * 0 == mm(0)", "min(depth.least, mm(1)) >= mm(0)", "any([deck.sound], !#)", "let a = job.bags; a == 0",
	} {
		out := judged(t, condition, "")
		assert.Equal(t, Unanswered, out.State, condition)
		assert.Len(t, out.Missing, 1, condition)
	}
}

func TestACompiledBookIsNotChangedByWorkingItOut(t *testing.T) {
	c := compiled(t, "figure f\n for: deck\n dimension: length\n value: depth.least * 2\ncheck it\n weight: stop\n for: deck\n holds: f > mm(3)\n says: {f}\n")
	thin, thick := given(t, words(), "depth.least = 1 mm"), given(t, words(), "depth.least = 9 mm")
	done := make(chan bool)
	for i := 0; i < 8; i++ {
		facts, want := thin, Broken
		if i%2 == 0 {
			facts, want = thick, Kept
		}
		go func() {
			ok := true
			for n := 0; n < 100; n++ {
				ok = ok && c.Checks("deck", facts, quantity.Metric)[0].State == want
			}
			done <- ok
		}()
	}
	for i := 0; i < 8; i++ {
		assert.True(t, <-done)
	}
}
