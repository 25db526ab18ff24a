package rules

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const tidy = `# What this book is for.
title: Trial
version: 3

theme: Depth

# Why there is a least depth.
figure least_depth
  for: deck
  dimension: length
  words: The thinnest the pour may be.
  # wood first
  value: deck.wood
      ? mm(10)
      : mm(3)
  source: common practice
  example: deck.wood = yes => 10 mm
  # the other deck
  example: deck.wood = no => 3 mm
  was: 2024-05-01 the shop: mm(12) because of the old bag

figure mood
  kind: choice
  choices: glad, sad
  value: "glad"

theme: Strength

check thin
  weight: stop
  for: deck
  applies: deck.wood
  holds: depth.least >= least_depth
  says: The pour is {depth.least}.
  remedy: Raise it.
  asks: How thin is it?
  caution: Mind the dust.
  off: not here

# The end.
`

func TestABookIsWrittenAsItWasRead(t *testing.T) {
	book, errors := Parse(tidy)
	require.Empty(t, errors)
	assert.Equal(t, tidy, book.Text())
	assert.Equal(t, "Trial", book.Title)
	assert.Equal(t, "deck.wood\n? mm(10)\n: mm(3)", book.Rules[0].Value)
	assert.Equal(t, "Strength", book.Find("thin").Theme)
	assert.Equal(t, "not here", book.Find("thin").Off)
	assert.Equal(t, []string{"glad", "sad"}, book.Find("mood").Choices)
	assert.Nil(t, book.Find("nobody"))
	_, errors = Compile(book, words())
	assert.Empty(t, errors)
}

func TestIndentsLineEndsAndMarksMayDiffer(t *testing.T) {
	other := "\ufefftitle: Trial\r\nversion: 3\r\ncheck thin\r\n\tweight: stop\r\n\tholds:\r\n\t\tdepth.least >=\r\n\r\n\t\t mm(3)\r\n\tsays: No.\r\n\tfor: deck"
	book, errors := Parse(other)
	require.Empty(t, errors)
	assert.Equal(t, "depth.least >=\nmm(3)", book.Rules[0].Holds)
	_, errors = Compile(book, words())
	assert.Empty(t, errors)
}

func TestNoLineIsLost(t *testing.T) {
	book, errors := Parse("check a\n  weight: stop\n  wieght: fix\n    and more of it\nnonsense at the margin\n  holds: true\n")
	require.Len(t, errors, 2)
	text := book.Text()
	for _, line := range []string{"# wieght: fix", "# and more of it", "# nonsense at the margin", "holds: true"} {
		assert.Contains(t, text, line)
	}
	again, errors := Parse(text)
	assert.Empty(t, errors)
	assert.Equal(t, text, again.Text())
}

func TestARuleMadeByAProgramReadsBack(t *testing.T) {
	book := &Book{Title: "A\nB", Rules: []Rule{{Check: true, Name: "a", Theme: " T ", For: "job", Weight: Fix, Holds: "job.bags\n  > 1\n\n# 2", Says: "Is \x07 this\nright?",
		Examples: []string{"job.bags = 2 => kept"}, Notes: []Note{{"holds", "why\nso"}}}}}
	again, errors := Parse(book.Text())
	require.Empty(t, errors)
	assert.Equal(t, "job.bags\n> 1 # 2", again.Rules[0].Holds)
	assert.Equal(t, "Is  this\nright?", again.Rules[0].Says)
	assert.Equal(t, []Note{{"holds", "# why so"}}, again.Rules[0].Notes)
	assert.Equal(t, again.Text(), book.Text())
}

// Whatever is read, writing and reading it again changes nothing, and nothing panics.
func FuzzBook(f *testing.F) {
	broken, err := os.ReadFile("testdata/broken.rules")
	require.NoError(f, err)
	for _, seed := range []string{tidy, string(broken), "check a\n  says: x\n\t# y\n   z", "figure a\n value: 1\n  # 2\n", "title:\n# a\nversion: 2\n# b", " check", "theme: a\ncheck b\ntheme:\ncheck c"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		book, _ := Parse(text)
		once := book.Text()
		again, errors := Parse(once)
		for _, e := range errors {
			if e.Code != CodeLimit {
				t.Fatalf("what was written can't be read: %v\n%s", e, once)
			}
		}
		if len(errors) == 0 && again.Text() != once {
			t.Fatalf("written differently:\n%s\n---\n%s", once, again.Text())
		}
		c, errors := Compile(book, words())
		for _, e := range errors {
			if e.Message == "" || e.From > e.To {
				t.Fatalf("an error that helps nobody: %+v", e)
			}
		}
		c.Examples()
		for _, scope := range scopeNames() {
			c.Checks(scope, Facts{}, "metric")
			c.Figures(scope, Facts{})
		}
	})
}
