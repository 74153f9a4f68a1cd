import { describe, expect, it } from "vitest";
import type { ShopOffer, ShopState, ShopSupplier } from "#lib/replenishment/simulation/shop-setting";
import { checkLevelsPolicy } from "#lib/replenishment/trial/check-levels-policy";

const offer = (changes: Partial<ShopOffer> = {}): ShopOffer => ({
  offerId: "ten",
  supplyId: "a",
  supplierId: "s",
  packAmount: 10,
  prices: { steps: [{ from: 0, price: 500 }], pricing: "all-units" },
  ...changes,
});
const supplier = (leastValue: number | null): ShopSupplier => ({
  supplierId: "s",
  leadTimes: [{ days: 3, chance: 1 }],
  delivery: { charge: 0, freeFrom: null },
  leastValue,
});
const state = (
  day: number,
  stocks: Readonly<Record<string, number>>,
  onOrder: readonly number[] = [],
): ShopState => ({
  day,
  supplies: new Map(
    Object.entries(stocks).map(([supplyId, onHand]) => [
      supplyId,
      {
        onHand,
        owed: 0,
        onOrder: onOrder.map((expectedDay) => ({ expectedDay, amount: 40 })),
        position: onHand + 40 * onOrder.length,
      },
    ]),
  ),
});
const checks = [
  { reorderPoint: 20, orderUpTo: 80, untilDay: 10 },
  { reorderPoint: 30, orderUpTo: 90, untilDay: 17 },
];
const shop = (leastValue: number | null) => ({ reviewDays: 7, suppliers: [supplier(leastValue)] });

describe("ordering by the levels of each check", () => {
  const policy = checkLevelsPolicy([{ offer: offer(), checks }], shop(null));

  it("orders whole packs up to the level, at and below the reorder point of that check only", () => {
    expect(policy(state(0, { a: 21 }))).toEqual([]);
    expect(policy(state(0, { a: 20 }))).toEqual([{ offerId: "ten", packs: 6 }]);
    expect(policy(state(0, { a: 19 }))).toEqual([{ offerId: "ten", packs: 7 }]);
    expect(policy(state(7, { a: 21 }))).toEqual([{ offerId: "ten", packs: 7 }]);
  });

  it("does not wait for what comes too late, but does not order it twice", () => {
    expect(policy(state(0, { a: 5 }, [10]))).toEqual([]);
    // Up to 80 with the 40 that come on day 11: 4 packs, not 8.
    expect(policy(state(0, { a: 5 }, [11]))).toEqual([{ offerId: "ten", packs: 4 }]);
  });

  it("lets an order grow until the supplier would send it, each line alike", () => {
    const both = [
      { offer: offer(), checks },
      { offer: offer({ offerId: "roll", supplyId: "b" }), checks },
    ];
    // 6 and 7 packs are 6,500; 9,000 are 1.385 times as much: 8.3 and 9.7 packs.
    const grown = checkLevelsPolicy(both, shop(9_000))(state(0, { a: 20, b: 15 }));
    expect(grown).toEqual([
      { offerId: "ten", packs: 9 },
      { offerId: "roll", packs: 10 },
    ]);
  });

  it("goes on growing where a price break makes the larger order cheaper", () => {
    const broken = offer({
      prices: {
        steps: [
          { from: 0, price: 500 },
          { from: 8, price: 300 },
        ],
        pricing: "all-units",
      },
    });
    const [line] = checkLevelsPolicy([{ offer: broken, checks }], shop(3_600))(state(0, { a: 20 }));
    // 6 packs are 3,000; 8 are 2,400 only; 12 are 3,600.
    expect(line?.packs).toBe(12);
  });

  it("orders nothing that no number of packs would get sent, and asks for levels that are there", () => {
    const free = offer({ prices: { steps: [{ from: 0, price: 0 }], pricing: "all-units" } });
    expect(checkLevelsPolicy([{ offer: free, checks }], shop(100))(state(0, { a: 0 }))).toEqual([]);
    expect(() => policy(state(14, { a: 0 }))).toThrow(/levels of a on day 14/);
    expect(() => policy(state(0, { b: 0 }))).toThrow(/stock and levels of a/);
  });
});
