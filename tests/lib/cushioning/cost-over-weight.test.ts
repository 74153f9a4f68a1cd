import { describe, expect, it } from "vitest";
import { costOverWeight } from "#lib/cushioning/cost-over-weight";
import { wayCost } from "#lib/cushioning/way-cost";
import type { WayToPack } from "#lib/cushioning/way-to-pack";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { bell, GRAM, POUND, TERMS, wayOf } from "./small-ways";

// Paper's packing weighs 300 g and its materials cost 180; bubble's 180 g and 200; mixed 240 g and 190.
const PAPER = wayOf("paper", { sheets: 10 }, { packingMg: 300 * GRAM });
const BUBBLE = wayOf("bubble", { bubble: 4 }, { packingMg: 180 * GRAM });
const MIXED = wayOf("mixed", { sheets: 5, bubble: 2 }, { packingMg: 240 * GRAM });
const RANGE = { fromMg: 300 * GRAM, toMg: 1_500 * GRAM, points: 241 };
const weightAt =
  (deviationMg: number) =>
  ({ packingMg }: WayToPack, bareMg: number) =>
    bell(bareMg + packingMg, deviationMg);

/** The styles that are the cheapest, asked gram by gram: a plain scan. */
function scanned(ways: readonly WayToPack[], deviationMg: number) {
  const turns: { grams: number; from: CushionStyle; to: CushionStyle }[] = [];
  let before: CushionStyle | null = null;
  for (let grams = 300; grams <= 1_500; grams += 1) {
    const totals = ways.map((way) => ({
      style: way.style,
      total: wayCost({ ...way, weight: weightAt(deviationMg)(way, grams * GRAM) }, TERMS, null).totalMinor,
    }));
    const { style } = totals.reduce((best, each) => (each.total < best.total ? each : best));
    if (before !== null && before !== style) turns.push({ grams, from: before, to: style });
    before = style;
  }
  return turns;
}

describe("what each way costs over the weight of the pieces", () => {
  it("has its points evenly from light to heavy, with the totals of wayCost", () => {
    const { points } = costOverWeight([PAPER, BUBBLE], TERMS, RANGE, weightAt(40 * GRAM), null);
    expect(points).toHaveLength(241);
    expect([points[0]?.bareMg, points[1]?.bareMg, points[240]?.bareMg]).toEqual([
      300 * GRAM,
      305 * GRAM,
      1_500 * GRAM,
    ]);
    // 300 g + 300 g of packing: 3.6 deviations over 1 lb, far under 2 lb, so 180 + 825
    expect(points[0]?.totals.get("paper")).toBeCloseTo(180 + 825, 1);
    // 480 g, and 1 lb is 453.6 g, 0.66 deviations under: 0.2546 (normal table) pay 575 and not 825
    expect(points[0]?.totals.get("bubble")).toBeCloseTo(200 + 825 - 0.2546 * 250, 0);
  });

  it.each([
    ["two ways whose parcels differ by 40 g", [PAPER, BUBBLE], 40],
    ["two ways whose parcels hardly differ", [PAPER, BUBBLE], 5],
    ["three ways", [PAPER, BUBBLE, MIXED], 40],
    ["three ways whose parcels hardly differ", [PAPER, BUBBLE, MIXED], 5],
  ])("turns where a scan gram by gram turns: %s", (_, ways, deviation) => {
    const { turns } = costOverWeight(ways, TERMS, RANGE, weightAt(deviation * GRAM), null);
    const known = scanned(ways, deviation * GRAM);
    expect(known.length).toBeGreaterThan(2);
    expect(turns.map(({ from, to }) => [from, to])).toEqual(known.map(({ from, to }) => [from, to]));
    for (const [at, { bareMg }] of turns.entries()) {
      const grams = known[at]?.grams ?? Number.NaN;
      // The scan says after which gram; the turn is told at most a tenth of a gram too high.
      expect(bareMg / GRAM, `turn ${at}`).toBeLessThan(grams + 0.1);
      expect(bareMg / GRAM, `turn ${at}`).toBeGreaterThanOrEqual(grams - 1);
    }
  });

  it("finds a turn to a tenth of a gram", () => {
    // No two parcels of a kind differ: paper leaves the 1 lb step at 453.592 g - 300 g, bubble at 453.592 g - 180 g.
    const range = { fromMg: 100 * GRAM, toMg: 400 * GRAM, points: 2 };
    const apart = { fromMg: 100 * GRAM, toMg: 200 * GRAM, points: 2 };
    const exact = weightAt(0.001);
    const { turns } = costOverWeight([PAPER, BUBBLE], TERMS, apart, exact, null);
    expect(turns).toHaveLength(1);
    expect(turns[0]).toMatchObject({ from: "paper", to: "bubble" });
    expect(Math.abs((turns[0]?.bareMg ?? Number.NaN) - (POUND - 300 * GRAM))).toBeLessThan(100);
    // From 100 g to 400 g the choice turns and turns back in the one gap, which is not seen, as it says.
    expect(costOverWeight([PAPER, BUBBLE], TERMS, range, exact, null).turns).toEqual([]);
  });

  it("finds both turns where a third way is the cheapest between two points", () => {
    // Paper is over 1 lb from 153.6 g on, mixed from 213.6 g on, bubble from 273.6 g on.
    const range = { fromMg: 100 * GRAM, toMg: 260 * GRAM, points: 2 };
    const { turns } = costOverWeight([PAPER, BUBBLE, MIXED], TERMS, range, weightAt(0.001), null);
    expect(turns.map(({ from, to }) => `${from} ${to}`)).toEqual(["paper mixed", "mixed bubble"]);
    expect(turns.map(({ bareMg }) => Math.round(bareMg / GRAM))).toEqual([154, 214]);
  });

  it("never turns without a rate card, as nothing depends on the weight then", () => {
    const { turns, points } = costOverWeight(
      [PAPER, BUBBLE],
      { ...TERMS, card: null },
      RANGE,
      weightAt(40 * GRAM),
      null,
    );
    expect(turns).toEqual([]);
    expect(points.every(({ totals }) => totals.get("paper") === 180)).toBe(true);
  });

  it.each([
    [{ ...RANGE, fromMg: 0 }],
    [{ ...RANGE, toMg: RANGE.fromMg }],
    [{ ...RANGE, points: 1 }],
    [{ ...RANGE, fromMg: Number.NaN }],
  ])("refuses %o", (range) => {
    expect(() => costOverWeight([PAPER], TERMS, range, weightAt(GRAM), null)).toThrow(/range and two points/);
  });

  it("is nothing to turn without a way", () => {
    expect(costOverWeight([], TERMS, RANGE, weightAt(GRAM), null).turns).toEqual([]);
  });
});
