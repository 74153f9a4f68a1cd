import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import type { SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import { unsuitedSupply } from "#lib/packing/recipe/unsuited-supply";
import * as bench from "../bench-shop";

const unsuited = (job: SupplyJob, supply: typeof bench.paper) =>
  unsuitedSupply({ ...bench.NO_SUPPLIES, [job]: supply }, USUAL_HABITS);

describe("unsuitedSupply", () => {
  it("finds none on a sound bench", () => {
    const supplies = {
      hollow: bench.tissue,
      guard: bench.smallBubble,
      surface: bench.tissue,
      cushion: bench.smallBubble,
      outer: bench.kraft,
      bind: bench.householdTape,
      divide: bench.card,
      fill: bench.looseFill,
      seal: bench.cartonTape,
    };
    expect(unsuitedSupply(supplies, USUAL_HABITS)).toBeNull();
    expect(unsuitedSupply(bench.NO_SUPPLIES, USUAL_HABITS)).toBeNull();
  });

  const flat = { kind: "roll", widthUm: bench.inches(12), pieceUm: null, thickUm: 0 } as const;
  it.each([
    ["cushion", bench.looseFill],
    ["cushion", { ...bench.smallBubble, form: flat }],
    ["guard", { ...bench.smallBubble, useUnit: "foot", form: flat }],
    ["surface", { ...bench.tissue, form: { kind: "sheet", lengthUm: 40_000, widthUm: 40_000, thickUm: 0 } }],
    ["outer", { ...bench.kraft, useUnit: "strip" }],
    ["hollow", bench.card],
    ["fill", bench.cartonTape],
    ["divide", bench.looseFill],
    ["divide", { ...bench.cartonTape, form: { ...bench.cartonTape.form, widthUm: 0 } }],
    ["bind", bench.paper],
    ["seal", { ...bench.cartonTape, useUnit: "each" }],
  ] as const)("finds that for %s nothing can be done with what is chosen", (job, supply) => {
    expect(unsuited(job, supply)).toEqual({ job, supplyId: supply.supplyId });
  });
});
