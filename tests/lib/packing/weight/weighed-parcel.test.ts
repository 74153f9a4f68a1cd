import { describe, expect, it } from "vitest";
import { type PastParcel, weighedParcels, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { day } from "#lib/units/day";

const mug: PastParcel = {
  itemTypeId: "mug",
  cartonId: "cube-8",
  style: "paper",
  packedOn: day("2026-05-02"),
  predictedMg: 937000,
  scaleMg: 960000,
  unusual: false,
};

describe("weighed parcels", () => {
  it("leave out what was never weighed, what is unusual and what has no bill", () => {
    const out = [
      { ...mug, scaleMg: null },
      { ...mug, scaleMg: 0 },
      { ...mug, unusual: true },
      { ...mug, predictedMg: 0 },
    ];
    expect(weighedParcels([...out, mug])).toEqual([mug]);
  });

  it("come oldest first, those of one day as they were given", () => {
    const earlier = { ...mug, packedOn: day("2026-05-01") };
    const second = { ...mug, scaleMg: 970000 };
    expect(weighedParcels([mug, second, earlier])).toEqual([earlier, mug, second]);
  });
});

describe("key of a weight group", () => {
  it("tells no carton from a carton of that name", () => {
    const without = weightGroupKey({ ...mug, cartonId: null });
    expect(without).toBe('["mug",null,"paper"]');
    expect(weightGroupKey({ ...mug, cartonId: "null" })).not.toBe(without);
  });
});
