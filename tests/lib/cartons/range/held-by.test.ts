import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { sidesBlock } from "#lib/cartons/fit/sides";
import { heldBy } from "#lib/cartons/range/held-by";
import { askedQuestions, NO_CLEARANCE, piece } from "../fit/small-question";

const side = fc.integer({ min: 5, max: 18 });
const anyInsides = fc.array(fc.tuple(side, side, side).map(sidesBlock), { minLength: 1, maxLength: 10 });

describe("heldBy", () => {
  it("answers for each carton as if it were asked alone", () => {
    fc.assert(
      fc.property(askedQuestions(4), anyInsides, ({ pieces, clearance }, insides) => {
        const alone = insides.map((inside) => cartonFit({ pieces, inside, clearance }, QUICK_EFFORT).kind);
        expect(heldBy(pieces, insides, clearance, QUICK_EFFORT)).toEqual(alone);
      }),
      { numRuns: 150 },
    );
  });

  it("gives cartons of the same inside the same answer", () => {
    const cubes = [8, 12, 8, 12].map((edge) => sidesBlock([edge, edge, edge]));
    const holds = heldBy([piece(6, 6, 6), piece(6, 6, 6)], cubes, NO_CLEARANCE, QUICK_EFFORT);
    expect(holds).toEqual(["does-not-fit", "fits", "does-not-fit", "fits"]);
  });
});
