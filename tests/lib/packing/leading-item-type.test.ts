import { describe, expect, it } from "vitest";
import { leadingItemType } from "#lib/packing/leading-item-type";

describe("the item type that a parcel counts under", () => {
  it("is the one with most pieces, the first by id among equals", () => {
    const mugs = { itemTypeId: "mug", pieces: 2 };
    expect(leadingItemType([{ itemTypeId: "vase", pieces: 1 }, mugs])).toBe("mug");
    expect(leadingItemType([mugs, { itemTypeId: "bowl", pieces: 2 }])).toBe("bowl");
    expect(leadingItemType([])).toBe("");
  });
});
