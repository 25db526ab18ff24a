package engine

import (
	"math"
	"time"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

// The keys of what is billed beside goods.
const (
	billDelivery = "delivery"
	billLabour   = "labour"
)

// billed is one line of the bill with where it belongs.
type billed struct {
	key    string
	part   *LinePack // nil for delivery and labour
	priced takeoff.Priced
}

// bill works out what the quoted lines come to.
func (t *buying) bill() {
	offer := t.job.Offer
	if offer == nil {
		offer = &Offer{}
	}
	t.out.Until = t.until(offer)
	lines, unpriced := t.billedGoods()
	lines = append(lines, t.extras(offer)...)
	if !t.shop.ready {
		return
	}
	priced := make([]takeoff.Priced, len(lines))
	for i := range lines {
		priced[i] = lines[i].priced
	}
	bill, err := takeoff.NewBill(priced, t.shop.terms)
	if err != nil {
		t.refuse("bill", err)
		return
	}
	t.writeBill(bill, lines, unpriced)
}

func (t *buying) billedGoods() (lines []billed, unpriced []string) {
	unpriced = []string{}
	for i := range t.out.Lines {
		line := &t.out.Lines[i]
		switch {
		case !line.Quoted:
		case line.Parts[0].row == nil:
			unpriced = append(unpriced, line.Item)
		default:
			for j := range line.Parts {
				part := &line.Parts[j]
				lines = append(lines, billed{line.Key, part, takeoff.Priced{Item: line.Item, Count: takeoff.Thousandths(part.Packs) * 1000, Price: part.row.Price, Class: t.class(part.row.Class)}})
			}
		}
	}
	return lines, unpriced
}

// class is a tax class's name, or the shop's first where none is said.
func (t *buying) class(name string) string {
	if name == "" && len(t.shop.Classes) > 0 {
		return t.shop.Classes[0].Name
	}
	return name
}

// extras are delivery and labour, on which there is no discount.
func (t *buying) extras(offer *Offer) []billed {
	var lines []billed
	if price := t.amount("shop/delivery", t.shop.Delivery); offer.Delivered && price > 0 {
		lines = append(lines, billed{billDelivery, nil, takeoff.Priced{Item: "Delivery", Count: 1000, Price: price, Class: t.class(t.shop.DeliveryClass), NoDiscount: true}})
	}
	if price := t.amount("shop/hour", t.shop.Hour); t.out.Labour != nil && price > 0 {
		count := takeoff.Thousandths(math.Min(math.Ceil(t.out.Labour.Hours.SI/3600*1000), float64(takeoff.MostThousandths)))
		lines = append(lines, billed{billLabour, nil, takeoff.Priced{Item: "Labour", Count: count, Price: price, Class: t.class(t.shop.HourClass), NoDiscount: true}})
	}
	return lines
}

func (t *buying) writeBill(bill takeoff.Bill, lines []billed, unpriced []string) {
	c := t.shop.currency
	out := &BillPlan{
		Currency: c.Code, Inclusive: t.shop.terms.Inclusive, Net: c.Write(bill.Net), Tax: c.Write(bill.Tax), Total: c.Write(bill.Total), Amount: int64(bill.Total), Unpriced: unpriced, Taxes: []BillTax{},
	}
	if bill.Discount > 0 {
		out.Discount, out.Rate = c.Write(bill.Discount), t.shop.terms.Discount.Write()
	}
	for _, class := range bill.Classes {
		out.Taxes = append(out.Taxes, BillTax{class.Name, class.Rate.Write(), c.Write(class.Net), c.Write(class.Tax)})
	}
	margin, known := takeoff.Money(0), false
	for i, b := range bill.Lines {
		switch lines[i].key {
		case billDelivery:
			out.Delivery = c.Write(b.Amount)
		case billLabour:
			out.Labour = c.Write(b.Amount)
		default:
			own, ok := t.priceOf(lines[i].part, b)
			margin, known = margin+own, known || ok
		}
	}
	if known {
		out.Margin = c.Write(margin)
	}
	t.out.Bill = out
}

// priceOf writes the price of packs of one size and gives their margin before tax, where their cost is known.
func (t *buying) priceOf(part *LinePack, b takeoff.Billed) (takeoff.Money, bool) {
	c, row := t.shop.currency, part.row
	part.Price = &LinePrice{Item: row.Item, Code: row.Code, Each: c.Write(row.Price), Amount: c.Write(b.Amount)}
	if row.Cost <= 0 {
		return 0, false
	}
	net := b.After
	if t.shop.terms.Inclusive {
		net -= b.Tax
	}
	margin := net - takeoff.CostOf(row.Cost, part.Packs)
	part.Price.Margin = c.Write(margin)
	return margin, true
}

// until is the last day on which the quote holds.
func (t *buying) until(offer *Offer) string {
	day, err := time.Parse(time.DateOnly, offer.Date)
	if err != nil || t.shop.Valid == "" {
		return ""
	}
	holds, err := quantity.Read(t.shop.Valid, quantity.Time)
	if err != nil {
		t.refuseField("shop/valid", t.shop.Valid, err)
		return ""
	}
	if holds < 0 || holds > 3650*86400 {
		return ""
	}
	return day.AddDate(0, 0, int(holds/86400)).Format(time.DateOnly)
}
