package engine

import "lowspot/engine/takeoff"

// What is quoted for a job, and the shop that quotes it. Rates and amounts are kept as typed.

// Offer is what is said on a job's quote. The customer's name stays on this device: a shared job leaves it out.
type Offer struct {
	Number    string          `json:"number"`
	Date      string          `json:"date"` // 2026-05-02
	Customer  string          `json:"customer"`
	Discount  string          `json:"discount"` // this customer's: "5 %"
	Delivered bool            `json:"delivered"`
	Labour    bool            `json:"labour"` // the hands' hours are priced too
	Lines     map[string]bool `json:"lines"`  // by a line's key: quoted or left out, against what is usual
}

// Shop is how somebody prices: the price list, tax, delivery, and what is printed round a quote.
type Shop struct {
	Name          string          `json:"name"`
	Address       string          `json:"address"`
	Terms         string          `json:"terms"`
	Valid         string          `json:"valid"` // how long a quote holds: "30 d"
	Next          int             `json:"next"`  // number of the next quote
	Currency      string          `json:"currency"`
	Digits        int             `json:"digits"` // of the currency's smallest unit
	Inclusive     bool            `json:"inclusive"`
	Rounding      string          `json:"rounding"` // of tax: by line or by sum
	Classes       []ShopClass     `json:"classes"`
	Delivery      string          `json:"delivery"` // price of one delivery
	DeliveryClass string          `json:"deliveryClass"`
	Hour          string          `json:"hour"` // price of an hour's work
	HourClass     string          `json:"hourClass"`
	Prices        []takeoff.Price `json:"prices"`
}

// ShopClass is a tax class with its rate as typed.
type ShopClass struct {
	Name string `json:"name"`
	Rate string `json:"rate"`
}

// NewShop is a shop without a price list: one tax class at no tax, whose rate the person gives.
func NewShop() Shop {
	return Shop{
		Valid: "30 d", Next: 1, Currency: "EUR", Digits: 2, Rounding: takeoff.RoundBySum,
		Classes: []ShopClass{{Name: "standard", Rate: "0 %"}}, DeliveryClass: "standard", HourClass: "standard", Prices: []takeoff.Price{},
	}
}

// AfterPour is what came of a job: bags used and left over, and the depth as it was measured on the finished pour.
type AfterPour struct {
	Used  string `json:"used"`  // bags opened
	Left  string `json:"left"`  // bags left over
	Depth string `json:"depth"` // mean depth as measured
	Notes string `json:"notes"`
}
