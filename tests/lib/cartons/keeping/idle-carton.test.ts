import { describe, expect, it } from "vitest";
import { type IdleTerms, idleCarton, type ShelvedCarton } from "#lib/cartons/keeping/idle-carton";
import { addDays, day, daysBetween } from "#lib/units/day";
import { costValue } from "#lib/units/money";

const today = day("2026-11-26");
const ago = (days: number, cartons: number) => ({ day: addDays(today, -days), cartons });
// Prices and stock are invented: 90 cents a carton, in 1/10,000 of a cent.
const carton: ShelvedCarton = {
  onHand: 100,
  onOrder: 0,
  useDays: [ago(3, 6), ago(80, 7)],
  watchedFrom: day("2025-01-01"),
  unitCost: costValue(900_000),
  salvage: costValue(0),
  orderCost: costValue(5_000_000),
  lot: 25,
  roomMl: 400,
};
const terms: IdleTerms = { today, holdingPerMille: 200 };
const told = (change: Partial<ShelvedCarton>, others: Partial<IdleTerms> = {}) =>
  idleCarton({ ...carton, ...change }, { ...terms, ...others });

describe("idleCarton", () => {
  it("says what was used, how long it lasts, and what money and room it holds", () => {
    const idle = told({});
    expect(idle.use).toMatchObject({
      in30Days: 6,
      in90Days: 13,
      in365Days: 13,
      lastUsed: addDays(today, -3),
    });
    expect(idle.monthsOfCover).toBeCloseTo(100 / (52 / 12), 9);
    expect(idle).toMatchObject({ silentWeeks: 0, money: 90_000_000, roomMl: 40_000, ageing: "slow" });
    expect(idle.figure).toMatchObject({ kind: "letGo", reason: "moreThanPays" });
  });

  it("has no cover where nothing was used in 13 weeks, and goes by its silence", () => {
    const idle = told({ useDays: [ago(200, 12)] });
    expect(idle).toMatchObject({ monthsOfCover: null, silentWeeks: 28, ageing: "sits" });
    // It was used within the year, so that what it pays to keep is not nothing.
    expect(idle.figure).toMatchObject({ kind: "letGo", keep: 85, letGo: 15 });
  });

  it("is no idle carton when it came last week", () => {
    const idle = told({ useDays: [], watchedFrom: addDays(today, -7) });
    expect(idle).toMatchObject({ ageing: "tooNew", figure: { kind: "none", reason: "watchedTooShort" } });
  });

  it("counts silence from the last use or from when it is watched, in open days", () => {
    expect(told({ useDays: [] }).silentWeeks).toBe(Math.floor(daysBetween(carton.watchedFrom, today) / 7));
    const closedThreeWeeks = (from: typeof today, until: typeof today) => daysBetween(from, until) - 21;
    const useDays = [ago(70, 5)];
    expect(told({ useDays })).toMatchObject({ silentWeeks: 10, ageing: "sits" });
    expect(told({ useDays }, { openDays: closedThreeWeeks }).silentWeeks).toBe(7);
  });

  it("shows no stock, money or cover that nobody counted", () => {
    expect(told({ onHand: null })).toMatchObject({
      money: null,
      roomMl: null,
      monthsOfCover: null,
      figure: { kind: "none", reason: "countFirst" },
    });
    expect(told({ unitCost: null, roomMl: null })).toMatchObject({ money: null, roomMl: null });
  });

  it("holds nothing where stock is short", () => {
    expect(told({ onHand: -3 })).toMatchObject({ money: 0, roomMl: 0, figure: { reason: "countFirst" } });
  });

  it("refuses a lot or a holding cost of nothing", () => {
    expect(() => told({ lot: 0 })).toThrow(RangeError);
    expect(() => told({}, { holdingPerMille: 0 })).toThrow(RangeError);
  });
});
