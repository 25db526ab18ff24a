package rules

import "strings"

// names are the words of the vocabulary and the figures of the book, each with a slot.
type names struct {
	list    []named
	slots   map[string]int
	parts   map[string]bool // first parts of dotted names
	choices map[string]bool // every option of a choice
	percent func(int) bool  // compiles a figure, by its number, and tells whether it is shown in per cent
}

type named struct {
	name, scope string
	shape       shape
	asked       bool
	figure      int // its number among the figures, or -1 for a word
}

func nameWords(v Vocabulary) *names {
	n := &names{slots: map[string]int{}, parts: map[string]bool{}, choices: map[string]bool{}}
	for _, w := range v {
		s := w.Type.shape()
		s.percent = strings.HasSuffix(w.Example, "%")
		n.add(named{name: w.Name, scope: w.Scope, shape: s, asked: w.Asked, figure: -1})
	}
	return n
}

func (n *names) add(one named) {
	n.slots[one.name] = len(n.list)
	n.list = append(n.list, one)
	if part, _, dotted := strings.Cut(one.name, "."); dotted {
		n.parts[part] = true
	}
	for _, choice := range one.shape.choices {
		n.choices[choice] = true
	}
}

// taken tells that a name means something already.
func (n *names) taken(name string) bool {
	_, known := n.slots[name]
	return known || n.parts[name]
}

func (n *names) isChoice(text string) bool { return n.choices[text] }

// visible are the names that a rule of that scope may use.
func (n *names) visible(scope string) []string {
	var list []string
	for _, one := range n.list {
		if reaches(scope, one.scope) {
			list = append(list, one.name)
		}
	}
	return list
}

// reaches tells whether a rule of one scope sees the words of another: its own and those above.
func reaches(from, to string) bool {
	for range Scopes {
		if from == to {
			return true
		}
		from = above(from)
	}
	return false
}

func above(scope string) string {
	for _, s := range Scopes {
		if s.Name == scope {
			return s.Above
		}
	}
	return ""
}

func scopeNames() []string {
	var list []string
	for _, s := range Scopes {
		list = append(list, s.Name)
	}
	return list
}
