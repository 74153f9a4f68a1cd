import { describe, expect, it } from "vitest";
import { sizesQuestion } from "#app/pack/listing/sizes-question.ts";

const CARTONS = ["cube-8"];
const MUG = { type: "new", form: "round", sizes: "4.5 x 4 in", bare: "370 g" };

const problems = (change: Record<string, string>) => {
  const read = sizesQuestion({ ...MUG, ...change }, CARTONS, "imperial");
  return read.kind === "unreadable" ? read.problems : {};
};

describe("the question about a new piece", () => {
  it("takes a form, sizes and a weight; the rest is as usual", () => {
    expect(sizesQuestion(MUG, CARTONS, "imperial")).toMatchObject({
      kind: "asked",
      question: {
        form: "round",
        pieces: 1,
        style: null,
        cartonId: null,
        piece: {
          body: { kind: "cylinder", acrossUm: 114_300, heightUm: 101_600 },
          massMg: 370_000,
          frailty: "usual",
        },
      },
    });
  });

  it("reads bare numbers in the shop's measures, and the unit behind the last size for all", () => {
    const body = (sizes: string, measures: "imperial" | "metric") => {
      const read = sizesQuestion({ ...MUG, sizes }, CARTONS, measures);
      return read.kind === "asked" ? read.question.piece.body : read.problems;
    };
    expect(body("10 x 12", "metric")).toEqual(body("10 x 12 cm", "imperial"));
    expect(body("10 x 12 cm", "imperial")).toEqual({
      kind: "cylinder",
      acrossUm: 100_000,
      heightUm: 120_000,
    });
  });

  it.each([
    [{ sizes: "0 x 4 in" }, "sizes", /“0 x 4 in” can’t be read. Write two or three sizes above zero/],
    [{ sizes: "large" }, "sizes", /“large” can’t be read/],
    [{ sizes: "" }, "sizes", /Write its outer sizes/],
    [{ sizes: "4 in x 10 cm" }, "sizes", /mixes inches and centimetres/],
    [{ sizes: "4 x 4 x 5 m" }, "sizes", /at most 3 m .* Check the unit/],
    [{ form: "box" }, "sizes", /A block has three sizes/],
    [{ form: "ball" }, "form", /Choose its form/],
    [{ bare: "heavy" }, "bare", /“heavy” can’t be read/],
    [{ bare: "" }, "bare", /Write what the bare piece weighs/],
    [{ bare: "0 g" }, "bare", /above zero/],
    [{ bare: "4000 kg" }, "bare", /below 1,000 kg/],
    [{ pieces: "25" }, "pieces", /At most 24/],
    [{ carton: "sizeless" }, "carton", /not written down/],
    [{ frailty: "glassy" }, "frailty", /how frail/],
  ])("says what is wrong with %o at its field", (change, field, words) => {
    expect(problems(change)[field]).toMatch(words);
    expect(Object.keys(problems(change))).toEqual([field]);
  });

  it("names every field that is wrong at once", () => {
    expect(Object.keys(problems({ sizes: "0", bare: "light" })).sort()).toEqual(["bare", "sizes"]);
  });
});
