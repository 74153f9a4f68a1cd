import { describe, expect, it } from "vitest";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { type OuterUse, outerCarton } from "#lib/cartons/strength/outer-carton";
import { loadOf } from "./packed-load";

const ect32: CartonRating = { kind: "edgeCrush", wall: "single", poundsPerInch: 32 };
const fragile: OuterUse = { type: "difficult", condition: "new" };
const sturdy: OuterUse = { type: "average", condition: "new" };

describe("outerCarton", () => {
  it("lets the stricter rule speak: 50 lb is within the certificate, but not within the post's grade if fragile", () => {
    const load = loadOf("18 x 12 x 10 in", "50 lb");
    expect(outerCarton(ect32, load, sturdy).kind).toBe("carries");
    const verdict = outerCarton(ect32, load, fragile);
    expect(verdict.kind === "over" ? verdict.limits[0] : verdict).toMatchObject({
      rule: "postalGrade",
      measure: "weight",
    });
  });

  it("lets the certificate speak where it is stricter: 76 united inches", () => {
    const verdict = outerCarton(ect32, loadOf("26 x 25 x 25 in", "5 lb"), sturdy);
    expect(verdict.kind).toBe("over");
    const over = loadOf("44 x 16 x 16 in", "5 lb");
    const slim = outerCarton(ect32, over, sturdy);
    expect(slim.kind === "over" ? slim.limits.map(({ measure }) => measure).slice(0, 2) : []).toEqual([
      "unitedInches",
      "lengthAndGirth",
    ]);
  });

  it("takes an unrated carton as an inner box, whatever is in it", () => {
    const load = loadOf("6 x 6 x 6 in", "1 lb");
    expect(outerCarton({ kind: "unrated" }, load, sturdy)).toEqual({ kind: "innerOnly", reason: "unrated" });
    expect(outerCarton({ kind: "paperboard" }, load, sturdy)).toEqual({
      kind: "innerOnly",
      reason: "paperboard",
    });
  });

  it("takes 125 psi board as an inner box for fragile goods only", () => {
    const rating: CartonRating = { kind: "burst", wall: "single", psi: 125 };
    const load = loadOf("10 x 10 x 10 in", "5 lb");
    expect(outerCarton(rating, load, fragile)).toEqual({ kind: "innerOnly", reason: "grade" });
    expect(outerCarton(rating, load, sturdy).kind).toBe("carries");
  });

  it("counts reused board down in both rules, and calls it a guess", () => {
    const load = loadOf("18 x 12 x 10 in", "40 lb");
    expect(outerCarton(ect32, load, fragile)).toMatchObject({ kind: "carries", isGuess: false });
    expect(outerCarton(ect32, load, { ...fragile, condition: "reused" })).toMatchObject({
      kind: "over",
      trustedPercent: 70,
      isGuess: true,
    });
    const trust = { newPercent: 100, reusedPercent: 90 };
    expect(outerCarton(ect32, load, { ...fragile, condition: "reused", trust }).kind).toBe("carries");
  });
});
