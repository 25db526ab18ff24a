package rules

// Bringing a later shipped book and a person's edits together, rule by rule.

// Conflict is a rule that both sides changed, each in its own way. A nil side has no such rule.
type Conflict struct {
	Rule    string `json:"rule"`
	Base    *Rule  `json:"base"`    // as it shipped when the person changed it
	Users   *Rule  `json:"users"`   // as the person has it: the merged book keeps this one
	Shipped *Rule  `json:"shipped"` // as it ships now
}

// Merge takes what ships now, what the person has and what had shipped when they began, and makes one book: whoever changed a rule wins, and where
// both did, the person's stands and the conflict is told. The order is that of what ships now, the person's own rules after.
func Merge(shipped, users, base *Book) (*Book, []Conflict) {
	merged := &Book{Title: shipped.Title, Version: shipped.Version, Opening: shipped.Opening, Ending: shipped.Ending}
	if users.Title != base.Title {
		merged.Title = users.Title
	}
	var conflicts []Conflict
	settle := func(name string) {
		now, mine, was := shipped.Find(name), users.Find(name), base.Find(name)
		kept, both := whoChanged(now, mine, was)
		if both {
			conflicts = append(conflicts, Conflict{name, was, mine, now})
		}
		if kept != nil {
			merged.Rules = append(merged.Rules, *kept)
		}
	}
	for i := range shipped.Rules {
		settle(shipped.Rules[i].Name)
	}
	for i := range users.Rules {
		if name := users.Rules[i].Name; shipped.Find(name) == nil {
			settle(name)
		}
	}
	return merged, conflicts
}

// whoChanged decides one rule; both tells that the two sides changed it differently.
func whoChanged(now, mine, was *Rule) (kept *Rule, both bool) {
	switch {
	case now.same(mine), mine.same(was):
		return now, false
	case now.same(was):
		return mine, false
	}
	return mine, true
}

// same tells whether two rules are written alike, their theme included.
func (r *Rule) same(o *Rule) bool {
	if r == nil || o == nil {
		return r == o
	}
	return r.Theme == o.Theme && r.Text() == o.Text()
}

// Alike tells whether two rules say the same: their history and their comments are no part of that.
func (r *Rule) Alike(o *Rule) bool {
	if r == nil || o == nil {
		return r == o
	}
	a, b := *r, *o
	a.History, a.Notes, b.History, b.Notes = nil, nil, nil, nil
	return a.same(&b)
}

// Changed replaces the rule of that name by another, and notes in its history what the named fields said before, when and by whom. A rule that
// is not there yet is added. The date and the name come from the caller.
func (b *Book) Changed(to Rule, who, when string) {
	before := b.Find(to.Name)
	if before == nil {
		b.Rules = append(b.Rules, to)
		return
	}
	to.History = append([]string{}, before.History...)
	for _, key := range before.keys() {
		if before.list(key) != nil {
			continue
		}
		if was, is := firstOf(before.texts(key)), firstOf(to.texts(key)); to.Check == before.Check && was != is {
			to.History = append(to.History, flat(when+" "+who+": "+key+": "+was))
		}
	}
	if over := len(to.History) - LimitExamples; over > 0 {
		to.History = to.History[over:]
	}
	*before = to
}

func firstOf(texts []string) string {
	if len(texts) == 0 {
		return "(nothing)"
	}
	return texts[0]
}
