// Which readings to use where all would be too many. All choices go by distances alone, and of equals the first in the list is taken, so that
// neither turning the room nor the machine's last digit changes them.
package survey

import (
	"math"

	"lowspot/engine/floor"
)

// around solves for all readings where they are at most `all`, else for the `few` nearest to p, whose answers hold at p only.
func (m *Model) around(p floor.Point, all, few int) *System {
	if len(m.points) <= all {
		return m.whole()
	}
	return m.some(nearestTo(m.points, p, few, -1), p)
}

// nearer compares squared distances, metres squared. What differs by less than a billionth, or a nanometre, is equally far: on a regular grid of
// readings many are, and only rounding would choose among them.
func nearer(d, than float64) bool { return d < than*(1-1e-9)-1e-18 }

// nearestTo lists the nearest readings, nearest first, without the one to skip.
func nearestTo(points []floor.Point, p floor.Point, few, skip int) []int {
	chosen, away := make([]int, 0, few+1), make([]float64, 0, few+1)
	for i, q := range points {
		if i == skip {
			continue
		}
		d := (q.X-p.X)*(q.X-p.X) + (q.Y-p.Y)*(q.Y-p.Y)
		if len(chosen) == few && !nearer(d, away[few-1]) {
			continue
		}
		chosen, away = append(chosen, i), append(away, d)
		k := len(chosen) - 1
		for ; k > 0 && nearer(d, away[k-1]); k-- {
			chosen[k], away[k] = chosen[k-1], away[k-1]
		}
		chosen[k], away[k] = i, d
		if len(chosen) > few {
			chosen, away = chosen[:few], away[:few]
		}
	}
	return chosen
}

// spreadOut picks readings one by one, each the farthest from those picked before; owner tells for every reading the nearest pick.
func spreadOut(points []floor.Point, most int) (picked, owner []int) {
	away, owner := make([]float64, len(points)), make([]int, len(points))
	for i := range away {
		away[i] = math.Inf(1)
	}
	next := nearestTo(points, middle(points), 1, -1)[0]
	for len(picked) < most && away[next] > 0 {
		k := len(picked)
		picked = append(picked, next)
		p := points[next]
		farthest := -1.0
		for i, q := range points {
			if d := (q.X-p.X)*(q.X-p.X) + (q.Y-p.Y)*(q.Y-p.Y); nearer(d, away[i]) {
				away[i], owner[i] = d, k
			}
			if away[i] > farthest*(1+1e-9) {
				farthest, next = away[i], i
			}
		}
	}
	return picked, owner
}

// pairsOf picks readings spread over the floor, each with its nearest neighbour, so that both long and short distances are among them.
func pairsOf(points []floor.Point, most int) []int {
	if len(points) <= most {
		return upTo(len(points))
	}
	picked, _ := spreadOut(points, most/2)
	used := make([]bool, len(points))
	for _, i := range picked {
		used[i] = true
	}
	for _, i := range picked {
		for _, j := range nearestTo(points, points[i], 4, i) {
			if !used[j] {
				used[j] = true
				break
			}
		}
	}
	chosen := make([]int, 0, most)
	for i, yes := range used {
		if yes {
			chosen = append(chosen, i)
		}
	}
	return chosen
}

func pick(points []floor.Point, chosen []int) []floor.Point {
	picked := make([]floor.Point, len(chosen))
	for k, i := range chosen {
		picked[k] = points[i]
	}
	return picked
}

func upTo(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all
}

// joined solves for all readings. Where they are too many, each group of neighbours counts as one reading at their middle, with their mean
// height and the error of a mean.
func (m *Model) joined() *System {
	if len(m.points) <= mostJoined {
		return mustSolve(m.points, m.heights, m.noise, m.covariance, m.Sloped)
	}
	picked, owner := spreadOut(m.points, mostJoined)
	points, heights, noise := make([]floor.Point, len(picked)), make([]float64, len(picked)), make([]float64, len(picked))
	members := make([]float64, len(picked))
	for i, k := range owner {
		points[k].X += m.points[i].X
		points[k].Y += m.points[i].Y
		heights[k] += m.heights[i]
		noise[k] += m.noise[i]
		members[k]++
	}
	for k, count := range members {
		points[k] = floor.Point{X: points[k].X / count, Y: points[k].Y / count}
		heights[k] /= count
		noise[k] /= count * count
	}
	return mustSolve(points, heights, noise, m.covariance, m.Sloped)
}
