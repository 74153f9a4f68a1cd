import { describe, expect, it } from "vitest";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { checkLevels } from "#lib/replenishment/trial/check-levels";
import { playedSupplies } from "#lib/replenishment/trial/played-supplies";
import type { TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { usualOrder } from "#lib/replenishment/trial/usual-order";
import { unitsOf } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { onTime } from "../on-time";
import { supplyForecast } from "../supply-forecast";
import { TODAY, trialShop, trialSupply } from "./trial-shop";

const terms: TrialTerms = { goal: { kind: "cycles", level: 0.95 }, coverWeeks: 6, reviewDays: 7 };
const spread = { perUse: 2, dispersions: [0.1, 0.08], whole: false };
const span = comingSpan(trialShop());

function levelsOf(forecast: SupplyForecast, goal: TrialTerms["goal"] | null = null) {
  const shop = trialShop({ supplies: [trialSupply({ forecast, goal })] });
  const [supply] = playedSupplies(shop, span).played;
  if (supply === undefined) throw new Error("the supply is not played");
  const order = usualOrder(supply, { day: TODAY, terms, calendar: [] });
  return checkLevels(supply, { order, terms, span, calendar: [] });
}

const pointOn = (forecast: SupplyForecast, today: typeof TODAY, goal = terms.goal) =>
  unitsOf(
    protectionPlan({ ...terms, goal, forecast, today, delivery: onTime(3), calendar: [] }).reorderPoint,
  );

describe("the levels of each check", () => {
  it("are the protection plan's, and the cover weeks above it", () => {
    const forecast = supplyForecast(14, { spread });
    const { checks, leadTimeDays } = levelsOf(forecast);
    expect(checks).toHaveLength(13);
    expect(leadTimeDays).toBe(3);
    checks.forEach((levels, check) => {
      expect(levels.reorderPoint).toBeCloseTo(pointOn(forecast, TODAY), 3);
      expect(levels.orderUpTo - levels.reorderPoint).toBeCloseTo(84, 9);
      expect(levels.untilDay).toBe(7 * check + 10);
    });
  });

  it("follow a season, exactly every second week and evenly between", () => {
    const path = { firstWeek: TODAY, perWeek: [10, 10, 12, 15, 20, 30, 40, 40, 30, 20, 10, 5, 5, 5] };
    const forecast = supplyForecast(0, { path, spread });
    const { checks } = levelsOf(forecast);
    const at = (check: number) => checks[check]?.reorderPoint ?? 0;
    expect(at(4)).toBeCloseTo(pointOn(forecast, addDays(TODAY, 28)), 3);
    expect(at(6)).toBeCloseTo(pointOn(forecast, addDays(TODAY, 42)), 3);
    expect(at(5)).toBeCloseTo((at(4) + at(6)) / 2, 9);
    expect(at(6)).toBeGreaterThan(2 * at(0));
  });

  it("are those of the supply's own goal where it has one", () => {
    const forecast = supplyForecast(14, { spread });
    const goal = { kind: "cycles", level: 0.8 } as const;
    const own = levelsOf(forecast, goal);
    expect(own.checks[0]?.reorderPoint).toBeCloseTo(pointOn(forecast, TODAY, goal), 3);
    expect(own.cycleLevel).toBeCloseTo(0.8, 9);
  });
});
