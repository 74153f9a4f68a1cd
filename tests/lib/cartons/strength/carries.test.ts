import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carries, neededRow } from "#lib/cartons/strength/carries";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { parcelSize } from "#lib/postage/parcel-size";
import { micrometres } from "#lib/units/length";
import { milligrams } from "#lib/units/mass";
import { loadOf } from "./packed-load";

const ect32: CartonRating = { kind: "edgeCrush", wall: "single", poundsPerInch: 32 };
const measures = (rating: CartonRating, sizes: string, gross: string) => {
  const verdict = carries(rating, loadOf(sizes, gross));
  return verdict.kind === "noCertificate"
    ? [verdict.reason]
    : [verdict.kind, ...verdict.limits.map(({ measure }) => measure)];
};

// Rows of the freight classification: 32 lb/in is 65 lb and 75 united inches.
describe("carries", () => {
  it("holds 65 lb in 75 united inches, and not a little more of either", () => {
    expect(carries(ect32, loadOf("25 x 25 x 25 in", "65 lb")).kind).toBe("carries");
    expect(measures(ect32, "25 x 25 x 25 in", "65 lb 0.01 oz")).toEqual(["over", "weight", "unitedInches"]);
    expect(measures(ect32, "25 x 25 x 25 1/16 in", "65 lb")).toEqual(["over", "unitedInches", "weight"]);
  });

  it("says which limit bites first: size for what is light and large, weight for what is small and heavy", () => {
    expect(measures(ect32, "30 x 25 x 20 in", "10 lb")).toEqual(["carries", "unitedInches", "weight"]);
    expect(measures(ect32, "10 x 10 x 10 in", "60 lb")).toEqual(["carries", "weight", "unitedInches"]);
  });

  it("says so where there is no certificate", () => {
    expect(measures({ kind: "unrated" }, "6 x 6 x 6 in", "1 lb")).toEqual(["unrated"]);
  });

  it("trusts reused board with less weight, not with less size", () => {
    const load = loadOf("25 x 25 x 25 in", "50 lb");
    expect(carries(ect32, load).kind).toBe("carries");
    expect(carries(ect32, load, 70).kind).toBe("over");
    expect(carries(ect32, loadOf("25 x 25 x 25 in", "45.5 lb"), 70).kind).toBe("carries");
  });
});

const side = fc.integer({ min: 1, max: 1_200_000 }).map(micrometres);
const load = fc.record({
  grossMg: fc.integer({ min: 1, max: 200_000_000 }).map(milligrams),
  outsideUm: fc.array(side, { minLength: 3, maxLength: 3 }).map((um) => parcelSize(um, null, "box").um),
});
const anyRating = fc.oneof(
  fc.record({
    kind: fc.constant("edgeCrush" as const),
    wall: fc.constantFrom("single" as const, "double" as const, "triple" as const),
    poundsPerInch: fc.integer({ min: 1, max: 130 }),
  }),
  fc.record({
    kind: fc.constant("burst" as const),
    wall: fc.constantFrom("single" as const, "double" as const),
    psi: fc.integer({ min: 1, max: 700 }),
  }),
);

describe("carries, whatever the load", () => {
  it("never allows more weight than it refused, nor refuses for better board", () => {
    fc.assert(
      fc.property(
        anyRating,
        load,
        fc.integer({ min: 0, max: 90_000_000 }),
        fc.nat(60),
        (board, less, more, up) => {
          const heavier = { ...less, grossMg: milligrams(less.grossMg + more) };
          if (carries(board, heavier).kind === "carries") expect(carries(board, less).kind).toBe("carries");
          const better =
            board.kind === "burst"
              ? { ...board, psi: board.psi + up }
              : { ...board, poundsPerInch: board.poundsPerInch + up };
          if (carries(board, less).kind === "carries") expect(carries(better, less).kind).toBe("carries");
        },
      ),
    );
  });

  it("agrees with the board to ask for: that row carries, and no weaker one does", () => {
    fc.assert(
      fc.property(load, (packed) => {
        const row = neededRow("single", packed);
        const of = (poundsPerInch: number) =>
          carries({ kind: "edgeCrush", wall: "single", poundsPerInch }, packed).kind;
        if (row === null) {
          expect(of(200)).toBe("over");
          return;
        }
        expect(of(row.poundsPerInch)).toBe("carries");
        expect(of(row.poundsPerInch - 1)).not.toBe("carries");
      }),
    );
  });
});
