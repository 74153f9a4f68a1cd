import { describe, expect, it } from "vitest";
import { pricedRanges, settledSizes } from "#lib/cartons/range/assignment-prices";
import { rangeSpace } from "#lib/cartons/range/range-space";
import { evenRandom } from "#lib/statistics/even-random";
import { cheapestOf, everyChoice, plainCost, smallTable } from "./small-tables";

const NOTHING = { kept: new Set<number>(), dropped: new Set<number>() };

describe("pricedRanges", () => {
  it("gives by hand what the prices leave", () => {
    const rows = [
      { parcels: 1, values: [2, 6] },
      { parcels: 1, values: [null, 3] },
    ];
    const space = rangeSpace({ candidates: ["a", "b"], rows, unpackedValue: 10 }, new Set());
    // Prices 7 and 4: a takes off 5, b 1 + 1.
    const priced = pricedRanges(space, [7, 4], 1, NOTHING);
    expect(priced.bound).toBe(11 - 5);
    expect(priced.picked).toEqual([0]);
    expect(priced.reduced).toEqual(
      new Map([
        [0, -5],
        [1, -2],
      ]),
    );
    expect(pricedRanges(space, [7, 4], 1, { kept: new Set([1]), dropped: new Set() }).bound).toBe(9);
  });

  it("is below the cost of every range, whatever the prices", () => {
    for (let seed = 1; seed <= 100; seed++) {
      const table = smallTable(seed);
      const space = rangeSpace(table, new Set());
      const random = evenRandom(seed);
      const prices = space.rows.map(({ unpacked }) => Math.round(random() * unpacked));
      for (const most of [1, 2, 4]) {
        expect(pricedRanges(space, prices, most, NOTHING).bound).toBeLessThanOrEqual(cheapestOf(table, most));
      }
    }
  });
});

describe("settledSizes", () => {
  it("settles only what holds for every range cheaper than the known one", () => {
    let settledCount = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const table = smallTable(seed);
      const space = rangeSpace(table, new Set());
      const random = evenRandom(seed);
      const prices = space.rows.map(({ unpacked }) => Math.round((0.3 + 0.4 * random()) * unpacked));
      const most = 1 + (seed % 3);
      const known = cheapestOf(table, most) + (seed % 4);
      const priced = pricedRanges(space, prices, most, NOTHING);
      const { kept, dropped } = settledSizes(space, priced, known, NOTHING);
      settledCount += kept.size + dropped.size;
      for (const chosen of everyChoice(table.candidates.length, most)) {
        if (plainCost(table, chosen) >= known) continue;
        expect(chosen.some((size) => dropped.has(size))).toBe(false);
        expect([...kept].every((size) => chosen.includes(size))).toBe(true);
      }
    }
    expect(settledCount).toBeGreaterThan(50);
  });
});
