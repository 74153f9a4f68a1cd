import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { carriesByPost, neededGrade, postalLimit } from "#lib/cartons/strength/postal-grade";
import { loadOf } from "./packed-load";

const burst = (psi: number): CartonRating => ({ kind: "burst", wall: "single", psi });
const pounds = (rating: CartonRating, type: "average" | "difficult") => {
  const limit = postalLimit(rating, type);
  return limit.kind === "limit" ? limit.pounds : limit.reason;
};

// A national post's table of box grades, 2002: tests/reference.
describe("postalLimit", () => {
  it("allows less for fragile goods: 45 lb instead of 65 lb at 200 psi", () => {
    expect(pounds(burst(200), "average")).toBe(65);
    expect(pounds(burst(200), "difficult")).toBe(45);
  });

  it("takes neither 125 psi board nor thin card for fragile goods", () => {
    expect(pounds(burst(125), "average")).toBe(20);
    expect(pounds(burst(125), "difficult")).toBe("grade");
    expect(pounds({ kind: "paperboard" }, "average")).toBe(10);
    expect(pounds({ kind: "paperboard" }, "difficult")).toBe("paperboard");
  });

  it("turns edge crush into burst by the certificate's row, and says so", () => {
    const rating: CartonRating = { kind: "edgeCrush", wall: "single", poundsPerInch: 32 };
    expect(postalLimit(rating, "difficult")).toMatchObject({ pounds: 45, burstPsi: 200, paired: true });
    expect(postalLimit(burst(200), "difficult")).toMatchObject({ paired: false });
  });

  it("takes triple wall as the strongest grade", () => {
    expect(pounds({ kind: "puncture", units: 700 }, "difficult")).toBe(70);
  });

  it("says why there is no limit", () => {
    expect(pounds({ kind: "unrated" }, "difficult")).toBe("unrated");
    expect(pounds(burst(100), "average")).toBe("grade");
    expect(pounds({ kind: "edgeCrush", wall: "single", poundsPerInch: 10 }, "average")).toBe("grade");
  });

  it("never allows more for a fragile load than for an average one, nor less for better board", () => {
    fc.assert(
      fc.property(fc.integer({ min: 125, max: 600 }), fc.nat(200), (psi, more) => {
        const of = (value: number, type: "average" | "difficult") => {
          const found = pounds(burst(value), type);
          return typeof found === "number" ? found : 0;
        };
        expect(of(psi, "difficult")).toBeLessThanOrEqual(of(psi, "average"));
        expect(of(psi + more, "difficult")).toBeGreaterThanOrEqual(of(psi, "difficult"));
      }),
    );
  });
});

describe("carriesByPost", () => {
  it("holds 45 lb of fragile goods at 200 psi, and not a little more", () => {
    expect(carriesByPost(burst(200), loadOf("18 x 12 x 10 in", "45 lb"), "difficult").kind).toBe("carries");
    expect(carriesByPost(burst(200), loadOf("18 x 12 x 10 in", "45 lb 0.01 oz"), "difficult").kind).toBe(
      "over",
    );
  });

  it("measures length and girth, not united inches", () => {
    const verdict = carriesByPost(burst(275), loadOf("30 x 20 x 19 in", "20 lb"), "difficult");
    expect(verdict.kind === "notAcceptable" ? [] : verdict.limits.map(({ measure }) => measure)).toEqual([
      "lengthAndGirth",
      "weight",
    ]);
    expect(verdict.kind).toBe("carries");
    expect(carriesByPost(burst(275), loadOf("31 x 20 x 19 in", "20 lb"), "difficult").kind).toBe("over");
  });

  it("counts the weight down for reused board", () => {
    const load = loadOf("18 x 12 x 10 in", "40 lb");
    expect(carriesByPost(burst(200), load, "difficult").kind).toBe("carries");
    expect(carriesByPost(burst(200), load, "difficult", 70).kind).toBe("over");
  });
});

describe("neededGrade", () => {
  it("is null where no grade covers the load", () => {
    expect(neededGrade(loadOf("12 x 12 x 12 in", "70 lb"), "difficult")).toBe(350);
    expect(neededGrade(loadOf("12 x 12 x 12 in", "71 lb"), "difficult")).toBeNull();
  });
});
