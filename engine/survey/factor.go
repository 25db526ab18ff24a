package survey

import "math"

// factor is the lower triangle L with L·Lᵗ the matrix, by rows in an n × n array.
type factor struct {
	n    int
	rows []float64
}

// factorOf works Cholesky's way in place of the matrix's lower triangle; false where it isn't positive definite. Four columns at a time,
// so that one row's numbers are fetched once for four products.
func factorOf(matrix []float64, n int) (factor, bool) {
	f := factor{n, matrix}
	for i := range n {
		row := f.row(i)
		j := 0
		for ; j+4 <= i; j += 4 {
			f.fourColumns(row, j)
		}
		for ; j < i; j++ {
			other := f.row(j)
			row[j] = (row[j] - dot(row[:j], other[:j])) / other[j]
		}
		pivot := row[i] - dot(row[:i], row[:i])
		if !(pivot > row[i]*1e-15) {
			return f, false
		}
		row[i] = math.Sqrt(pivot)
	}
	return f, true
}

// row is the part of row i up to its diagonal.
func (f factor) row(i int) []float64 { return f.rows[i*f.n : i*f.n+i+1] }

func (f factor) fourColumns(row []float64, j int) {
	r0, r1, r2, r3 := f.row(j), f.row(j+1), f.row(j+2), f.row(j+3)
	s0, s1, s2, s3 := dot4(row[:j], r0, r1, r2, r3)
	a := (row[j] - s0) / r0[j]
	b := (row[j+1] - s1 - a*r1[j]) / r1[j+1]
	c := (row[j+2] - s2 - a*r2[j] - b*r2[j+1]) / r2[j+2]
	row[j], row[j+1], row[j+2] = a, b, c
	row[j+3] = (row[j+3] - s3 - a*r3[j] - b*r3[j+1] - c*r3[j+2]) / r3[j+3]
}

func dot4(x, a, b, c, d []float64) (s0, s1, s2, s3 float64) {
	a, b, c, d = a[:len(x)], b[:len(x)], c[:len(x)], d[:len(x)]
	for k, v := range x {
		s0 += v * a[k]
		s1 += v * b[k]
		s2 += v * c[k]
		s3 += v * d[k]
	}
	return
}

func dot(a, b []float64) float64 {
	b = b[:len(a)]
	even, odd := 0.0, 0.0
	k := 0
	for ; k+1 < len(a); k += 2 {
		even += a[k] * b[k]
		odd += a[k+1] * b[k+1]
	}
	if k < len(a) {
		even += a[k] * b[k]
	}
	return even + odd
}

// forward solves L·x = b in place of b.
func (f factor) forward(b []float64) []float64 {
	for i := range f.n {
		row := f.row(i)
		b[i] = (b[i] - dot(row[:i], b[:i])) / row[i]
	}
	return b
}

// backward solves Lᵗ·x = b in place of b.
func (f factor) backward(b []float64) []float64 {
	for i := f.n - 1; i >= 0; i-- {
		row := f.row(i)
		b[i] /= row[i]
		for k, v := range row[:i] {
			b[k] -= v * b[i]
		}
	}
	return b
}

// diagonal is the root of the matrix's determinant, as factors.
func (f factor) diagonal() []float64 {
	d := make([]float64, f.n)
	for i := range d {
		d[i] = f.rows[i*f.n+i]
	}
	return d
}
