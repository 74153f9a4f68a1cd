import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { couldHaveGone } from "#lib/cartons/idle/could-have-gone";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import { CENT, carton, inches, MUG } from "../choice/mug-bench";
import { pastMug } from "./past-mugs";

const cube10 = carton("cube-10", [10, 10, 10], 100, { ageing: "sits", onHand: 1 });
const terms = { trust: USUAL_TRUST, effort: USUAL_EFFORT };
const cents = (value: number | undefined) => (value ?? Number.NaN) / CENT;

describe("what could have gone in a carton that sits", () => {
  // Worked by hand: today a mug costs 100 + 115.77 + 6.59 cents of materials in the 10 in cube and 800 of postage.
  it("costs what it would today against what it cost, with the price counted and as spent", () => {
    const parcels = [
      pastMug("p1", { materials: 135.76, postage: 600 }),
      pastMug("p2", { materials: 300, postage: 800 }, { cartonId: "cube-12" }),
    ];
    const use = couldHaveGone({ carton: cube10, parcels, ...terms });
    expect(use.parcels.map(({ parcelId }) => parcelId)).toEqual(["p2", "p1"]);
    expect(cents(use.parcels[0]?.savesValue)).toBeCloseTo(300 - 222.36, 1);
    expect(cents(use.parcels[0]?.savesAsSpentValue)).toBeCloseTo(300 - 122.36, 1);
    expect(cents(use.parcels[1]?.savesValue)).toBeCloseTo(735.76 - 1022.36, 1);
    expect(use.all.parcels).toBe(2);
    expect(cents(use.all.savesAsSpentValue)).toBeCloseTo(177.64 - 186.6, 1);
  });

  it("sums for the stock only what saves something, as many as there are", () => {
    const parcels = ["p1", "p2", "p3"].map((id, at) => pastMug(id, { materials: 300 + at, postage: 800 }));
    const one = couldHaveGone({ carton: cube10, parcels, ...terms });
    expect(one.withinStock?.parcels).toBe(1);
    expect(cents(one.withinStock?.savesAsSpentValue)).toBeCloseTo(302 - 122.36, 1);
    const dear = couldHaveGone({
      carton: { ...cube10, onHand: 5 },
      parcels: [pastMug("p1", { materials: 50, postage: 600 })],
      ...terms,
    });
    expect([dear.all.parcels, dear.withinStock?.parcels]).toEqual([1, 0]);
    expect(couldHaveGone({ carton: { ...cube10, onHand: null }, parcels, ...terms }).withinStock).toBeNull();
  });

  it("holds materials against materials where a postage is not known", () => {
    const use = couldHaveGone({
      carton: cube10,
      parcels: [pastMug("p1", { materials: 300, postage: null })],
      ...terms,
    });
    expect(use.parcels[0]?.hasPostage).toBe(false);
    expect(use.all.withoutPostage).toBe(1);
    expect(cents(use.parcels[0]?.savesValue)).toBeCloseTo(300 - 222.36, 1);
  });

  it("tells which item types suit it, by the share that fits, without what went in it", () => {
    const vase = { ...MUG, pieces: [{ block: inches(6, 6, 9), upright: true }] };
    const paid = { materials: 300, postage: 800 };
    const use = couldHaveGone({
      carton: cube10,
      parcels: [
        pastMug("m1", paid),
        pastMug("m2", paid),
        pastMug("m3", paid, { cartonId: "cube-10" }),
        pastMug("v1", paid, { itemTypeId: "vase", load: vase }),
        pastMug("b1", paid, { itemTypeId: "bowl" }),
        pastMug("b2", paid, { itemTypeId: "bowl", load: vase }),
      ],
      ...terms,
    });
    expect(use.itemTypes).toEqual([
      { itemTypeId: "mug", parcels: 2, fitting: 2, share: 1 },
      { itemTypeId: "bowl", parcels: 2, fitting: 1, share: 0.5 },
    ]);
    expect([use.wentInIt, use.doNotFit, use.notProven, use.notCarried]).toEqual([1, 2, 0, 0]);
  });

  it("counts apart what it may not carry", () => {
    const parcels = [pastMug("p1", { materials: 1, postage: 1 })];
    const unrated = { ...cube10, rating: { kind: "unrated" } } as const;
    const use = couldHaveGone({ carton: unrated, parcels, ...terms });
    expect([use.all.parcels, use.notCarried]).toEqual([0, 1]);
  });

  it("saves by its price more where that is spent, and never counts more for the stock than there is", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 900 }), { maxLength: 12 }),
        fc.integer({ min: 0, max: 12 }),
        (materials, onHand) => {
          const parcels = materials.map((each, at) => pastMug(`p${at}`, { materials: each, postage: 800 }));
          const use = couldHaveGone({ carton: { ...cube10, onHand }, parcels, ...terms });
          const { all, withinStock } = use;
          expect(all.savesAsSpentValue - all.savesValue).toBeCloseTo(parcels.length * cube10.value, 3);
          expect(withinStock?.parcels).toBeLessThanOrEqual(onHand);
          const best = use.parcels
            .map(({ savesAsSpentValue }) => Math.max(0, savesAsSpentValue))
            .toSorted((a, b) => b - a)
            .slice(0, onHand)
            .reduce((sum, each) => sum + each, 0);
          expect(withinStock?.savesAsSpentValue).toBeCloseTo(best, 3);
        },
      ),
      { numRuns: 50, seed: 4 },
    );
  });
});
