package rules

import "strings"

// expression is a field's expression, or one that a sentence puts in, which is compiled when it is first wanted.
type expression struct {
	source source
	wanted []shape // what it must come to; none: anything
	done   bool
	code   *code
	broken *Error   // why it can't be used
	told   []*Error // what is wrong with it
}

// newExpression is a field's expression; nil where nothing is written.
func newExpression(r *Rule, field, text string, wanted ...shape) *expression {
	if strings.TrimSpace(text) == "" {
		return nil
	}
	return &expression{source: source{rule: r, field: field, whole: text, text: text}, wanted: wanted}
}

// code compiles an expression where it wasn't yet. Without code it can't be used, and why is told.
func (c *Compiled) code(e *expression) (*code, *Error) {
	if e == nil {
		return nil, nil
	}
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.compile(e)
	return e.code, e.broken
}

// tell compiles an expression where it wasn't yet, and tells what is wrong with it.
func (c *Compiled) tell(e *expression) []*Error {
	if e == nil {
		return nil
	}
	c.code(e)
	return e.told
}

// compile is code for who holds the mutex already.
func (c *Compiled) compile(e *expression) {
	if e.done {
		return
	}
	e.done = true
	e.code, e.told = compileExpression(c.names, e.source.rule.For, e.source, e.wanted...)
	switch {
	case len(e.told) > 0:
		e.broken = e.told[0]
	case e.code == nil:
		e.broken = &Error{Code: CodeUnknown, Rule: e.source.rule.Name, Field: e.source.field, Message: "This uses a figure that has an error of its own.", Remedy: "Put that one right first."}
	}
}

// figure compiles a figure where it wasn't yet.
func (c *Compiled) figure(i int) *figure {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.settle(i)
	return &c.figures[i]
}

// shape is what a word or a figure is.
func (c *Compiled) shape(slot int) shape {
	n := &c.names.list[slot]
	s := n.shape
	if n.figure >= 0 {
		s.percent = c.figure(n.figure).percent
	}
	return s
}
