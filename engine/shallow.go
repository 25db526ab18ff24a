package engine

// deepest is how deep brackets may be nested in a message or a file. Reading is recursive, and a deep enough text would use up the stack.
const deepest = 64

// Shallow tells whether no brackets of a JSON text are nested deeper than a document's ever are.
func Shallow(text []byte) bool {
	depth, quoted := 0, false
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '{' || c == '[':
			if depth++; depth > deepest {
				return false
			}
		case c == '}' || c == ']':
			depth--
		}
	}
	return true
}
