import { describe, expect, it } from "vitest";
import { type LoadGround, packedLoads } from "#app/cartons/packed-loads.ts";
import { day } from "#lib/units/day";
import type { PackedKind } from "#prisma/records/packed-kinds";
import { IN, inches, MUG } from "../../lib/cartons/choice/mug-bench";

const INSIDES: Readonly<Record<string, number>> = { "cube-5": 5, "cube-8": 8, "cube-12": 12 };
/** A wrapped mug of 5.5 x 5.5 x 4.75 in with 2 in of cushion; a vase nobody weighed; nothing of anything else. */
const ground: LoadGround = {
  wrappedOf: (itemTypeId) => {
    const wrapped = { blocks: MUG.pieces, ml: MUG.ml, cushionUm: 2 * IN, isFromSizes: false };
    if (itemTypeId === "mug") return { ...wrapped, massMg: 395_000 };
    return itemTypeId === "vase" ? { ...wrapped, massMg: null } : null;
  },
  insideOf: (cartonId) => {
    const side = INSIDES[cartonId ?? ""];
    return side === undefined ? null : inches(side, side, side);
  },
  papersMg: 10_000,
};
const kind = (itemTypeId: string, pieces: number, cartonId: string | null, parcels = 3): PackedKind => ({
  pieces: [{ itemTypeId, pieces }],
  style: "paper",
  cartonId,
  parcels,
  lastPackedOn: day("2026-03-10"),
});
const cushionIn = (cartonId: string | null) =>
  packedLoads([kind("mug", 1, cartonId)], ground).loads[0]?.clearance;
const allRound = (um: number) => ({ wallsUm: um, baseUm: um, topUm: um });

describe("what parcels packed alike must have held", () => {
  it("is their wrapped pieces and the papers", () => {
    const { loads, unknown, crowded } = packedLoads([kind("mug", 2, "cube-12")], ground);
    expect(loads).toHaveLength(1);
    expect(loads[0]?.load).toEqual({
      pieces: [...MUG.pieces, ...MUG.pieces],
      ml: 2 * MUG.ml,
      massMg: 10_000 + 2 * 395_000,
    });
    expect([unknown.size, crowded]).toEqual([0, 0]);
  });

  it("asks for the usual cushion where the carton had room for it", () => {
    // (12 - 5.5) / 2 is 3.25 in, more than 2
    expect(cushionIn("cube-12")).toEqual(allRound(2 * IN));
  });

  it("asks for no more than the seller accepted: 1 1/4 in beside a mug in the 8 in cube, in whole millimetres", () => {
    // (8 - 5.5) / 2 = 1.25 in = 31.75 mm
    expect(cushionIn("cube-8")).toEqual(allRound(31_000));
  });

  it("asks for the usual cushion where the carton is not known, or could not have held it", () => {
    expect(cushionIn(null)).toEqual(allRound(2 * IN));
    expect(cushionIn("cube-5")).toEqual(allRound(2 * IN));
  });

  it("leaves out types without sizes or weight, by their parcels, and parcels of too many pieces", () => {
    const both: PackedKind = {
      ...kind("mug", 1, "cube-12", 2),
      pieces: [
        { itemTypeId: "mug", pieces: 1 },
        { itemTypeId: "vase", pieces: 1 },
      ],
    };
    const kinds = [kind("vase", 1, "cube-12", 4), both, kind("urn", 1, null, 5), kind("mug", 11, null, 7)];
    const { loads, unknown, crowded } = packedLoads(kinds, ground);
    expect(loads).toEqual([]);
    expect([...unknown]).toEqual([
      ["vase", 6],
      ["urn", 5],
    ]);
    expect(crowded).toBe(7);
  });
});
