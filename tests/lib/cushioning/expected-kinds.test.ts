import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectedKinds } from "#lib/cushioning/expected-kinds";

const mugs = (pieces: number) => [{ itemTypeId: "mug", pieces }];
const bowl = [{ itemTypeId: "bowl", pieces: 1 }];
const set = [
  { itemTypeId: "bowl", pieces: 1 },
  { itemTypeId: "mug", pieces: 4 },
];

describe("parcels to come by what is in them", () => {
  it("go out in the kinds in which the pieces went out of late", () => {
    // 4 x 1 + 3 x 2 = 10 mugs sent; 30 to come: three times as many of each kind
    const sent = [
      { pieces: mugs(1), parcels: 4 },
      { pieces: mugs(2), parcels: 3 },
    ];
    expect(expectedKinds(sent, new Map([["mug", 30]]))).toEqual([
      { pieces: mugs(1), parcels: 12 },
      { pieces: mugs(2), parcels: 9 },
    ]);
  });

  it("go by the item type that leads them: the most pieces", () => {
    // 2 x 4 = 8 mugs in sets and 12 alone; 10 to come, half as many. The bowls' forecast says nothing of the sets.
    const sent = [
      { pieces: mugs(1), parcels: 12 },
      { pieces: set, parcels: 2 },
    ];
    const kinds = expectedKinds(
      sent,
      new Map([
        ["mug", 10],
        ["bowl", 500],
      ]),
    );
    expect(kinds).toEqual([
      { pieces: mugs(1), parcels: 6 },
      { pieces: set, parcels: 1 },
    ]);
  });

  it("go one by one for what never went out yet", () => {
    const kinds = expectedKinds(
      [{ pieces: mugs(2), parcels: 5 }],
      new Map([
        ["mug", 10],
        ["bowl", 7.5],
      ]),
    );
    expect(kinds).toEqual([
      { pieces: bowl, parcels: 7.5 },
      { pieces: mugs(2), parcels: 5 },
    ]);
  });

  it("leave out what is not expected any more", () => {
    expect(expectedKinds([{ pieces: mugs(1), parcels: 5 }], new Map())).toEqual([]);
    expect(
      expectedKinds(
        [{ pieces: mugs(1), parcels: 5 }],
        new Map([
          ["mug", 0],
          ["bowl", 0],
        ]),
      ),
    ).toEqual([]);
    expect(expectedKinds([], new Map())).toEqual([]);
  });

  it("hold as many pieces as are expected where each parcel holds one item type, the most frequent first", () => {
    const many = fc.integer({ min: 1, max: 60 });
    const counts = fc.uniqueArray(fc.tuple(fc.integer({ min: 1, max: 9 }), many), {
      selector: ([pieces]) => pieces,
      maxLength: 6,
    });
    fc.assert(
      fc.property(counts, fc.double({ min: 0.01, max: 900, noNaN: true }), (sent, coming) => {
        const kinds = expectedKinds(
          sent.map(([each, parcels]) => ({ pieces: mugs(each), parcels })),
          new Map([["mug", coming]]),
        );
        const pieces = kinds.reduce((sum, kind) => sum + kind.parcels * (kind.pieces[0]?.pieces ?? 0), 0);
        expect(pieces).toBeCloseTo(coming, 6);
        expect(kinds).toEqual(kinds.toSorted((a, b) => b.parcels - a.parcels));
      }),
    );
  });
});
