import { describe, expect, it } from "vitest";
import { suitedTypes } from "#lib/cartons/idle/suited-types";

describe("item types that suit a carton", () => {
  it("stand by their share, then by how many fit, and not at all where none does", () => {
    const parcels = ["a1", "a2", "b1", "c1", "c2", "d1"].map((id) => ({ id, itemTypeId: id.charAt(0) }));
    expect(suitedTypes(parcels, new Set(["a1", "b1", "c1", "c2"]))).toEqual([
      { itemTypeId: "c", parcels: 2, fitting: 2, share: 1 },
      { itemTypeId: "b", parcels: 1, fitting: 1, share: 1 },
      { itemTypeId: "a", parcels: 2, fitting: 1, share: 0.5 },
    ]);
  });
});
