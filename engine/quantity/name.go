// How a dimension is called in an error, in a rulebook and on the page: "length", "mass per area", "length per time squared".
package quantity

import (
	"strconv"
	"strings"
)

var named = []struct {
	name      string
	dimension Dimension
}{
	{"number", Number},
	{"length", Length},
	{"area", Area},
	{"volume", Volume},
	{"mass", Mass},
	{"time", Time},
	{"temperature", Temperature},
	{"temperature difference", TemperatureDifference},
	{"money", Money},
	{"speed", Speed},
	{"force", Force},
	{"pressure", Pressure},
	{"density", Density},
	{"flow", Flow},
	{"evaporation rate", EvaporationRate},
	{"mass per area", MassPerArea},
	{"coverage", Coverage},
	{"yield", Yield},
	{"area per mass", AreaPerMass},
	{"ratio", Ratio},
}

// Name is the dimension in words. DimensionNamed reads every name back.
func (d Dimension) Name() string {
	for _, n := range named {
		if n.dimension == d {
			return n.name
		}
	}
	above, below := d.terms(1), d.terms(-1)
	if len(above) == 0 {
		above = []string{"number"}
	}
	name := strings.Join(above, " times ")
	if len(below) > 0 {
		name += " per " + strings.Join(below, " and ")
	}
	return name
}

// terms are the base quantities above (sign 1) or below (sign -1) the line, each with its power in words.
func (d Dimension) terms(sign int) []string {
	var terms []string
	for _, b := range []struct {
		name     string
		exponent int8
	}{{"money", d.Money}, {"mass", d.Mass}, {"length", d.Length}, {"temperature difference", d.Temperature}, {"time", d.Time}} {
		if n := int(b.exponent) * sign; n > 0 {
			terms = append(terms, powerName(b.name, n))
		}
	}
	return terms
}

func powerName(base string, n int) string {
	switch {
	case n == 1:
		return base
	case base == "length" && n == 2:
		return "area"
	case base == "length" && n == 3:
		return "volume"
	case n == 2:
		return base + " squared"
	case n == 3:
		return base + " cubed"
	}
	return base + " to the power " + strconv.Itoa(n)
}

// DimensionNamed finds a dimension by its name, a composed one too: "length", "money per area", "number per time squared".
func DimensionNamed(name string) (Dimension, bool) {
	for _, n := range named {
		if n.name == name {
			return n.dimension, true
		}
	}
	above, below, divided := strings.Cut(name, " per ")
	d, ok := product(strings.Split(above, " times "))
	if !ok || !divided {
		return d, ok
	}
	under, ok := product(strings.Split(below, " and "))
	if !ok {
		return Number, false
	}
	return d.Over(under), true
}

func product(terms []string) (Dimension, bool) {
	d := Number
	for _, t := range terms {
		factor, ok := termNamed(t)
		if !ok {
			return Number, false
		}
		d = d.Times(factor)
	}
	return d, true
}

func termNamed(term string) (Dimension, bool) {
	base, power, _ := strings.Cut(term, " to the power ")
	n := 1
	if power != "" {
		var err error
		if n, err = strconv.Atoi(power); err != nil || n < 2 || n > 127 {
			return Number, false
		}
	}
	if b, ok := strings.CutSuffix(base, " squared"); ok {
		base, n = b, 2*n
	} else if b, ok := strings.CutSuffix(base, " cubed"); ok {
		base, n = b, 3*n
	}
	for _, d := range named {
		if d.name == base {
			return d.dimension.Power(n), true
		}
	}
	return Number, false
}
