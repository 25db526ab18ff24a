// How much of each thing a floor takes, each step of the sum kept in words.
package takeoff

import (
	"math"
	"strconv"

	"lowspot/engine/quantity"
)

// Need is how much of something is wanted, in SI base units, and where that comes from.
type Need struct {
	Amount    float64
	Dimension quantity.Dimension
	Because   []string
}

// Line makes the line to buy of a need.
func (n Need) Line(item string, pack, packMass float64) (Line, error) {
	return NewLine(item, n.Amount, n.Dimension, pack, packMass, n.Because...)
}

// Writer words sums in the job's units.
type Writer struct{ System quantity.System }

func (w Writer) of(si float64, d quantity.Dimension) string { return quantity.Write(si, d, w.System) }

// cup is the volume by which coverage is told: a litre or a US gallon, m³.
func (w Writer) cup() float64 {
	if w.System == quantity.US {
		return 231 * 0.0254 * 0.0254 * 0.0254
	}
	return 0.001
}

// Coats is what coats of a liquid take on an area (m²) at a coverage (m² a m³, of the liquid as applied). Water is how many parts of it are added to one
// part bought, zero for neat.
func (w Writer) Coats(area, coverage float64, coats int, water float64) (Need, error) {
	switch {
	case !sound(area):
		return Need{}, refuse("area", w.of(area, quantity.Area), "The area isn't known.", "Enter the outline.")
	case !sound(coverage) || coverage == 0:
		return Need{}, refuse("coverage", number(coverage), "What the liquid covers isn't known.", "Give it as on the label, such as 5 m²/L.")
	case coats < 0 || coats > 20:
		return Need{}, refuse("coats", strconv.Itoa(coats), "So many coats can't be meant.", "Give the number of coats, such as 2.")
	case !sound(water) || water > 100:
		return Need{}, refuse("dilution", number(water), "The dilution can't be that.", "Give the parts of water to one part of primer, such as 3.")
	}
	applied := area * float64(coats) / coverage
	because := []string{
		"Area: " + w.of(area, quantity.Area) + ".",
		counted(coats, "coat") + " at " + w.of(coverage*w.cup(), quantity.Area) + " to " + w.of(w.cup(), quantity.Volume) + ": " + w.of(applied, quantity.Volume) + ".",
	}
	neat := applied / (1 + water)
	if water > 0 {
		because = append(because, "One part in "+number(1+water)+", the rest is water: "+w.of(neat, quantity.Volume)+".")
	}
	return Need{neat, quantity.Volume, because}, nil
}

// Run is a length (m) of strip, batten or tape with an allowance (share) for cuts and laps.
func (w Writer) Run(length, allowance float64) (Need, error) {
	if !sound(length) {
		return Need{}, refuse("length", w.of(length, quantity.Length), "The length isn't known.", "Enter the outline.")
	}
	if err := checkAllowance(allowance); err != nil {
		return Need{}, err
	}
	return w.allowed(Need{length, quantity.Length, []string{"Length: " + w.of(length, quantity.Length) + "."}}, allowance), nil
}

// Fixings are the nails, screws or staples along a length (m), no further apart than a spacing (m), with one at each end unless the run closes on itself.
func (w Writer) Fixings(length, spacing float64, closed bool) (Need, error) {
	if !sound(length) || !sound(spacing) || spacing < 0.001 || length/spacing > MostPacks {
		return Need{}, refuse("spacing", w.of(spacing, quantity.Length), "Fixings can't be spaced so.", "Give the distance between two, such as 16 in or 400 mm.")
	}
	const hair = 1e-9
	count := math.Ceil(length/spacing - hair)
	if !closed && length > 0 {
		count++
	}
	return Need{count, quantity.Number, []string{w.of(length, quantity.Length) + " at no more than " + w.of(spacing, quantity.Length) + ": " + number(count) + "."}}, nil
}

// Bead is the sealant or foam in a joint of a length, width and depth (m), with an allowance (share) for what stays in cartridges and on tools.
func (w Writer) Bead(length, width, depth, allowance float64) (Need, error) {
	if !sound(length) || !sound(width) || !sound(depth) || width > 0.5 || depth > 0.5 {
		return Need{}, refuse("joint", w.of(width, quantity.Length)+" × "+w.of(depth, quantity.Length), "A joint can't be that wide or deep.", "Give its width and depth, such as 10 mm × 10 mm.")
	}
	if err := checkAllowance(allowance); err != nil {
		return Need{}, err
	}
	volume := length * width * depth
	sum := w.of(length, quantity.Length) + " × " + w.of(width, quantity.Length) + " × " + w.of(depth, quantity.Length) + ": " + w.of(volume, quantity.Volume) + "."
	return w.allowed(Need{volume, quantity.Volume, []string{sum}}, allowance), nil
}

// Sheeting is what a membrane or mesh off a roll takes to cover an area (m²): its laps (m) are lost from its width (m), and an allowance (share) at the walls.
func (w Writer) Sheeting(area, width, lap, allowance float64) (Need, error) {
	if !sound(area) || !sound(width) || !sound(lap) || lap >= width {
		return Need{}, refuse("lap", w.of(lap, quantity.Length), "The lap must be less than the roll's width.", "Give both as on the label, such as 50 mm of 1 m.")
	}
	if err := checkAllowance(allowance); err != nil {
		return Need{}, err
	}
	lapped := area * width / (width - lap)
	return w.allowed(Need{lapped, quantity.Area, []string{
		"Area: " + w.of(area, quantity.Area) + ".",
		"With laps of " + w.of(lap, quantity.Length) + " in " + w.of(width, quantity.Length) + ": " + w.of(lapped, quantity.Area) + ".",
	}}, allowance), nil
}

// allowed adds an allowance (share) to a need.
func (w Writer) allowed(n Need, allowance float64) Need {
	if allowance == 0 {
		return n
	}
	n.Amount *= 1 + allowance
	n.Because = append(n.Because, "With "+number(100*allowance)+" % for cuts and loss: "+w.of(n.Amount, n.Dimension)+".")
	return n
}

func checkAllowance(share float64) error {
	if share >= 0 && share <= 1 {
		return nil
	}
	return refuse("allowance", number(100*share)+" %", "An allowance for cuts and loss lies between 0 % and 100 %.", "10 % is common practice.")
}

// sound tells whether x is a usable quantity, zero or more.
func sound(x float64) bool { return x >= 0 && x <= quantity.Greatest }

func number(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

func counted(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return strconv.Itoa(n) + " " + thing + "s"
}
