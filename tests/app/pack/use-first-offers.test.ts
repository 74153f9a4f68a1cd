import { describe, expect, it } from "vitest";
import { useFirstOffers } from "#app/pack/use-first-offers.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { IN } from "../../lib/cartons/choice/mug-bench";
import * as bench from "../../lib/packing/bench-shop";
import { cartonSupply, typeOf } from "../cartons/small-shelf";

const habits = { ...USUAL_HABITS, cushionUm: { ...USUAL_HABITS.cushionUm, usual: 1.25 * IN } };
const ground = {
  habits,
  shelf: { supplies: [bench.tissue, bench.smallBubble, bench.paper], cartons: [], undescribed: [] },
  measures: "imperial",
} as const;
/** Wrapped in bubble 5.25 x 5.25 x 4.75 in and a hair; with its cushion 7.75 x 7.75 x 7.25 in. */
const MUG = typeOf("mug", [4.5, 4.5, 4]);

const offered = (sides: readonly [number, number, number], types = [MUG]) =>
  useFirstOffers([cartonSupply("box", sides)], types, "mixed", ground);

describe("pieces that go in a carton to use first", () => {
  it.each([
    [[8, 8, 8], 1],
    // Two on each other are 9.5 in, with the cushion 12; three would take 16.75.
    [[8, 8, 14], 2],
    // Two by two are 10.5 in, with the cushion 13; more than four are not looked at.
    [[14, 14, 14], 4],
  ] as const)("are as many as fit with their cushion in %j in: %d", (sides, pieces) => {
    expect(offered(sides)).toEqual([{ cartonId: "box", pieces: { mug: pieces } }]);
  });

  it("leave out a carton that nothing goes in, and one whose sizes are not known", () => {
    expect(offered([7, 7, 7])).toEqual([]);
    const unsized = cartonSupply("box", [9, 9, 9], { heightUm: null });
    expect(useFirstOffers([unsized], [MUG], "mixed", ground)).toEqual([]);
  });

  it("leave out types that do not fit or whose sizes are not known", () => {
    expect(offered([8, 8, 8], [MUG, typeOf("platter", [14, 14, 2]), typeOf("gift", null)])).toEqual([
      { cartonId: "box", pieces: { mug: 1 } },
    ]);
  });
});
