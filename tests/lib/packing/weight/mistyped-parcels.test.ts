import { describe, expect, it } from "vitest";
import { mistypedParcels } from "#lib/packing/weight/mistyped-parcels";
import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { addDays, day } from "#lib/units/day";

function mugs(masses: readonly number[], cartonId = "cube-8"): WeighedParcel[] {
  return masses.map((scaleMg, at) => ({
    itemTypeId: "mug",
    cartonId,
    style: "paper",
    packedOn: addDays(day("2026-05-01"), at),
    predictedMg: 650_000,
    scaleMg,
    unusual: false,
  }));
}

describe("mistyped parcels", () => {
  it("puts ounces typed as pounds aside and names the slip", () => {
    const parcels = mugs([655_000, 640_000, 10_400_000, 662_000]);
    const { kept, aside } = mistypedParcels(parcels);
    expect(kept).toEqual([parcels[0], parcels[1], parcels[3]]);
    expect(aside).toEqual([
      { parcel: parcels[2], slip: expect.objectContaining({ typed: "lb", meant: "oz" }) },
    ]);
  });

  it("believes the scale where all parcels weigh far more than the bill", () => {
    const parcels = mugs([1_430_000, 1_450_000, 1_420_000, 1_440_000, 1_433_000]);
    expect(mistypedParcels(parcels).aside).toEqual([]);
  });

  it("asks like parcels before the bill", () => {
    const twice = mugs([1_430_000, 1_450_000, 1_420_000, 1_440_000, 1_433_000, 650_000]);
    expect(mistypedParcels(twice).aside.map(({ parcel }) => parcel.scaleMg)).toEqual([650_000]);
  });

  it("asks the item type where a carton is new", () => {
    const many = mugs([1_430_000, 1_450_000, 1_420_000, 1_440_000, 1_433_000]);
    expect(mistypedParcels([...many, ...mugs([1_445_000], "cube-12")]).aside).toEqual([]);
  });

  it("holds the very first parcel against its bill", () => {
    expect(mistypedParcels(mugs([40_625])).aside[0]?.slip).toMatchObject({ typed: "oz", meant: "lb" });
  });
});
