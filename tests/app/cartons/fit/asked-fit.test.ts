import { describe, expect, it } from "vitest";
import { type AskedFit, askedFit } from "#app/cartons/fit/asked-fit.ts";
import type { Measures } from "#lib/units/measures";

const IN = 25_400;

function asked(query: Record<string, string>, measures: Measures = "imperial"): AskedFit {
  const read = askedFit(query, measures);
  if (read.kind !== "asked") throw new Error(JSON.stringify(read));
  return read.asked;
}

function problems(query: Record<string, string>): Readonly<Record<string, string>> {
  const read = askedFit(query, "imperial");
  if (read.kind !== "unreadable") throw new Error(JSON.stringify(read));
  return read.problems;
}

describe("what is asked of a carton", () => {
  it("is nothing on a screen that was just opened", () => {
    expect(askedFit({}, "imperial")).toEqual({ kind: "blank" });
  });

  it("is one bare fragile piece, packed as usual and not weighed, where no more is said", () => {
    expect(asked({ pieces: "5 x 5 x 6 in", wrap: "bare" })).toEqual({
      pieces: [{ count: 1, um: [5 * IN, 5 * IN, 6 * IN] }],
      areBare: true,
      style: null,
      massMg: null,
      cushionUm: null,
      isUpright: false,
      isFragile: true,
    });
  });

  it("is a line each, with how many are alike before it; empty lines say nothing", () => {
    const lines = "2 of 5 x 5 x 6\n\n 3 pcs 10 x 8 x 2 cm \n1 x 2 x 3";
    expect(asked({ pieces: lines }).pieces).toEqual([
      { count: 2, um: [5 * IN, 5 * IN, 6 * IN] },
      { count: 3, um: [100_000, 80_000, 20_000] },
      { count: 1, um: [IN, 2 * IN, 3 * IN] },
    ]);
    expect(asked({ pieces: "5 x 5 x 6; 2 of 3 x 3 x 3" }).pieces.map(({ count }) => count)).toEqual([1, 2]);
  });

  it("is read in the shop's measures where no unit is written", () => {
    expect(asked({ pieces: "10 x 8 x 2" }, "metric").pieces[0]?.um).toEqual([100_000, 80_000, 20_000]);
  });

  it("has its weight, cushion, style, way up and sturdiness", () => {
    const more = { wrap: "wrapped", weight: "370 g", cushion: "1 in", style: "bubble" };
    expect(asked({ pieces: "5 x 5 x 6", ...more, upright: "yes", sturdy: "yes" })).toMatchObject({
      areBare: false,
      massMg: 370_000,
      cushionUm: IN,
      style: "bubble",
      isUpright: true,
      isFragile: false,
    });
  });

  it("is no more than ten pieces", () => {
    expect(asked({ pieces: "10 of 2 x 2 x 2" }).pieces[0]?.count).toBe(10);
    expect(problems({ pieces: "6 of 2 x 2 x 2\n5 of 3 x 3 x 3" })).toEqual({
      pieces: "At most 10 pieces are looked at, and these are 11: bundle some and give the bundle's sizes.",
    });
  });
});

describe("what of a question can't be read", () => {
  it.each([
    ["5 x 0 x 6", "“5 x 0 x 6”: every size must be above zero."],
    ["5 x 6", "“5 x 6”: three sizes are needed: length, width and height."],
    ["a mug", "“a mug”: can’t be read. Write it like 5 x 5 x 6 in, or 2 of 5 x 5 x 6 in."],
    ["0 of 5 x 5 x 6", "“0 of 5 x 5 x 6”: there must be at least one of them."],
    ["5 x 5 x 6\n5 x wide x 6", "Line 2, “5 x wide x 6”: can’t be read."],
    [" \n ", "Write three sizes, like 5 x 5 x 6 in."],
  ])("is named with the way out: %j", (pieces, message) => {
    expect(problems({ pieces })["pieces"]).toContain(message);
  });

  it("is that nothing was written on a form that was sent", () => {
    expect(problems({ wrap: "bare" })).toEqual({ pieces: "Write three sizes, like 5 x 5 x 6 in." });
  });

  it("is told for each field at once", () => {
    const query = { pieces: "5 x 5", weight: "0 oz", cushion: "20 in" };
    expect(problems(query)).toMatchObject({
      pieces: expect.stringContaining("three sizes"),
      weight: "Write a weight above zero, or leave it empty.",
      cushion: "At most 30 cm (12 in): check its unit.",
    });
  });
});
