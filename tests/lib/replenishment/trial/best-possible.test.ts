import { describe, expect, it } from "vitest";
import { sumGrid } from "#lib/forecast/sum-grid";
import { orderUpToCost, orderUpToLevels } from "#lib/replenishment/exact-policy/order-up-to-levels";
import { bestPossible } from "#lib/replenishment/trial/best-possible";
import { playedSupplies } from "#lib/replenishment/trial/played-supplies";
import { readySupply } from "#lib/replenishment/trial/trial-setting";
import type { TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { poissonGrid } from "../../statistics/poisson-grid";
import { supplyForecast } from "../supply-forecast";
import { TODAY, trialShop, trialSupply } from "./trial-shop";

const terms: TrialTerms = { goal: { kind: "cycles", level: 0.9 }, coverWeeks: 6, reviewDays: 7 };
const whole = { perUse: 1, dispersions: [0], whole: true };

function found(
  forecast = supplyForecast(14, { spread: whole }),
  changes: Partial<Parameters<typeof bestPossible>[1]> = {},
) {
  const shop = trialShop({ supplies: [trialSupply({ forecast })] });
  const span = comingSpan(shop);
  const [supply] = playedSupplies(shop, span).played;
  if (supply === undefined) throw new Error("the supply is not played");
  const ready = readySupply(supply, { terms, span, shop });
  const question = { terms, cycleLevel: 0.9, unitValue: 50, lineCost: 900, shop, span, ...changes };
  return { ready, cost: bestPossible(ready, question) };
}

describe("the best possible levels of a supply", () => {
  // 50 each at 36.5 % a year are 0.05 a day; missing 9 times that. Poisson use of 2 a day, so no spread of days.
  const exact = {
    orderCost: 900,
    holdingCost: 0.05,
    shortageCost: 0.45,
    use: poissonGrid(2),
    leadTimePeriods: 3,
    reviewPeriods: 7,
  };

  it("cost a year what the exact policy costs a day, 365 times", () => {
    const { ready, cost } = found();
    const reorderPoint = Math.floor(ready.levels.checks[0]?.reorderPoint ?? 0);
    expect(cost?.best).toBeCloseTo(365 * orderUpToLevels(exact).cost, 3);
    // Nine packs of ten at a time.
    expect(cost?.own).toBeCloseTo(
      365 * orderUpToCost(exact, { reorderPoint, orderUpTo: reorderPoint + 90 }),
      3,
    );
    expect(cost?.own).toBeGreaterThan(cost?.best ?? Infinity);
  });

  it("take each day's use so that a week has the variance it is known to have", () => {
    const spread = { perUse: 1, dispersions: [0.3, 0.2], whole: true };
    const days = sumGrid({ ...spread, dispersions: [7 * 0.3] }, { mean: 2, weeks: 1 / 7 }, 1);
    const { cost } = found(supplyForecast(14, { spread }));
    expect(cost?.best).toBeCloseTo(365 * orderUpToLevels({ ...exact, use: days }).cost, 6);
    const variance = days.chances.reduce((sum, chance, at) => sum + chance * (at - 2) ** 2, 0);
    // The grid ends at twelve deviations: less than a hundredth of the variance lies beyond.
    expect(Math.abs((7 * variance) / (14 + 0.3 * 14 ** 2) - 1)).toBeLessThan(0.01);
  });

  it.each([
    ["amounts", supplyForecast(14, { spread: { ...whole, whole: false } }), {}],
    ["a season", supplyForecast(0, { spread: whole, path: { firstWeek: TODAY, perWeek: [4, 30, 30] } }), {}],
    ["large counts", supplyForecast(61, { spread: whole }), {}],
    ["orders for nothing", supplyForecast(14, { spread: whole }), { lineCost: 0 }],
    ["stock for nothing", supplyForecast(14, { spread: whole }), { unitValue: 0 }],
  ] as const)("are not told of %s", (_, forecast, changes) => {
    expect(found(forecast, changes).cost).toBeNull();
  });
});
