import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { totalAtPrice } from "#lib/cushioning/break-even";
import { priceEnvelope } from "#lib/cushioning/price-envelope";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { plainCost } from "./small-ways";

const NOW = 250_000;
const BUBBLE = plainCost("bubble", 1_000, { bubble: 4 });
const PAPER = plainCost("paper", 1_200, { sheets: 10 });

describe("which style is the cheapest at each price of a supply", () => {
  it("is one up to the break-even and the other from there on", () => {
    // 25 c + 200 / 4 = 75 c
    expect(priceEnvelope([PAPER, BUBBLE], "bubble", NOW)).toEqual([
      { style: "bubble", from: 0, to: 750_000 },
      { style: "paper", from: 750_000, to: Number.POSITIVE_INFINITY },
    ]);
  });

  it("has a third way between the two where that is cheaper there", () => {
    // bubble and mixed meet at 25 + 60 / 2 = 55 c, mixed and paper at 25 + 140 / 2 = 95 c; at 75 c mixed costs less
    const mixed = plainCost("mixed", 1_060, { bubble: 2, sheets: 5 });
    expect(priceEnvelope([PAPER, BUBBLE, mixed], "bubble", NOW)).toEqual([
      { style: "bubble", from: 0, to: 550_000 },
      { style: "mixed", from: 550_000, to: 950_000 },
      { style: "paper", from: 950_000, to: Number.POSITIVE_INFINITY },
    ]);
  });

  it("leaves out a third way that never is the cheapest", () => {
    const mixed = plainCost("mixed", 1_110, { bubble: 2, sheets: 5 });
    expect(priceEnvelope([PAPER, BUBBLE, mixed], "bubble", NOW).map(({ style }) => style)).toEqual([
      "bubble",
      "paper",
    ]);
  });

  it("is one span where nothing turns: both take as much, or one way loses even as a gift", () => {
    const all = { from: 0, to: Number.POSITIVE_INFINITY };
    expect(priceEnvelope([PAPER, BUBBLE], "carton", 1_000_000)).toEqual([{ style: "bubble", ...all }]);
    expect(priceEnvelope([PAPER, BUBBLE], "sheets", 80_000)).toEqual([{ style: "bubble", ...all }]);
    expect(priceEnvelope([PAPER], "sheets", 80_000)).toEqual([{ style: "paper", ...all }]);
  });

  it("is empty without a way", () => {
    expect(priceEnvelope([], "bubble", NOW)).toEqual([]);
  });
});

describe("any such spans", () => {
  const way = fc.tuple(
    fc.integer({ min: 0, max: 40 * AMOUNT_PER_UNIT }).map((parts) => parts / AMOUNT_PER_UNIT),
    fc.double({ min: 100, max: 20_000, noNaN: true }),
  );
  const STYLES: readonly CushionStyle[] = ["paper", "bubble", "mixed"];

  it("cover every price once, and name a style whose total there is the least", () => {
    fc.assert(
      fc.property(
        fc.array(way, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 2_000_000 }),
        fc.double({ min: 0, max: 20_000_000, noNaN: true }),
        (ways, now, price) => {
          const costs = ways.map(([units, total], at) =>
            plainCost(STYLES[at] ?? "paper", total, { film: units }),
          );
          const spans = priceEnvelope(costs, "film", now);
          const edges = spans.map(({ from }) => from);
          expect(edges[0]).toBe(0);
          expect(spans.map(({ to }) => to)).toEqual([...edges.slice(1), Number.POSITIVE_INFINITY]);
          for (const [at, { style }] of spans.entries()) expect(style).not.toBe(spans[at - 1]?.style);
          const { style } = spans.find(({ from, to }) => price >= from && price < to) ?? {};
          const totals = costs.map((cost) => totalAtPrice(cost, "film", now, price));
          const named = totals[costs.findIndex((cost) => cost.way.style === style)] ?? Number.NaN;
          // Edges nearer to each other than 1/10,000 minor unit are one: at 40 units that is less than 0.01 minor.
          expect(named).toBeLessThanOrEqual(Math.min(...totals) + 0.01);
        },
      ),
      { numRuns: 600 },
    );
  });
});
