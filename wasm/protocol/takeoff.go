package protocol

import (
	"context"

	"lowspot/engine"
	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
	"lowspot/wasm/kept"
)

// PriceJob is a job to be taken off and priced by a shop; without one nothing is priced.
type PriceJob struct {
	PlanJob
	Shop *engine.Shop `json:"shop,omitempty"`
}

func takeOff(b *Bridge, p PriceJob) (*engine.TakeOff, error) {
	return engine.MakeTakeOff(&p.Job, b.rulebook(p.Book), p.Shop), nil
}

func planeCosts(b *Bridge, p PriceJob) (engine.PlaneCosts, error) {
	return engine.MakePlaneCosts(&p.Job, b.rulebook(p.Book), p.Shop), nil
}

// CSVOf is a table in the page's words, and whether decimals in it have a comma.
type CSVOf struct {
	Rows  [][]string `json:"rows"`
	Comma bool       `json:"comma"`
}

func writeCSV(_ *Bridge, c CSVOf) (FileText, error) {
	return FileText{Text: takeoff.WriteCSV(c.Rows, c.Comma)}, nil
}

// PriceText is a price list as text, for a shop.
type PriceText struct {
	Text string      `json:"text"`
	Shop engine.Shop `json:"shop"`
}

// PriceList is a price list read, with the rows that can't be.
type PriceList struct {
	Prices []takeoff.Price  `json:"prices"`
	Bad    []takeoff.BadRow `json:"bad"`
}

func readPrices(_ *Bridge, p PriceText) (PriceList, error) {
	prices, bad := engine.ReadPriceList(p.Text, &p.Shop)
	return PriceList{prices, bad}, nil
}

// ShopBody is a shop.
type ShopBody struct {
	Shop engine.Shop `json:"shop"`
}

// PricesOf is a shop whose price list is written, with what the page calls its columns, and whether decimals in it have a comma.
type PricesOf struct {
	ShopBody
	Names []string `json:"names"`
	Comma bool     `json:"comma"`
}

func writePrices(_ *Bridge, p PricesOf) (FileText, error) {
	return FileText{Text: engine.WritePriceList(&p.Shop, p.Names, p.Comma)}, nil
}

// TypedPrice is a price as typed beside an item in a pack.
type TypedPrice struct {
	ShopBody
	Item  string `json:"item"`
	Pack  string `json:"pack"`
	Price string `json:"price"`
}

func setPrice(_ *Bridge, p TypedPrice) (ShopBody, error) {
	shop, err := engine.SetPrice(p.Shop, p.Item, p.Pack, p.Price)
	return ShopBody{shop}, err
}

func openShop(ctx context.Context, b *Bridge, _ Nothing) (ShopBody, error) {
	shop, err := b.Keeper.OpenShop(ctx)
	return ShopBody{shop}, err
}

func keepShop(ctx context.Context, b *Bridge, s ShopBody) (KeptAt, error) {
	at, err := b.Keeper.KeepShop(ctx, s.Shop)
	return KeptAt{Kept: at}, err
}

func readJobText(_ *Bridge, f FileText) (MadeJob, error) {
	job, err := engine.ReadJob([]byte(f.Text))
	if err != nil {
		return MadeJob{}, engine.Problem{Code: "job", Field: "text", Message: "This can't be opened: " + err.Error() + ".", Remedy: "Ask for the link or the file again."}
	}
	return MadeJob{Job: *job}, nil
}

func after(b *Bridge, p PlanJob) (*engine.AfterPlan, error) {
	return engine.MakeAfter(&p.Job, b.rulebook(p.Book)), nil
}

// PastWanted says in which units past jobs are added up, and by which rulebook.
type PastWanted struct {
	Units quantity.System `json:"units"`
	Book  string          `json:"book,omitempty"`
}

// mostPast is how many jobs are looked back on, the last kept first.
const mostPast = 200

func past(ctx context.Context, b *Bridge, p PastWanted) (engine.Past, error) {
	list, err := b.Keeper.FindJobs(ctx, kept.Wanted{Most: mostPast})
	if err != nil {
		return engine.Past{}, err
	}
	var jobs []engine.Job
	for _, entry := range list.Jobs {
		if opened, err := b.Keeper.OpenJob(ctx, entry.ID); err == nil {
			jobs = append(jobs, opened.Job)
		}
	}
	return engine.MakePast(jobs, b.rulebook(p.Book), p.Units), nil
}
