package rules

// Names, functions and the loops over lists.

import (
	"strings"

	"github.com/expr-lang/expr/ast"

	"lowspot/engine/quantity"
)

// name lowers a word, a figure or a let.
func (l *lowering) name(id int, n ast.Node) lowered {
	if _, is := dotted(n); !is {
		return l.fail(id, CodeForbidden, "“"+l.text(id)+"” can't stand in a rule.", "Write a word by its name: deck.kind.")
	}
	slot, s, ok := l.resolve(id, n)
	if !ok {
		return lowered{}
	}
	if slot < 0 {
		let := l.letNamed(n.(*ast.IdentifierNode).Value)
		return lowered{run: &ast.IdentifierNode{Value: let.unique}, shape: s, margin: let.margin}
	}
	if s.bad() {
		return lowered{}
	}
	l.code.nodes[id].slot, l.code.nodes[id].group = slot, l.group
	l.code.groups[l.group] = append(l.code.groups[l.group], slot)
	l.code.reads[slot] = true
	return lowered{run: l.call(readers[s.kind], id), shape: s}
}

// readers are the primitives that read a name of each kind.
var readers = map[Kind]string{Quantity: "·number", Truth: "·truth", Choice: "·text", Text: "·text"}

// resolve finds what a name stands for; a let's slot is -1.
func (l *lowering) resolve(id int, n ast.Node) (slot int, s shape, ok bool) {
	name, is := dotted(n)
	if !is {
		l.fail(id, CodeForbidden, "Only a word or a figure can be missing; “"+l.text(id)+"” is neither.", "Put the name and its other value in brackets: (word ?? other); make a figure of what is longer.")
		return 0, s, false
	}
	if let := l.letNamed(name); let != nil {
		return -1, let.shape, true
	}
	slot, known := l.names.slots[name]
	if !known {
		l.unknownName(id, name)
		return 0, s, false
	}
	named := &l.names.list[slot]
	if !reaches(l.scope, named.scope) {
		l.fail(id, CodeScope, "“"+name+"” belongs to a "+named.scope+"; this rule is for a "+l.scope+", which may have several or none.",
			"Write “for: "+named.scope+"”, or use a word of the "+l.scope+".")
		return 0, s, false
	}
	l.spoiled = l.spoiled || named.shape.bad()
	s = named.shape
	if named.figure >= 0 {
		s.percent = l.names.percent(named.figure)
	}
	return slot, s, true
}

// dotted is the name that a chain of members spells.
func dotted(n ast.Node) (string, bool) {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		return n.Value, n.Value != "$env"
	case *ast.MemberNode:
		property, plain := n.Property.(*ast.StringNode)
		if !plain || n.Optional || n.Method {
			return "", false
		}
		base, ok := dotted(n.Node)
		return base + "." + property.Value, ok
	}
	return "", false
}

func (l *lowering) unknownName(id int, name string) {
	remedy := "The words and figures are listed in the help."
	if near := nearest(name, l.names.visible(l.scope)); near != "" {
		remedy = "Did you mean “" + near + "”?"
	}
	if _, unit := unitByName[name]; unit {
		remedy = "Put the number in brackets: " + name + "(10)."
	}
	if l.names.isChoice(name) {
		remedy = `Put an option in quotes: "` + name + `".`
	}
	l.fail(id, CodeUnknown, "Nothing is called “"+name+"”.", remedy)
}

// function lowers a call of one of our functions.
func (l *lowering) function(id int, n *ast.CallNode) lowered {
	callee, plain := n.Callee.(*ast.IdentifierNode)
	if !plain {
		return l.fail(id, CodeForbidden, "Words have no functions of their own.", "Functions stand alone: abs(door.step).")
	}
	if callee.Value == "known" {
		return l.known(id, n.Arguments)
	}
	if callee.Value == "money" {
		return l.unit(id, quantity.Unit{}, quantity.Money, n.Arguments)
	}
	if unit, is := unitByName[callee.Value]; is {
		return l.unit(id, unit, unit.Dimension, n.Arguments)
	}
	return l.quantityFunction(id, callee.Value, n.Arguments)
}

// builtin lowers what expr's parser takes for a function of its own.
func (l *lowering) builtin(id int, n *ast.BuiltinNode) lowered {
	switch n.Name {
	case "all", "any", "none", "one", "count", "sum":
		return l.loop(id, n)
	}
	if unit, is := unitByName[n.Name]; is {
		return l.unit(id, unit, unit.Dimension, n.Arguments)
	}
	return l.quantityFunction(id, n.Name, n.Arguments)
}

// quantityFunction lowers one of the functions on quantities.
func (l *lowering) quantityFunction(id int, name string, arguments []ast.Node) lowered {
	switch name {
	case "min", "max":
		return l.extreme(id, name, arguments)
	case "abs":
		return l.absolute(id, arguments)
	case "round", "ceil", "floor":
		return l.stepped(id, name, arguments)
	case "sqrt":
		return l.root(id, arguments)
	}
	remedy := "The functions are listed in the help."
	if near := nearest(name, functionNames()); near != "" {
		remedy = "Did you mean “" + near + "”?"
	}
	return l.fail(id, CodeUnknown, "No function is called “"+name+"”.", remedy)
}

// take lowers a call's arguments; ok is false where their number or kind is wrong, which has been told.
func (l *lowering) take(id int, arguments []ast.Node, least, most int, call string) (taken []lowered, ok bool) {
	if len(arguments) < least || len(arguments) > most {
		l.fail(id, CodeKind, "This call has "+count(len(arguments), "value")+" in its brackets.", "Write "+call+".")
		return nil, false
	}
	ok = true
	for _, a := range arguments {
		one := l.lower(a)
		taken = append(taken, one)
		ok = ok && !one.shape.bad()
	}
	return taken, ok
}

func (l *lowering) known(id int, arguments []ast.Node) lowered {
	if len(arguments) != 1 {
		return l.fail(id, CodeKind, "known() takes one word.", "Write known(slab.humidity).")
	}
	inner := len(l.code.nodes)
	l.code.nodes = append(l.code.nodes, node{at: l.spans.of(arguments[0]), depth: l.depth, slot: -1, limit: -1, literal: true})
	slot, _, ok := l.resolve(inner, arguments[0])
	if !ok || slot < 0 {
		return lowered{shape: truthShape}
	}
	if !l.code.reads[slot] {
		l.code.reads[slot] = false
	}
	l.code.nodes[id].slot = slot
	return lowered{run: l.call("·known", id), shape: truthShape}
}

// unit lowers a unit's function. Money has no unit: its numbers stay as they are.
func (l *lowering) unit(id int, unit quantity.Unit, d quantity.Dimension, arguments []ast.Node) lowered {
	taken, ok := l.take(id, arguments, 1, 1, "one number in them, decimals with a point: mm(1.5)")
	if !ok {
		return lowered{shape: quantityShape(d)}
	}
	number := taken[0]
	if !number.shape.isNumber() {
		return l.fail(number.id, CodeDimension, "“"+l.text(number.id)+"” is "+number.shape.words()+" already; a unit belongs round a bare number.", "Leave the unit out.")
	}
	l.code.nodes[id].op = ""
	out := lowered{shape: quantityShape(d)}
	out.shape.percent = unit.Symbol == "%"
	if d == quantity.Money {
		out.run, out.fixed = number.run, number.fixed
		return out
	}
	if number.fixed != nil {
		value := unit.SI(*number.fixed)
		out.fixed = &value
		return out
	}
	l.code.units = append(l.code.units, unit)
	out.run = l.call("·unit", id, &ast.IntegerNode{Value: len(l.code.units) - 1}, number.run)
	return out
}

func (l *lowering) extreme(id int, name string, arguments []ast.Node) lowered {
	if len(arguments) == 1 {
		if list, is := arguments[0].(*ast.ArrayNode); is {
			arguments = list.Nodes
		}
	}
	taken, ok := l.take(id, arguments, 1, 50, name+"(a, b)")
	if !ok || !l.quantities(name, taken...) {
		return lowered{}
	}
	all := taken[0]
	var runs []ast.Node
	for _, one := range taken {
		if one.shape.dim != all.shape.dim {
			l.clash(all, one, capital(all.shape.words())+" can't be compared with "+one.shape.words()+".", meeting(all.shape.dim, one.shape.dim))
			return lowered{}
		}
		all.shape.percent = all.shape.percent || one.shape.percent
		all.shape.bare = all.shape.bare && one.shape.bare
		runs = append(runs, one.run)
	}
	return lowered{run: l.call("·"+name, id, runs...), shape: all.shape}
}

func (l *lowering) absolute(id int, arguments []ast.Node) lowered {
	taken, ok := l.take(id, arguments, 1, 1, "abs(a)")
	if !ok || !l.quantities("abs", taken...) {
		return lowered{}
	}
	if taken[0].shape.isPoint() {
		return l.fail(id, CodeDimension, "A temperature on its scale has no size without a sign.", "Take a difference first.")
	}
	return lowered{run: l.call("·abs", id, taken[0].run), shape: taken[0].shape}
}

func (l *lowering) stepped(id int, name string, arguments []ast.Node) lowered {
	taken, ok := l.take(id, arguments, 1, 2, name+"(a) or "+name+"(a, step)")
	if !ok || !l.quantities(name, taken...) {
		return lowered{}
	}
	value := taken[0]
	if len(taken) == 1 {
		if !value.shape.isNumber() {
			example := unitExample(value.shape.dim, "1")
			if example == "" {
				example = "a step of the same dimension"
			}
			return l.fail(id, CodeDimension, "What a whole number of "+value.shape.words()+" is goes by the unit.", "Say the step: "+name+"("+l.text(value.id)+", "+strings.Split(example, " or ")[0]+").")
		}
		return lowered{run: l.call("·"+name, id, value.run, &ast.FloatNode{Value: 1}), shape: value.shape.plain()}
	}
	step := taken[1]
	if value.shape.dim != step.shape.dim || value.shape.isPoint() {
		l.clash(value, step, "The step of "+value.shape.words()+" can't be "+step.shape.words()+".", "Both must be of one dimension.")
		if value.shape.isPoint() && step.shape.isPoint() {
			l.fail(id, CodeDimension, "A temperature on its scale can't be rounded by a step.", "Take a difference first.")
		}
		return lowered{}
	}
	return lowered{run: l.call("·"+name, id, value.run, step.run), shape: value.shape.plain()}
}

func (l *lowering) root(id int, arguments []ast.Node) lowered {
	taken, ok := l.take(id, arguments, 1, 1, "sqrt(a)")
	if !ok || !l.quantities("sqrt", taken...) {
		return lowered{}
	}
	d := taken[0].shape.dim
	half := quantity.Dimension{Length: d.Length / 2, Mass: d.Mass / 2, Time: d.Time / 2, Temperature: d.Temperature / 2, Money: d.Money / 2}
	if half.Power(2) != d {
		return l.fail(id, CodeDimension, capital(taken[0].shape.words())+" has no square root.", "The root of an area is a length; a number has one too.")
	}
	return lowered{run: l.call("·sqrt", id, taken[0].run), shape: quantityShape(half)}
}

// loop lowers all, any, none, one, count and sum over a list that is written out.
func (l *lowering) loop(id int, n *ast.BuiltinNode) lowered {
	result := truthShape
	if n.Name == "count" {
		result = quantityShape(quantity.Number)
	}
	if len(l.elements) == limitLoops {
		return l.fail(id, CodeLimit, "Lists are gone through more than "+count(limitLoops, "level")+" deep here.", "Move the inner part into a figure of its own.")
	}
	list := l.lower(n.Arguments[0])
	if list.shape.bad() {
		return lowered{}
	}
	if !list.shape.list {
		return l.fail(list.id, CodeKind, n.Name+"() needs a list.", "Write the values in square brackets: "+n.Name+"([a, b], # > c).")
	}
	run := &ast.BuiltinNode{Name: n.Name, Arguments: []ast.Node{list.run}}
	element := list.shape
	element.list = false
	if n.Name == "sum" {
		return l.sum(id, n, run, element)
	}
	if len(n.Arguments) != 2 {
		return l.fail(id, CodeKind, n.Name+"() needs a condition after the list.", "Write "+n.Name+"([a, b], # > c).")
	}
	condition, body := l.condition(n.Arguments[1], element)
	l.expect(body, truthShape, "as the condition of "+n.Name)
	run.Arguments = append(run.Arguments, condition)
	if n.Name == "count" {
		return lowered{run: l.call("·float", id, run), shape: result}
	}
	return lowered{run: run, shape: result}
}

func (l *lowering) sum(id int, n *ast.BuiltinNode, run *ast.BuiltinNode, element shape) lowered {
	if len(n.Arguments) == 2 {
		condition, body := l.condition(n.Arguments[1], element)
		run.Arguments = append(run.Arguments, condition)
		element = body.shape
	}
	switch {
	case element.bad():
		return lowered{}
	case element.kind != Quantity || element.isPoint():
		return l.fail(id, CodeDimension, "sum() adds quantities; this list holds "+element.words()+" each.", "")
	}
	return lowered{run: l.call("·float", id, run), shape: element.plain()}
}

func (l *lowering) condition(n ast.Node, element shape) (ast.Node, lowered) {
	predicate, is := n.(*ast.PredicateNode)
	if !is {
		return &ast.NilNode{}, l.fail(len(l.code.nodes)-1, CodeKind, "A condition belongs here.", "Write it with # for the list's value: # > mm(3).")
	}
	l.elements = append(l.elements, element.plain())
	body := l.apart(predicate.Node)
	l.elements = l.elements[:len(l.elements)-1]
	body.margin = nil
	return &ast.PredicateNode{Node: body.run}, body
}
