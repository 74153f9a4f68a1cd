import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { wrapStep } from "#lib/packing/recipe/wrap-step";
import { inches, paper, smallBubble, tissue } from "../bench-shop";

const round = { lengthUm: inches(4.5), widthUm: inches(4.5), heightUm: inches(4) };
const wrap = { job: "cushion", words: "Wrap in bubble", supply: smallBubble, shape: "cylinder" } as const;

// Computed from the formula; the sizes are common practice.
describe("wrapStep", () => {
  it("shows theory and use of two turns round a mug: 32.6 by 9.5 in, 3 pieces, 36 in", () => {
    const step = wrapStep({ ...wrap, layers: 2, block: round }, USUAL_HABITS, "imperial");
    expect([step.theory, step.used]).toEqual(["32.6 in × 9.5 in", "3 pieces"]);
    expect([step.typedValue, step.typedUnit, step.per]).toEqual(["3", "pieces", "piece"]);
    expect(step.reason).toBe(
      "2 layers of 0.19 in round 4.5 in × 4.5 in × 4 in, with 2 in overlap: 32.6 in × 9.5 in; taken: 3 pieces, 36 in of the roll.",
    );
  });

  it("takes 5 pieces for three turns", () => {
    expect(wrapStep({ ...wrap, layers: 3, block: round }, USUAL_HABITS, "imperial").used).toBe("5 pieces");
  });

  it("does not speak of the thickness of tissue, and speaks metric to a metric shop", () => {
    const step = wrapStep({ ...wrap, supply: tissue, layers: 1, block: round }, USUAL_HABITS, "metric");
    expect(step.reason).toBe(
      "1 layer round 11.4 cm × 11.4 cm × 10.2 cm, with 5.1 cm overlap: 41 cm × 24.1 cm; taken: ⅓ sheet.",
    );
  });

  it("never takes less with a layer more", () => {
    const side = fc.integer({ min: 20_000, max: 400_000 });
    const layers = fc.integer({ min: 1, max: 6 });
    const shapes = fc.constantFrom("cylinder", "box", "flat");
    fc.assert(
      fc.property(
        side,
        side,
        side,
        layers,
        shapes,
        fc.constantFrom(paper, smallBubble),
        (l, w, h, n, shape, supply) => {
          const block = { lengthUm: l, widthUm: w, heightUm: h };
          const amounts = [n, n + 1].map(
            (count) =>
              wrapStep({ ...wrap, supply, shape, layers: count, block }, USUAL_HABITS, "metric").amount,
          );
          expect((amounts[1] ?? 0) >= (amounts[0] ?? 0)).toBe(true);
        },
      ),
    );
  });
});
