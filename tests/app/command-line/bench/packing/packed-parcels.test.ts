import { describe, expect, it } from "vitest";
import { mistypedParcels } from "#lib/packing/weight/mistyped-parcels";
import { weighedParcels } from "#lib/packing/weight/weighed-parcel";
import { packedParcels } from "../../../../../app/command-line/bench/packing/packed-parcels";

const shops = [1, 2, 3, 4].map((seed) => packedParcels(seed));
const parcels = shops.flat();

describe("the parcels that weights are measured with", () => {
  it("are the same for the same seed and others for another", () => {
    expect(packedParcels(2)).toEqual(shops[1]);
    expect(packedParcels(5)).not.toEqual(shops[1]);
  });

  it("err to the heavy side, unlike the normal distribution", () => {
    const errors = parcels.map(({ trueMg, oracleMg }) => trueMg / oracleMg - 1);
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    const moment = (power: number) =>
      errors.reduce((sum, error) => sum + (error - mean) ** power, 0) / errors.length;
    expect(moment(3) / moment(2) ** 1.5).toBeGreaterThan(0.3);
    expect(moment(4) / moment(2) ** 2).toBeGreaterThan(3.5);
  });

  it("are mistyped about once in a hundred, which is found", () => {
    const mistyped = parcels.filter(
      ({ parcel, trueMg }) => parcel.scaleMg !== null && Math.abs(parcel.scaleMg - trueMg) > 1,
    );
    expect(mistyped.length / parcels.length).toBeGreaterThan(0.004);
    expect(mistyped.length / parcels.length).toBeLessThan(0.018);
    const aside = shops.flatMap(
      (shop) => mistypedParcels(weighedParcels(shop.map(({ parcel }) => parcel))).aside,
    );
    const asides = new Set<number | null>(aside.map(({ parcel }) => parcel.scaleMg));
    expect(
      mistyped.filter(({ parcel }) => asides.has(parcel.scaleMg)).length / mistyped.length,
    ).toBeGreaterThan(0.9);
    expect(aside.length).toBeLessThan(1.1 * mistyped.length);
  });
});
