import { describe, expect, it } from "vitest";
import { AXES, blockSides, sidesBlock } from "#lib/cartons/fit/sides";

describe("sides", () => {
  it("are the length, width and height of a block, and back", () => {
    const block = { lengthUm: 3, widthUm: 2, heightUm: 1 };
    expect(blockSides(block)).toEqual([3, 2, 1]);
    expect(sidesBlock([3, 2, 1])).toEqual(block);
    expect(AXES).toEqual([0, 1, 2]);
  });
});
