package engine

import "lowspot/rules"

// WordPlan is a word of the vocabulary for the page: how to ask for it and how to explain it.
type WordPlan struct {
	Name      string     `json:"name"`
	Scope     string     `json:"scope"`
	Kind      rules.Kind `json:"kind"`
	Dimension string     `json:"dimension"`
	Choices   []string   `json:"choices"`
	Asked     bool       `json:"asked"`
	Step      string     `json:"step"`
	When      string     `json:"when"` // the word that must be true for it to be asked; empty: always
	Meaning   string     `json:"meaning"`
	Example   string     `json:"example"`
	Question  string     `json:"question"`
	Why       string     `json:"why"`
	How       string     `json:"how"`
	Metric    string     `json:"metric"` // usual unit
	US        string     `json:"us"`
}

// WordList is the vocabulary for the page, in the order of the work.
func WordList() []WordPlan {
	list := make([]WordPlan, len(vocabulary))
	for i, w := range vocabulary {
		list[i] = WordPlan{
			Name: w.Name, Scope: w.Scope, Kind: w.Type.Kind, Choices: some(w.Type.Choices), Asked: w.Asked, Step: w.Step, When: w.When, Meaning: w.Meaning,
			Example: w.Example, Question: w.Question, Why: w.Why, How: w.How, Metric: w.Bare.Metric, US: w.Bare.US,
		}
		if w.Type.Kind == rules.Quantity {
			list[i].Dimension = w.Type.Dimension.Name()
		}
	}
	return list
}
