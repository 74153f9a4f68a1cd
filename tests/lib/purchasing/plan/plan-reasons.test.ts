import { describe, expect, it } from "vitest";
import { planReasons } from "#lib/purchasing/plan/plan-reasons";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

type Changes = {
  readonly supplier?: object;
  readonly offer?: object;
  readonly paper?: object;
  readonly tape?: number;
};

/** Paper: 4 in stock, 2 a week, so 2, 0, -2, -4 left; tape rides in the same order. */
function reasons(packs: number, { supplier = {}, offer = {}, paper = {}, tape = 9 }: Changes) {
  const question = plainQuestion({
    supplies: [plainSupply("paper", [2, 2, 2, 2], { stock: 4, ...paper }), plainSupply("tape", [9, 0, 0, 0])],
    suppliers: [plainSupplier("north", 4, supplier)],
    offers: [plainOffer("paper", "north", { leadWeeks: 1, ...offer }), plainOffer("tape", "north")],
  });
  const lines = [
    { offerId: "paper of north", week: 0, packs },
    { offerId: "tape of north", week: 0, packs: tape },
  ];
  return planReasons(question, { lines, standIns: [] })[0]?.reasons;
}

describe("why a line is in this week's order", () => {
  it("is needed when the supply lacks before a later order could arrive", () => {
    const paper = { wanted: [0, 1, 0, 0] };
    expect(reasons(1, { paper })).toEqual([{ kind: "needed", belowWantedWeek: 1, belowNothingWeek: 2 }]);
    const rarely = { orderWeeks: [true, false, false, true] };
    expect(reasons(4, { supplier: rarely })).toEqual([
      { kind: "needed", belowWantedWeek: 2, belowNothingWeek: 2 },
    ]);
  });

  it("shares a delivery when it is needed only after that", () => {
    expect(reasons(4, {})).toEqual([{ kind: "shares-delivery", neededWeek: 2 }]);
  });

  it("reaches a price step, free delivery or the least order", () => {
    const steps = [
      { fromPacks: 1, priceMinor: 100 },
      { fromPacks: 3, priceMinor: 90 },
    ];
    expect(reasons(3, { offer: { steps } })?.[0]).toEqual({
      kind: "price-step",
      fromPacks: 3,
      priceMinor: 90,
    });
    expect(reasons(2, { supplier: { deliveryMinor: 50, freeFromMinor: 1000 } })?.[0]).toEqual({
      kind: "free-delivery",
      fromMinor: 1000,
      savesMinor: 50,
    });
    expect(reasons(2, { supplier: { leastOrderMinor: 1000 } })?.[0]).toEqual({
      kind: "least-order",
      leastMinor: 1000,
    });
  });

  it("stands in for another supply", () => {
    const question = plainQuestion({
      supplies: [plainSupply("small", [0, 0]), plainSupply("large", [3, 0])],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("small", "north")],
      substitutes: [{ fromSupplyId: "small", toSupplyId: "large", ratio: 2 }],
    });
    const standIns = [{ fromSupplyId: "small", toSupplyId: "large", week: 0, units: 3 }];
    const found = planReasons(question, {
      lines: [{ offerId: "small of north", week: 0, packs: 6 }],
      standIns,
    });
    expect(found[0]?.reasons).toContainEqual({ kind: "substitute", forSupplyId: "large" });
  });

  it("is worth keeping when nothing ever lacks without it", () => {
    expect(reasons(1, { paper: { stock: 50 } })).toEqual([{ kind: "worth-keeping" }]);
  });
});
