import { describe, expect, it } from "vitest";
import { problemsOf } from "#app/_parts/form-state.ts";
import { itemTypeForm } from "#app/recipes/item-type-form.ts";

const read = (change: Readonly<Record<string, string>>) =>
  itemTypeForm("imperial", 2).safeParse({ name: "Mug", ...change });
const problems = (change: Readonly<Record<string, string>>) => problemsOf(read(change).error ?? noProblem());

function noProblem(): never {
  throw new Error("nothing was refused");
}

describe("an item type as typed", () => {
  // 4 in are 101.6 mm.
  it("takes sizes in two units where each has its own", () => {
    expect(read({ sizes: "4 in x 10 cm" }).data?.sizes?.um).toEqual([101_600, 100_000]);
  });

  it.each([
    [{ sizes: "0 x 4 x 4" }, "sizes", /“0 x 4 x 4” has a size of zero/],
    [{ sizes: "4 in x 10 cm x 3" }, "sizes", /can’t be read.*a unit behind each/],
    [{ mass: "0" }, "mass", /above zero, or leave the field empty/],
    [{ name: "" }, "name", /Give it the name/],
  ])("is refused beside the field: %o", (change, field, words) => {
    expect(problems(change)[field]).toMatch(words);
  });
});
