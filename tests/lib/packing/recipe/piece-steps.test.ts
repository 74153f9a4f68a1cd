import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { packedMass } from "#lib/packing/packed-mass";
import { pieceSteps } from "#lib/packing/recipe/piece-steps";
import * as bench from "../bench-shop";

const supplies = {
  ...bench.NO_SUPPLIES,
  hollow: bench.tissue,
  guard: bench.smallBubble,
  surface: bench.tissue,
  cushion: bench.smallBubble,
  bind: bench.householdTape,
};
const request = { piece: bench.mug, habits: USUAL_HABITS, supplies, measures: "imperial" } as const;

describe("pieceSteps", () => {
  it("goes from the hollow outwards and binds last, all by the piece", () => {
    const { steps } = pieceSteps(request);
    expect(steps.map(({ job }) => job)).toEqual(["hollow", "guard", "surface", "cushion", "bind"]);
    expect(new Set(steps.map(({ per }) => per))).toEqual(new Set(["piece"]));
  });

  it("adds each layer on both sides", () => {
    const { block, apart } = pieceSteps(request);
    // Handle and its guard on one side; tissue of 30 µm once and film of 4762.5 µm twice on both sides.
    expect(block.lengthUm).toBe(bench.inches(4.5) + 4762.5 + 2 * (30 + 2 * 4762.5));
    expect(block.heightUm).toBe(bench.inches(4) + 2 * (30 + 2 * 4762.5));
    expect(apart).toBeNull();
  });

  it("wraps a lid by itself", () => {
    const lid = { acrossUm: bench.inches(3), heightUm: bench.inches(1) };
    const { steps, apart } = pieceSteps({ ...request, piece: { ...bench.mug, lid } });
    expect(steps.filter(({ words }) => words.includes("lid")).map(({ words }) => words)).toEqual([
      "Wrap the lid by itself in tissue",
      "Wrap the lid by itself in bubble",
    ]);
    expect(apart?.lengthUm).toBe(bench.inches(3) + 2 * (30 + 2 * 4762.5));
    expect(steps.at(-1)?.used).toBe("7 strips");
  });

  it("binds an outer wrap as well, and leaves out jobs without a supply or without layers", () => {
    const outer = pieceSteps({ ...request, supplies: { ...supplies, outer: bench.kraft } });
    expect(outer.steps.map(({ job }) => job)).toContain("outer");
    expect(outer.steps.at(-1)?.used).toBe("7 strips");
    expect(pieceSteps({ ...request, supplies: bench.NO_SUPPLIES }).steps).toEqual([]);
    const habits = { ...USUAL_HABITS, layers: { ...USUAL_HABITS.layers, tissue: 0 } };
    expect(pieceSteps({ ...request, habits }).steps.map(({ job }) => job)).not.toContain("surface");
  });

  it("never uses or weighs less with more layers", () => {
    const supplyMasses = new Map(
      [bench.tissue, bench.paper, bench.smallBubble, bench.householdTape].map(
        ({ supplyId, massMg }): [string, number | null] => [supplyId, massMg],
      ),
    );
    const layers = fc.integer({ min: 0, max: 6 });
    const side = fc.integer({ min: 20_000, max: 300_000 });
    const wraps = fc.constantFrom(bench.paper, bench.smallBubble);
    fc.assert(
      fc.property(layers, layers, side, side, wraps, (few, extra, acrossUm, heightUm, cushion) => {
        const body = { kind: "cylinder", acrossUm, heightUm } as const;
        const [less, more] = [few, few + extra].map((count) => {
          const habits = { ...USUAL_HABITS, layers: { ...USUAL_HABITS.layers, [cushion.material]: count } };
          const piece = { ...bench.mug, body, hollows: [] };
          const { steps } = pieceSteps({ ...request, piece, habits, supplies: { ...supplies, cushion } });
          return packedMass({ pieces: [], lines: steps, cartons: [], supplyMasses }).mg;
        });
        expect((more ?? 0) >= (less ?? 0)).toBe(true);
      }),
    );
  });
});
