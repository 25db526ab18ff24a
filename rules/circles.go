package rules

// The order of figures: circles and chains that are too long.

import (
	"strings"
)

// findCircles breaks the figures that need each other, and names the circle.
func (c *compiling) findCircles() {
	depths := make([]int, len(c.figures)) // 0 not visited, -1 being visited
	var path []int
	var visit func(i int) int
	visit = func(i int) int {
		f := &c.figures[i]
		switch {
		case depths[i] > 0:
			return depths[i]
		case depths[i] < 0:
			c.circle(path, i)
			return 1
		}
		depths[i] = -1
		path = append(path, i)
		deepest := 0
		for _, used := range c.uses(f) {
			deepest = max(deepest, visit(used))
		}
		path = path[:len(path)-1]
		depths[i] = deepest + 1
		if depths[i] > limitChain && f.broken == nil {
			f.broken = c.fail(f.rule, "value", CodeLimit, "More than "+count(limitChain, "figure")+" hang on one another here.", "Put some of them together.")
			f.code = nil
		}
		return depths[i]
	}
	for i := range c.figures {
		visit(i)
	}
}

func (c *compiling) circle(path []int, back int) {
	var turn []string
	for start, i := range path {
		if i == back {
			for _, j := range path[start:] {
				turn = append(turn, c.figures[j].rule.Name)
			}
		}
	}
	turn = append(turn, c.figures[back].rule.Name)
	f := &c.figures[back]
	broken := c.fail(f.rule, "value", CodeCircle, "These figures go in a circle: "+strings.Join(turn, " → ")+".", "Give one of them a value that does not need the others.")
	for _, i := range path {
		if contains(turn, c.figures[i].rule.Name) {
			c.figures[i].broken, c.figures[i].code = broken, nil
		}
	}
}
