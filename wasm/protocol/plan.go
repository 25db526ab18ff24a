package protocol

import (
	"lowspot/engine"
	"lowspot/rules"
)

// PlanJob carries a job to be worked out, by the rulebook of this text or by the one that ships.
type PlanJob struct {
	Job  engine.Job `json:"job"`
	Book string     `json:"book,omitempty"`
}

func plan(b *Bridge, p PlanJob) (*engine.Plan, error) {
	return engine.MakePlan(&p.Job, b.rulebook(p.Book)), nil
}

// ExplainRule names one rule on one subject of a job.
type ExplainRule struct {
	PlanJob
	Rule    string         `json:"rule"`
	Subject engine.Subject `json:"subject"`
}

func explain(b *Bridge, e ExplainRule) (engine.Explanation, error) {
	explanation, found := engine.Explain(&e.Job, b.rulebook(e.Book), e.Rule, e.Subject)
	if !found {
		return explanation, engine.Problem{Code: "missing", Field: "rule", Given: e.Rule, Message: "There is no such rule on this part of the job any more.", Remedy: "Look at the findings again."}
	}
	return explanation, nil
}

// Words is the vocabulary, with the functions that rules may call.
type Words struct {
	Words     []engine.WordPlan `json:"words"`
	Functions []rules.Function  `json:"functions"`
}

func vocabulary(*Bridge, Nothing) (Words, error) {
	return Words{engine.WordList(), rules.Functions()}, nil
}

// BookText is a rulebook as its text.
type BookText struct {
	Text string `json:"text"`
}

func shippedBook(b *Bridge, _ Nothing) (BookText, error) {
	return BookText{b.rulebook("").Book.Text()}, nil
}

// CheckedBook is what is wrong with a rulebook, and how its examples came out.
type CheckedBook struct {
	Errors   []*rules.Error        `json:"errors"`
	Examples []rules.ExampleResult `json:"examples"`
}

func checkBook(b *Bridge, t BookText) (CheckedBook, error) {
	book := b.rulebook(t.Text)
	return CheckedBook{book.Errors(), book.Compiled.Examples()}, nil
}

// rulebook compiles the book of this text (empty: the one that ships), or takes it from the last times: compiling costs more than a plan.
func (b *Bridge) rulebook(text string) *engine.Rulebook {
	if text == "" {
		if b.shipped == nil {
			b.shipped = engine.ShippedRulebook()
		}
		return b.shipped
	}
	for i, known := range b.books {
		if known.text == text {
			b.books = append(append(b.books[:i:i], b.books[i+1:]...), known)
			return known.book
		}
	}
	fresh := compiledBook{text, engine.ReadRulebook(text)}
	b.books = append(b.books, fresh)
	if len(b.books) > mostBooks {
		b.books = b.books[1:]
	}
	return fresh.book
}

// BringReadings is a list of readings as text, and the survey that it is to join.
type BringReadings struct {
	Text     string          `json:"text"`
	Readings engine.Readings `json:"readings"`
}

func readReadings(_ *Bridge, b BringReadings) (engine.Brought, error) {
	return engine.BringReadings(b.Text, b.Readings), nil
}
