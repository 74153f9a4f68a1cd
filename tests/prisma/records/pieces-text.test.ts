import { describe, expect, it } from "vitest";
import { piecesOfText } from "#prisma/records/pieces-text";

describe("pieces of a parcel as a query strings them together", () => {
  it("are read in their order", () => {
    expect(piecesOfText("2 mug;1 bowl")).toEqual([
      { itemTypeId: "mug", pieces: 2 },
      { itemTypeId: "bowl", pieces: 1 },
    ]);
    expect(piecesOfText("12 mug")).toEqual([{ itemTypeId: "mug", pieces: 12 }]);
  });

  it("keep blanks and digits in an item type's id", () => {
    expect(piecesOfText("3 tall vase 2")).toEqual([{ itemTypeId: "tall vase 2", pieces: 3 }]);
  });
});
