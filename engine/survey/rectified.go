// The depth of a pour is never below zero: where the deck may stand above the plane it is max(0, depth), a bent function of a normal number.
package survey

// bentOrders is how many terms of the series are kept; with six, a spot that lies exactly at the plane keeps 99.2 % of its variance and
// spots further off more.
const bentOrders = 6

// bent is max(0, mean + deviation·x) for a standard normal x, as a series in Hermite polynomials: its mean, and the factors with which the
// powers of a correlation count. Two of them covary by the sum over k of a.order[k]·b.order[k]·correlation^k / k! (Price 1958; from memory).
type bent struct {
	mean  float64
	order [bentOrders + 1]float64
}

func bentOf(mean, deviation float64) bent {
	if deviation <= 0 {
		return bent{mean: positive(mean)}
	}
	t := mean / deviation
	d := density(t)
	b := bent{mean: positive(mean*chance(t) + deviation*d)} // far below zero the two cancel to their last digits
	b.order[1] = deviation * chance(t)
	// From the second on: deviation · He(k−2)(−t) · density, where He(k+1)(x) = x·He(k) − k·He(k−1).
	before, now := 0.0, 1.0
	for k := 2; k <= bentOrders; k++ {
		b.order[k] = deviation * d * now
		before, now = now, -t*now-float64(k-2)*before
	}
	return b
}

// beyondFirst is the covariance of two bent numbers less its first term, which is that of plain normal numbers.
func beyondFirst(a, b *bent, correlation float64) float64 {
	sum, power, factorial := 0.0, correlation, 1.0
	for k := 2; k <= bentOrders; k++ {
		power *= correlation
		factorial *= float64(k)
		sum += a.order[k] * b.order[k] * power / factorial
	}
	return sum
}
