// What standards print about flatness: limits under a straightedge, and gaps on surveyed lines.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

const (
	inches      = 0.0254
	millimetres = 0.001
)

// "Tabelle 3: Ebenheitstoleranzen (aus DIN 18202 erweiterte Tabelle)", quoting Handbuch für das Estrich- und Belaggewerbe, Zentralverband Deutsches
// Baugewerbe (reproduction); the base columns agree with a second reproduction, whose footnotes give the figures' straight lines, whole millimetres,
// and the 15 m value beyond 15 m. That rows 3 and 4 are unchanged in DIN 18202:2013 is as recalled, document not at hand.
func TestDIN18202RowsThreeAndFour(t *testing.T) {
	for row, limits := range map[int]map[float64]float64{
		3: {0.1: 2, 1: 4, 2: 6, 4: 10, 10: 12, 15: 15},
		4: {0.1: 1, 1: 3, 2: 5, 4: 9, 10: 12, 15: 15},
	} {
		limits[40] = 15
		for distance, want := range limits {
			limit, err := floor.DIN18202(row, distance)
			require.NoError(t, err)
			assert.Equal(t, want, limit*1000, "row %d at %v m", row, distance)
		}
	}
}

// A half is rounded up: row 4 at 2.5 m is 6.0, at 1.25 m 3.5, at 1.75 m 4.5, which half-even would call 4.
func TestDIN18202RoundsHalvesUp(t *testing.T) {
	for distance, want := range map[float64]float64{1.25: 4, 1.75: 5, 2.25: 6, 2.75: 7} {
		limit, err := floor.DIN18202(4, distance)
		require.NoError(t, err)
		assert.Equal(t, want, limit*1000, "at %v m", distance)
	}
	_, err := floor.DIN18202(2, 1)
	assert.ErrorContains(t, err, "row 3")
	_, err = floor.DIN18202(3, 0.05)
	assert.ErrorContains(t, err, "0.1 m")
}

// ANSI A108.02 as quoted in fcimag.com/articles/91628 (reproduction); ANSI A108.01/.02 and TCNA Handbook for smaller tile (1/16 in in 12 in as recalled);
// ASTM F710 (as recalled); BS 8204-1 and -2, The Concrete Society, fingertips id=1006 and docid=1009 (reproduction); AS 1884:2021 §3.1.4 (reproduction).
func TestTheStandardsStraightedgeLimits(t *testing.T) {
	want := map[string][2]float64{ // edge, limit in mm
		"tile-large-10ft": {3048, 3.175}, "tile-large-2ft": {609.6, 1.5875},
		"tile-small-10ft": {3048, 6.35}, "tile-small-1ft": {304.8, 1.5875},
		"resilient-10ft": {3048, 4.7625},
		"bs8204-sr1":     {2000, 3}, "bs8204-sr2": {2000, 5}, "bs8204-sr3": {2000, 10},
		"as1884-planeness": {2000, 4}, "as1884-abrupt": {150, 0.5},
	}
	found := 0
	for _, tolerance := range floor.Tolerances() {
		assert.NotEmpty(t, tolerance.Source)
		if values, listed := want[tolerance.Key]; listed {
			found++
			assert.InDelta(t, values[0]*millimetres, tolerance.Length, 1e-12, tolerance.Key)
			assert.InDelta(t, values[1]*millimetres, tolerance.Limit, 1e-12, tolerance.Key)
		}
	}
	assert.Equal(t, len(want), found)
}

// ACI 117-10 Table 4.8.5.1 and §4.8.5.3 (reproduction).
func TestTheClassesOfFloorAndTheirLeastLocalValues(t *testing.T) {
	classes := floor.FClasses()
	require.Len(t, classes, 5)
	for i, want := range [][2]float64{{20, 15}, {25, 20}, {35, 25}, {45, 35}, {60, 40}} {
		assert.Equal(t, want, [2]float64{classes[i].Flatness, classes[i].Levelness}, classes[i].Name)
	}
	flatness, levelness := classes[2].LeastLocal()
	assert.InDelta(t, 21, flatness, 1e-9)
	assert.InDelta(t, 15, levelness, 1e-9)
	flatness, levelness = classes[0].LeastLocal()
	assert.InDelta(t, 12, flatness, 1e-9)
	assert.InDelta(t, 9, levelness, 1e-9)
}

// SLAC Alignment Engineering Group, "SPEAR3 Concrete Test Pad", E1155M sheet, April–May 2003 (reproduction): elevations in mm, 300 mm apart.
var (
	slacLine0 = []float64{418.617, 419.938, 421.894, 423.748, 425.221, 424.739, 423.799, 424.307, 425.425, 424.688, 423.164, 422.758, 420.472, 416.738}
	slacLine1 = []float64{418.592, 421.081, 422.072, 421.513, 420.040, 421.132, 420.675, 421.640, 421.894, 421.538, 421.183, 421.894, 419.684, 420.040, 417.982}
)

// Recomputed on the SLAC lines: largest distance below the upper hull within a sliding 3 m edge, between its supports (no cantilever: the simulation
// rule of CSA A23.1, from a secondary description).
func TestStraightedgeGapsOnSurveyedLines(t *testing.T) {
	for _, line := range []struct {
		heights      []float64
		depth        float64
		from, at, to int
	}{{slacLine0, 1.5240, 4, 6, 8}, {slacLine1, 1.9924, 2, 4, 11}} {
		along := make([]float64, len(line.heights))
		heights := make([]float64, len(line.heights))
		for i, h := range line.heights {
			along[i], heights[i] = 0.3*float64(i), h*millimetres
		}
		gap, err := floor.LargestProfileGap(along, heights, 3)
		require.NoError(t, err)
		assert.InDelta(t, line.depth, gap.Depth*1000, 1e-3)
		assert.Equal(t, [3]int{line.from, line.at, line.to}, [3]int{gap.From, gap.At, gap.To})
	}
}
