import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { orderCosts, WEEKS_A_YEAR } from "#lib/replenishment/order-quantity/order-costs";
import { orderPacks } from "#lib/replenishment/order-quantity/order-packs";
import type { OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import { wholePacks } from "#lib/replenishment/order-quantity/whole-packs";
import { orderTerms } from "./order-terms";

const found = (changes: Partial<OrderPacksQuestion> = {}) => {
  const result = orderPacks(orderTerms(changes));
  return "boundBy" in result ? { packs: result.packs, boundBy: result.boundBy } : result;
};

/** Limits checked anew, in money, weeks and litres, beside the program's own. */
function isAllowed(question: OrderPacksQuestion, packs: number): boolean {
  const { goods, delivery } = orderCosts(question, packs);
  const weeks = (question.stockOnArrival + packs * question.packAmount) / question.usePerWeek;
  const before = (question.stockOnArrival + (packs - 1) * question.packAmount) / question.usePerWeek;
  return (
    packs >= (question.leastPacks ?? 1) &&
    goods >= (question.leastValue ?? 0) &&
    packs <= (question.mostPacks ?? Infinity) &&
    goods + delivery <= (question.cash ?? Infinity) &&
    packs * (question.room?.litresPerPack ?? 0) <= (question.room?.litres ?? 0) + 1e-6 &&
    7 * weeks <= (question.shelfLifeDays ?? Infinity) + 1e-6 &&
    weeks <= (question.longestCoverWeeks ?? Infinity) + 1e-6 &&
    7 * before < (question.daysUntilEnd ?? Infinity)
  );
}

const money = fc.integer({ min: 0, max: 60_000 });
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const questions: fc.Arbitrary<OrderPacksQuestion> = fc.record({
  packAmount: fc.integer({ min: 1, max: 500 }),
  prices: fc
    .tuple(
      fc.constantFrom("all-units" as const, "incremental" as const),
      fc.uniqueArray(fc.integer({ min: 2, max: 30 }), { maxLength: 3 }),
      fc.integer({ min: 400, max: 3000 }),
    )
    .map(([pricing, froms, price]) => ({
      pricing,
      steps: [0, ...froms.toSorted((a, b) => a - b)].map((from, index) => ({
        from,
        price: price - 90 * index,
      })),
    })),
  leastPacks: orNull(fc.integer({ min: 1, max: 6 })),
  leastValue: orNull(fc.integer({ min: 0, max: 9000 })),
  mostPacks: orNull(fc.integer({ min: 1, max: 40 })),
  delivery: fc.record({
    charge: fc.integer({ min: 0, max: 2000 }),
    freeFrom: orNull(fc.integer({ min: 0, max: 20_000 })),
  }),
  orderCost: fc.integer({ min: 0, max: 500 }),
  holdingShare: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  usePerWeek: fc.integer({ min: 1, max: 300 }),
  stockOnArrival: fc.integer({ min: 0, max: 300 }),
  cash: orNull(money),
  room: orNull(
    fc.record({ litres: fc.integer({ min: 0, max: 400 }), litresPerPack: fc.integer({ min: 0, max: 40 }) }),
  ),
  shelfLifeDays: orNull(fc.integer({ min: 0, max: 900 })),
  longestCoverWeeks: orNull(fc.integer({ min: 1, max: 130 })),
  daysUntilEnd: orNull(fc.integer({ min: 0, max: 700 })),
});

describe("packs to order", () => {
  it("are the cheapest that every limit allows, or none is allowed, against trying 1,000 sizes", () => {
    const kinds = new Set<string>();
    const bounds = new Set<string | null>();
    fc.assert(
      fc.property(questions, (question) => {
        const result = orderPacks(question);
        kinds.add(result.kind);
        const totals = Array.from({ length: 1000 }, (_, index) => index + 1)
          .filter((packs) => isAllowed(question, packs))
          .map((packs) => ({ packs, total: orderCosts(question, packs).yearly.total }));
        if (result.kind !== "order") {
          expect(totals).toEqual([]);
          return;
        }
        bounds.add(result.boundBy);
        const least = Math.min(...totals.map(({ total }) => total));
        expect(result.costs.yearly.total).toBeLessThanOrEqual(least * (1 + 1e-12));
        expect(isAllowed(question, result.packs)).toBe(true);
        expect(result.packs === result.freePacks).toBe(result.boundBy === null);
        expect(totals.find(({ total }) => total <= least * (1 + 1e-13))?.packs).toBe(result.packs);
      }),
      { numRuns: 400, seed: 7 },
    );
    expect([...kinds].toSorted()).toEqual(["enough", "no-order", "order"]);
    expect(bounds.size).toBe(8);
  });

  it("without breaks or limits are the whole packs next to the plain order quantity", () => {
    const plain = economicOrderQuantity({ orderCost: 600, holdingCost: 500, yearlyUse: WEEKS_A_YEAR / 4 });
    const result = orderPacks(orderTerms());
    expect(result).toMatchObject({
      kind: "order",
      packs: wholePacks(plain),
      freePacks: wholePacks(plain),
      boundBy: null,
    });
    expect(result).toHaveProperty("plainPacks", plain);
  });

  // By hand: 2 x 600 x 13.04 / 500 = 31.3 lies above 5 x 6, so that the free size is 6 packs.
  it("name the limit that decided", () => {
    expect(found()).toEqual({ packs: 6, boundBy: null });
    expect(found({ shelfLifeDays: 112 })).toEqual({ packs: 4, boundBy: "shelf-life" });
    expect(found({ longestCoverWeeks: 13 })).toEqual({ packs: 3, boundBy: "longest-cover" });
    expect(found({ daysUntilEnd: 120 })).toEqual({ packs: 5, boundBy: "planned-end" });
    expect(found({ room: { litres: 45, litresPerPack: 20 } })).toEqual({ packs: 2, boundBy: "room" });
    expect(found({ cash: 8599 })).toEqual({ packs: 3, boundBy: "cash" });
    expect(found({ cash: 8600 })).toEqual({ packs: 4, boundBy: "cash" });
    expect(found({ mostPacks: 5 })).toEqual({ packs: 5, boundBy: "largest-order" });
    expect(found({ leastPacks: 9 })).toEqual({ packs: 9, boundBy: "least-order" });
    expect(found({ leastValue: 15_000 })).toEqual({ packs: 8, boundBy: "least-order" });
  });

  it("name the tightest of several limits", () => {
    expect(found({ shelfLifeDays: 112, room: { litres: 2, litresPerPack: 1 } })).toEqual({
      packs: 2,
      boundBy: "room",
    });
    expect(found({ shelfLifeDays: 56, room: { litres: 4, litresPerPack: 1 } })).toEqual({
      packs: 2,
      boundBy: "shelf-life",
    });
  });

  it("take a price break or free delivery where it pays", () => {
    const steps = [
      { from: 0, price: 2000 },
      { from: 10, price: 1700 },
    ];
    expect(found({ prices: { steps, pricing: "all-units" } })).toEqual({ packs: 10, boundBy: null });
    expect(found({ delivery: { charge: 600, freeFrom: 16_000 } })).toEqual({ packs: 8, boundBy: null });
    expect(found({ delivery: { charge: 600, freeFrom: 160_000 } })).toEqual({ packs: 6, boundBy: null });
  });

  it("lie below a break that a limit forbids, and the limit is named", () => {
    const steps = [
      { from: 0, price: 2000 },
      { from: 10, price: 1700 },
    ];
    const result = orderPacks(orderTerms({ prices: { steps, pricing: "all-units" }, shelfLifeDays: 230 }));
    expect(result).toMatchObject({ packs: 6, freePacks: 10, boundBy: "shelf-life" });
  });

  it("are none where the stock lasts until the planned end", () => {
    expect(found({ daysUntilEnd: 28, stockOnArrival: 100 })).toEqual({ packs: 0, boundBy: "planned-end" });
    expect(found({ daysUntilEnd: 29, stockOnArrival: 100 })).toEqual({ packs: 1, boundBy: "planned-end" });
  });

  it("are none where nothing is used", () => {
    expect(orderPacks(orderTerms({ usePerWeek: 0 }))).toEqual({ kind: "no-use", packs: 0 });
  });

  it("are none where even the smallest order breaks a limit, and which is said", () => {
    const none = (leastPacks: number | null, limits: string[]) => ({
      kind: "no-order",
      packs: 0,
      leastPacks,
      limits,
    });
    expect(found({ shelfLifeDays: 20 })).toEqual(none(1, ["shelf-life"]));
    expect(found({ shelfLifeDays: 20, cash: 100 })).toEqual(none(1, ["shelf-life", "cash"]));
    expect(found({ leastPacks: 4, room: { litres: 3, litresPerPack: 1 } })).toEqual(
      none(4, ["room", "least-order"]),
    );
    const free = { steps: [{ from: 0, price: 0 }], pricing: "all-units" as const };
    expect(found({ prices: free, leastValue: 5, mostPacks: 3 })).toEqual(none(null, ["least-order"]));
  });

  it("go to the limit where holding costs nothing, and ask for one", () => {
    expect(found({ holdingShare: 0, longestCoverWeeks: 26 })).toEqual({ packs: 6, boundBy: "longest-cover" });
    expect(found({ holdingShare: 0, cash: 10_000 })).toEqual({ packs: 4, boundBy: "cash" });
    expect(() => orderPacks(orderTerms({ holdingShare: 0 }))).toThrow(/a limit where holding costs nothing/);
    expect(found({ holdingShare: 0, delivery: { charge: 0, freeFrom: null } })).toEqual({
      packs: 1,
      boundBy: null,
    });
  });

  it("are the same whether the use is of four weeks or of years: only the rate counts", () => {
    const scaled = orderPacks(orderTerms({ usePerWeek: 25 / 7, delivery: { charge: 4200, freeFrom: null } }));
    expect(scaled).toMatchObject({ packs: 6 });
  });

  it("refuse packs of next to nothing", () => {
    expect(() => orderPacks(orderTerms({ packAmount: 1e-12 }))).toThrow(/at most 1000000 are bought/);
  });
});
