import { describe, expect, it } from "vitest";
import { readCartonRating } from "#lib/cartons/strength/carton-rating";

// How stamps are written is common practice, no source.
describe("readCartonRating", () => {
  it.each([
    ["32 ECT", 32],
    ["ECT 44", 44],
    ["ECT: 32", 32],
    ["32ect", 32],
    ["Edge crush 29", 29],
    ["32 lb/in ECT", 32],
    ["26 lbs per inch", 26],
    ["Edge crush test 32 lbs per in. Size limit 75 inches. Gross wt. limit 65 lbs.", 32],
    ["5.6 kN/m", 32],
    ["ECT 5,6 kN/m", 32],
  ])("reads %s as an edge crush of %s lb/in", (text, poundsPerInch) => {
    expect(readCartonRating(text, "single")).toEqual({
      kind: "rating",
      rating: { kind: "edgeCrush", wall: "single", poundsPerInch },
    });
  });

  it.each([
    ["200 psi", 200],
    ["275#", 275],
    ["200 lb test", 200],
    ["200-lb. test", 200],
    ["burst 150 psi", 150],
    ["Bursting test 200 lbs. per sq. in. Gross wt. limit 65 lbs.", 200],
    ["1380 kPa", 200],
    ["1,380 kPa", 200],
  ])("reads %s as a burst strength of %s psi", (text, psi) => {
    expect(readCartonRating(text, "double")).toEqual({
      kind: "rating",
      rating: { kind: "burst", wall: "double", psi },
    });
  });

  it("takes edge crush where both are printed", () => {
    expect(readCartonRating("200 psi / 32 ECT", "single")).toMatchObject({
      rating: { kind: "edgeCrush", poundsPerInch: 32 },
    });
  });

  it("takes no stamp for unrated", () => {
    expect(readCartonRating("  ", "single")).toEqual({ kind: "rating", rating: { kind: "unrated" } });
  });

  it.each([
    ["32", "single", "noUnit"],
    ["strong", "single", "noUnit"],
    ["0 ECT", "single", "impossible"],
    ["3200 ECT", "single", "impossible"],
    ["20000 psi", "single", "impossible"],
    ["275 psi", "triple", "burstOnTriple"],
  ] as const)("says of %s on %s wall that it is %s", (text, wall, reason) => {
    expect(readCartonRating(text, wall)).toEqual({ kind: "unreadable", text, reason });
  });
});
