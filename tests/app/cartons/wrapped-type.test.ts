import { describe, expect, it } from "vitest";
import { wrappedType } from "#app/cartons/wrapped-type.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { IN } from "../../lib/cartons/choice/mug-bench";
import * as bench from "../../lib/packing/bench-shop";
import { typeOf } from "./small-shelf";

const ground = {
  habits: USUAL_HABITS,
  shelf: { supplies: [bench.smallBubble, bench.paper], cartons: [], undescribed: [] },
  measures: "imperial",
} as const;
const MUG = typeOf("mug", [4.5, 4.5, 4]);

describe("an item type as it is wrapped", () => {
  it("is by its outer sizes, and two turns of bubble on every side, where it was never described", () => {
    const wrapped = wrappedType(MUG, "mixed", ground);
    // Four layers of 3/16 in are 3/4 in: 5.25 x 5.25 x 4.75 in
    expect(wrapped?.blocks).toEqual([
      {
        block: { lengthUm: 5.25 * IN, widthUm: 5.25 * IN, heightUm: 4.75 * IN },
        upright: false,
      },
    ]);
    expect(wrapped).toMatchObject({ cushionUm: 2 * IN, isFromSizes: true });
  });

  it("weighs the bare piece and its wraps, and nothing is known where it was never weighed", () => {
    const wrapped = wrappedType(MUG, "mixed", ground);
    expect(wrapped?.massMg).toBeGreaterThan(370_000);
    expect(wrappedType({ ...MUG, massMg: null }, "mixed", ground)?.massMg).toBeNull();
  });

  it("asks for more cushion where it is heavy: 3 in from 2 kg on", () => {
    expect(wrappedType({ ...MUG, massMg: 2_000_000 }, "mixed", ground)?.cushionUm).toBe(3 * IN);
  });

  it("is taken without each wrap whose supply can't do its job, however many there are", () => {
    // Scraps no longer than the overlap: laying them end to end gains nothing.
    const scrap = { kind: "sheet", lengthUm: IN, widthUm: IN, thickUm: 1_000 } as const;
    const scraps = [
      { ...bench.smallBubble, useUnit: "sheet" as const, form: scrap },
      { ...bench.paper, supplyId: "tissue", material: "tissue" as const, form: scrap },
    ];
    const bare = wrappedType(MUG, "bubble", { ...ground, shelf: { ...ground.shelf, supplies: [] } });
    const wrapped = wrappedType(MUG, "bubble", { ...ground, shelf: { ...ground.shelf, supplies: scraps } });
    expect(wrapped?.blocks).toEqual(bare?.blocks);
  });

  it("is none where no sizes are known", () => {
    expect(wrappedType(typeOf("gift", null), "mixed", ground)).toBeNull();
  });
});
