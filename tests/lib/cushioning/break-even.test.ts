import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakEven, totalAtPrice } from "#lib/cushioning/break-even";
import { wayCost } from "#lib/cushioning/way-cost";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { BUBBLE, PAPER, plainCost, TERMS } from "./small-ways";

const NOW = 250_000;

describe("the price of a supply at which two ways cost the same", () => {
  const paper = plainCost("paper", 1_215, { sheets: 10 });
  const bubble = plainCost("bubble", 1_031, { bubble: 4 });

  it("is today's price and what the sparing way costs more, for each unit more", () => {
    // 25 c + (1,215 - 1,031) / 4 = 71 c
    expect(breakEven(paper, bubble, "bubble", NOW)).toEqual({
      kind: "turns",
      price: 710_000,
      below: "bubble",
      above: "paper",
    });
  });

  it("is the same whichever way is named first", () => {
    expect(breakEven(bubble, paper, "bubble", NOW)).toEqual(breakEven(paper, bubble, "bubble", NOW));
  });

  it("lies below today's price where the way that takes more is the dearer one", () => {
    // 8 c - (1,215 - 1,175) / 10 = 4 c
    expect(breakEven(paper, plainCost("bubble", 1_175, { bubble: 4 }), "sheets", 80_000)).toEqual({
      kind: "turns",
      price: 40_000,
      below: "paper",
      above: "bubble",
    });
  });

  it("is never where the supply would have to be more than a gift", () => {
    // 8 c - 184 / 10 is below nothing
    expect(breakEven(paper, bubble, "sheets", 80_000)).toEqual({ kind: "never", cheaper: "bubble" });
  });

  it("is not there where both take as much, or neither any", () => {
    expect(breakEven(paper, bubble, "carton", 1_000_000)).toEqual({ kind: "alike" });
    expect(breakEven(paper, bubble, "ribbon", 0)).toEqual({ kind: "alike" });
  });

  it("agrees with both ways reckoned anew at that price, postage and all", () => {
    const costs = (price: number) => {
      const replacement = new Map([...TERMS.replacement, ["bubble", price] as const]);
      return [PAPER, BUBBLE].map((way) => wayCost(way, { ...TERMS, replacement }, 4_000).totalMinor);
    };
    const turn = breakEven(wayCost(PAPER, TERMS, 4_000), wayCost(BUBBLE, TERMS, 4_000), "bubble", NOW);
    if (turn.kind !== "turns") throw new RangeError(`a turn was expected, got ${turn.kind}`);
    const [paperThen = Number.NaN, bubbleThen = Number.NaN] = costs(turn.price);
    expect(paperThen).toBeCloseTo(bubbleThen, 6);
    const [paperBelow = Number.NaN, bubbleBelow = Number.NaN] = costs(turn.price - 10_000);
    expect(bubbleBelow).toBeLessThan(paperBelow);
  });
});

const units = fc.integer({ min: 0, max: 60 * AMOUNT_PER_UNIT }).map((parts) => parts / AMOUNT_PER_UNIT);
const minor = fc.double({ min: 0, max: 200_000, noNaN: true });

describe("any break-even", () => {
  it("makes both totals equal, and below and above it the style named is the cheaper one", () => {
    const price = fc.integer({ min: 0, max: 50_000_000 });
    fc.assert(
      fc.property(units, units, minor, minor, price, (one, other, first, second, now) => {
        const costs = [
          plainCost("paper", first, { film: one }),
          plainCost("bubble", second, { film: other }),
        ];
        const [paper, bubble] = costs;
        if (paper === undefined || bubble === undefined) throw new RangeError("two ways were made");
        const at = (then: number) => ({
          paper: totalAtPrice(paper, "film", now, then),
          bubble: totalAtPrice(bubble, "film", now, then),
          mixed: Number.NaN,
        });
        const turn = breakEven(paper, bubble, "film", now);
        if (turn.kind === "alike") {
          expect(one).toBe(other);
          return;
        }
        const gift = at(0);
        if (turn.kind === "never") {
          expect(gift[turn.cheaper]).toBeLessThanOrEqual(Math.min(gift.paper, gift.bubble) + 0.01);
          expect(one < other ? "paper" : "bubble").toBe(turn.cheaper);
          return;
        }
        const even = at(turn.price);
        expect(Math.abs(even.paper - even.bubble)).toBeLessThan(0.5);
        const below = at(turn.price * 0.9);
        const above = at(turn.price * 1.1);
        expect(below[turn.below]).toBeLessThanOrEqual(below[turn.above] + 1e-6);
        expect(above[turn.above]).toBeLessThanOrEqual(above[turn.below] + 1e-6);
      }),
      { numRuns: 500 },
    );
  });
});

describe("what a way costs at another price", () => {
  it("moves by the units taken", () => {
    const bubble = plainCost("bubble", 1_031, { bubble: 4 });
    expect(totalAtPrice(bubble, "bubble", NOW, 300_000)).toBeCloseTo(1_031 + 4 * 5, 9);
    expect(totalAtPrice(bubble, "bubble", NOW, 0)).toBeCloseTo(1_031 - 4 * 25, 9);
    expect(totalAtPrice(bubble, "sheets", 80_000, 0)).toBe(1_031);
  });
});
