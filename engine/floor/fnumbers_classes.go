// The overall F-numbers that floors are specified by.
package floor

// FClass is a class of floor with its specified overall values; no single section may fall below three fifths of them.
type FClass struct {
	Name      string  `json:"name"`
	Flatness  float64 `json:"flatness"`  // SOFF
	Levelness float64 `json:"levelness"` // SOFL
	Source    string  `json:"source"`
}

// FClasses lists the classes of ACI 117-10 Table 4.8.5.1, read in a reproduction.
func FClasses() []FClass {
	const source = "ACI 117-10 Table 4.8.5.1, read in a reproduction"
	return []FClass{
		{"Conventional", 20, 15, source}, {"Moderately flat", 25, 20, source}, {"Flat", 35, 25, source},
		{"Very flat", 45, 35, source}, {"Super flat", 60, 40, source},
	}
}

// LeastLocal are the least values of one section: three fifths of the overall ones (ACI 117-10 §4.8.5.3, read in a reproduction).
func (c FClass) LeastLocal() (flatness, levelness float64) {
	return 0.6 * c.Flatness, 0.6 * c.Levelness
}
