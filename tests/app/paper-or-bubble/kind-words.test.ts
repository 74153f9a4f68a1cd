import { describe, expect, it } from "vitest";
import { kindName } from "#app/paper-or-bubble/kind-words.ts";

const nameOf = (id: string) => id.toUpperCase();
const named = (...pieces: readonly (readonly [number, string])[]) =>
  kindName(
    pieces.map(([count, itemTypeId]) => ({ itemTypeId, pieces: count })),
    nameOf,
  );

describe("a parcel by what is in it", () => {
  it("is named by its pieces", () => {
    expect(named([1, "mug"])).toBe("MUG");
    expect(named([2, "mug"])).toBe("2 × MUG");
    expect(named([1, "bowl"], [2, "mug"])).toBe("BOWL and 2 × MUG");
    expect(named([1, "bowl"], [2, "mug"], [1, "vase"])).toBe("BOWL, 2 × MUG and VASE");
    expect(named()).toBe("");
  });
});
