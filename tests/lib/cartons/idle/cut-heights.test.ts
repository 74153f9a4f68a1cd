import { describe, expect, it } from "vitest";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { cutHeights } from "#lib/cartons/idle/cut-heights";
import { inches, MUG } from "../choice/mug-bench";
import { pastMug } from "./past-mugs";

const paid = { materials: 1, postage: null };
const inside = inches(10, 10, 10);
const asked = { inside, stepUm: 5_000, effort: USUAL_EFFORT };
const bowl = (height: number) => ({ ...MUG, pieces: [{ block: inches(7, 7, height), upright: true }] });

describe("heights that a carton could be cut to", () => {
  // By hand: 4.75 in and an inch over and under are 171.45 mm, so 175; 3 + 2 in are 127 mm, so 130; 6 + 2 in 203.2, so 205.
  it("are those that all parcels of a type fit, in whole steps, lowest first", () => {
    const parcels = [
      pastMug("m1", paid),
      pastMug("b1", paid, { itemTypeId: "bowl", load: bowl(6) }),
      pastMug("b2", paid, { itemTypeId: "bowl", load: bowl(3) }),
      pastMug("s1", paid, { itemTypeId: "saucer", load: bowl(3) }),
      pastMug("c1", paid, { itemTypeId: "cup" }),
    ];
    expect(cutHeights({ ...asked, parcels })).toEqual([
      { heightUm: 130_000, itemTypeIds: ["saucer"], parcels: 1 },
      { heightUm: 175_000, itemTypeIds: ["mug", "cup"], parcels: 2 },
      { heightUm: 205_000, itemTypeIds: ["bowl"], parcels: 2 },
    ]);
    for (const { load, clearance } of parcels.slice(0, 1)) {
      const at = (heightUm: number) =>
        cartonFit({ pieces: load.pieces, clearance, inside: { ...inside, heightUm } }, USUAL_EFFORT).kind;
      expect([at(175_000), at(170_000)]).toEqual(["fits", "does-not-fit"]);
    }
  });

  it("are none for a type that needs the whole height, or fits at none", () => {
    const tall = pastMug("v1", paid, { itemTypeId: "vase", load: bowl(8) });
    const wide = pastMug("d1", paid, {
      itemTypeId: "dish",
      load: { ...MUG, pieces: [{ block: inches(9, 9, 2), upright: true }] },
    });
    expect(cutHeights({ ...asked, parcels: [tall, wide] })).toEqual([]);
  });
});
