package engine

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// mostBands is the most depth bands that an eye tells apart on one map.
const mostBands = 9

// metricIntervals and usIntervals are the round contour intervals, metres.
var (
	metricIntervals = []float64{0.001, 0.002, 0.005, 0.010, 0.020, 0.050, 0.100, 0.200, 0.500, 1}
	usIntervals     = []float64{0.0254 / 16, 0.0254 / 8, 0.0254 / 4, 0.0254 / 2, 0.0254, 2 * 0.0254, 4 * 0.0254, 12 * 0.0254, 36 * 0.0254}
)

// draw makes the contours and the bands between them, at a round interval.
func (w *work) draw(cells []floor.Cell, plane floor.Plane, depths floor.Depths) ([]ContourPlan, []BandPlan) {
	levels := w.levels(depths)
	contours := []ContourPlan{}
	for _, c := range floor.ContoursOf(cells, plane, levels[1:len(levels)-1]) {
		if len(c.Lines) > 0 {
			contours = append(contours, ContourPlan{Depth: w.length(c.Depth), Path: drawn(c.Lines, false), Labels: labelsOn(c.Lines)})
		}
	}
	bands := []BandPlan{}
	filled := floor.BandsOf(cells, plane, levels)
	for i, b := range filled {
		bands = append(bands, BandPlan{From: w.length(b.From), To: w.length(b.To), Step: i, Steps: len(filled), Path: drawn(b.Polygons, true)})
	}
	return contours, bands
}

// levels are the round depths from at or below the least (but not below zero: dry ground has no depth) to at or above the greatest.
func (w *work) levels(d floor.Depths) []float64 {
	least, greatest := math.Max(d.Least, 0), math.Max(d.Greatest, 0)
	intervals := metricIntervals
	if w.units == quantity.US {
		intervals = usIntervals
	}
	for _, interval := range intervals {
		first, last := math.Floor(least/interval+1e-9), math.Ceil(greatest/interval-1e-9)
		if last-first > mostBands && interval != intervals[len(intervals)-1] {
			continue
		}
		if last <= first {
			last = first + 1
		}
		var levels []float64
		for k := first; k <= last && len(levels) <= 4*mostBands; k++ {
			levels = append(levels, k*interval)
		}
		return levels
	}
	return nil
}

// labelPlaces are how far along a line its depth may be written, the best first.
var labelPlaces = []float64{0.5, 0.36, 0.64, 0.22, 0.78, 0.43, 0.57, 0.29, 0.71, 0.12, 0.88}

// labelsOn are the places for a depth on its line of the most spots: a map takes the first that covers nothing.
func labelsOn(lines [][]floor.Point) []floor.Point {
	longest := lines[0]
	for _, line := range lines {
		if len(line) > len(longest) {
			longest = line
		}
	}
	places := []floor.Point{}
	for _, share := range labelPlaces {
		p := longest[int(share*float64(len(longest)))]
		places = append(places, toTenths(p))
	}
	return places
}
