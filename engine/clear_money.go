package engine

// What remedies do to the bill, where the shop has prices.

import "lowspot/engine/takeoff"

// price tells for every remedy what the job comes to before and after it.
func (c *clearing) price(remedies []Remedy, shop *Shop) {
	if shop == nil || len(shop.Prices) == 0 || len(remedies) == 0 {
		return
	}
	before, priced := c.bill(c.job, shop)
	if !priced {
		return
	}
	for i := range remedies {
		changed, ok := c.with(remedies[i].Sets)
		if !ok {
			continue
		}
		if after, priced := c.bill(changed, shop); priced {
			remedies[i].Effect.Money = toldMoney(shop, before, after)
		}
	}
}

// bill is what a job comes to. False where nothing of it has a price.
func (c *clearing) bill(job *Job, shop *Shop) (takeoff.Money, bool) {
	list := takeOffOf(workFrom(c.before, job), shop)
	if list.Bill == nil || list.Bill.Amount == 0 {
		return 0, false
	}
	return takeoff.Money(list.Bill.Amount), true
}

func toldMoney(shop *Shop, before, after takeoff.Money) *MoneyTold {
	c := shop.money()
	told := &MoneyTold{Before: c.Write(before) + " " + c.Code, After: c.Write(after) + " " + c.Code}
	switch by := after - before; {
	case by > 0:
		told.By = "+" + c.Write(by) + " " + c.Code
	case by < 0:
		told.By = "\u2212" + c.Write(-by) + " " + c.Code
	}
	return told
}
