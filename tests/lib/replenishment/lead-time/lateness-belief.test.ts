import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import type { Lateness } from "#lib/replenishment/lead-time/past-delivery";
import { addDays, day } from "#lib/units/day";

const spring = day("2026-04-01");
const belief = (past: readonly Lateness[], promisedDays = 10, orderedOn = spring) =>
  latenessBelief(past, { promisedDays, orderedOn });
const came = (days: number, orderedOn = day("2026-02-01"), share = 1): Lateness => ({
  orderedOn,
  days,
  share,
  isOpen: false,
});
const mean = (past: readonly Lateness[], orderedOn = spring) =>
  belief(past, 10, orderedOn).chances.reduce((sum, { daysLate, chance }) => sum + daysLate * chance, 0);

describe("belief of how late a delivery may be", () => {
  it("is the promise as promises are kept while nothing is known", () => {
    expect(belief([]).chances).toEqual([
      { daysLate: 0, chance: 0.65 },
      { daysLate: 2, chance: 0.2 },
      { daysLate: 4, chance: 0.1 },
      { daysLate: 6, chance: 0.05 },
    ]);
    expect(belief([], 1).chances.map(({ daysLate }) => daysLate)).toEqual([0, 1, 2, 3]);
    expect(belief([])).toMatchObject({ promiseShare: 1, deliveries: 0 });
  });

  it("after one delivery that was 3 days late counts it one part in five", () => {
    const after = belief([came(3)]);
    expect(after.chances.find(({ daysLate }) => daysLate === 3)?.chance).toBeCloseTo(0.2, 12);
    expect(after.promiseShare).toBeCloseTo(0.8, 12);
  });

  it("lets the promise fade: of many deliveries 3 days late nearly all is 3", () => {
    const many = belief(Array.from({ length: 60 }, () => came(3)));
    expect(many.chances.find(({ daysLate }) => daysLate === 3)?.chance).toBeGreaterThan(0.75);
    const fewer = belief(Array.from({ length: 6 }, () => came(3)));
    expect(many.promiseShare).toBeLessThan(fewer.promiseShare);
  });

  it("counts newer deliveries more than older ones", () => {
    const worse = [...Array.from({ length: 10 }, () => came(0)), came(8), came(8)];
    expect(mean(worse)).toBeGreaterThan(mean(worse.toReversed()));
  });

  it("counts deliveries of the same part of the year more: longer at the peak, as last year's", () => {
    const past = [came(6, day("2025-10-20")), came(6, day("2025-11-20")), came(0), came(0), came(0)];
    expect(mean(past, day("2026-10-25"))).toBeGreaterThan(mean(past, spring) + 0.5);
  });

  it("gives what is still open to the longer ones that are known", () => {
    const open: Lateness = { ...came(5), isOpen: true };
    const chanceOf = (days: number, past: readonly Lateness[]) =>
      belief(past).chances.find(({ daysLate }) => daysLate === days)?.chance ?? 0;
    expect(chanceOf(7, [came(7), open])).toBeGreaterThan(chanceOf(7, [came(7)]));
    expect(chanceOf(5, [came(7), open])).toBe(0);
    // Nothing known is so long: the day after.
    expect(chanceOf(30, [{ ...open, days: 30 }])).toBeCloseTo(0.2, 12);
  });

  it("always adds up to 1, with a part of the promise in it", () => {
    const lateness = fc.record({
      orderedOn: fc.integer({ min: 0, max: 700 }).map((days) => addDays(day("2025-01-01"), days)),
      days: fc.integer({ min: -9, max: 40 }),
      share: fc.double({ min: 0.01, max: 1, noNaN: true }),
      isOpen: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(lateness, { maxLength: 30 }),
        fc.integer({ min: 0, max: 40 }),
        (past, promised) => {
          const { chances, promiseShare } = belief(past, promised);
          expect(chances.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
          expect(promiseShare).toBeGreaterThan(0);
          expect(chances.every(({ chance }) => chance > 0)).toBe(true);
        },
      ),
    );
  });

  it("refuses a promise below 0", () => {
    expect(() => belief([], -1)).toThrow(RangeError);
  });
});
