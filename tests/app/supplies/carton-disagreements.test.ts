import { describe, expect, it } from "vitest";
import { type CartonParts, cartonDisagreements } from "#app/supplies/carton-disagreements.ts";
import { supplyForm } from "#app/supplies/supply-form.ts";

const IN = 25_400;
const sizes = (...sides: number[]) => ({ um: sides.map((side) => side * IN) });
const found = (change: Partial<CartonParts> = {}) =>
  cartonDisagreements({ kind: "carton", sizes: sizes(12, 9, 8), ...change });

describe("what of a carton can't be right", () => {
  it("is nothing of a carton that is in order", () => {
    const whole = { rating: "32 ECT", wall: "single", flutes: "C", outside: sizes(12.3, 9.3, 8.6) } as const;
    expect(found()).toEqual([]);
    expect(found(whole)).toEqual([]);
  });

  it("is that it has no three inside sizes", () => {
    const message = "A carton needs its three inside sizes, like 12 x 9 x 8.";
    expect(found({ sizes: undefined })).toEqual([["sizes", message]]);
    expect(found({ sizes: sizes(12, 9) })).toEqual([["sizes", message]]);
  });

  it("is the shorter side of its opening before the longer one, but not a height above both", () => {
    expect(found({ sizes: sizes(9, 12, 8) })).toEqual([
      ["sizes", "Write the longer side of its opening first, the height last, like 12 x 9 x 8."],
    ]);
    expect(found({ sizes: sizes(8, 8, 14) })).toEqual([]);
  });

  it.each([
    ["9000 ECT", "single", "is more than any board bears"],
    ["5000 psi", "double", "is more than any board bears"],
    ["0 ECT", "single", "is more than any board bears"],
    ["32", "single", "says no unit"],
    ["275 psi", "triple", "is a burst test"],
  ] as const)("is a rating of “%s” on %s wall", (rating, wall, words) => {
    const [disagreement, ...more] = found({ rating, wall });
    expect(disagreement?.[0]).toBe("rating");
    expect(disagreement?.[1]).toContain(`“${rating}” ${words}`);
    expect(more).toEqual([]);
  });

  it.each(["none", "no stamp", "", undefined])("is not a rating of “%s”", (rating) => {
    expect(found({ rating })).toEqual([]);
  });

  it("is flutes of another wall", () => {
    const message = (wall: string, flutes: number) => [
      ["flutes", `A ${wall} wall has ${flutes} of them: C single, BC double.`],
    ];
    expect(found({ flutes: "BC" })).toEqual(message("single", 1));
    expect(found({ flutes: "C", wall: "double" })).toEqual(message("double", 2));
    expect(found({ flutes: "BC", wall: "double" })).toEqual([]);
    expect(found({ flutes: "BC", wall: "triple" })).toEqual(message("triple", 3));
  });

  it("is an outside no larger than the inside, which names the side", () => {
    const message =
      "The outside height is no more than the inside one: the two may be swapped, or in another order.";
    expect(found({ outside: sizes(12.5, 9.5, 8) })).toEqual([["outside", message]]);
    expect(found({ outside: sizes(11, 9.5, 9) })[0]?.[1]).toContain("The outside length is no more");
  });

  it("is an outside so large that its unit is wrong, or without its three sizes", () => {
    expect(found({ outside: sizes(31, 24, 22) })[0]?.[1]).toContain("no board is so thick");
    expect(found({ outside: sizes(12.5, 9.5) })).toEqual([
      ["outside", "Write its three outside sizes, like 12.5 x 9.5 x 8.75."],
    ]);
  });

  it("is told all at once, and at its own field of the form", () => {
    const read = supplyForm("each", "imperial").safeParse({
      name: "A",
      kind: "carton",
      useUnit: "each",
      sizes: "9 x 12 x 8",
      rating: "9000 ECT",
      flutes: "BC",
      outside: "12 x 12 x 7",
    });
    expect(read.error?.issues.map(({ path }) => path[0])).toEqual(["sizes", "rating", "flutes", "outside"]);
  });
});
