package pour

import (
	"cmp"
	"math"
	"slices"
)

// share is a part of a batch that goes onto one chain.
type share struct {
	chain  int
	volume float64
}

// course is one way to take the chains in turn, batch by batch.
type course struct {
	shares  [][]share
	left    []float64 // volume still to pour on each chain
	last    []int     // the last batch on each chain, −1 before any
	longest int       // most batches between the laying of an edge and its being met
	total   int       // the sum of those over all batches
	places  int       // batches that are emptied in more than one place
	pending int       // longest, with the edges that still wait counted as if met next
}

// widest is how many courses are followed side by side. With two arms it covers every way to take turns; with more it keeps the best.
const widest = 100

// interleave finds the order of batches over the chains in which the longest wait of any edge is least, counted in batches: the same front is met
// again by the chain's next batch, and where chains meet or part, by the first batch beyond.
func interleave(chains []chain, volumes []float64) course {
	start := course{left: make([]float64, len(chains)), last: make([]int, len(chains))}
	whole := 0.0
	for i, c := range chains {
		start.left[i], start.last[i] = c.volume, -1
		whole += c.volume
	}
	little := whole * 1e-10
	courses := []course{start}
	for batch, volume := range volumes {
		next := []course{}
		for _, c := range courses {
			for first := range chains {
				if c.open(chains, first, little) {
					next = append(next, c.pour(chains, batch, first, volume, little))
				}
			}
		}
		if len(next) == 0 {
			break
		}
		courses = keepBest(next)
	}
	return courses[0]
}

// open tells whether a chain has floor left to pour and everything beyond it is down.
func (c *course) open(chains []chain, i int, little float64) bool {
	if c.left[i] <= little {
		return false
	}
	for _, before := range chains[i].after {
		if c.left[before] > little {
			return false
		}
	}
	return true
}

// pour empties a batch on a chain, and what that chain can't take on the chain after it, or else where an edge has waited longest.
func (c *course) pour(chains []chain, batch, first int, volume, little float64) course {
	n := course{shares: append(slices.Clip(c.shares), nil), left: slices.Clone(c.left), last: slices.Clone(c.last),
		longest: c.longest, total: c.total, places: c.places}
	for at := first; volume > little && at >= 0; at = n.nextChain(chains, at, little) {
		part := math.Min(volume, n.left[at])
		if n.left[at]-part <= little {
			part = n.left[at]
		}
		n.lay(chains, batch, at)
		n.left[at] -= part
		volume -= part
		n.shares[batch] = append(n.shares[batch], share{at, part})
	}
	if len(n.shares[batch]) > 1 {
		n.places += len(n.shares[batch]) - 1
	}
	n.pending = n.longest
	for i, last := range n.last {
		if last >= 0 && n.waits(chains, i, little) {
			n.pending = max(n.pending, batch+1-last)
		}
	}
	return n
}

// lay counts how long the edges that the batch meets on a chain have waited.
func (c *course) lay(chains []chain, batch, at int) {
	meets := []int{at}
	if c.last[at] < 0 {
		meets = chains[at].after
	}
	for _, m := range meets {
		if c.last[m] >= 0 {
			c.longest = max(c.longest, batch-c.last[m])
			c.total += batch - c.last[m]
		}
	}
	c.last[at] = batch
}

// waits tells whether a chain's edge is still to be met: by its own next batch, or by a chain that hasn't begun.
func (c *course) waits(chains []chain, i int, little float64) bool {
	if c.left[i] > little {
		return true
	}
	for j := range chains {
		if c.last[j] < 0 && c.left[j] > little && slices.Contains(chains[j].after, i) {
			return true
		}
	}
	return false
}

// nextChain is where the rest of a batch goes when its chain is full; −1 when no floor is left.
func (c *course) nextChain(chains []chain, full int, little float64) int {
	best := -1
	for i := range chains {
		if !c.open(chains, i, little) {
			continue
		}
		if slices.Contains(chains[i].after, full) {
			return i
		}
		if best < 0 || c.last[i] < c.last[best] {
			best = i
		}
	}
	return best
}

// keepBest keeps the best courses, and of those that have the same floor left only the best two.
func keepBest(courses []course) []course {
	slices.SortStableFunc(courses, func(a, b course) int {
		return cmp.Or(cmp.Compare(a.pending, b.pending), cmp.Compare(a.places, b.places), cmp.Compare(a.total, b.total))
	})
	kept := courses[:0:0]
	for _, c := range courses {
		alike := 0
		for _, k := range kept {
			if slices.EqualFunc(c.left, k.left, func(x, y float64) bool { return math.Abs(x-y) < 1e-9 }) {
				alike++
			}
		}
		if alike < 2 {
			kept = append(kept, c)
		}
		if len(kept) == widest {
			break
		}
	}
	return kept
}
