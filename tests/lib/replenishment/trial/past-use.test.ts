import { describe, expect, it } from "vitest";
import { pastForecast, recordedUse } from "#lib/replenishment/trial/past-use";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { supplyForecast } from "../supply-forecast";

const FIRST = day("2026-01-05");
const useOn = (at: number, units: number) => ({ day: addDays(FIRST, at), amount: amountOfUnits(units) });

describe("recorded use", () => {
  it("stands on its day, with nothing on the others and nothing from outside", () => {
    const use = [useOn(-1, 9), useOn(0, 2), useOn(2, -1), useOn(4, 7)];
    expect(recordedUse(use, { firstDay: FIRST, days: 4 })).toEqual([2, 0, -1, 0]);
  });
});

describe("what would have been forecast in the past", () => {
  const forecast = supplyForecast(99, { spread: { perUse: 3, dispersions: [0.2], whole: false } });
  const use = Array.from({ length: 80 }, (_, at) => useOn(at, at < 56 ? 1 : 100));

  it("is the mean of the eight weeks before the day, and knows nothing of the day itself", () => {
    const asked = addDays(FIRST, 56);
    expect(pastForecast(forecast, use, [])(asked)).toMatchObject({
      path: { firstWeek: asked, perWeek: [7] },
      spread: forecast.spread,
    });
  });

  it("is taken to a week of open days, and is never below nothing", () => {
    const calendar = [{ fromDay: FIRST, toDay: addDays(FIRST, 27) }];
    expect(pastForecast(forecast, use, calendar)(addDays(FIRST, 56)).path.perWeek[0]).toBeCloseTo(14, 9);
    expect(pastForecast(forecast, [useOn(3, -5)], [])(addDays(FIRST, 56)).path.perWeek).toEqual([0]);
  });
});
