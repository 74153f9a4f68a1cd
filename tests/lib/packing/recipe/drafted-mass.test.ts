import { describe, expect, it } from "vitest";
import { cartonMass } from "#lib/packing/carton-mass";
import { USUAL_HABITS } from "#lib/packing/habits";
import { draftedMass } from "#lib/packing/recipe/drafted-mass";
import { amountOfUnits } from "#lib/units/amount";
import * as bench from "../bench-shop";

const carton = { ...bench.cartonOf(8, 8, 8), massMg: 200_000 };
const request = {
  piece: bench.mug,
  pieces: 2,
  habits: USUAL_HABITS,
  supplies: { ...bench.NO_SUPPLIES, fill: bench.paper },
  carton,
  outer: null,
};
const step = { supplyId: "paper", amount: amountOfUnits(3) };

describe("draftedMass", () => {
  it("takes steps by the piece for each piece, steps by the parcel once, and the papers", () => {
    const pieces = draftedMass(request, [{ ...step, per: "piece" }]);
    expect(pieces).toEqual({ mg: 2 * 370_000 + 6 * 27_216 + 200_000 + 10_000, unknown: [], guessed: [] });
    expect(draftedMass(request, [{ ...step, per: "parcel" }]).mg).toBe(pieces.mg - 3 * 27_216);
  });

  it("reckons a carton that was never weighed, and says so", () => {
    const mass = draftedMass({ ...request, carton: { ...carton, massMg: null } }, []);
    expect(mass.mg).toBe(2 * 370_000 + 10_000 + cartonMass(carton.inside));
    expect(mass.guessed).toEqual([carton.supplyId]);
  });

  it("weighs the outer carton of a double box, and the inner one as the step it is", () => {
    const outer = { ...bench.cartonOf(12, 12, 12), massMg: 435_000 };
    const inner = { supplyId: carton.supplyId, amount: amountOfUnits(1), per: "parcel" } as const;
    const mass = draftedMass({ ...request, outer }, [inner]);
    expect(mass.mg).toBe(2 * 370_000 + 10_000 + 435_000 + 200_000);
  });

  it("names what has no mass", () => {
    const supplies = { ...bench.NO_SUPPLIES, fill: { ...bench.paper, massMg: null } };
    const mass = draftedMass({ ...request, piece: { ...bench.mug, massMg: null }, supplies }, [
      { ...step, per: "parcel" },
    ]);
    expect(mass.unknown).toEqual(["mug", "paper"]);
  });
});
