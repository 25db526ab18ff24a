package rules

import (
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/parser/lexer"
)

// spans finds where a node stands in the expression: expr's nodes know their operator or first token only.
type spans struct {
	tokens []lexer.Token
	begins map[int]int // the number of the token that begins at a character
	found  map[ast.Node]span
}

func newSpans(tokens []lexer.Token) *spans {
	s := &spans{tokens: tokens, begins: map[int]int{}, found: map[ast.Node]span{}}
	for i, t := range tokens {
		if t.Kind != lexer.EOF {
			s.begins[t.From] = i
		}
	}
	return s
}

func (s *spans) of(n ast.Node) span {
	if n == nil {
		return span{}
	}
	if known, ok := s.found[n]; ok {
		return known
	}
	found := s.balanced(s.find(n))
	s.found[n] = found
	return found
}

func (s *spans) find(n ast.Node) span {
	own := s.token(n)
	switch n := n.(type) {
	case *ast.UnaryNode:
		return own.or(s.of(n.Node))
	case *ast.BinaryNode:
		return s.of(n.Left).or(s.of(n.Right))
	case *ast.ChainNode:
		return s.of(n.Node)
	case *ast.MemberNode:
		return s.of(n.Node).or(own)
	case *ast.SliceNode:
		return s.of(n.Node).or(own)
	case *ast.CallNode:
		return s.all(s.closed(own).or(s.of(n.Callee)), n.Arguments)
	case *ast.BuiltinNode:
		return s.all(s.closed(own), n.Arguments)
	case *ast.PredicateNode:
		return s.of(n.Node)
	case *ast.ConditionalNode:
		return s.of(n.Cond).or(s.of(n.Exp1)).or(s.of(n.Exp2))
	case *ast.VariableDeclaratorNode:
		return s.before(own).or(s.of(n.Expr))
	case *ast.SequenceNode:
		return s.all(span{}, n.Nodes)
	case *ast.ArrayNode, *ast.MapNode:
		return s.closed(own)
	}
	return own
}

func (s *spans) all(whole span, nodes []ast.Node) span {
	for _, n := range nodes {
		whole = whole.or(s.of(n))
	}
	return whole
}

func (s *spans) token(n ast.Node) span {
	if i, ok := s.begins[n.Location().From]; ok {
		return at(s.tokens[i])
	}
	return span{}
}

// before takes in the token before: a let's name has the word let there.
func (s *spans) before(own span) span {
	if i, ok := s.begins[own.from]; ok && i > 0 {
		return at(s.tokens[i-1]).or(own)
	}
	return own
}

// closed goes on to the bracket that closes the first one opened from there on.
func (s *spans) closed(own span) span {
	i, ok := s.begins[own.from]
	if !ok {
		return own
	}
	depth := 0
	for _, t := range s.tokens[i:] {
		switch {
		case t.Is(lexer.Bracket, "(", "[", "{"):
			depth++
		case t.Is(lexer.Bracket):
			depth--
			if depth == 0 {
				return own.or(at(t))
			}
		}
	}
	return own
}

// balanced takes in the brackets whose partners stand inside.
func (s *spans) balanced(whole span) span {
	first, ok := s.begins[whole.from]
	if !ok || whole.to <= whole.from {
		return whole
	}
	depth, lowest, last := 0, 0, first
	for i := first; i < len(s.tokens) && s.tokens[i].From < whole.to && s.tokens[i].Kind != lexer.EOF; i++ {
		depth += bracket(s.tokens[i])
		lowest, last = min(lowest, depth), i
	}
	for i := first - 1; i >= 0 && lowest < 0; i-- {
		if lowest += bracket(s.tokens[i]); bracket(s.tokens[i]) != 0 {
			whole.from = s.tokens[i].From
			depth++
		}
	}
	for i := last + 1; i < len(s.tokens) && depth > 0; i++ {
		if bracket(s.tokens[i]) != 0 {
			depth += bracket(s.tokens[i])
			whole.to = at(s.tokens[i]).to
		}
	}
	return whole
}

// bracket is 1 for a bracket that opens, -1 for one that closes.
func bracket(t lexer.Token) int {
	switch {
	case t.Is(lexer.Bracket, "(", "[", "{"):
		return 1
	case t.Is(lexer.Bracket):
		return -1
	}
	return 0
}
