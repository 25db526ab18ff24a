package rules

// Operators and their dimension rules.

import (
	"math"

	"github.com/expr-lang/expr/ast"

	"lowspot/engine/quantity"
)

func (l *lowering) unary(id int, n *ast.UnaryNode) lowered {
	inner := l.lower(n.Node)
	s := inner.shape
	if n.Operator == "!" || n.Operator == "not" {
		l.expect(inner, truthShape, "after “"+n.Operator+"”")
		return lowered{run: &ast.UnaryNode{Operator: "!", Node: inner.run}, shape: truthShape, margin: inner.margin.turned()}
	}
	switch {
	case s.bad():
		return lowered{}
	case s.kind != Quantity || s.list:
		return l.fail(id, CodeKind, "“"+n.Operator+"” stands before "+s.words()+".", "It belongs before a quantity.")
	case s.isPoint():
		return l.fail(id, CodeDimension, "A temperature on its scale has no opposite.", "Write the sign inside: celsius(-5).")
	}
	out := lowered{run: &ast.UnaryNode{Operator: n.Operator, Node: inner.run}, shape: s}
	if inner.fixed != nil {
		value := *inner.fixed
		if n.Operator == "-" {
			value = -value
		}
		out.fixed = &value
		l.code.nodes[id].literal = l.code.nodes[inner.id].literal
	}
	return out
}

func (l *lowering) binary(id int, n *ast.BinaryNode) lowered {
	l.code.nodes[id].op = n.Operator
	switch n.Operator {
	case "&&", "and", "||", "or":
		return l.logical(n)
	case "==", "!=":
		return l.equality(id, n)
	case "<", "<=", ">", ">=":
		return l.comparison(id, n)
	case "+", "-":
		return l.addition(id, n)
	case "*", "/":
		return l.product(id, n)
	case "**", "^":
		return l.power(id, n)
	case "in":
		return l.membership(id, n)
	case "??":
		return l.fallback(id, n)
	}
	remedy := "Rules have + - * / ** == != < <= > >= && || ! in ?? and ? :."
	if n.Operator == "%" {
		remedy = "For a percentage write percent(5); for a remainder a - floor(a / b) * b."
	}
	return l.fail(id, CodeForbidden, "“"+n.Operator+"” can't be used in a rule.", remedy)
}

func (l *lowering) logical(n *ast.BinaryNode) lowered {
	op := "&&"
	if n.Operator == "||" || n.Operator == "or" {
		op = "||"
	}
	left, right := l.lower(n.Left), l.apart(n.Right)
	l.expect(left, truthShape, "before “"+n.Operator+"”")
	l.expect(right, truthShape, "after “"+n.Operator+"”")
	return lowered{run: &ast.BinaryNode{Operator: op, Left: left.run, Right: right.run}, shape: truthShape, margin: marginOfBoth(op, left.margin, right.margin)}
}

func (l *lowering) equality(id int, n *ast.BinaryNode) lowered {
	left, right := l.lower(n.Left), l.lower(n.Right)
	a, b := left.shape, right.shape
	switch {
	case a.bad() || b.bad():
		return lowered{shape: truthShape}
	case a.kind == Quantity && b.kind == Quantity && !a.list && !b.list:
		return l.compared(id, n.Operator, left, right)
	}
	if _, ok := unify(a, b); !ok || a.list || b.list {
		l.clash(left, right, capital(a.words())+" can't be compared with "+b.words()+".", "Compare values of one kind.")
	} else if strange(a, b) != "" {
		l.strangeChoice(left, right)
	}
	return lowered{run: &ast.BinaryNode{Operator: n.Operator, Left: left.run, Right: right.run}, shape: truthShape}
}

func (l *lowering) comparison(id int, n *ast.BinaryNode) lowered {
	left, right := l.lower(n.Left), l.lower(n.Right)
	for _, side := range []lowered{left, right} {
		if s := side.shape; !s.bad() && (s.kind != Quantity || s.list) {
			l.fail(side.id, CodeKind, "“"+l.text(side.id)+"” is "+s.words()+"; quantities belong on both sides of “"+n.Operator+"”.", "Use == or != for texts, choices and yes or no.")
			return lowered{shape: truthShape}
		}
	}
	return l.compared(id, n.Operator, left, right)
}

// compared is a comparison of two quantities; it is numbered, so that its margin can be told.
func (l *lowering) compared(id int, op string, left, right lowered) lowered {
	a, b := left.shape, right.shape
	if !a.bad() && !b.bad() && a.dim != b.dim {
		l.clash(left, right, capital(a.words())+" can't be compared with "+b.words()+".", meeting(a.dim, b.dim))
		return lowered{shape: truthShape}
	}
	number := l.code.limits
	l.code.limits++
	l.code.nodes[id].limit = number
	l.code.nodes[id].op = op
	return lowered{run: l.call("·compare", id, left.run, right.run), shape: truthShape,
		margin: &marginOf{limit: number, op: op, dim: a.dim, percent: a.percent || b.percent}}
}

// clash tells that two sides don't go together; a bare number gets the blame where there is one.
func (l *lowering) clash(left, right lowered, message, remedy string) {
	a, b := left.shape, right.shape
	switch {
	case a.bad() || b.bad():
	case a.bare && b.kind == Quantity && b.dim != quantity.Number:
		l.bareNumber(left, b)
	case b.bare && a.kind == Quantity && a.dim != quantity.Number:
		l.bareNumber(right, a)
	default:
		l.failAt(l.code.nodes[left.id].at.or(l.code.nodes[right.id].at), CodeDimension, message, remedy)
	}
}

func (l *lowering) strangeChoice(left, right lowered) {
	choice, text := left, right
	if choice.shape.kind != Choice {
		choice, text = right, left
	}
	l.unknownChoice(text, strange(choice.shape, text.shape), choice.shape.choices)
}

// meeting is the remedy for two dimensions that differ.
func meeting(a, b quantity.Dimension) string {
	switch {
	case a == quantity.Volume && b == quantity.Mass || a == quantity.Mass && b == quantity.Volume:
		return "Volume and mass meet through a density or a yield: multiply or divide one side by it."
	case a.Point != b.Point:
		return "A temperature less a temperature is a difference; a temperature on its scale is written celsius(20), a difference kelvin(3)."
	}
	return "Both must be of one dimension."
}

func (l *lowering) addition(id int, n *ast.BinaryNode) lowered {
	left, right := l.lower(n.Left), l.lower(n.Right)
	a, b := left.shape, right.shape
	verb := "added"
	if n.Operator == "-" {
		verb = "taken from one another"
	}
	if a.bad() || b.bad() {
		return lowered{}
	}
	if !l.quantities(n.Operator, left, right) {
		return lowered{}
	}
	sum, ok := sumOf(n.Operator, a, b)
	switch {
	case !ok && a.isPoint() && b.isPoint():
		return l.fail(id, CodeDimension, "Two temperatures can't be added.", "Add a difference: celsius(20) + kelvin(3); a mean is a + (b - a) / 2.")
	case !ok:
		l.clash(left, right, capital(a.words())+" and "+b.words()+" can't be "+verb+".", meeting(a.dim, b.dim))
		return lowered{}
	}
	return l.folded(n.Operator, left, right, lowered{run: &ast.BinaryNode{Operator: n.Operator, Left: left.run, Right: right.run}, shape: sum})
}

// sumOf is the shape of a sum or difference: a point and a difference make a point, two points only a difference.
func sumOf(op string, a, b shape) (shape, bool) {
	out := shape{kind: Quantity, dim: a.dim, bare: a.bare && b.bare, percent: a.percent || b.percent}
	point, difference := quantity.Temperature, quantity.TemperatureDifference
	switch {
	case a.dim == point && b.dim == point:
		out.dim = difference
		return out, op == "-"
	case a.dim == difference && b.dim == point:
		out.dim = point
		return out, op == "+"
	case a.dim == point && b.dim == difference:
		return out, true
	}
	return out, a.dim == b.dim
}

// quantities tells where a side of an operator is no quantity.
func (l *lowering) quantities(op string, sides ...lowered) bool {
	for _, side := range sides {
		if s := side.shape; s.kind != Quantity || s.list {
			l.fail(side.id, CodeKind, "“"+l.text(side.id)+"” is "+s.words()+"; “"+op+"” needs quantities.", "")
			return false
		}
	}
	return true
}

func (l *lowering) product(id int, n *ast.BinaryNode) lowered {
	left, right := l.lower(n.Left), l.lower(n.Right)
	a, b := left.shape, right.shape
	if a.bad() || b.bad() || !l.quantities(n.Operator, left, right) {
		return lowered{}
	}
	if a.isPoint() || b.isPoint() {
		return l.fail(id, CodeDimension, "A temperature on its scale can't be multiplied or divided.", "Take a difference first: (air.temperature - celsius(0)) / kelvin(1).")
	}
	out := lowered{shape: shape{kind: Quantity, bare: a.bare && b.bare}}
	if n.Operator == "*" {
		out.shape.dim = a.dim.Times(b.dim)
		out.run = &ast.BinaryNode{Operator: "*", Left: left.run, Right: right.run}
	} else {
		out.shape.dim = a.dim.Over(b.dim)
		out.run = l.call("·divide", id, left.run, right.run)
	}
	if !sensible(out.shape.dim) {
		return l.fail(id, CodeDimension, "This product's dimension is beyond any that is used.", "")
	}
	if n.Operator == "/" && right.fixed != nil && *right.fixed == 0 {
		return l.fail(right.id, CodeFault, "This divides by zero.", "Divide by something else.")
	}
	return l.folded(n.Operator, left, right, out)
}

// sensible keeps exponents far from the ends of their range.
func sensible(d quantity.Dimension) bool {
	for _, n := range []int8{d.Length, d.Mass, d.Time, d.Temperature, d.Money} {
		if n > 12 || n < -12 {
			return false
		}
	}
	return true
}

// folded works out a result whose sides are both known already.
func (l *lowering) folded(op string, left, right, out lowered) lowered {
	if left.fixed == nil || right.fixed == nil {
		return out
	}
	x, y := *left.fixed, *right.fixed
	value := 0.0
	switch op {
	case "+":
		value = x + y
	case "-":
		value = x - y
	case "*":
		value = x * y
	case "/":
		value = x / y
	}
	if !math.IsInf(value, 0) && !math.IsNaN(value) {
		out.fixed = &value
	}
	return out
}

func (l *lowering) power(id int, n *ast.BinaryNode) lowered {
	base, exponent := l.lower(n.Left), l.lower(n.Right)
	a, b := base.shape, exponent.shape
	if a.bad() || b.bad() || !l.quantities(n.Operator, base, exponent) {
		return lowered{}
	}
	if !b.isNumber() {
		return l.fail(exponent.id, CodeDimension, "An exponent must be a number; this is "+b.words()+".", "")
	}
	out := lowered{run: l.call("·power", id, base.run, exponent.run), shape: quantityShape(quantity.Number)}
	if a.isNumber() {
		return out
	}
	whole := exponent.fixed != nil && *exponent.fixed == math.Trunc(*exponent.fixed) && math.Abs(*exponent.fixed) <= 6
	if !whole || a.isPoint() {
		return l.fail(id, CodeDimension, capital(a.words())+" can only be raised to a whole power written out, from -6 to 6.", "Divide it by a unit first to make it a number.")
	}
	out.shape.dim = a.dim.Power(int(*exponent.fixed))
	if !sensible(out.shape.dim) {
		return l.fail(id, CodeDimension, "This power's dimension is beyond any that is used.", "")
	}
	return out
}

func (l *lowering) membership(id int, n *ast.BinaryNode) lowered {
	item, list := l.lower(n.Left), l.lower(n.Right)
	a, b := item.shape, list.shape
	switch {
	case a.bad() || b.bad():
		return lowered{shape: truthShape}
	case !b.list:
		return l.fail(list.id, CodeKind, "“in” needs a list after it.", `Write the options in square brackets: deck.kind in ["plywood", "osb"].`)
	case a.kind == Quantity || a.list:
		return l.fail(item.id, CodeKind, "“in” is for choices and texts, not for "+a.words()+".", "Compare quantities with <= and >=.")
	}
	b.list = false
	one := list
	one.shape = b
	if _, ok := unify(a, b); !ok {
		return l.fail(id, CodeKind, "The list holds "+b.words()+" and before “in” stands "+a.words()+".", "Make both of one kind.")
	}
	if strange(a, b) != "" {
		l.strangeChoice(item, one)
	}
	return lowered{run: &ast.BinaryNode{Operator: "in", Left: item.run, Right: list.run}, shape: truthShape}
}

// fallback is a ?? b: b where a is missing. Its left side is a name, so that it is plain what may be missing.
func (l *lowering) fallback(id int, n *ast.BinaryNode) lowered {
	left, right := l.optional(n.Left), l.apart(n.Right)
	both := l.same(id, "The two sides of “??”", left, right)
	if left.shape.percent {
		both.percent = true
	}
	return lowered{run: &ast.BinaryNode{Operator: "??", Left: left.run, Right: right.run}, shape: both.plain()}
}

// optional lowers a name, or names joined by ??, that may be missing.
func (l *lowering) optional(n ast.Node) lowered {
	id := len(l.code.nodes)
	if inner, is := n.(*ast.BinaryNode); is && inner.Operator == "??" {
		l.code.nodes = append(l.code.nodes, node{at: l.spans.of(n), depth: l.depth, slot: -1, limit: -1, op: "??"})
		left, right := l.optional(inner.Left), l.optional(inner.Right)
		both := l.same(id, "The two sides of “??”", left, right)
		l.code.nodes[id].shape = both
		return lowered{id: id, run: &ast.BinaryNode{Operator: "??", Left: left.run, Right: right.run}, shape: both}
	}
	l.code.nodes = append(l.code.nodes, node{at: l.spans.of(n), depth: l.depth, slot: -1, limit: -1})
	slot, s, ok := l.resolve(id, n)
	if !ok {
		return lowered{id: id, run: &ast.NilNode{}}
	}
	if slot < 0 {
		l.fail(id, CodeForbidden, "“"+l.text(id)+"” stands before “??”, but is never missing.", "Before ?? belongs a word or a figure that may be missing.")
		return lowered{id: id, run: &ast.NilNode{}}
	}
	if !l.code.reads[slot] {
		l.code.reads[slot] = false
	}
	l.code.nodes[id].slot, l.code.nodes[id].shape = slot, s
	out := lowered{id: id, run: l.call("·maybe", id), shape: s}
	if l.traced {
		out.run = l.call("·see", id, out.run)
	}
	return out
}

func capital(text string) string {
	if text == "" {
		return text
	}
	if c := text[0]; c >= 'a' && c <= 'z' {
		return string(c-'a'+'A') + text[1:]
	}
	return text
}
