import { describe, expect, it } from "vitest";
import { welchTest } from "#lib/statistics/welch-test";

// Hours of extra sleep of ten patients on each of two drugs: Student (1908), The probable error of a mean, Biometrika 6.
// What R's t.test(extra ~ group, data = sleep) prints of them (both from memory).
const FIRST = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const SECOND = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

describe("Welch's test", () => {
  it("gives t, degrees of freedom and chance of a published example", () => {
    const { difference, t, degrees, byLuck } = welchTest(FIRST, SECOND);
    expect(difference).toBeCloseTo(2.33 - 0.75, 10);
    expect(t).toBeCloseTo(1.8608, 4);
    expect(degrees).toBeCloseTo(17.776, 3);
    expect(byLuck).toBeCloseTo(0.07939, 5);
  });

  it("turns its sign with the samples, and the chance stays", () => {
    const forth = welchTest(FIRST, SECOND);
    const back = welchTest(SECOND, FIRST);
    expect(back.t).toBeCloseTo(-forth.t, 12);
    expect(back.byLuck).toBeCloseTo(forth.byLuck, 12);
  });

  it("needs no chance where nothing spreads", () => {
    expect(welchTest([2, 2], [2, 2, 2])).toMatchObject({ t: 0, byLuck: 1 });
    expect(welchTest([2, 2], [3, 3, 3])).toMatchObject({ difference: 1, byLuck: 0 });
  });

  it("refuses samples that can't spread", () => {
    expect(() => welchTest([1], [1, 2])).toThrow(RangeError);
  });
});
