package rules

// Compiling a book: every rule is checked on its own, so that one bad rule never takes the others with it.

import (
	"sort"
	"strings"
)

// limitChain is how many figures may hang on one another; each costs stack when it is worked out.
const limitChain = 64

// Compiled is a book ready to be worked out, on any number of facts. It is not changed by that.
type Compiled struct {
	names   *names
	figures []figure
	checks  []check
}

type figure struct {
	rule     *Rule
	slot     int
	code     *code  // nil when broken
	applies  *code  // where it is worth telling; nil: always
	broken   *Error // why it can't be worked out
	examples []example
}

type check struct {
	rule     *Rule
	applies  *code // nil: always
	holds    *code
	says     *template
	remedy   *template
	broken   *Error
	examples []example
}

// Compile checks a book against a vocabulary. With errors the rules that are right still work; the others come out faulty.
func Compile(b *Book, v Vocabulary) (*Compiled, []*Error) {
	c := &compiling{Compiled: &Compiled{names: nameWords(v)}, seen: map[string]bool{}}
	if len(b.Rules) > LimitRules {
		c.errors = append(c.errors, &Error{Code: CodeLimit, Message: "The rulebook has more than " + count(LimitRules, "rule") + "; those after are left out.", Remedy: "Split the book."})
	}
	rules := make([]Rule, min(len(b.Rules), LimitRules))
	copy(rules, b.Rules)
	for i := range rules {
		c.header(&rules[i])
	}
	for i := range c.figures {
		c.compileFigure(&c.figures[i])
	}
	c.findCircles()
	for i := range rules {
		if rules[i].Check {
			c.compileCheck(&rules[i])
		}
	}
	c.readExamples()
	sort.SliceStable(c.errors, func(i, j int) bool {
		a, b := c.errors[i], c.errors[j]
		return a.Line < b.Line || a.Line == b.Line && a.Column < b.Column
	})
	if len(c.errors) > limitErrors {
		c.errors = c.errors[:limitErrors]
	}
	return c.Compiled, c.errors
}

type compiling struct {
	*Compiled
	seen   map[string]bool
	errors []*Error
}

// fail tells an error of a whole field.
func (c *compiling) fail(r *Rule, field, code, message, remedy string) *Error {
	e := &Error{Code: code, Rule: r.Name, Field: field, Message: message, Remedy: remedy}
	r.locate(e, field, nil)
	c.errors = append(c.errors, e)
	return e
}

// expression compiles one field's expression; broken is why it can't be used.
func (c *compiling) expression(r *Rule, field, text string, wanted shape) (*code, *Error) {
	out, errors := compileExpression(c.names, r.For, source{rule: r, field: field, whole: text, text: text}, wanted)
	c.errors = append(c.errors, errors...)
	if out == nil && len(errors) == 0 {
		errors = []*Error{{Code: CodeUnknown, Rule: r.Name, Field: field, Message: "This uses a figure that has an error of its own.", Remedy: "Put that one right first."}}
	}
	if out == nil {
		return nil, errors[0]
	}
	return out, nil
}

func (c *compiling) compileFigure(f *figure) {
	if f.broken != nil {
		return
	}
	if strings.TrimSpace(f.rule.Value) == "" {
		f.broken = c.fail(f.rule, "value", CodeFormat, "This figure has no value.", "Write “value:” with an expression.")
		return
	}
	f.code, f.broken = c.expression(f.rule, "value", f.rule.Value, c.names.list[f.slot].shape)
	if strings.TrimSpace(f.rule.Applies) != "" {
		f.applies, _ = c.expression(f.rule, "applies", f.rule.Applies, truthShape)
	}
	if f.code != nil && f.code.shape.percent {
		c.names.list[f.slot].shape.percent = true
	}
}

func (c *compiling) compileCheck(r *Rule) {
	out := check{rule: r}
	note := func(e *Error) {
		if out.broken == nil {
			out.broken = e
		}
	}
	if r.Weight != Stop && r.Weight != Fix && r.Weight != Watch {
		note(c.fail(r, "weight", CodeFormat, "A check's weight is stop, fix or watch; this says “"+r.Weight+"”.", "Write “weight: stop” where nobody should pour before it is put right."))
	}
	if strings.TrimSpace(r.Holds) == "" {
		note(c.fail(r, "holds", CodeFormat, "This check has no condition.", "Write “holds:” with an expression."))
	} else {
		var broken *Error
		out.holds, broken = c.expression(r, "holds", r.Holds, truthShape)
		note(broken)
	}
	if strings.TrimSpace(r.Applies) != "" {
		var broken *Error
		out.applies, broken = c.expression(r, "applies", r.Applies, truthShape)
		note(broken)
	}
	if strings.TrimSpace(r.Says) == "" {
		note(c.fail(r, "says", CodeFormat, "This check says nothing.", "Write “says:” with a sentence; {depth.least} puts a value in."))
	}
	var errors []*Error
	out.says, errors = compileTemplate(c.names, r, "says", r.Says)
	c.errors = append(c.errors, errors...)
	out.remedy, errors = compileTemplate(c.names, r, "remedy", r.Remedy)
	c.errors = append(c.errors, errors...)
	c.checks = append(c.checks, out)
}
