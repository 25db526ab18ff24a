package rules

// A rule's examples: "deck.kind = plywood, depth.least = 6 mm => broken". Words and figures are given as people type them; behind => stands the
// outcome of a check, or the value (or state) of a figure.

import (
	"strings"

	"lowspot/engine/quantity"
)

// ExampleResult is one example run.
type ExampleResult struct {
	Rule   string `json:"rule"`
	Number int    `json:"number"` // from 0
	Text   string `json:"text"`
	Passed bool   `json:"passed"`
	Wanted string `json:"wanted"`
	Got    string `json:"got"`
	Error  *Error `json:"error,omitempty"` // where it can't be read
}

type example struct {
	text   string
	given  Facts
	wanted string
	value  Value // of a figure, where wanted is no state
	state  State // wanted, or Known for a figure's value
	err    *Error
}

func (c *Compiled) readExamples() []*Error {
	var told, wrong []*Error
	for i := range c.figures {
		f := &c.figures[i]
		f.examples, wrong = c.examplesOf(f.rule, &c.names.list[f.slot])
		told = append(told, wrong...)
	}
	for i := range c.checks {
		k := &c.checks[i]
		k.examples, wrong = c.examplesOf(k.rule, nil)
		told = append(told, wrong...)
	}
	return told
}

func (c *Compiled) examplesOf(r *Rule, figure *named) (list []example, told []*Error) {
	for n, text := range r.Examples {
		if n == LimitExamples {
			told = append(told, r.failField("example", CodeLimit, "This rule has more than "+count(LimitExamples, "example")+".", "Keep those that tell something new."))
			break
		}
		e := c.readExample(text, figure)
		if e.err != nil {
			e.err.Rule, e.err.Field = r.Name, label("example", n)
			r.locate(e.err, label("example", n), nil)
			told = append(told, e.err)
		}
		list = append(list, e)
	}
	return list, told
}

func (c *Compiled) readExample(text string, figure *named) example {
	e := example{text: text, given: Facts{}}
	if len(text) > LimitField {
		e.err = &Error{Code: CodeLimit, Message: "This example is longer than " + bytesText(LimitField) + ".", Remedy: "Shorten it."}
		return e
	}
	left, right, found := cutLast(strings.ReplaceAll(text, "\n", " "), "=>")
	if !found {
		e.err = &Error{Code: CodeExample, Found: text, Message: "This example has no “=>”.", Remedy: "Write what is given, then => and what must come of it: deck.kind = plywood => kept."}
		return e
	}
	for _, part := range splitGiven(left) {
		if e.err == nil {
			e.err = c.readGiven(part, e.given)
		}
	}
	if e.err == nil {
		e.wanted = strings.TrimSpace(right)
		e.err = c.readWanted(&e, figure)
	}
	return e
}

func cutLast(text, mark string) (before, after string, found bool) {
	i := strings.LastIndex(text, mark)
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i+len(mark):], true
}

// splitGiven parts the given words at commas that stand before “name =”; a comma inside a number stays.
func splitGiven(text string) []string {
	var parts []string
	start := 0
	for i := 0; i < len(text); i++ {
		if text[i] != ',' {
			continue
		}
		if name, _, ok := strings.Cut(text[i+1:], "="); ok && isName(strings.TrimSpace(name)) {
			parts = append(parts, text[start:i])
			start = i + 1
		}
	}
	if strings.TrimSpace(text[start:]) != "" {
		parts = append(parts, text[start:])
	}
	return parts
}

func isName(text string) bool {
	for _, part := range strings.Split(text, ".") {
		if !wellNamed(part, false) {
			return false
		}
	}
	return true
}

func (c *Compiled) readGiven(part string, into Facts) *Error {
	name, typed, found := strings.Cut(part, "=")
	name, typed = strings.TrimSpace(name), strings.TrimSpace(typed)
	slot, known := c.names.slots[name]
	if !found || !known {
		remedy := "Write word = value, with commas between."
		var all []string
		for _, n := range c.names.list {
			all = append(all, n.name)
		}
		if near := nearest(name, all); near != "" {
			remedy = "Did you mean “" + near + "”?"
		}
		return &Error{Code: CodeExample, Found: name, Message: "Nothing is called “" + name + "”.", Remedy: remedy}
	}
	v, err := readTyped(c.names.list[slot].shape, typed)
	if err != nil {
		err.Message = "The value of “" + name + "”: " + err.Message
		return err
	}
	into[name] = Given{Value: v, From: FromTyped, Typed: typed}
	return nil
}

func (c *Compiled) readWanted(e *example, figure *named) *Error {
	states := []string{string(Kept), string(Broken), string(Idle), string(Unanswered), string(Faulty)}
	if figure == nil {
		e.state = State(e.wanted)
		if !contains(states, e.wanted) {
			return &Error{Code: CodeExample, Found: e.wanted, Message: "“" + e.wanted + "” is no outcome of a check.", Remedy: "Behind => stands " + orList(states, "") + "."}
		}
		return nil
	}
	if e.wanted == string(Unanswered) || e.wanted == string(Faulty) {
		e.state = State(e.wanted)
		return nil
	}
	var err *Error
	e.state = Known
	if figure.shape.bad() {
		return nil
	}
	if e.value, err = readTyped(figure.shape, e.wanted); err != nil {
		err.Message = "What must come of it: " + err.Message
	}
	return err
}

// readTyped reads a value as a person types it.
func readTyped(of shape, typed string) (Value, *Error) {
	wrong := func(message, remedy string) (Value, *Error) {
		return Value{}, &Error{Code: CodeExample, Found: typed, Message: message, Remedy: remedy}
	}
	switch of.kind {
	case Quantity:
		number, err := quantity.Read(typed, of.dim)
		if err != nil {
			message, remedy := err.Error(), ""
			if told, is := err.(*quantity.Error); is {
				message, remedy = told.Message, told.Remedy
			}
			return wrong(message, remedy)
		}
		return Value{Kind: Quantity, Number: number}, nil
	case Truth:
		switch strings.ToLower(typed) {
		case "yes", "true":
			return Value{Kind: Truth, Truth: true}, nil
		case "no", "false":
			return Value{Kind: Truth}, nil
		}
		return wrong("“"+typed+"” is neither yes nor no.", "Write yes or no.")
	case Choice:
		for _, choice := range of.choices {
			if strings.EqualFold(choice, typed) {
				return Value{Kind: Choice, Text: choice}, nil
			}
		}
		return wrong("“"+typed+"” is not one of the options.", "Write one of: "+orList(of.choices, "")+".")
	}
	return Value{Kind: Text, Text: typed}, nil
}
