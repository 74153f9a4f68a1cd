import { describe, expect, it } from "vitest";
import { beliefAt, knownWeights } from "#lib/packing/weight/known-weights";
import { type WeighedParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { extraOf, weightFit } from "#lib/packing/weight/weight-fit";
import { day } from "#lib/units/day";

const parcel = (itemTypeId: string, cartonId: string, predictedMg: number, share: number): WeighedParcel => ({
  itemTypeId,
  cartonId,
  style: "paper",
  packedOn: day("2026-11-01"),
  predictedMg,
  scaleMg: Math.round(predictedMg * (1 + share)),
  unusual: false,
});
const parcels = [
  parcel("mug", "cube-8", 900_000, 0.03),
  parcel("mug", "cube-8", 950_000, 0.05),
  parcel("mug", "cube-12", 1_400_000, 0.02),
  parcel("plate", "flat-12", 2_100_000, -0.01),
  parcel("plate", "flat-12", 300_000, 0.08),
];
const fit = weightFit(
  parcels,
  parcels.map(() => 1),
);
const known = knownWeights(fit, parcels);

describe("what is known of weights", () => {
  it("says of any bill what the fit says, after it was sent as text", () => {
    const sent = JSON.parse(JSON.stringify(known)) as typeof known;
    for (const predictedMg of [120_000, 900_000, 6_000_000]) {
      for (const own of parcels) {
        const next = { ...own, predictedMg };
        const groupKey = weightGroupKey(next);
        const wanted = fit.means.of({ typeKey: next.itemTypeId, groupKey, extra: extraOf(predictedMg) });
        const found = beliefAt(sent, next);
        expect(found.mean).toBeCloseTo(wanted.mean, 10);
        expect(found.variance).toBeCloseTo(wanted.variance, 10);
        expect(found.noise).toBeCloseTo(fit.noiseOf(groupKey, predictedMg), 10);
      }
    }
  });

  it("goes by the type for a carton never met, and by the shop for a type never met", () => {
    const predictedMg = 900_000;
    const extra = extraOf(predictedMg);
    const carton = beliefAt(known, { itemTypeId: "mug", cartonId: "new", style: "paper", predictedMg });
    expect(carton.mean).toBeCloseTo(fit.means.of({ typeKey: "mug", groupKey: "new", extra }).mean, 10);
    const type = beliefAt(known, { itemTypeId: "bowl", cartonId: "new", style: "paper", predictedMg });
    expect(type.mean).toBeCloseTo(fit.means.of({ typeKey: "bowl", groupKey: "new", extra }).mean, 10);
    expect(type.variance).toBeGreaterThan(carton.variance);
  });

  it("counts what it rests on", () => {
    expect(known.shop.parcels).toBe(5);
    expect(known.types["mug"]?.parcels).toBe(3);
    expect(Object.values(known.groups).map((group) => group.parcels)).toEqual([2, 1, 2]);
  });
});
