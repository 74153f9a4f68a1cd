import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparison, comparisons } from "#lib/cushioning/comparison";
import { type WayCost, wayCost } from "#lib/cushioning/way-cost";
import { stepWords } from "#lib/postage/step-words";
import { BUBBLE, bell, GRAM, MIXED, PAPER, POUND, plainCost, TERMS, UP_TO_FOUR } from "./small-ways";

const [PAPER_COST, BUBBLE_COST, MIXED_COST] = [PAPER, BUBBLE, MIXED].map((way) => wayCost(way, TERMS, null));
function costed(cost: WayCost | undefined): WayCost {
  if (cost === undefined) throw new RangeError("three ways were costed");
  return cost;
}
const [paper, bubble, mixed] = [costed(PAPER_COST), costed(BUBBLE_COST), costed(MIXED_COST)];

describe("two ways held against each other", () => {
  it("tells what the cheaper one saves, by part", () => {
    const held = comparison(bubble, paper);
    // Materials 180 against 200; postage 1,075 - 250 x 0.1587 against 1,075 - 250 x 0.9772 (normal table)
    expect(held.parts.materials).toBeCloseTo(-20, 9);
    expect(held.parts.postage).toBeCloseTo(250 * (0.9772 - 0.1587), 1);
    expect(held.savesMinor).toBeCloseTo(184.6, 1);
    expect(held.parts).toMatchObject({ minutes: 0, breakage: 0 });
    expect(held.decidedBy).toBe("postage");
  });

  it("tells the weight saved and the step that divides them", () => {
    const { savedMg, dropped } = comparison(bubble, paper);
    expect((savedMg ?? Number.NaN) / GRAM).toBeCloseTo(120, 2);
    // Where the cheaper way is the heavier one nothing is saved.
    const heavier = { ...paper, totalMinor: 900 };
    expect((comparison(heavier, bubble).savedMg ?? Number.NaN) / GRAM).toBeCloseTo(-120, 2);
    expect(dropped?.share).toBeCloseTo(0.9772 - 0.1587, 3);
    expect(dropped?.lighter).toBe("one");
    expect(dropped === null ? "" : stepWords(dropped.step)).toBe("up to 2 lb");
  });

  it("refuses the dearer way first", () => {
    expect(() => comparison(paper, bubble)).toThrow(/cheaper way first/);
  });

  it("has no step to tell where the rate card leaves both under the same one", () => {
    const light = wayCost({ ...PAPER, weight: bell(POUND / 2) }, TERMS, null);
    const lighter = wayCost({ ...BUBBLE, weight: bell(POUND / 3) }, TERMS, null);
    const held = comparison(light, lighter);
    expect(held.dropped).toBeNull();
    // The heavier is 5.67 deviations under 1 lb: 7 in 1,000,000,000 pay 2.50 more.
    expect(Math.abs(held.parts.postage)).toBeLessThan(3e-6);
    expect(held.decidedBy).toBe("materials");
  });

  it("is whole only where both know every price and the postage", () => {
    expect(comparison(bubble, paper).isWhole).toBe(true);
    const unweighed = wayCost({ ...PAPER, weight: null }, TERMS, null);
    expect(comparison(unweighed, bubble)).toMatchObject({ isWhole: false, savedMg: null, dropped: null });
    expect(comparison(bubble, { ...paper, unpriced: ["sheets"] }).isWhole).toBe(false);
    expect(comparison(plainCost("bubble", 100), plainCost("paper", 200)).isWhole).toBe(false);
  });

  it("is not whole where the card does not carry one of them, whose postage then counts as nothing", () => {
    const tooHeavy = wayCost({ ...PAPER, weight: bell(9 * POUND) }, { ...TERMS, card: UP_TO_FOUR }, null);
    expect(tooHeavy.postageMinor).toBeNull();
    expect(comparison(tooHeavy, bubble).isWhole).toBe(false);
  });

  it("is decided by the part that is most in favour of the cheaper way", () => {
    const dearer = plainCost(
      "paper",
      1_000,
      {},
      { materialsMinor: 400, minutesMinor: 350, breakageMinor: 250 },
    );
    const cheaper = plainCost(
      "bubble",
      800,
      {},
      { materialsMinor: 500, minutesMinor: 100, breakageMinor: 200 },
    );
    const held = comparison(cheaper, dearer);
    expect(held.parts).toEqual({ materials: -100, postage: 0, minutes: 250, breakage: 50 });
    expect(held.decidedBy).toBe("minutes");
  });
});

describe("all ways of a parcel", () => {
  it("are held against the cheapest, the nearest first", () => {
    const held = comparisons([paper, mixed, bubble]);
    expect(held.map(({ cheaper }) => cheaper.way.style)).toEqual(["bubble", "bubble"]);
    expect(held.map(({ dearer }) => dearer.way.style)).toEqual(["mixed", "paper"]);
  });

  it("are nothing to compare where there is one or none", () => {
    expect(comparisons([])).toEqual([]);
    expect(comparisons([paper])).toEqual([]);
  });

  it("have parts that add up to what is saved", () => {
    const part = fc.double({ min: 0, max: 5_000, noNaN: true });
    const cost = fc.tuple(part, fc.option(part), fc.option(part), fc.option(part));
    const made = (
      style: "paper" | "bubble",
      [materialsMinor, postageMinor, minutesMinor, breakageMinor]: readonly [number, ...(number | null)[]],
    ) => {
      const others = { postageMinor: postageMinor ?? null, minutesMinor: minutesMinor ?? null };
      const total = materialsMinor + (postageMinor ?? 0) + (minutesMinor ?? 0) + (breakageMinor ?? 0);
      return plainCost(style, total, {}, { materialsMinor, ...others, breakageMinor: breakageMinor ?? null });
    };
    fc.assert(
      fc.property(cost, cost, (one, other) => {
        const [held] = comparisons([made("paper", one), made("bubble", other)]);
        if (held === undefined) throw new RangeError("two ways were made");
        const { materials, postage, minutes, breakage } = held.parts;
        expect(held.savesMinor).toBeGreaterThanOrEqual(0);
        expect(materials + postage + minutes + breakage).toBeCloseTo(held.savesMinor, 6);
        expect(held.parts[held.decidedBy]).toBe(Math.max(materials, postage, minutes, breakage));
      }),
    );
  });
});
