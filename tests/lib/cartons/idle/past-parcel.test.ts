import { describe, expect, it } from "vitest";
import { fitKey } from "#lib/cartons/idle/past-parcel";
import { inches, MUG } from "../choice/mug-bench";
import { pastMug } from "./past-mugs";

const paid = { materials: 1, postage: null };

describe("the key of a question of fit", () => {
  it("is that of another parcel with the same pieces and clearance, whatever it weighed", () => {
    const other = pastMug("p2", paid, { itemTypeId: "cup", load: { ...MUG, massMg: 1 } });
    expect(fitKey(other)).toBe(fitKey(pastMug("p1", paid)));
  });

  it("differs by the clearance, and by a piece that may or may not tip", () => {
    const first = fitKey(pastMug("p1", paid));
    const clearance = { wallsUm: 1, baseUm: 0, topUm: 0 };
    const pieces = [{ block: inches(5.5, 5.5, 4.75), upright: false }];
    expect(fitKey(pastMug("p1", paid, { clearance }))).not.toBe(first);
    expect(fitKey(pastMug("p1", paid, { load: { ...MUG, pieces } }))).not.toBe(first);
  });
});
