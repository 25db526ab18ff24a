package rules

// Compiling a book: every rule is checked on its own, so that one bad rule never takes the others with it. What stands round the expressions is
// checked at once, an expression when it is first wanted: a job runs few of a book's, and compiling one costs more than running it a hundred times.

import (
	"sort"
	"strings"
	"sync"
)

// limitChain is how many figures may hang on one another; each costs stack when it is worked out.
const limitChain = 64

// Compiled is a book ready to be worked out, on any number of facts. It is not changed by that.
type Compiled struct {
	names    *names
	figures  []figure
	checks   []check
	told     []*Error        // of what stands round the expressions
	examples func() []*Error // reads the rules' examples and tells what is wrong with them
	errors   func() []*Error
	runs     sync.Pool  // that have ended
	mutex    sync.Mutex // of all compiling
	path     []int      // the figures that are being compiled, each for the one before it
}

type figure struct {
	rule     *Rule
	slot     int
	value    *expression
	applies  *expression // where it is worth telling; nil: always
	broken   *Error      // why it can't be worked out, whatever its value says
	told     []*Error    // of its place among the others
	depth    int         // how many figures hang on one another down from it; 0 not compiled yet, -1 being compiled
	percent  bool        // it is shown in per cent; known once it is compiled
	examples []example
}

type check struct {
	rule     *Rule
	applies  *expression // nil: always
	holds    *expression
	says     *template
	remedy   *template
	broken   *Error
	told     []*Error
	examples []example
}

// Compile checks a book against a vocabulary and compiles all of it. With errors the rules that are right still work; the others come out faulty.
func Compile(b *Book, v Vocabulary) (*Compiled, []*Error) {
	c := Prepare(b, v)
	return c, c.Errors()
}

// Prepare is Compile that leaves each expression until it is first wanted.
func Prepare(b *Book, v Vocabulary) *Compiled {
	c := &Compiled{names: nameWords(v)}
	c.names.percent = func(i int) bool {
		c.settle(i)
		return c.figures[i].percent
	}
	c.examples = sync.OnceValue(c.readExamples)
	c.errors = sync.OnceValue(c.findErrors)
	h := &heading{Compiled: c, seen: map[string]bool{}}
	if len(b.Rules) > LimitRules {
		c.told = append(c.told, &Error{Code: CodeLimit, Message: "The rulebook has more than " + count(LimitRules, "rule") + "; those after are left out.", Remedy: "Split the book."})
	}
	rules := make([]Rule, min(len(b.Rules), LimitRules))
	copy(rules, b.Rules)
	for i := range rules {
		h.header(&rules[i])
	}
	for i := range rules {
		if rules[i].Check {
			c.checks = append(c.checks, newCheck(&rules[i]))
		}
	}
	return c
}

// Errors compiles all that was not wanted yet and tells what is wrong with the book, in the order of its text.
func (c *Compiled) Errors() []*Error { return c.errors() }

func (c *Compiled) findErrors() []*Error {
	found := append([]*Error{}, c.told...)
	for i := range c.figures {
		f := c.figure(i)
		if f.value != nil {
			found = append(found, f.value.told...)
		}
		found = append(found, c.tell(f.applies)...)
	}
	for i := range c.figures {
		found = append(found, c.figures[i].told...)
	}
	for i := range c.checks {
		k := &c.checks[i]
		found = append(append(append(found, k.told...), c.tell(k.holds)...), c.tell(k.applies)...)
		for _, t := range []*template{k.says, k.remedy} {
			for i := range t.parts {
				found = append(found, c.tell(t.parts[i].put)...)
			}
			found = append(found, t.told...)
		}
	}
	found = append(found, c.examples()...)
	sort.SliceStable(found, func(i, j int) bool {
		a, b := found[i], found[j]
		return a.Line < b.Line || a.Line == b.Line && a.Column < b.Column
	})
	if len(found) > limitErrors {
		found = found[:limitErrors]
	}
	return found
}

// failField makes an error of a whole field.
func (r *Rule) failField(field, code, message, remedy string) *Error {
	e := &Error{Code: code, Rule: r.Name, Field: field, Message: message, Remedy: remedy}
	r.locate(e, field, nil)
	return e
}

func newCheck(r *Rule) check {
	k := check{
		rule: r, holds: newExpression(r, "holds", r.Holds, truthShape), applies: newExpression(r, "applies", r.Applies, truthShape),
		says: newTemplate(r, "says", r.Says), remedy: newTemplate(r, "remedy", r.Remedy),
	}
	if r.Weight != Stop && r.Weight != Fix && r.Weight != Watch {
		k.told = append(k.told, r.failField("weight", CodeFormat, "A check's weight is stop, fix or watch; this says “"+r.Weight+"”.", "Write “weight: stop” where nobody should pour before it is put right."))
	}
	if k.holds == nil {
		k.told = append(k.told, r.failField("holds", CodeFormat, "This check has no condition.", "Write “holds:” with an expression."))
	}
	if len(k.told) > 0 {
		k.broken = k.told[0]
	}
	if strings.TrimSpace(r.Says) == "" {
		k.told = append(k.told, r.failField("says", CodeFormat, "This check says nothing.", "Write “says:” with a sentence; {depth.least} puts a value in."))
	}
	return k
}
