package pour

import "math"

// Mix is what the leveller's sheet says of one bag and its water.
type Mix struct {
	BagMass   float64 `json:"bagMass"`   // kg of powder
	Yield     float64 `json:"yield"`     // m³ of fresh mix per kg of powder
	WaterLow  float64 `json:"waterLow"`  // m³ of water per kg of powder, the least the sheet allows
	WaterHigh float64 `json:"waterHigh"` // the most
	Water     float64 `json:"water"`     // the one chosen
}

// Bucket is what a batch is mixed in. HeadRoom is the share of it left empty so that the mix stays in: 0.25 leaves a quarter.
type Bucket struct {
	Volume   float64 `json:"volume"` // m³ to the brim
	HeadRoom float64 `json:"headRoom"`
}

// Batch is what one bucket holds: whole bags with their water.
type Batch struct {
	Number int     `json:"number"` // from 1
	Bags   int     `json:"bags"`
	Powder float64 `json:"powder"` // kg
	Water  Water   `json:"water"`
	Mixed  float64 `json:"mixed"`  // m³ of fresh mix in the bucket
	Volume float64 `json:"volume"` // m³ that the floor takes of it
	Left   float64 `json:"left"`   // m³ over in the last batch, since a bag is mixed whole
}

// most is more batches than any one pour has; beyond it an entry is wrong.
const most = 10000

// Batches splits a volume into bucketfuls of whole bags; the last may be a part batch. step is what a person can measure water to (LitreMark, QuartMark).
func Batches(volume float64, mix Mix, bucket Bucket, step float64) ([]Batch, error) {
	bags, err := BagsPerBucket(mix, bucket)
	if err != nil {
		return nil, err
	}
	if !positive(volume) {
		return nil, refuse("volume", number(volume, 6)+" m³", "give the volume of the pour, above zero")
	}
	full := float64(bags) * mix.BagMass * mix.Yield
	if volume > most*full {
		return nil, refuse("volume", number(volume, 3)+" m³ makes more than 10000 batches", "check the depth, the bucket and the bag")
	}
	batches := []Batch{}
	for left := volume; left > 1e-9*volume; left -= full {
		b := Batch{Number: len(batches) + 1, Bags: bags, Mixed: full, Volume: full}
		if left < full*(1-1e-9) {
			b.Bags = int(math.Ceil(left/(mix.BagMass*mix.Yield) - 1e-9))
			b.Mixed = float64(b.Bags) * mix.BagMass * mix.Yield
			b.Volume = left
			b.Left = math.Max(0, b.Mixed-left)
		}
		b.Powder = float64(b.Bags) * mix.BagMass
		if b.Water, err = MeasureWater(b.Powder, mix, step); err != nil {
			return nil, err
		}
		batches = append(batches, b)
	}
	return batches, nil
}

// Volumes is what the floor takes of each batch, m³.
func Volumes(batches []Batch) []float64 {
	volumes := make([]float64, len(batches))
	for i, b := range batches {
		volumes[i] = b.Volume
	}
	return volumes
}

// BagsPerBucket is how many whole bags a bucket takes with its head-room. A bucket too small for one is refused.
func BagsPerBucket(mix Mix, bucket Bucket) (int, error) {
	switch {
	case !positive(mix.BagMass):
		return 0, refuse("bag", number(mix.BagMass, 3)+" kg", "give the mass of one bag, such as 25 kg")
	case !positive(mix.Yield):
		return 0, refuse("yield", number(mix.Yield*1000, 3)+" L/kg", "give what a kilogram makes, such as 0.55 L/kg")
	case !positive(bucket.Volume):
		return 0, refuse("bucket", litres(bucket.Volume), "give the bucket's size, such as 30 L")
	case !(bucket.HeadRoom >= 0 && bucket.HeadRoom < 1):
		return 0, refuse("head-room", number(bucket.HeadRoom*100, 1)+" %", "give a share from 0 % to less than 100 %")
	}
	bag := mix.BagMass * mix.Yield
	bags := bucket.Volume * (1 - bucket.HeadRoom) / bag
	if bags*(1+1e-9) < 1 {
		return 0, refuse("bucket", litres(bucket.Volume)+" with its head-room doesn't hold the "+litres(bag)+" that one bag makes",
			"take a bucket of "+litres(math.Ceil(bag/(1-bucket.HeadRoom)*1000)/1000)+" or more")
	}
	if bags > most {
		return 0, refuse("bucket", litres(bucket.Volume)+" holds more than 10000 bags", "check the bucket's size and the bag")
	}
	return int(math.Floor(bags * (1 + 1e-9))), nil
}
