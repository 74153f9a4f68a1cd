import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CUSHION_STYLES, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { addDays, day } from "#lib/units/day";

const version = (id: string, from: string, change: Partial<RecipeVersion> = {}): RecipeVersion => ({
  id,
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day(from),
  steps: [],
  cartons: [],
  ...change,
});

const spring = version("spring", "2026-03-01");
const autumn = version("autumn", "2026-09-01");

describe("recipeOn", () => {
  it("is the latest version from the day or before", () => {
    expect(recipeOn([spring, autumn], "mug", "paper", day("2026-11-25"))?.id).toBe("autumn");
  });

  it("is the new version on its first day and the old one on the day before", () => {
    expect(recipeOn([autumn, spring], "mug", "paper", day("2026-09-01"))?.id).toBe("autumn");
    expect(recipeOn([autumn, spring], "mug", "paper", day("2026-08-31"))?.id).toBe("spring");
  });

  it("is the first version for a parcel from before all versions", () => {
    expect(recipeOn([autumn, spring], "mug", "paper", day("2020-01-01"))?.id).toBe("spring");
  });

  it("does not borrow from another item type or style", () => {
    const others = [
      version("bowl", "2026-01-01", { itemTypeId: "bowl" }),
      version("b", "2026-01-01", { style: "bubble" }),
    ];
    expect(recipeOn(others, "mug", "paper", day("2026-11-25"))).toBeNull();
  });

  it("gives the same answer in any order of versions, and leaves the list as it was", () => {
    const versions = fc
      .uniqueArray(fc.nat(1000), { minLength: 1, maxLength: 8 })
      .map((offsets) => offsets.map((offset) => version(String(offset), addDays(day("2024-01-01"), offset))));
    fc.assert(
      fc.property(versions, fc.integer({ min: -100, max: 1100 }), (list, offset) => {
        const packedOn = addDays(day("2024-01-01"), offset);
        const before = [...list];
        const found = recipeOn(list, "mug", "paper", packedOn);
        expect(found).toBe(recipeOn(list.toReversed(), "mug", "paper", packedOn));
        expect(list).toEqual(before);
      }),
    );
  });

  it("knows three cushion styles", () => {
    expect(CUSHION_STYLES).toEqual(["paper", "bubble", "mixed"]);
  });
});
