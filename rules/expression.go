package rules

// Reading one expression: the limits are checked on the tokens, then expr's parser makes the syntax tree.

import (
	"errors"
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/parser/lexer"
)

// source is an expression's text within a field, which it fills or of which it is a part in braces.
type source struct {
	rule  *Rule
	field string // the field's label
	whole string // the field's text
	text  string
	start int // where text begins in whole, in characters
}

// span is a stretch of an expression, in characters.
type span struct{ from, to int }

func (s span) or(o span) span {
	switch {
	case s == span{}:
		return o
	case o == span{}:
		return s
	}
	return span{min(s.from, o.from), max(s.to, o.to)}
}

// fail makes an error at a stretch of the expression.
func (s *source) fail(at span, code, message, remedy string) *Error {
	text := []rune(s.whole)
	from, to := min(s.start+at.from, len(text)), min(s.start+at.to, len(text))
	e := &Error{Code: code, Rule: s.rule.Name, Field: s.field, Message: message, Remedy: remedy,
		From: wide(text[:from]), To: wide(text[:max(from, to)]), Found: string(text[from:max(from, to)])}
	s.rule.locate(e, s.field, text[:from])
	return e
}

// locate sets an error's line and column from the text of the field that stands before it.
func (r *Rule) locate(e *Error, field string, before []rune) {
	line, column := 0, 0
	for _, c := range before {
		column++
		if c == '\n' {
			line, column = line+1, 0
		}
	}
	if places := r.places[field]; line < len(places) {
		e.Line, e.Column = places[line].line, places[line].column+column
	} else if head := r.places[""]; len(head) > 0 {
		e.Line, e.Column = head[0].line, head[0].column
	}
}

// wide is the length of text in UTF-16 units, as an editor in a page counts.
func wide(text []rune) int {
	n := len(text)
	for _, c := range text {
		if c > 0xffff {
			n++
		}
	}
	return n
}

// parse makes the syntax tree.
func (s *source) parse() (node ast.Node, tokens []lexer.Token, err *Error) {
	tokens, err = s.tokens()
	if err != nil {
		return nil, nil, err
	}
	defer func() {
		if recover() != nil {
			node, err = nil, s.fail(span{}, CodeSyntax, "This expression can't be read.", "Take it apart with brackets.")
		}
	}()
	tree, failed := parser.ParseWithConfig(s.text, &conf.Config{MaxNodes: limitNodes})
	if failed != nil {
		return nil, nil, s.syntaxError(failed, tokens)
	}
	return tree.Node, tokens, nil
}

// tokens reads the tokens and refuses what is too long or too deep.
func (s *source) tokens() ([]lexer.Token, *Error) {
	if len(s.text) > LimitField {
		return nil, s.fail(span{}, CodeLimit, "This expression is longer than "+bytesText(LimitField)+".", "Move parts of it into figures of their own.")
	}
	if strings.TrimSpace(s.text) == "" {
		return nil, s.fail(span{}, CodeSyntax, "There is no expression here.", "Write one, like depth.least >= mm(10).")
	}
	tokens, err := lexer.Lex(file.NewSource(s.text))
	if err != nil {
		return nil, s.syntaxError(err, nil)
	}
	if len(tokens) > limitTokens {
		return nil, s.fail(span{}, CodeLimit, "This expression has more than "+count(limitTokens, "part")+".", "Move parts of it into figures of their own.")
	}
	depth := 0
	for _, t := range tokens {
		switch {
		case t.Is(lexer.Bracket, "(", "[", "{"):
			depth++
		case t.Is(lexer.Bracket):
			depth--
		}
		if depth > limitDepth {
			return nil, s.fail(at(t), CodeLimit, "Brackets stand more than "+count(limitDepth, "level")+" deep here.", "Move the inner part into a figure of its own.")
		}
	}
	return tokens, nil
}

func at(t lexer.Token) span { return span{t.From, max(t.To, t.From+1)} }

// syntaxError tells the parser's complaint in the reader's words.
func (s *source) syntaxError(err error, tokens []lexer.Token) *Error {
	var told *file.Error
	if !errors.As(err, &told) {
		return s.fail(span{}, CodeSyntax, "This expression can't be read.", "")
	}
	where := span{told.From, told.From + 1}
	for _, t := range tokens {
		if t.From == told.From && t.Kind != lexer.EOF {
			where = at(t)
		}
	}
	found := s.fail(where, CodeSyntax, "", "")
	switch m := told.Message; {
	case strings.Contains(m, "maximum allowed nodes"):
		found.Code, found.Message, found.Remedy = CodeLimit, "This expression has more than "+count(limitNodes, "node")+".", "Move parts of it into figures of their own."
	case strings.Contains(m, "coalesce"):
		found.Message, found.Remedy = "“??” and another operator stand side by side without brackets.", "Put one of them in brackets: a ?? (b / c), or (a ?? b) / c."
	case strings.Contains(m, "unexpected token EOF"), strings.Contains(m, "unexpected end"):
		found.Message, found.Remedy = "The expression ends too early.", "Something is missing at its end: a value, or a closing bracket."
	case strings.Contains(m, "unexpected token"):
		found.Message, found.Remedy = "“"+found.Found+"” can't stand here.", unexpectedRemedy(found.Found)
	case strings.Contains(m, "unrecognized character"):
		found.Message, found.Remedy = "“"+found.Found+"” is no part of an expression.", unexpectedRemedy(found.Found)
	case strings.Contains(m, "literal not terminated"), strings.Contains(m, "unterminated"):
		found.Message, found.Remedy = "A text in quotes is not closed.", "Close it with the quote that opened it."
	case strings.Contains(m, "bad number syntax"):
		found.Message, found.Remedy = "This number can't be read.", "Write the unit as a function round it: mm(10), not 10mm."
	default:
		found.Message = "This expression can't be read: " + m + "."
	}
	return found
}

func unexpectedRemedy(token string) string {
	switch token {
	case "=":
		return "Compare with ==."
	case ",":
		return "Write decimals with a point: 1.2."
	case "&", "|":
		return "Write && for and, || for or."
	case ")", "]", "}":
		return "It closes a bracket that was not opened, or a value before it is missing."
	case "≤", "≥", "≠":
		return "Write <=, >= or !=."
	}
	return "An operator or a bracket before it may be missing; units are functions: mm(10)."
}
