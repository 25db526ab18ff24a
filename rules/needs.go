package rules

// Needs are the words that a figure or a check reads, itself or through figures, in the order of the vocabulary.
func (c *Compiled) Needs(name string) []string {
	reached := map[int]bool{}
	c.reachAll(name, reached)
	var words []string
	for slot, n := range c.names.list {
		if reached[slot] && n.figure < 0 {
			words = append(words, n.name)
		}
	}
	return words
}

func (c *Compiled) reachAll(name string, reached map[int]bool) {
	for i := range c.figures {
		if c.figures[i].rule.Name == name {
			c.reach(c.figure(i).value, reached)
		}
	}
	for i := range c.checks {
		if c.checks[i].rule.Name == name {
			c.reach(c.checks[i].applies, reached)
			c.reach(c.checks[i].holds, reached)
		}
	}
}

// Uses are the figures that a figure or a check reads, itself or through others, in the order of the book.
func (c *Compiled) Uses(name string) []string {
	reached := map[int]bool{}
	c.reachAll(name, reached)
	var figures []string
	for slot, n := range c.names.list {
		if reached[slot] && n.figure >= 0 {
			figures = append(figures, n.name)
		}
	}
	return figures
}

func (c *Compiled) reach(from *expression, reached map[int]bool) {
	code, _ := c.code(from)
	if code == nil {
		return
	}
	for slot := range code.reads {
		if !reached[slot] {
			reached[slot] = true
			if i := c.names.list[slot].figure; i >= 0 {
				c.reach(c.figure(i).value, reached)
			}
		}
	}
}
