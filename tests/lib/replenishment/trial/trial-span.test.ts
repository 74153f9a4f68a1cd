import { describe, expect, it } from "vitest";
import { comingSpan, pastSpan } from "#lib/replenishment/trial/trial-span";
import { addDays } from "#lib/units/day";
import { TODAY, trialShop, trialSupply } from "./trial-shop";

const recordedFor = (days: number) =>
  trialShop({ supplies: [trialSupply(), trialSupply({ supplyId: "b", firstDay: addDays(TODAY, -days) })] });

describe("the weeks that a trial plays", () => {
  it("are 13 from today", () => {
    expect(comingSpan(trialShop())).toEqual({ kind: "coming", firstDay: TODAY, days: 91 });
  });

  it("are the year until yesterday where eight weeks more are recorded", () => {
    const year = { kind: "past", firstDay: addDays(TODAY, -364), days: 364 };
    expect(pastSpan(recordedFor(420))).toEqual(year);
    expect(pastSpan(recordedFor(2_000))).toEqual(year);
  });

  it("leave out the first eight weeks of a single year, in whole weeks, and want that year", () => {
    expect(pastSpan(recordedFor(367))).toEqual({ kind: "past", firstDay: addDays(TODAY, -308), days: 308 });
    expect(pastSpan(recordedFor(364))?.days).toBe(308);
    expect(pastSpan(recordedFor(363))).toBeNull();
    expect(pastSpan(trialShop())).toBeNull();
  });
});
