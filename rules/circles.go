package rules

// The order of figures: each is compiled after those that it uses, and circles and chains that are too long are told.

import (
	"slices"
	"strings"
)

// settle compiles a figure and those that it uses, where they weren't yet.
func (c *Compiled) settle(i int) {
	f := &c.figures[i]
	switch {
	case f.depth < 0:
		c.circle(slices.Index(c.path, i))
		return
	case f.depth > 0 || f.broken != nil:
		return
	}
	f.depth = -1
	c.path = append(c.path, i)
	c.compile(f.value)
	c.path = c.path[:len(c.path)-1]
	f.depth = 1
	if f.broken == nil {
		f.broken = f.value.broken
	}
	if f.value.code == nil {
		return
	}
	for slot := range f.value.code.reads {
		if used := c.names.list[slot].figure; used >= 0 {
			f.depth = max(f.depth, c.figures[used].depth+1)
		}
	}
	f.percent = f.value.code.shape.percent
	if f.depth > limitChain && f.broken == nil {
		f.broken = f.rule.failField("value", CodeLimit, "More than "+count(limitChain, "figure")+" hang on one another here.", "Put some of them together.")
		f.told = append(f.told, f.broken)
	}
}

// circle breaks the figures that need each other, and names the circle from the first of them on.
func (c *Compiled) circle(from int) {
	turn := slices.Clone(c.path[from:])
	first := slices.Index(turn, slices.Min(turn))
	turn = append(turn[first:], turn[:first]...)
	var names []string
	for _, i := range append(turn, turn[0]) {
		names = append(names, c.figures[i].rule.Name)
	}
	f := &c.figures[turn[0]]
	broken := f.rule.failField("value", CodeCircle, "These figures go in a circle: "+strings.Join(names, " → ")+".", "Give one of them a value that does not need the others.")
	f.told = append(f.told, broken)
	for _, i := range turn {
		c.figures[i].broken = broken
	}
}
