package rules

// The numbers that stand in a rule's expressions, each with its unit, so that a person can change one in a form and leave the expression alone.

import (
	"strconv"
	"strings"

	"github.com/expr-lang/expr/parser/lexer"

	"lowspot/engine/quantity"
)

// Literal is one number of an expression: "mm(10)", or "3" on its own. From and To are UTF-16 offsets into the field's text.
type Literal struct {
	Field string `json:"field"` // value, applies or holds
	From  int    `json:"from"`
	To    int    `json:"to"`
	Text  string `json:"text"`  // as the expression has it
	Shown string `json:"shown"` // as a person types it: "10 mm"
	Unit  string `json:"unit"`  // its symbol; empty: a bare number

	function  string // the unit's function
	dimension quantity.Dimension
	at        span // in characters
}

// Literals lists the numbers of a rule's expressions, in the order in which they stand. Exponents are left out: they are no quantities.
func (r *Rule) Literals() []Literal {
	var list []Literal
	for _, field := range []string{"value", "applies", "holds"} {
		if text := *r.single(field); strings.TrimSpace(text) != "" {
			list = append(list, r.literalsOf(field, text)...)
		}
	}
	return list
}

func (r *Rule) literalsOf(field, text string) []Literal {
	s := source{rule: r, field: field, whole: text, text: text}
	tokens, err := s.tokens()
	if err != nil {
		return nil
	}
	var list []Literal
	whole := []rune(text)
	for i := 0; i < len(tokens); i++ {
		l := Literal{Field: field}
		switch end := unitCall(tokens, i); {
		case end > i:
			l.function = tokens[i].Value
			l.at = span{tokens[i].From, at(tokens[end]).to}
			i = end
		case tokens[i].Kind == lexer.Number && !(i > 0 && tokens[i-1].Is(lexer.Operator, "^", "**")):
			l.at = at(tokens[i])
		default:
			continue
		}
		l.From, l.To, l.Text = wide(whole[:l.at.from]), wide(whole[:l.at.to]), string(whole[l.at.from:l.at.to])
		l.show()
		list = append(list, l)
	}
	return list
}

// unitCall gives the closing bracket of a unit function whose number is written out: mm(10), inch(3/8). Below i where there is none.
func unitCall(tokens []lexer.Token, i int) int {
	if tokens[i].Kind != lexer.Identifier || i+2 >= len(tokens) || !tokens[i+1].Is(lexer.Bracket, "(") {
		return -1
	}
	if _, known := unitByName[tokens[i].Value]; !known {
		return -1
	}
	for j := i + 2; j < len(tokens); j++ {
		switch t := tokens[j]; {
		case t.Is(lexer.Bracket, ")") && j > i+2:
			return j
		case t.Kind == lexer.Number, t.Is(lexer.Operator, "+", "-", "/"):
		default:
			return -1
		}
	}
	return -1
}

// show writes the literal as a person types it.
func (l *Literal) show() {
	number := l.Text
	if l.function != "" {
		unit := unitByName[l.function]
		l.dimension, l.Unit = unit.Dimension, unit.Symbol
		number = strings.TrimSpace(strings.TrimSuffix(strings.TrimPrefix(strings.TrimSpace(strings.TrimPrefix(l.Text, l.function)), "("), ")"))
		number = strings.ReplaceAll(strings.ReplaceAll(number, " + ", " "), "_", "")
	}
	l.Shown = strings.TrimSpace(number + " " + l.Unit)
}

// Rewrite puts what a person typed in the place of a number and gives the field's new text. A bare number keeps the unit that stands there.
func (r *Rule) Rewrite(field string, from int, typed string) (string, *Error) {
	for _, l := range r.Literals() {
		if l.Field != field || l.From != from {
			continue
		}
		put, err := l.put(typed)
		if err != nil {
			err.Rule, err.Field, err.From, err.To = r.Name, field, l.From, l.To
			return "", err
		}
		whole := []rune(*r.single(field))
		return string(whole[:l.at.from]) + put + string(whole[l.at.to:]), nil
	}
	return "", &Error{Code: CodeFormat, Rule: r.Name, Field: field, Message: "There is no number at this place any more.", Remedy: "Look at the expression again."}
}

// put writes what was typed as the expression writes it.
func (l *Literal) put(typed string) (string, *Error) {
	si, failed := quantity.ReadIn(typed, l.dimension, l.Unit)
	if failed != nil {
		err := &Error{Code: CodeFormat, Found: typed, Message: failed.Error()}
		if told, is := failed.(*quantity.Error); is {
			err.Message, err.Remedy = told.Message, told.Remedy
		}
		return "", err
	}
	if l.function == "" {
		return plainNumber(si), nil
	}
	number, function := strings.TrimSpace(typed), l.function
	for _, n := range unitNames {
		if unit := unitByName[n.name]; unit.Dimension == l.dimension && endsIn(typed, unit.Symbol) {
			function = n.name
			number = strings.TrimSpace(strings.TrimSuffix(number, unit.Symbol))
		}
	}
	if !asWritten(number) {
		number = plainNumber(unitByName[function].From(si))
	}
	return function + "(" + number + ")", nil
}

// endsIn tells that a text is a number and then that unit.
func endsIn(typed, symbol string) bool {
	number, ends := strings.CutSuffix(strings.TrimSpace(typed), symbol)
	number = strings.TrimSpace(number)
	return ends && number != "" && number[len(number)-1] >= '0' && number[len(number)-1] <= '9'
}

// asWritten tells that an expression can hold a number as it was typed: 10, 0.5, 3/8.
func asWritten(number string) bool {
	over, under, fraction := strings.Cut(number, "/")
	return plainDigits(over) && (!fraction || plainDigits(under) && strings.Trim(under, "0.") != "")
}

func plainDigits(text string) bool {
	points := 0
	for _, c := range text {
		if c == '.' {
			points++
		} else if c < '0' || c > '9' {
			return false
		}
	}
	return text != "" && points <= 1 && text[0] != '.' && text[len(text)-1] != '.'
}

// plainNumber writes a number with no more digits than it takes; what conversion adds in the thirteenth digit is dropped.
func plainNumber(x float64) string {
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 12, 64), 64)
	if err != nil {
		rounded = x
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}
