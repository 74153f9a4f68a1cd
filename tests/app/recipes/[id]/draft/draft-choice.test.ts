import { describe, expect, it } from "vitest";
import { draftAddress, draftQuery, readDraftChoice } from "#app/recipes/[id]/draft/draft-choice.ts";

const CARTONS = ["cube-8", "cube-12"];
const problems = (query: Record<string, string>) => {
  const read = readDraftChoice(query, CARTONS, "imperial");
  return read.kind === "refused" ? read.problems : {};
};

describe("what a draft is asked with", () => {
  it("is one piece in the smallest carton with the usual cushion where nothing was asked", () => {
    expect(readDraftChoice({}, CARTONS, "imperial")).toEqual({
      kind: "choice",
      choice: { pieces: 1, cartonId: null, isDouble: false, cushion: null, preferred: [] },
    });
  });

  it("is read with the cushion as typed and the supplies to prefer", () => {
    const query = {
      style: "paper",
      pieces: "6",
      carton: "cube-12",
      boxes: "two",
      cushion: "1.28 in",
      "use.tissue": "white",
      "use.silk": "no-material",
    };
    expect(readDraftChoice(query, CARTONS, "imperial")).toMatchObject({
      choice: {
        pieces: 6,
        cartonId: "cube-12",
        isDouble: true,
        cushion: { um: 32_512, typed: "1.28 in" },
        preferred: ["white"],
      },
    });
  });

  it.each([
    [{ pieces: "0" }, "pieces", /whole number from 1 to 24/],
    [{ pieces: "two" }, "pieces", /whole number/],
    [{ carton: "gone" }, "carton", /Choose a carton/],
    [{ boxes: "three" }, "boxes", /one carton, or a box in a box/],
    [{ cushion: "soft" }, "cushion", /“soft” can’t be read/],
    [{ cushion: "2 ft" }, "cushion", /check its unit/],
  ])("is refused by its field: %o", (query, field, words) => {
    expect(problems(query)[field]).toMatch(words);
  });

  it("goes into an address and comes back", () => {
    const address = draftAddress(
      "mug pair",
      { pieces: "2", carton: "cube-8" },
      { carton: "cube-12", cushion: "1⅛ in" },
    );
    const url = new URL(address, "http://shop.test");
    expect(url.pathname).toBe("/recipes/mug%20pair/draft");
    expect(draftQuery(Object.fromEntries(url.searchParams))).toEqual({
      pieces: "2",
      carton: "cube-12",
      cushion: "1⅛ in",
    });
    expect(draftQuery({ pieces: ["2", "3"], carton: " ", style: undefined })).toEqual({ pieces: "2" });
  });
});
