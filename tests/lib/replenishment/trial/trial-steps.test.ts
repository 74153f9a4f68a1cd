import { describe, expect, it } from "vitest";
import type { TrialShop, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { type TrialQuestion, type TrialResult, trialSteps } from "#lib/replenishment/trial/trial-steps";
import { evenRandom } from "#lib/statistics/even-random";
import { amountOfUnits } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { supplyForecast } from "../supply-forecast";
import { TODAY, trialOffer, trialShop, trialSupply } from "./trial-shop";

const PRESENT: TrialTerms = { goal: { kind: "cycles", level: 0.95 }, coverWeeks: 6, reviewDays: 7 };
const SPREAD = { perUse: 2, dispersions: [0.1, 0.08, 0.06], whole: false };

function played(shop: TrialShop, changes: Partial<TrialQuestion> = {}, seed = 1) {
  const question = {
    span: comingSpan(shop),
    present: PRESENT,
    tried: { ...PRESENT, reviewDays: 14 },
    runs: 3,
    random: evenRandom(seed),
    ...changes,
  };
  const steps = trialSteps(shop, question);
  const shares: number[] = [];
  let step = steps.next();
  for (; !step.done; step = steps.next()) shares.push(step.value);
  return { result: step.value, shares };
}

function resultOf(...of: Parameters<typeof played>): TrialResult {
  const { result } = played(...of);
  if (result === null) throw new Error("no supply was played");
  return result;
}

describe("a trial of two settings", () => {
  // Worked by hand: 2 a day for certain, 20 on the shelf, packs of 10, there after 3 days. A reorder point lies below
  // the use of a review and 3 days: under 20 at 7 days, under 34 at 14.
  it("comes to what can be worked out where nothing is left to chance", () => {
    const { shop, verdict, leftOut } = resultOf(trialShop());
    // Every 7 days: 100 on day 7 (6 left, there as the shelf is empty) and on day 56 (8 left). Ends of days: 18 to 0,
    // 98 to 2, 100 to 38.
    expect(shop.present.orders).toEqual({ mean: 2, standardError: 0 });
    expect(shop.present.goodsCost.mean).toBe(20 * 500);
    expect(shop.present.meanValue.mean).toBeCloseTo((50 * (90 + 2450 + 2208)) / 91, 9);
    // Every 14 days: 100 on day 0, 110 on day 56. Ends of days: 18 to 14, 112 to 2, 110 to 48.
    expect(shop.tried.goodsCost.mean).toBe(21 * 500);
    expect(shop.tried.meanValue.mean).toBeCloseTo((50 * (48 + 3192 + 2528)) / 91, 9);
    expect(shop.tried.peakValue.mean).toBe(50 * 112);
    for (const side of [shop.present, shop.tried]) {
      expect(side.daysOut.mean).toBe(0);
      expect(side.filledShare?.mean).toBe(1);
      expect(side.cycleService?.mean).toBe(1);
      expect(side.deliveryCost.mean).toBe(2 * 800);
      expect(side.priceGap.mean).toBeCloseTo(0, 9);
    }
    // Two deliveries and the work of two orders; 9.1 % of the stock's worth for 91 days.
    expect(shop.present.cost.mean).toBeCloseTo(2 * 900 + 0.091 * shop.present.meanValue.mean, 9);
    expect(shop.difference.cost.mean).toBeCloseTo((0.091 * 50 * (5768 - 4748)) / 91, 9);
    expect(verdict).toEqual({ cheaper: "present", safer: "alike" });
    expect(leftOut).toEqual([]);
  });

  it("counts the days without a supply that comes too late", () => {
    // 8 on the shelf last 4 days; ordered on day 0, there on day 6: days 4 and 5 go without, 4 of 182 are missing.
    const delivery = { ...trialOffer().delivery, terms: { ...trialOffer().delivery.terms, promisedDays: 6 } };
    const supplies = [trialSupply({ onHand: amountOfUnits(8), offers: [trialOffer({ delivery })] })];
    const { shop, supplies: found } = resultOf(trialShop({ supplies }), { tried: PRESENT });
    expect(shop.present.daysOut.mean).toBe(2);
    expect(found[0]?.present.filledShare?.mean).toBeCloseTo(1 - 4 / 182, 12);
    expect(shop.difference.daysOut).toEqual({ mean: 0, standardError: 0 });
  });

  it("counts what is under way from the day it is expected, the late from tomorrow", () => {
    const onOrder = [{ amount: amountOfUnits(500), expectedOn: addDays(TODAY, -3) }];
    const supplies = [trialSupply({ onHand: amountOfUnits(2), onOrder })];
    const { shop } = resultOf(trialShop({ supplies }));
    expect(shop.present.orders.mean).toBe(0);
    expect(shop.present.peakValue.mean).toBe(50 * 498);
    expect(shop.present.daysOut.mean).toBe(0);
  });

  it("comes to the same from the same seed, and says how far it is after each step", () => {
    const supplies = [trialSupply({ forecast: supplyForecast(14, { spread: SPREAD }) })];
    const shop = trialShop({ supplies });
    expect(resultOf(shop, { runs: 12 })).toEqual(resultOf(shop, { runs: 12 }));
    expect(resultOf(shop, { runs: 12 })).not.toEqual(resultOf(shop, { runs: 12 }, 2));
    const { shares, result } = played(shop, { runs: 12 });
    expect(result?.runs).toBe(12);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(shares.length).toBeGreaterThanOrEqual(13);
  });

  it("finds no difference where the settings are the same, though chance moves both", () => {
    const supplies = [trialSupply({ forecast: supplyForecast(14, { spread: SPREAD }) })];
    const { shop, verdict } = resultOf(trialShop({ supplies }), { tried: PRESENT, runs: 20 });
    expect(shop.present.cost.standardError).toBeGreaterThan(0);
    expect(shop.difference.cost).toEqual({ mean: 0, standardError: 0 });
    expect(verdict).toEqual({ cheaper: "alike", safer: "alike" });
  });

  // Not in every single run: a higher reorder point orders on other days, and may meet a busy week just before a
  // delivery that the lower one has just had. On average over the same draws it can only be safer.
  it("is short on fewer days on average the better the goal, and keeps more for it", () => {
    const supplies = [trialSupply({ forecast: supplyForecast(14, { spread: SPREAD }) })];
    const runs = 150;
    const levels = [0.6, 0.8, 0.95, 0.99];
    const found = levels.map(
      (level) =>
        resultOf(trialShop({ supplies }), { tried: { ...PRESENT, goal: { kind: "cycles", level } }, runs })
          .shop.tried,
    );
    const days = found.map(({ daysOut }) => daysOut.mean);
    expect(days).toEqual(days.toSorted((a, b) => b - a));
    expect(days[0]).toBeGreaterThan(3 * (days[3] ?? Infinity));
    const values = found.map(({ meanValue }) => meanValue.mean);
    expect(values).toEqual(values.toSorted((a, b) => a - b));
  });

  it("lets a supply keep its own goal, whatever the settings to try say", () => {
    const goal = { kind: "cycles", level: 0.9 } as const;
    const supplies = [trialSupply({ goal, forecast: supplyForecast(14, { spread: SPREAD }) })];
    const tried: TrialTerms = { ...PRESENT, goal: { kind: "cycles", level: 0.99 } };
    const { shop, supplies: found } = resultOf(trialShop({ supplies }), { tried, runs: 10 });
    expect(shop.tried).toEqual(shop.present);
    expect(found[0]?.hasOwnGoal).toBe(true);
  });

  it("plays the past day by day and begins with half an order", () => {
    const useByDay = Array.from({ length: 420 }, (_, at) => ({
      day: addDays(TODAY, at - 420),
      amount: amountOfUnits(2),
    }));
    const supplies = [trialSupply({ onHand: null, useByDay, firstDay: addDays(TODAY, -420) })];
    const span = { kind: "past", firstDay: addDays(TODAY, -364), days: 364 } as const;
    const { shop, supplies: found } = resultOf(trialShop({ supplies }), { span, runs: 2 });
    expect(found).toHaveLength(1);
    expect(shop.present.daysOut.mean).toBe(0);
    // 728 are used; a cycle lasts 7 weeks (98 used, 100 ordered): the first order after 3 to 5 weeks, 6 to 7 more.
    expect(shop.present.orders.mean).toBeGreaterThanOrEqual(7);
    expect(shop.present.orders.mean).toBeLessThanOrEqual(8);
  });

  it("asks for whole runs and days between checks", () => {
    expect(() => played(trialShop(), { runs: 0 })).toThrow(/whole runs from 1, got 0/);
    expect(() => played(trialShop(), { tried: { ...PRESENT, reviewDays: 1.5 } })).toThrow(
      /whole review days to try from 1, got 1.5/,
    );
  });

  it("is nothing where no supply can be played, and names what it leaves out", () => {
    expect(played(trialShop({ supplies: [trialSupply({ onHand: null })] })).result).toBeNull();
    const supplies = [trialSupply(), trialSupply({ supplyId: "b", name: "Tape", onHand: null })];
    expect(resultOf(trialShop({ supplies })).leftOut).toEqual([{ name: "Tape", reason: "not-counted" }]);
  });
});
