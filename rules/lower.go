package rules

// Lowering walks expr's syntax tree once: it checks every node's dimension, refuses what rules may not use, and makes the tree that runs, in which
// names, comparisons and what can go wrong are calls of primitives. Only nodes named here get through.

import (
	"strconv"
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/parser/lexer"
	"github.com/expr-lang/expr/vm"
)

// lowered is a node that has been checked: what runs, what is known of it, and how its comparisons make it up.
type lowered struct {
	id     int
	run    ast.Node
	shape  shape
	margin *marginOf
	fixed  *float64 // its value where that is known already
}

type letName struct {
	name, unique string
	shape        shape
	margin       *marginOf
}

type lowering struct {
	names     *names
	scope     string
	code      *code
	spans     *spans
	functions conf.FunctionsTable // the primitives called
	lets      []letName
	elements  []shape // of the lists whose conditions are being lowered
	group     int     // names in one group are read together: where one is missing, the others are wanted too
	depth     int
	traced    bool
	spoiled   bool // it uses a figure that is wrong in itself
	errors    []*Error
}

// compileExpression checks an expression that must come to one of the wanted shapes (none: any) and makes its program.
func compileExpression(n *names, scope string, s source, wanted ...shape) (*code, []*Error) {
	tree, tokens, err := s.parse()
	if err != nil {
		return nil, []*Error{err}
	}
	c := &code{source: s, reads: map[int]bool{}}
	l := newLowering(n, scope, c, tokens, false)
	top := l.lower(tree)
	if len(l.errors) == 0 && len(wanted) > 0 {
		l.expect(top, wanted[0], "here")
	}
	if len(l.errors) > 0 || l.spoiled {
		return nil, l.errors
	}
	c.shape, c.margin = top.shape, top.margin
	if c.program, err = assemble(&s, top.run, l.functions); err != nil {
		return nil, []*Error{err}
	}
	c.trace = func() *vm.Program { return traced(n, scope, s) }
	return c, nil
}

// traced compiles the expression once more so that it records every sub-expression; node numbers are the same.
func traced(n *names, scope string, s source) *vm.Program {
	tree, tokens, err := s.parse()
	if err != nil {
		return nil
	}
	l := newLowering(n, scope, &code{source: s, reads: map[int]bool{}}, tokens, true)
	program, err := assemble(&s, l.lower(tree).run, l.functions)
	if err != nil {
		return nil
	}
	return program
}

func newLowering(n *names, scope string, c *code, tokens []lexer.Token, trace bool) *lowering {
	c.groups = [][]int{nil}
	return &lowering{names: n, scope: scope, code: c, spans: newSpans(tokens), functions: conf.FunctionsTable{}, traced: trace}
}

// lower checks one node and everything under it.
func (l *lowering) lower(n ast.Node) lowered {
	id := len(l.code.nodes)
	l.code.nodes = append(l.code.nodes, node{at: l.spans.of(n), depth: l.depth, slot: -1, limit: -1})
	l.depth++
	out := l.visit(id, n)
	l.depth--
	out.id = id
	if out.run == nil {
		out.run = &ast.NilNode{}
	}
	if out.fixed != nil && !out.shape.bad() {
		out.run = &ast.FloatNode{Value: *out.fixed}
		for i := id + 1; i < len(l.code.nodes); i++ {
			l.code.nodes[i].literal = true // part of one constant
		}
	}
	l.code.nodes[id].shape = out.shape
	if l.traced && !l.code.nodes[id].literal && !out.shape.list {
		out.run = l.call("·see", id, out.run)
	}
	return out
}

func (l *lowering) visit(id int, n ast.Node) lowered {
	switch n := n.(type) {
	case *ast.IntegerNode:
		return l.literal(id, float64(n.Value))
	case *ast.FloatNode:
		return l.literal(id, n.Value)
	case *ast.BoolNode:
		l.code.nodes[id].literal = true
		return lowered{run: &ast.BoolNode{Value: n.Value}, shape: truthShape}
	case *ast.StringNode:
		l.code.nodes[id].literal = true
		return lowered{run: &ast.StringNode{Value: n.Value}, shape: shape{kind: Text, literals: []string{n.Value}}}
	case *ast.IdentifierNode, *ast.MemberNode:
		return l.name(id, n)
	case *ast.UnaryNode:
		return l.unary(id, n)
	case *ast.BinaryNode:
		return l.binary(id, n)
	case *ast.ConditionalNode:
		return l.conditional(id, n)
	case *ast.VariableDeclaratorNode:
		return l.let(id, n)
	case *ast.ArrayNode:
		return l.array(id, n)
	case *ast.PointerNode:
		return l.element(id, n)
	case *ast.CallNode:
		return l.function(id, n)
	case *ast.BuiltinNode:
		return l.builtin(id, n)
	}
	return l.refuse(id, n)
}

func (l *lowering) literal(id int, value float64) lowered {
	l.code.nodes[id].literal = true
	return lowered{fixed: &value, shape: shape{kind: Quantity, bare: true}}
}

// refuse tells that a part of expr's language is not for rules.
func (l *lowering) refuse(id int, n ast.Node) lowered {
	what, remedy := "This", "Rules use names, numbers with units, comparisons, &&, ||, !, ? :, ??, let and the functions in the help."
	switch n.(type) {
	case *ast.NilNode:
		what, remedy = "“nil”", "Use known(word) to ask whether a word has a value, or word ?? other for one that may be missing."
	case *ast.MapNode, *ast.PairNode:
		what = "A map in braces"
	case *ast.SliceNode:
		what = "A slice of a list"
	case *ast.ChainNode:
		what, remedy = "“?.”", "Use word ?? other for a word that may be missing."
	case *ast.SequenceNode:
		what, remedy = "A series of expressions", "Keep one expression; name parts of it with let a = ...; ..."
	case *ast.BytesNode:
		what = "A text of bytes"
	}
	return l.fail(id, CodeForbidden, what+" can't stand in a rule.", remedy)
}

// fail tells an error at a node.
func (l *lowering) fail(id int, code, message, remedy string) lowered {
	return l.failAt(l.code.nodes[id].at, code, message, remedy)
}

func (l *lowering) failAt(at span, code, message, remedy string) lowered {
	if len(l.errors) < limitErrors {
		l.errors = append(l.errors, l.code.source.fail(at, code, message, remedy))
	}
	return lowered{}
}

// text is a node as written.
func (l *lowering) text(id int) string { return l.code.text(id) }

func (c *code) text(id int) string {
	text, at := []rune(c.source.text), c.nodes[id].at
	return strings.Join(strings.Fields(string(text[min(at.from, len(text)):min(at.to, len(text))])), " ")
}

// call is a call of a primitive at a node: it gets the frame that runs and the arguments.
func (l *lowering) call(primitive string, id int, arguments ...ast.Node) ast.Node {
	name := primitive + strconv.Itoa(id)
	l.functions[name] = primitives[primitive].at(name, id)
	return &ast.CallNode{
		Callee:    &ast.IdentifierNode{Value: name},
		Arguments: append([]ast.Node{&ast.IdentifierNode{Value: "$env"}}, arguments...),
	}
}

// apart lowers what is only reached under a condition: its names are not wanted before it is.
func (l *lowering) apart(n ast.Node) lowered {
	group := l.group
	l.code.groups = append(l.code.groups, nil)
	l.group = len(l.code.groups) - 1
	defer func() { l.group = group }()
	return l.lower(n)
}

func (l *lowering) conditional(id int, n *ast.ConditionalNode) lowered {
	condition := l.lower(n.Cond)
	l.expect(condition, truthShape, "before “?”")
	yes, no := l.apart(n.Exp1), l.apart(n.Exp2)
	both := l.same(id, "The two sides of “:”", yes, no)
	return lowered{
		run:    &ast.ConditionalNode{Ternary: true, Cond: condition.run, Exp1: yes.run, Exp2: no.run},
		shape:  both.plain(),
		margin: marginOfEither(yes.margin, no.margin),
	}
}

// same is the shape of a value that may be either of two; where there is none it says so.
func (l *lowering) same(id int, who string, a, b lowered) shape {
	both, ok := unify(a.shape, b.shape)
	switch {
	case !ok:
		l.clash(a, b, who+" must be of one kind: one is "+a.shape.words()+", the other "+b.shape.words()+".", "Make both the same.")
		return unknownShape
	case strange(a.shape, b.shape) != "":
		l.strangeChoice(a, b)
	}
	return both
}

func (l *lowering) let(id int, n *ast.VariableDeclaratorNode) lowered {
	if l.names.taken(n.Name) || l.letNamed(n.Name) != nil || strings.Contains(n.Name, "$") {
		return l.fail(id, CodeUnknown, "The name “"+n.Name+"” is taken.", "Give the let another name.")
	}
	value := l.lower(n.Value)
	name := letName{n.Name, "·let" + n.Name, value.shape.plain(), value.margin}
	l.lets = append(l.lets, name)
	body := l.lower(n.Expr)
	l.lets = l.lets[:len(l.lets)-1]
	return lowered{run: &ast.VariableDeclaratorNode{Name: name.unique, Value: value.run, Expr: body.run}, shape: body.shape.plain(), margin: body.margin}
}

func (l *lowering) letNamed(name string) *letName {
	for i := range l.lets {
		if l.lets[i].name == name {
			return &l.lets[i]
		}
	}
	return nil
}

func (l *lowering) array(id int, n *ast.ArrayNode) lowered {
	if len(n.Nodes) == 0 {
		return l.fail(id, CodeKind, "This list is empty.", "Put values into it: [mm(3), mm(10)].")
	}
	var all lowered
	list := &ast.ArrayNode{}
	for i, item := range n.Nodes {
		one := l.lower(item)
		if i == 0 {
			all = one
		}
		all.shape = l.same(id, "The values of a list", all, one)
		list.Nodes = append(list.Nodes, one.run)
	}
	if all.shape.list {
		return l.fail(id, CodeForbidden, "A list can't hold lists.", "Write the values side by side.")
	}
	all.shape.list = !all.shape.bad()
	return lowered{run: list, shape: all.shape}
}

// element is # in a list's condition.
func (l *lowering) element(id int, n *ast.PointerNode) lowered {
	if len(l.elements) == 0 || n.Name != "" {
		return l.fail(id, CodeForbidden, "“#"+n.Name+"” can't stand here.", "# is a list's value inside all, any, none, one or count.")
	}
	return lowered{run: &ast.PointerNode{}, shape: l.elements[len(l.elements)-1]}
}
