// Package quantity reads and writes what people type: "3/8 in", 5' 7 1/2", "1,2 m", "4.5 qt", "68 °F".
//
// Inside, every quantity is a float64 in SI base units (metre, kilogram, second, kelvin; money in whole currency units) with a Dimension
// that says what it measures. What was typed is never thrown away by its keeper: it is read again on every use.
package quantity

// Dimension is what a quantity measures, as exponents of the base quantities. Point marks a temperature that is a reading on the scale
// (20 °C), not a difference (warmer by 20 °C). Dimensions compare with ==.
type Dimension struct {
	Length, Mass, Time, Temperature, Money int8
	Point                                  bool
}

// The dimensions that the trade has a word for.
var (
	Number                = Dimension{}
	Ratio                 = Number
	Length                = Dimension{Length: 1}
	Area                  = Dimension{Length: 2}
	Volume                = Dimension{Length: 3}
	Mass                  = Dimension{Mass: 1}
	Time                  = Dimension{Time: 1}
	Temperature           = Dimension{Temperature: 1, Point: true}
	TemperatureDifference = Dimension{Temperature: 1}
	Money                 = Dimension{Money: 1}
	Speed                 = Dimension{Length: 1, Time: -1}
	Force                 = Dimension{Length: 1, Mass: 1, Time: -2}
	Pressure              = Dimension{Length: -1, Mass: 1, Time: -2}
	Density               = Dimension{Length: -3, Mass: 1}
	Flow                  = Dimension{Length: 3, Time: -1}           // m³/s
	EvaporationRate       = Dimension{Length: -2, Mass: 1, Time: -1} // kg/(m² s)
	MassPerArea           = Dimension{Length: -2, Mass: 1}           // kg/m²
	Coverage              = Dimension{Length: -1}                    // area per volume, m²/m³
	Yield                 = Dimension{Length: 3, Mass: -1}           // volume per mass, m³/kg
	AreaPerMass           = Dimension{Length: 2, Mass: -1}           // m²/kg
)

// Times is the dimension of a product. A product with a temperature is never a point: twice 20 °C means nothing.
func (d Dimension) Times(o Dimension) Dimension { return d.combine(o, 1) }

// Over is the dimension of a quotient.
func (d Dimension) Over(o Dimension) Dimension { return d.combine(o, -1) }

// Power is the dimension of a whole power. Exponents stop at ±127, far beyond any quantity of use.
func (d Dimension) Power(n int) Dimension { return Number.combine(d, n) }

func (d Dimension) combine(o Dimension, n int) Dimension {
	return Dimension{
		Length:      exponent(d.Length, o.Length, n),
		Mass:        exponent(d.Mass, o.Mass, n),
		Time:        exponent(d.Time, o.Time, n),
		Temperature: exponent(d.Temperature, o.Temperature, n),
		Money:       exponent(d.Money, o.Money, n),
	}
}

// exponent is a + b·n, held within an int8.
func exponent(a, b int8, n int) int8 {
	n = max(-255, min(255, n))
	return int8(max(-127, min(127, int(a)+int(b)*n)))
}
