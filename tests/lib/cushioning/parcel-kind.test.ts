import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cheapestWay, type ParcelKind, totalOf } from "#lib/cushioning/parcel-kind";
import { plainCost } from "./small-ways";

const mug = [{ itemTypeId: "mug", pieces: 1 }];
const tile = [{ itemTypeId: "tile", pieces: 1 }];
const KINDS: readonly ParcelKind[] = [
  {
    pieces: mug,
    parcels: 10,
    costs: [
      plainCost("paper", 900, {}, { materialsMinor: 200, postageMinor: 700 }),
      plainCost("bubble", 950, {}, { materialsMinor: 250, postageMinor: 700 }),
    ],
  },
  {
    pieces: tile,
    parcels: 2.5,
    costs: [
      plainCost("paper", 1_500, {}, { materialsMinor: 300, postageMinor: 1_200 }),
      plainCost("bubble", 1_400, {}, { materialsMinor: 400, postageMinor: 1_000 }),
    ],
  },
];

describe("what all parcels cost", () => {
  it("is added up over the parcels of each kind, in one style or each in its cheapest way", () => {
    expect(totalOf(KINDS, "paper")).toEqual({
      totalMinor: 10 * 900 + 2.5 * 1_500,
      materialsMinor: 10 * 200 + 2.5 * 300,
      postageMinor: 10 * 700 + 2.5 * 1_200,
      otherwise: 0,
    });
    expect(totalOf(KINDS, "bubble").totalMinor).toBe(10 * 950 + 2.5 * 1_400);
    expect(totalOf(KINDS, "best")).toEqual({
      totalMinor: 10 * 900 + 2.5 * 1_400,
      materialsMinor: 10 * 200 + 2.5 * 400,
      postageMinor: 10 * 700 + 2.5 * 1_000,
      otherwise: 0,
    });
  });

  it("takes the cheapest other way where a kind has no recipe in the style, and says of how many parcels", () => {
    const alone = [...KINDS, { pieces: mug, parcels: 4, costs: [plainCost("paper", 800)] }];
    expect(totalOf(alone, "bubble").totalMinor).toBe(10 * 950 + 2.5 * 1_400 + 4 * 800);
    expect(totalOf(alone, "bubble").otherwise).toBe(4);
    expect(totalOf(alone, "mixed").otherwise).toBe(16.5);
    expect(totalOf(alone, "best").otherwise).toBe(0);
  });

  it("counts a kind without any way as nothing", () => {
    expect(totalOf([{ pieces: mug, parcels: 7, costs: [] }], "paper")).toEqual({
      totalMinor: 0,
      materialsMinor: 0,
      postageMinor: 0,
      otherwise: 0,
    });
  });

  it("is never more in the cheapest way of each than all in one style", () => {
    const total = fc.double({ min: 0, max: 5_000, noNaN: true });
    const kind = fc.tuple(total, total, total, fc.double({ min: 0, max: 300, noNaN: true })).map(
      ([paper, bubble, mixed, parcels]): ParcelKind => ({
        pieces: mug,
        parcels,
        costs: [plainCost("paper", paper), plainCost("bubble", bubble), plainCost("mixed", mixed)],
      }),
    );
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 8 }), (kinds) => {
        const best = totalOf(kinds, "best").totalMinor;
        for (const style of ["paper", "bubble", "mixed"] as const) {
          expect(best).toBeLessThanOrEqual(totalOf(kinds, style).totalMinor + 1e-6);
        }
      }),
    );
  });
});

describe("the cheapest way", () => {
  it("is the one with the least total, the first of equals, or none", () => {
    const [paper, bubble] = [plainCost("paper", 900), plainCost("bubble", 800)];
    expect(cheapestWay([paper, bubble])).toBe(bubble);
    expect(cheapestWay([paper, plainCost("bubble", 900)])).toBe(paper);
    expect(cheapestWay([])).toBeNull();
  });
});
