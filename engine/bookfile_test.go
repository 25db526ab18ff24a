package engine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/rules"
	"lowspot/rules/shipped"
)

func TestARulebookAndSheetsReadBackAsTheyWereWritten(t *testing.T) {
	generic := GenericSheets("us")
	file := BookFile{Book: ShippedRulebook().Book.Text(), Sheets: []KindSheet{{"leveller", generic["leveller"]}, {"primer", Sheet{Name: "Two words: and more", Values: Answers{"primer.coats": "2"}}}}}
	again, problems := ReadBookFile(file.Text())
	require.Empty(t, problems)
	assert.True(t, file.Text() == again.Text())
	assert.Equal(t, generic["leveller"].Values, again.Sheets[0].Sheet.Values)
	assert.Equal(t, "Two words: and more", again.Sheets[1].Sheet.Name)
	book, errors := rules.Parse(again.Book)
	require.Empty(t, errors)
	assert.True(t, file.Book == book.Text())
}

func TestARulebookAloneIsAFileToo(t *testing.T) {
	file, problems := ReadBookFile(shipped.Text())
	assert.Empty(t, problems)
	assert.Empty(t, file.Sheets)
	assert.True(t, shipped.Text() == file.Book)
}

func TestWhatIsWrongWithAFileIsToldByLineAndNothingOfItIsTaken(t *testing.T) {
	for _, c := range []struct{ text, field, message string }{
		{"lowspot rules 2\n", "line 1", "later version"},
		{"lowspot rules 1\nsheet paint: A\n", "line 2", "paint"},
		{"lowspot rules 1\nsheet leveller: A\n  sheet.bag_mass: 25 litres\n", "line 3", "mass"},
		{"lowspot rules 1\nsheet leveller: A\n  primer.coats: 2\n", "line 3", "primer.coats"},
		{"lowspot rules 1\nsheet leveller: A\n  heavy\n", "line 3", "colon"},
		{"lowspot rules 1\nfigure x\n", "line 2", "begins no sheet"},
		{"{\"some\": \"other file\"}", "file", "no rule"},
		{strings.Repeat("x", rules.LimitBook+1), "file", ""},
		{"", "file", "no rule"},
	} {
		preview := PreviewFile(c.text, ShippedRulebook())
		require.NotEmpty(t, preview.Problems, c.text[:min(len(c.text), 60)])
		assert.Equal(t, c.field, preview.Problems[0].Field)
		assert.Contains(t, preview.Problems[0].Message, c.message)
		assert.NotEmpty(t, preview.Problems[0].Remedy)
	}
}

func TestAPreviewNamesEachRuleThatWouldChange(t *testing.T) {
	book := ShippedRulebook()
	edited, _ := shipped.Book()
	rule := *edited.Find("least_depth")
	rule.Value = "mm(6)"
	mine := ChangeRule(book, rule, "Ada", "2026-05-02")
	mine = LeaveOutRule(ReadRulebook(mine), "deep-mean") + "\ncheck no-sunday-pour\n  weight: watch\n  holds: crew.people >= 2\n  says: Two people at least.\n  example: crew.people = 1 => broken\n"
	preview := PreviewFile(BookFile{Book: mine}.Text(), book)
	require.Empty(t, preview.Problems)
	require.Empty(t, preview.Errors)
	require.Len(t, preview.Rules, 3)
	assert.Equal(t, "deep-mean", preview.Rules[0].Name)
	assert.Nil(t, preview.Rules[0].After)
	assert.Equal(t, "mm(6)", preview.Rules[1].After.Rule.Value)
	assert.Contains(t, preview.Rules[1].After.Text, "2026-05-02 Ada: value: deck.wood ?")
	assert.Nil(t, preview.Rules[2].Before)
}

func TestALaterShippedBookKeepsThePersonsEditsAndTellsWhereBothChanged(t *testing.T) {
	base := strings.NewReplacer("mm(40)", "mm(35)", "stays in buckets", "remains in buckets").Replace(shipped.Text())
	mine := strings.Replace(strings.Replace(base, "mm(35)", "mm(25)", 1), "sheet.least_depth_wood ?? mm(10)", "sheet.least_depth_wood ?? mm(8)", 1)
	merged := MergeShipped(ReadRulebook(mine), base)
	require.Len(t, merged.Conflicts, 1)
	assert.Equal(t, "deep-mean", merged.Conflicts[0].Name)
	assert.Contains(t, merged.Conflicts[0].Shipped.Text, "mm(40)")
	assert.True(t, strings.Contains(merged.Book, "mm(8)"), "the person's edit stays")
	assert.True(t, strings.Contains(merged.Book, "mm(25)"), "where both changed, the person's stands")
	require.Len(t, merged.Rules, 1)
	assert.Equal(t, "waste_share", merged.Rules[0].Name)
}

func TestAChangedRuleMarksWhatItTouches(t *testing.T) {
	book, _ := shipped.Book()
	rule := *book.Find("least_depth")
	rule.Value = "mm(14)"
	mine := ReadRulebook(ChangeRule(ShippedRulebook(), rule, "me", "2026-05-02"))
	touched, others := 0, 0
	for _, f := range MakePlan(DemoJob("demo"), mine).Findings {
		if f.Rule == "thin-over-wood" || f.Rule == "thin-over-mineral" {
			assert.Equal(t, []string{"least_depth"}, f.Changed)
			touched++
		} else if f.Changed == nil {
			others++
		}
	}
	assert.Positive(t, touched)
	assert.Positive(t, others)
	for _, f := range MakePlan(DemoJob("demo"), ShippedRulebook()).Findings {
		assert.Nil(t, f.Changed, f.Rule)
	}
}

func TestAFigureThatThePlanRestsOnMayFailButNeverYieldsANumberThatLooksRight(t *testing.T) {
	for name, value := range map[string]string{"least_depth": "mm(3) + kg(1)", "bag_yield": "litres(1) / 0", "bag_mass": "kg(25", "waste_share": "nobody"} {
		rule := *ShippedRulebook().Book.Find(name)
		rule.Value = value
		plan := MakePlan(DemoJob("demo"), ReadRulebook(ChangeRule(ShippedRulebook(), rule, "me", "2026-05-02")))
		assert.False(t, plan.Totals.Ready, name)
		require.Len(t, plan.Problems, 1, name)
		assert.Equal(t, "rulebook/"+name, plan.Problems[0].Field)
		rule.Value, rule.Off = ShippedRulebook().Book.Find(name).Value, "not here"
		plan = MakePlan(DemoJob("demo"), ReadRulebook(ChangeRule(ShippedRulebook(), rule, "me", "2026-05-02")))
		assert.False(t, plan.Totals.Ready, name)
		assert.Equal(t, "rulebook/"+name, plan.Problems[0].Field)
	}
}

func TestADraftIsTriedOnTheJobWithoutBeingKept(t *testing.T) {
	book := ShippedRulebook()
	rule := *book.Book.Find("least_depth")
	rule.Value = "deck.wood ? mm(20) : mm(3)"
	tried := TryRule(DemoJob("demo"), book, rule)
	assert.Empty(t, tried.View.Errors)
	assert.True(t, tried.View.Changed)
	require.NotNil(t, tried.Effect)
	assert.Greater(t, tried.Effect.BagsAfter, tried.Effect.BagsBefore)
	values := map[string]string{}
	for _, on := range tried.On {
		values[on.Subject.Name] = on.Text
	}
	assert.Equal(t, "20 mm", values["Plywood"])
	failed := 0
	for _, e := range tried.View.Examples {
		if !e.Passed {
			failed++
		}
	}
	assert.Positive(t, failed, "the examples run against the draft")
	rule.Value = "mm(20) + kg(1)"
	assert.NotEmpty(t, TryRule(nil, book, rule).View.Errors)
	assert.NotEqual(t, rule.Value, book.Book.Find("least_depth").Value)
}

func TestEveryRuleIsShownOnEveryPartOfTheJobThatItSpeaksOf(t *testing.T) {
	book := ShippedRulebook()
	on := RulesOn(DemoJob("demo"), book)
	parts := map[string]int{}
	for _, r := range on {
		parts[r.Rule]++
	}
	assert.Equal(t, 2, parts["least_depth"], "both deck areas")
	assert.Equal(t, 1, parts["bag_yield"])
	view := ViewBook(book)
	assert.Empty(t, view.Errors)
	assert.Empty(t, view.Left)
	for _, r := range view.Rules {
		assert.False(t, r.Changed, r.Rule.Name)
		assert.NotEmpty(t, r.Examples, r.Rule.Name)
	}
}

func FuzzReadBookFile(f *testing.F) {
	f.Add(BookFile{Book: "figure a\n  dimension: length\n  value: mm(3)\n", Sheets: []KindSheet{{"leveller", GenericSheets("metric")["leveller"]}}}.Text())
	f.Add("lowspot rules 1\nrulebook\n")
	f.Add("lowspot rules 1\nsheet leveller:\n  sheet.bag_mass: 25 kg\n\nrulebook\nfigure a")
	f.Fuzz(func(t *testing.T, text string) {
		file, problems := ReadBookFile(text)
		if len(problems) > 0 {
			return
		}
		again, problems := ReadBookFile(file.Text())
		if strings.TrimSpace(file.Book) != "" || strings.HasPrefix(text, bookFileHead) {
			assert.Empty(t, problems)
			assert.Equal(t, file.Text(), again.Text())
		}
	})
}
