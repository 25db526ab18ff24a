package floor

import (
	"math"
	"sort"
)

// alongSnake orders readings along a path that goes to and fro over the ground, so that each is near the one before and the walk to it short.
func alongSnake(points []Point, low, high Point) []int {
	rows := int(math.Sqrt(float64(len(points))/2)) + 1
	cell := func(p Point) int {
		row := cellAlong(rows, p.Y-low.Y, high.Y-low.Y)
		column := cellAlong(rows, p.X-low.X, high.X-low.X)
		if row%2 == 1 {
			column = rows - column
		}
		return row*(rows+1) + column
	}
	// First how many lie before each cell, then each to its own place.
	before := make([]int, (rows+1)*(rows+1)+1)
	for _, p := range points {
		before[cell(p)+1]++
	}
	for i := 1; i < len(before); i++ {
		before[i] += before[i-1]
	}
	order := make([]int, len(points))
	for i, p := range points {
		c := cell(p)
		order[before[c]] = i
		before[c]++
	}
	return order
}

// cellAlong is which of so many cells along an extent a distance falls into; the end itself falls into one more.
func cellAlong(cells int, distance, extent float64) int {
	share := float64(cells) * distance / extent
	if share >= 0 && share <= float64(cells) {
		return int(share)
	}
	return 0
}

// merge gives every doubled spot the mean of its readings and lists which they were.
func (m *mesh) merge(points []Point, heights []float64) []Merge {
	if len(m.merged) == 0 {
		return nil
	}
	for i, vertex := range m.vertexOf {
		if more, doubled := m.merged[vertex]; doubled && !contains(more, i) {
			m.merged[vertex] = append(more, i)
		}
	}
	merges := make([]Merge, 0, len(m.merged))
	for vertex, indexes := range m.merged {
		sort.Ints(indexes)
		sum, least, greatest := 0.0, math.Inf(1), math.Inf(-1)
		for _, i := range indexes {
			sum += heights[i]
			least, greatest = math.Min(least, heights[i]), math.Max(greatest, heights[i])
		}
		m.heights[vertex] = sum / float64(len(indexes))
		merges = append(merges, Merge{At: points[indexes[0]], Indexes: indexes, Spread: greatest - least})
	}
	sort.Slice(merges, func(i, j int) bool { return merges[i].Indexes[0] < merges[j].Indexes[0] })
	return merges
}

func contains(list []int, wanted int) bool {
	for _, i := range list {
		if i == wanted {
			return true
		}
	}
	return false
}
