import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { evenTicks } from "#app/paper-or-bubble/even-ticks.ts";

describe("round ticks that hold a stretch", () => {
  it.each([
    [12.3, 18.9, 4, [10, 15, 20]],
    [0, 100, 5, [0, 50, 100]],
    [980, 1_540, 5, [800, 1_000, 1_200, 1_400, 1_600]],
    [0, 0.4, 5, [0, 0.1, 0.2, 0.3, 0.4]],
    [-3, 3, 4, [-4, -2, 0, 2, 4]],
  ])("from %s to %s in about %s are %j", (least, most, count, ticks) => {
    const found = evenTicks(least, most, count).ticks;
    expect(found).toHaveLength(ticks.length);
    for (const [at, tick] of ticks.entries()) expect(found[at]).toBeCloseTo(tick, 9);
  });

  it.each([
    [5, 5, 4],
    [6, 5, 4],
    [0, 5, 1],
    [Number.NaN, 5, 4],
  ])("refuse from %s to %s in %s", (least, most, count) => {
    expect(() => evenTicks(least, most, count)).toThrow(/requires a stretch/);
  });

  it("are even, hold both ends, and are about as many as wanted", () => {
    const end = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        end,
        fc.double({ min: 0.01, max: 1e6, noNaN: true }),
        fc.integer({ min: 2, max: 9 }),
        (least, span, count) => {
          const { from, to, ticks } = evenTicks(least, least + span, count);
          const step = (to - from) / (ticks.length - 1);
          expect(from).toBeLessThanOrEqual(least + step * 1e-6);
          expect(to).toBeGreaterThanOrEqual(least + span - step * 1e-6);
          expect(
            Math.abs((ticks[0] ?? Number.NaN) - from) + Math.abs((ticks.at(-1) ?? Number.NaN) - to),
          ).toBe(0);
          for (const [at, tick] of ticks.entries())
            expect(Math.abs(tick - (from + at * step))).toBeLessThan(step * 1e-6);
          expect(ticks.length).toBeLessThanOrEqual(count + 2);
          const digits = step / 10 ** Math.floor(Math.log10(step * 1.000_001));
          expect([1, 2, 5].some((digit) => Math.abs(digits - digit) < 1e-5)).toBe(true);
        },
      ),
    );
  });
});
