import { describe, expect, it } from "vitest";
import type { KindLoad } from "#app/cartons/packed-loads.ts";
import { pastParcels } from "#app/cartons/past-parcels.ts";
import { day } from "#lib/units/day";
import { CENT, IN, MUG, MUG_TERMS } from "../../lib/cartons/choice/mug-bench";
import { cartonSupply, onShelf } from "./small-shelf";

const cube8 = onShelf(cartonSupply("cube-8", [8, 8, 8]), { replacement: new Map([["cube-8", 80 * CENT]]) });
const tiny = onShelf(cartonSupply("tiny", [4, 4, 4]));
const mugs = (cartonId: string | null, parcels: number): KindLoad => ({
  kind: {
    pieces: [{ itemTypeId: "mug", pieces: 1 }],
    style: "paper",
    cartonId,
    parcels,
    lastPackedOn: day("2026-03-10"),
  },
  load: MUG,
  clearance: { wallsUm: IN, baseUm: IN, topUm: IN },
});
const past = (loads: readonly KindLoad[], terms: typeof MUG_TERMS | null = MUG_TERMS) =>
  pastParcels({ loads, unknown: new Map(), crowded: 0 }, [cube8, tiny], () => terms);

describe("past parcels", () => {
  it("are one by one, each with an id of its own and the load of its kind", () => {
    const parcels = past([mugs("cube-8", 2), mugs("cube-8", 1)]);
    expect(parcels).toHaveLength(3);
    expect(new Set(parcels.map(({ id }) => id)).size).toBe(3);
    expect(parcels[0]).toMatchObject({ itemTypeId: "mug", cartonId: "cube-8", load: MUG });
    expect(parcels[0]?.loadType).toBe("difficult");
  });

  it("come to what their own carton takes at today's prices, postage apart", () => {
    // 80 cents; 372 cu in at 52 a sheet of 7 cents; 75 in of tape at 300 cents for 110 yards; 600 up to 1 kg
    const [parcel] = past([mugs("cube-8", 1)]);
    expect((parcel?.paid.materialsValue ?? 0) / CENT).toBeCloseTo(
      80 + (372 / 52) * 7 + (75 * 300) / 3_960,
      2,
    );
    expect(parcel?.paid.postageValue).toBe(600 * CENT);
  });

  it("have no postage where none is known", () => {
    const [parcel] = past([mugs("cube-8", 1)], { ...MUG_TERMS, postage: () => null });
    expect(parcel?.paid.postageValue).toBeNull();
    expect((parcel?.paid.materialsValue ?? 0) / CENT).toBeCloseTo(135.76, 1);
  });

  it("are left out where the carton is not known, holds less than they are, or nothing fills", () => {
    expect(past([mugs(null, 2), mugs("gone", 2), mugs("tiny", 2)])).toEqual([]);
    expect(past([mugs("cube-8", 2)], null)).toEqual([]);
  });
});
