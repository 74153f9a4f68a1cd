import { describe, expect, it } from "vitest";
import { draftOfRow, emptyRow, piecesProblem } from "#app/pack/several/several-rows.ts";
import { SMALL_CHOICES } from "./small-choices";

const row = { ...emptyRow("key-00001"), itemTypeId: "mug" };

describe("a row of several parcels", () => {
  it("is packed as is likely where nothing else is said", () => {
    const draft = draftOfRow(row, SMALL_CHOICES, SMALL_CHOICES.today);
    expect(draft).toMatchObject({ id: "key-00001", zoneId: "near", packedOn: SMALL_CHOICES.today });
    expect(draft?.cartons.map(({ supplyId }) => supplyId)).toEqual(["cube-12"]);
  });

  it("takes its own pieces, carton, scale and order, the wraps by the piece", () => {
    const own = { ...row, pieces: "3", cartonId: "cube-8", scale: "2 lb", orders: "A-17" };
    const draft = draftOfRow(own, SMALL_CHOICES, SMALL_CHOICES.today);
    expect(draft?.pieces).toEqual([{ itemTypeId: "mug", pieces: 3 }]);
    expect(draft?.lines[0]?.amount).toBe(12_000);
    expect(draft?.cartons.map(({ supplyId }) => supplyId)).toEqual(["cube-8"]);
    expect(draft).toMatchObject({ scale: "2 lb", orders: "A-17" });
  });

  it("is no parcel while nothing was chosen", () => {
    expect(draftOfRow(emptyRow("key-00001"), SMALL_CHOICES, SMALL_CHOICES.today)).toBeNull();
  });

  it("says which pieces can't be read", () => {
    expect([piecesProblem(""), piecesProblem("2")]).toEqual([null, null]);
    expect(piecesProblem("0")).toContain("can't be read");
    expect(piecesProblem("a few")).toContain("Type a whole number");
  });
});
