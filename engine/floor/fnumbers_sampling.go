// Where lines for F-numbers may run.
package floor

// FSampling is how lines are laid out over a section of floor, metres and square metres; zero where the document gives no value.
type FSampling struct {
	LineLength    float64 `json:"lineLength"`    // the least length of a line
	EdgeMargin    float64 `json:"edgeMargin"`    // left out along walls, joints and penetrations
	LinesApart    float64 `json:"linesApart"`    // the least distance between lines of one direction
	SectionSide   float64 `json:"sectionSide"`   // the least side of a section
	SectionArea   float64 `json:"sectionArea"`   // the least area of a section
	DiagonalUnder float64 `json:"diagonalUnder"` // a section narrower than this takes its lines at 45°
}

// FSamplingRules are the rules of ASTM E1155 in feet (as recalled, document not at hand) and of its metric sheet (read in a reproduction).
func FSamplingRules() (inches, metric FSampling) {
	return FSampling{LineLength: 11 * foot, EdgeMargin: 2 * foot, LinesApart: 4 * foot, SectionSide: 8 * foot, SectionArea: 320 * foot * foot},
		FSampling{LineLength: 3.3, EdgeMargin: 0.6, LinesApart: 1.2, DiagonalUnder: 7.5}
}
