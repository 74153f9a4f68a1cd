import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fillRate } from "#lib/replenishment/exact-policy/fill-rate";
import { meanEstimate } from "#lib/replenishment/simulation/estimate";
import { orderUpToPolicy } from "#lib/replenishment/simulation/order-up-to-policy";
import { playedRun } from "#lib/replenishment/simulation/played-run";
import type { PolicyLine, ShopState } from "#lib/replenishment/simulation/shop-setting";
import { evenRandom } from "#lib/statistics/even-random";
import { normalDraw } from "#lib/statistics/normal-draw";
import { oneSupplyShop, oneSupplyUse } from "./one-supply-shop";

const replayed = (perDay: readonly number[]) => oneSupplyUse({ kind: "replayed", perDay }, perDay.length);
const drawsOf = (perDay: readonly number[], chance = 0) => ({
  use: [perDay],
  leadTimeChances: [perDay.map(() => chance)],
});
const stock = (startStock: number) => [
  { supplyId: "a", startStock, arrivals: [], unitValue: 3, litresPerUnit: 2 },
];
const on =
  (orders: Readonly<Record<number, number>>) =>
  ({ day }: ShopState): PolicyLine[] => {
    const packs = orders[day];
    return packs === undefined ? [] : [{ offerId: "single", packs }];
  };

describe("a played run", () => {
  // Worked by hand: stock 5; use 2 a day; 8 ordered on day 0 come on day 3, 3 on day 4 come on day 7.
  const use = [2, 2, 2, 2, 2, 2, 2, 2];
  const byHand = oneSupplyShop([{ days: 3, chance: 1 }], {
    supplies: stock(5),
    policy: on({ 0: 8, 4: 3 }),
  });

  it("meets use later, day by day", () => {
    // Ends of days: 3, 1, -1, 5 (after 8 came), 3, 1, -1, 0 (after 3 came).
    const { shop, supplies } = playedRun(replayed(use), byHand, drawsOf(use));
    expect(supplies.get("a")).toEqual({
      cycles: 2,
      shortCycles: 2,
      need: 16,
      unmet: 2,
      daysOutOfStock: 2,
      orders: 2,
      deliveryCost: 20,
      goodsCost: 11,
      ordered: 11,
      meanValue: (3 * (3 + 1 + 0 + 5 + 3 + 1 + 0 + 0)) / 8,
      peakValue: 15,
      meanLitres: (2 * 13) / 8,
      peakLitres: 10,
      endValue: 0,
      meanOwedValue: (3 * 2) / 8,
    });
    expect(shop).toEqual({ ...supplies.get("a"), need: 48, unmet: 6, ordered: 33 });
  });

  it("uses something else in place of what is not there", () => {
    // Ends of days: 3, 1, 0 (1 replaced), 6, 4, 2, 0, 1.
    const { supplies } = playedRun(replayed(use), { ...byHand, unmet: "substitute" }, drawsOf(use));
    expect(supplies.get("a")).toMatchObject({
      cycles: 2,
      shortCycles: 1,
      unmet: 1,
      daysOutOfStock: 1,
      meanValue: (3 * 17) / 8,
      endValue: 3,
      meanOwedValue: 0,
    });
  });

  it("keeps figures from a day on, and only cycles that began from it on", () => {
    const { supplies } = playedRun(replayed(use), { ...byHand, countedFrom: 3 }, drawsOf(use));
    expect(supplies.get("a")).toMatchObject({
      cycles: 1,
      shortCycles: 1,
      need: 10,
      unmet: 1,
      orders: 1,
      goodsCost: 3,
      deliveryCost: 10,
      meanValue: (3 * 9) / 5,
    });
  });

  it("shows a check what it may know: the expected day, not the day of arrival", () => {
    const seen: ShopState[] = [];
    const shop = oneSupplyShop(
      [
        { days: 2, chance: 0.5 },
        { days: 6, chance: 0.5 },
      ],
      {
        supplies: stock(3),
        reviewDays: 5,
        policy: (state) => {
          seen.push(state);
          return on({ 0: 4 })(state);
        },
      },
    );
    playedRun(replayed([2, 2, 0, 0, 0, 0]), shop, drawsOf([2, 2, 0, 0, 0, 0], 0.7));
    expect(seen.map(({ day }) => day)).toEqual([0, 5]);
    expect(seen[1]?.supplies.get("a")).toEqual({
      onHand: 0,
      owed: 1,
      onOrder: [{ expectedDay: 2, amount: 4 }],
      position: 3,
    });
  });

  it("checks on the shop's day of the week, from the first on", () => {
    const days: number[] = [];
    const shop = oneSupplyShop([{ days: 1, chance: 1 }], {
      supplies: stock(30),
      reviewDays: 7,
      firstCheck: 3,
      policy: ({ day }) => {
        days.push(day);
        return [];
      },
    });
    const month = Array.from({ length: 25 }, () => 1);
    playedRun(replayed(month), shop, drawsOf(month));
    expect(days).toEqual([3, 10, 17, 24]);
  });

  it("takes the lead time of the day on which an order is placed", () => {
    const arrivals: number[] = [];
    const shop = oneSupplyShop((day) => [{ days: day < 2 ? 3 : 1, chance: 1 }], {
      supplies: stock(0),
      policy: (state) => {
        if ((state.supplies.get("a")?.onHand ?? 0) > arrivals.length) arrivals.push(state.day);
        return on({ 1: 1, 2: 1 })(state);
      },
    });
    playedRun(replayed([0, 0, 0, 0, 0, 0]), shop, drawsOf([0, 0, 0, 0, 0, 0]));
    expect(arrivals).toEqual([3, 4]);
  });

  it("charges one delivery for a supplier's lines, none from its free value on", () => {
    const offer = (supplyId: string, price: number) => ({
      offerId: supplyId,
      supplyId,
      supplierId: "s",
      packAmount: 2,
      prices: { steps: [{ from: 0, price }], pricing: "all-units" as const },
    });
    const supplies = ["a", "b"].map((supplyId) => ({
      supplyId,
      startStock: 0,
      arrivals: [],
      unitValue: 1,
      litresPerUnit: 0,
    }));
    const shop = oneSupplyShop([{ days: 0, chance: 1 }], {
      supplies,
      offers: [offer("a", 5), offer("b", 15)],
      suppliers: [
        {
          supplierId: "s",
          leadTimes: [{ days: 0, chance: 1 }],
          delivery: { charge: 8, freeFrom: 40 },
          leastValue: 20,
        },
      ],
      policy: ({ day }) => ["a", "b"].map((offerId) => ({ offerId, packs: day + 1 })),
    });
    const both = {
      ...replayed([0, 0]),
      supplies: ["a", "b"].map((supplyId) => ({
        supplyId,
        source: { kind: "replayed" as const, perDay: [0, 0] },
      })),
    };
    const { shop: all, supplies: each } = playedRun(both, shop, {
      use: [
        [0, 0],
        [0, 0],
      ],
      leadTimeChances: [[0, 0]],
    });
    expect(all).toMatchObject({ orders: 2, deliveryCost: 8, goodsCost: 60, endValue: 12, peakValue: 12 });
    expect(each.get("a")).toMatchObject({ orders: 2, deliveryCost: 2, goodsCost: 15 });
    expect(each.get("b")).toMatchObject({ orders: 2, deliveryCost: 6, goodsCost: 45 });
  });

  it("loses nothing: start + received - used = what is left or owed", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 5, maxLength: 60 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 0, max: 12 }),
        fc.constantFrom("met-later" as const, "substitute" as const),
        fc.integer({ min: 0, max: 9 }),
        (perDay, startStock, reorderPoint, unmet, tenth) => {
          const packs: number[] = [];
          const levels = orderUpToPolicy([
            { supplyId: "a", offerId: "single", packAmount: 1, reorderPoint, orderUpTo: reorderPoint + 15 },
          ]);
          const shop = oneSupplyShop(
            [
              { days: 0, chance: 0.3 },
              { days: 4, chance: 0.7 },
            ],
            {
              supplies: stock(startStock),
              unmet,
              policy: (state) => {
                const lines = levels(state);
                packs.push(...lines.map((line) => line.packs));
                return lines;
              },
            },
          );
          let last: ShopState | null = null;
          // One more day without use shows the state after the last.
          const days = [...perDay, 0];
          const watched = {
            ...shop,
            policy: (state: ShopState) => {
              last = state;
              return shop.policy(state);
            },
          };
          const { supplies } = playedRun(replayed(days), watched, drawsOf(days, tenth / 10));
          const figures = supplies.get("a");
          const end = (last as ShopState | null)?.supplies.get("a");
          if (figures === undefined || end === undefined) throw new RangeError("expected a supply");
          const ordered = packs.reduce((sum, each) => sum + each, 0);
          const replaced = unmet === "substitute" ? figures.unmet : 0;
          const used = perDay.reduce((sum, each) => sum + each, 0) - replaced;
          const lastDayPacks = end.position <= reorderPoint ? (packs.at(-1) ?? 0) : 0;
          expect(end.position).toBe(startStock + ordered - lastDayPacks - used);
          expect(figures.goodsCost).toBe(ordered);
          expect(figures.need).toBe(perDay.reduce((sum, each) => sum + each, 0));
        },
      ),
      { numRuns: 200 },
    );
  });

  // fr-001 and fr-002 of tests/reference: the formula of Johnson, Lee, Davis and Hall (1995), periods independent and
  // normal, below 0 too.
  it.each([70, 90])("fills the exact share of the use when ordering up to %s every day", (orderUpTo) => {
    const period = { mean: 20, deviation: 8 };
    const wanted = fillRate({ orderUpTo, period, reviewPeriods: 1, leadTimePeriods: 3 }).exact;
    const random = evenRandom(11);
    const shop = oneSupplyShop([{ days: 3, chance: 1 }], {
      supplies: [{ supplyId: "a", startStock: orderUpTo, arrivals: [], unitValue: 1, litresPerUnit: 0 }],
      countedFrom: 20,
      offers: [
        {
          offerId: "drop",
          supplyId: "a",
          supplierId: "s",
          packAmount: 1 / 64,
          prices: { steps: [{ from: 0, price: 1 }], pricing: "all-units" },
        },
      ],
      policy: orderUpToPolicy([
        { supplyId: "a", offerId: "drop", packAmount: 1 / 64, reorderPoint: orderUpTo - 1 / 64, orderUpTo },
      ]),
    });
    const filled = meanEstimate(
      Array.from({ length: 80 }, () => {
        // In whole 64ths, so that packs fill up exactly.
        const days = Array.from({ length: 1020 }, () => Math.round(64 * (20 + 8 * normalDraw(random))) / 64);
        const { need, unmet } = playedRun(replayed(days), shop, drawsOf(days)).shop;
        return 1 - unmet / need;
      }),
    );
    expect(filled.standardError).toBeLessThan(0.003);
    expect(Math.abs(filled.mean - wanted)).toBeLessThan(3 * filled.standardError);
  });

  it("names a supply that the shop does not have", () => {
    const shop = oneSupplyShop([{ days: 1, chance: 1 }], { policy: () => [], supplies: [] });
    expect(() => playedRun(replayed([1]), shop, drawsOf([1]))).toThrow(/stock of a, got none/);
  });
});
