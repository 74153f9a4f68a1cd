import { describe, expect, it } from "vitest";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { sharedOrders } from "#lib/purchasing/plan/shared-orders";
import { firstPrices, PRICE_KINDS } from "#lib/purchasing/plan/shared-prices";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

describe("prices to begin with", () => {
  it("share an order's charge among the lines of a known plan, or among all where it is not placed", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1, 1]), plainSupply("tape", [1, 1])],
      suppliers: [plainSupplier("north", 2, { deliveryMinor: 40, handlingMinor: 10 })],
      offers: [plainOffer("paper", "north"), plainOffer("tape", "north")],
    });
    const { slots } = planParts(question);
    const choice = { lines: [{ offerId: "tape of north", week: 1, packs: 1 }], standIns: [] };
    const counts = { slots: slots.length, cash: 2, weeks: 2 };
    const prices = firstPrices(sharedOrders(question, slots), choice, counts);
    const parts = slots.map(({ offer, week, number }) => [offer.supplyId, week, prices.part[number]]);
    expect(parts).toEqual([
      ["paper", 0, 25],
      ["paper", 1, 0],
      ["tape", 0, 25],
      ["tape", 1, 50],
    ]);
    expect(PRICE_KINDS.map((kind) => prices[kind].length)).toEqual([4, 2, 2, 2, 2]);
  });
});
