import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { COMMON_SUBSTITUTIONS } from "#lib/packing/substitution/common-substitutions";
import { type ShelfSupply, standIns } from "#lib/packing/substitution/stand-ins";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import * as bench from "../bench-shop";

const shelf = (...supplies: Omit<ShelfSupply, "onHand">[]): ShelfSupply[] =>
  supplies.map((supply) => ({ ...supply, onHand: amountOfUnits(500) }));
const giftWrap = { ...bench.paper, supplyId: "gift-wrap", material: "gift-wrap" } as const;
const offered = (...[step, list]: [Parameters<typeof standIns>[0], ShelfSupply[]]) =>
  standIns(step, list, COMMON_SUBSTITUTIONS, USUAL_HABITS);

describe("standIns", () => {
  it("takes two and a half layers of small bubble for one of large, in torn pieces", () => {
    const step = { job: "shock", missing: bench.largeBubble, amount: amountOfUnits(2) } as const;
    const [first] = offered(step, shelf(bench.smallBubble));
    expect(first?.supplyId).toBe("small-bubble");
    expect(unitsOf(first?.amount ?? amountOfUnits(0))).toBe(5);
    expect(first?.reason).toBe("more-layers");
    // Computed from the masses: 5 pieces of 4645 mg less 2 square feet of 7897 mg.
    expect(first?.addedMg).toBe(5 * 4645 - 2 * 7897);
  });

  it("fills the same void with paper in place of bubble, and says what it weighs more", () => {
    const step = { job: "fill", missing: bench.largeBubble, amount: amountOfUnits(8) } as const;
    const [first] = offered(step, shelf(bench.paper));
    // 8 sq ft fill 520 cu in, which takes 10 sheets at 52.
    expect(unitsOf(first?.amount ?? amountOfUnits(0))).toBe(10);
    expect(first?.addedMg).toBe(10 * 27_216 - 8 * 7897);
    expect(first?.cautions).toContain("heavier");
  });

  it("offers the same material in another size first", () => {
    const small = {
      ...bench.paper,
      supplyId: "small-sheets",
      form: { ...bench.paper.form, lengthUm: bench.inches(24) },
    };
    const step = { job: "fill", missing: bench.paper, amount: amountOfUnits(2) } as const;
    const [first] = offered(step, shelf(giftWrap, small as Omit<ShelfSupply, "onHand">));
    expect([first?.supplyId, first?.reason]).toEqual(["small-sheets", "same-material"]);
    expect(unitsOf(first?.amount ?? amountOfUnits(0))).toBe(3);
  });

  it("prefers what there is enough of, then what was never counted, then what is short", () => {
    const step = { job: "fill", missing: bench.paper, amount: amountOfUnits(4) } as const;
    const list: ShelfSupply[] = [
      { ...giftWrap, onHand: amountOfUnits(0.5) },
      { ...bench.kraft, onHand: null },
      { ...bench.largeBubble, onHand: amountOfUnits(100) },
    ];
    expect(offered(step, list).map(({ supplyId, enough }) => [supplyId, enough])).toEqual([
      ["large-bubble", true],
      ["kraft", null],
      ["gift-wrap", false],
    ]);
  });

  it("offers at most four, each supply once, and never the missing one", () => {
    const step = { job: "fill", missing: bench.paper, amount: amountOfUnits(4) } as const;
    const all = shelf(
      bench.paper,
      giftWrap,
      bench.kraft,
      bench.largeBubble,
      bench.looseFill,
      bench.smallBubble,
    );
    const ids = offered(step, [...all, ...all]).map(({ supplyId }) => supplyId);
    expect(ids).toEqual(["gift-wrap", "kraft", "large-bubble", "loose-fill"]);
  });

  it("binds with bands, one for two strips", () => {
    const bands = {
      ...bench.householdTape,
      supplyId: "bands",
      material: "rubber-band",
      useUnit: "each",
    } as const;
    const step = { job: "bind", missing: bench.householdTape, amount: amountOfUnits(4) } as const;
    expect(offered(step, shelf(bands)).map(({ supplyId, amount }) => [supplyId, unitsOf(amount)])).toEqual([
      ["bands", 2],
    ]);
  });

  it("says that kraft round a piece takes no shock", () => {
    const step = { job: "shock", missing: bench.smallBubble, amount: amountOfUnits(3) } as const;
    const [only] = offered(step, shelf(bench.kraft));
    expect([only?.reason, only?.cautions]).toEqual(["snag-guard-only", ["no-shock-taken"]]);
  });

  it("knows no added mass where one was never weighed, and offers nothing from an empty shelf", () => {
    const step = { job: "fill", missing: bench.paper, amount: amountOfUnits(4) } as const;
    expect(offered(step, shelf({ ...giftWrap, massMg: null }))[0]?.addedMg).toBeNull();
    expect(offered(step, [])).toEqual([]);
  });

  it("refuses an amount of nothing", () => {
    const step = { job: "fill", missing: bench.paper, amount: amountOfUnits(0) } as const;
    expect(() => offered(step, [])).toThrow(RangeError);
  });
});
