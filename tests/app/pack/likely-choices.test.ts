import { describe, expect, it } from "vitest";
import { likelyChoices, type RecentParcel } from "#app/pack/likely-choices.ts";

const parcel = (changes: Partial<RecentParcel>): RecentParcel => ({
  itemTypeId: "mug",
  pieces: 1,
  style: "paper",
  cartonId: "cube-8",
  zoneId: "near",
  unusual: false,
  ...changes,
});

describe("the likely choice", () => {
  it("is the usual number of pieces, packed as the last parcel of so many was", () => {
    const recent = [parcel({ pieces: 4 }), parcel({ cartonId: "cube-12" }), parcel({ style: "bubble" })];
    expect(likelyChoices(recent)).toEqual([
      { itemTypeId: "mug", pieces: 1, style: "paper", cartonId: "cube-12", zoneId: "near" },
    ]);
  });

  it("learns nothing from unusual parcels", () => {
    expect(likelyChoices([parcel({ unusual: true })])).toEqual([]);
  });
});
