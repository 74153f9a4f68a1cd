import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { priceAxis } from "#app/paper-or-bubble/price-axis.ts";
import { plainCost } from "../../lib/cushioning/small-ways";
import { kindOf } from "./small-answer";

const NOW = 250_000;
// Bubble takes 4 units, paper none: it turns at 25 c + (paper - bubble) / 4.
const kind = (id: string, paper: number, bubble: number) =>
  kindOf(id, 1, [plainCost("paper", paper), plainCost("bubble", bubble, { bubble: 4 })]);

describe("kinds of parcel on one axis of prices", () => {
  // Turns at 25 + 60 / 4 = 40 c and at 25 - 20 / 4 = 20 c; the third never does.
  const axis = priceAxis(
    [kind("low", 980, 1_000), kind("high", 1_060, 1_000), kind("none", 500, 1_000)],
    "bubble",
    NOW,
  );

  it("begins at nothing and reaches beyond the farthest turn in even, round steps", () => {
    // 40 c and a quarter more are 50 c, in four steps of 12.5 c or in steps of 20 c
    expect(axis.top).toBe(600_000);
    expect(axis.ticks.map(({ price }) => price)).toEqual([0, 200_000, 400_000, 600_000]);
    expect(axis.ticks.at(-1)?.percent).toBe(100);
    expect(axis.nowPercent).toBeCloseTo((25 / 60) * 100, 9);
  });

  it("has those that turn at the highest price first, each with its stretches", () => {
    expect(axis.strips.map(({ kind: { pieces } }) => pieces[0]?.itemTypeId)).toEqual(["high", "low", "none"]);
    const [high, low, none] = axis.strips;
    expect(high?.turns).toEqual([{ price: 400_000, from: "bubble", to: "paper" }]);
    expect(high?.parts.map(({ style }) => style)).toEqual(["bubble", "paper"]);
    expect(high?.parts[0]).toMatchObject({ from: 0, to: (400_000 / 600_000) * 100 });
    expect(high?.parts[1]?.to).toBe(100);
    expect(low?.turns[0]?.price).toBeCloseTo(200_000, 3);
    expect(none).toMatchObject({ turns: [], parts: [{ style: "paper", from: 0, to: 100 }] });
  });

  it("reaches no further than some three times today's price, and still tells a turn beyond", () => {
    // Turns at 25 + 4,000 / 4 = 10.25 a square foot.
    const far = priceAxis([kind("far", 5_000, 1_000)], "bubble", NOW);
    expect(far.top).toBe(1_000_000);
    expect(far.strips[0]?.parts).toEqual([{ style: "bubble", from: 0, to: 100 }]);
    expect(far.strips[0]?.turns).toEqual([{ price: 10_250_000, from: "bubble", to: "paper" }]);
  });

  it("keeps all on the axis, the last tick at its end, for any prices", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 90_000_000 }),
        fc.array(fc.tuple(fc.integer({ min: 50, max: 9_000 }), fc.integer({ min: 50, max: 9_000 })), {
          maxLength: 5,
        }),
        (now, totals) => {
          const { top, nowPercent, ticks, strips } = priceAxis(
            totals.map(([paper, bubble], at) => kind(`${at}`, paper, bubble)),
            "bubble",
            now,
          );
          expect(top).toBeGreaterThan(now);
          expect(nowPercent).toBeLessThan(100);
          expect(ticks.length).toBeGreaterThanOrEqual(3);
          expect(ticks.length).toBeLessThanOrEqual(6);
          expect(ticks.at(-1)?.percent).toBeCloseTo(100, 6);
          expect(strips).toHaveLength(totals.length);
          for (const { parts } of strips) {
            expect(parts[0]?.from).toBe(0);
            expect(parts.at(-1)?.to).toBe(100);
            for (const [at, { from, to }] of parts.entries()) {
              expect(to).toBeGreaterThan(from);
              if (at > 0) expect(from).toBe(parts[at - 1]?.to);
            }
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
