package deck

import "strconv"

// Units that the tables of lumber are printed in.
const (
	inch = 0.0254
	psi  = 4.4482216152605 / (inch * inch) // Pa, a pound-force on a square inch
)

// Size is a joist's cross-section as it is dressed, m.
type Size struct {
	Name    string  `json:"name"`
	Breadth float64 `json:"breadth"`
	Depth   float64 `json:"depth"`
}

// Sizes are the usual joists of North America, 1 1/2 in thick; dressed depths as recalled, document not at hand.
var Sizes = []Size{
	{"2×6", 1.5 * inch, 5.5 * inch},
	{"2×8", 1.5 * inch, 7.25 * inch},
	{"2×10", 1.5 * inch, 9.25 * inch},
	{"2×12", 1.5 * inch, 11.25 * inch},
}

// Area is bd, m².
func (s Size) Area() float64 { return s.Breadth * s.Depth }

// Modulus is the section modulus bd²/6, m³.
func (s Size) Modulus() float64 { return s.Breadth * s.Depth * s.Depth / 6 }

// Inertia is the second moment of area bd³/12, m⁴.
func (s Size) Inertia() float64 { return s.Breadth * s.Depth * s.Depth * s.Depth / 12 }

// Grade is what one species and grade of lumber may be taken to do. Bending is the reference stress for each of Sizes, Pa, size factor included;
// none where the code works another way, and then no bending check is made.
type Grade struct {
	ID         string    `json:"id"`
	Name       string    `json:"name"`
	Elasticity float64   `json:"elasticity"` // Pa
	Bending    []float64 `json:"bending"`
	Edition    string    `json:"edition"`
	Source     string    `json:"source"`
}

// Repetitive is the factor for joists side by side at 24 in or less, C_r: NELMA grading rules §8.
const Repetitive = 1.15

// sizeFactors are C_F of No. 2 for each of Sizes: NELMA grading rules §8.
var sizeFactors = [4]float64{1.3, 1.2, 1.1, 1.0}

const (
	supplement = "NDS Supplement Table 4A, value as recalled, document not at hand"
	southern   = "NDS Supplement Table 4B (size factor in it), value as recalled, document not at hand"
	european   = "EN 338 mean elasticity, value as recalled, document not at hand; no bending check"
)

// Grades are the usual ones. A grade carries its edition, because values and spans changed with editions.
var Grades = []Grade{
	no2("douglas-fir-larch", "Douglas fir-larch No. 2", 1.6e6, 900, "2015 IRC and later"),
	no2("douglas-fir-larch-2012", "Douglas fir-larch No. 2", 1.6e6, 875, "2012 IRC and before"),
	no2("hem-fir", "Hem-fir No. 2", 1.3e6, 850, ""),
	no2("spruce-pine-fir", "Spruce-pine-fir No. 2", 1.4e6, 875, ""),
	southernPine("southern-pine", 1.4e6, [4]float64{1000, 925, 800, 750}, "values of 2013 and later"),
	southernPine("southern-pine-before-2013", 1.6e6, [4]float64{0, 1200, 1050, 975}, "values before 2013"),
	{ID: "c16", Name: "Softwood C16", Elasticity: 8.0e9, Edition: "EN 338:2016", Source: european},
	{ID: "c24", Name: "Softwood C24", Elasticity: 11.0e9, Edition: "EN 338:2016", Source: european},
}

func no2(id, name string, elasticity, bending float64, edition string) Grade {
	g := Grade{ID: id, Name: name, Elasticity: elasticity * psi, Edition: edition, Source: supplement}
	for _, factor := range sizeFactors {
		g.Bending = append(g.Bending, bending*factor*psi)
	}
	return g
}

func southernPine(id string, elasticity float64, bending [4]float64, edition string) Grade {
	g := Grade{ID: id, Name: "Southern pine No. 2", Elasticity: elasticity * psi, Edition: edition, Source: southern}
	for _, stress := range bending {
		g.Bending = append(g.Bending, stress*psi)
	}
	return g
}

// GradeNamed finds a grade by its ID.
func GradeNamed(id string) (Grade, bool) {
	for _, g := range Grades {
		if g.ID == id {
			return g, true
		}
	}
	return Grade{}, false
}

// SizeNamed finds a size by its name, typed with × or x.
func SizeNamed(name string) (Size, bool) {
	for _, s := range Sizes {
		if s.Name == name || "2x"+s.Name[len("2×"):] == name {
			return s, true
		}
	}
	return Size{}, false
}

// bendingOf is the stress that a joist of this grade and size may take where joists lie side by side, Pa; zero where none is known.
func (g Grade) bendingOf(s Size) float64 {
	for i, known := range Sizes {
		if i < len(g.Bending) && known.Breadth == s.Breadth && known.Depth == s.Depth {
			return g.Bending[i] * Repetitive
		}
	}
	return 0
}

// ratioText writes a stiffness as the trade does: L/360.
func ratioText(n float64) string { return "L/" + strconv.FormatFloat(n, 'f', 0, 64) }
