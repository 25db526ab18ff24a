package kept

import (
	"context"

	"lowspot/engine"
)

const theShop = "shop"

// shops is a shelf with one document: the price list and what is printed round a quote.
func (k *Keeper) shops() shelf[engine.Shop] { return shelf[engine.Shop]{k, "price list", "shop/"} }

// OpenShop gives the shop; none yet is one without prices.
func (k *Keeper) OpenShop(ctx context.Context) (engine.Shop, error) {
	found, err := k.shops().List(ctx)
	if err != nil || len(found) == 0 {
		return engine.NewShop(), err
	}
	return found[0], nil
}

// KeepShop keeps the shop in place of the one before, and gives the time once it is read back.
func (k *Keeper) KeepShop(ctx context.Context, shop engine.Shop) (string, error) {
	return k.shops().Keep(ctx, theShop, shop)
}
