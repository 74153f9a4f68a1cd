import { describe, expect, it } from "vitest";
import { COMMON_SUBSTITUTIONS } from "#lib/packing/substitution/common-substitutions";

// The ratios are common practice or from memory; what is checked is that the list is sound.
describe("the common substitutions", () => {
  it("name each pair once for a job", () => {
    const keys = COMMON_SUBSTITUTIONS.map(({ job, from, to }) => `${job} ${from} ${to}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("never let a material stand in for itself, and always say how much and whence", () => {
    const wrong = COMMON_SUBSTITUTIONS.filter(
      ({ from, to, ratio, source }) => from === to || !(ratio > 0) || source === "",
    );
    expect(wrong).toEqual([]);
  });

  it("are one another's inverse where a pair goes both ways by area, but for paper's rounding", () => {
    const pairs = COMMON_SUBSTITUTIONS.filter(({ measure, job }) => measure === "area" && job === "shock");
    const products = pairs.flatMap(({ from, to, ratio }) => {
      const back = pairs.find((each) => each.from === to && each.to === from);
      return back === undefined ? [] : [ratio * back.ratio];
    });
    expect(products.length).toBeGreaterThan(0);
    // Two to three layers of small bubble for one of large: 2.5 one way, 2 the other.
    expect(products.filter((product) => product < 1 || product > 1.25)).toEqual([]);
  });

  it("let two layers of thin foam, or two to three of small bubble, stand in", () => {
    const ratio = (from: string, to: string) =>
      COMMON_SUBSTITUTIONS.find((each) => each.job === "shock" && each.from === from && each.to === to)
        ?.ratio;
    expect(ratio("small-bubble", "foam")).toBe(2);
    expect(ratio("large-bubble", "small-bubble")).toBe(2.5);
  });
});
