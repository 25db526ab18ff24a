package engine

import (
	"sort"
	"strconv"
	"strings"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

// Which packs a line is bought in.

// unpriced are a line's packs where no price list decides: as many as were asked for, or else the mix of sizes that leaves least over.
func (t *buying) unpriced(g goods, line takeoff.Line) []LinePack {
	entry := &TakeOffLine{line: line}
	if g.packs > 0 {
		part := t.partOf(entry, g.holds)
		part.Packs = g.packs
		return []LinePack{part}
	}
	sizes := []takeoff.Size{{Holds: g.holds}}
	if g.small > 0 && g.small < g.holds {
		sizes = append(sizes, takeoff.Size{Holds: g.small})
	}
	parts := make([]LinePack, len(sizes))
	for i, packs := range takeoff.Mix(line.Need, sizes) {
		parts[i] = t.partOf(entry, sizes[i].Holds)
		parts[i].Packs = packs
	}
	return parts
}

// stated is what a sheet says of a quantity; zero where it says nothing.
func (t *buying) stated(word string) float64 { return t.facts[word].Value.Number }

// partOf is a pack of a size, weighing what its share of the line's own pack does.
func (t *buying) partOf(line *TakeOffLine, holds float64) LinePack {
	own := line.line
	return LinePack{Pack: t.counting(holds, own.Dimension), mass: own.Mass / float64(max(own.Packs, 1)) * holds / own.Pack, holds: holds}
}

// pack has a line bought in packs, the largest first, and adds up what they hold and weigh. Sizes of which none is taken are left out.
func (t *buying) pack(line *TakeOffLine, parts []LinePack) {
	sort.SliceStable(parts, func(a, b int) bool { return parts[a].holds > parts[b].holds })
	line.Parts, line.Packs = []LinePack{}, 0
	held, mass := 0.0, 0.0
	for i, part := range parts {
		if part.Packs == 0 && (i < len(parts)-1 || line.Packs > 0) {
			continue
		}
		line.Parts = append(line.Parts, part)
		line.Packs += part.Packs
		held += float64(part.Packs) * part.holds
		mass += float64(part.Packs) * part.mass
	}
	line.Leftover, line.Mass = t.counting(max(held-line.line.Need, 0), line.line.Dimension), t.of(mass, quantity.Mass)
}

// explainPacks ends every line's reasons with the packs that its need was rounded up to.
func (t *buying) explainPacks() {
	for i := range t.out.Lines {
		line := &t.out.Lines[i]
		if line.Parts[0].Pack.Text == "1" {
			continue
		}
		var packs []string
		for _, part := range line.Parts {
			packs = append(packs, strconv.Itoa(part.Packs)+" × "+part.Pack.Text)
		}
		says := "Whole packs"
		switch {
		case len(packs) > 1 && line.Parts[0].row != nil:
			says = "Whole packs, the cheapest mix"
		case len(packs) > 1:
			says = "Whole packs, the mix that leaves least over"
		}
		line.Because = append(line.Because, Reason{Says: says + ": " + strings.Join(packs, " and ") + "; " + line.Leftover.Text + " over."})
	}
}
