import { describe, expect, it } from "vitest";
import { cutDown } from "#lib/cartons/choice/cut-down";
import { pricedCartons } from "#lib/cartons/choice/priced-carton";
import { CENT, carton, MUG, MUG_TERMS, mugRequest } from "./mug-bench";

function cutOf(each: ReturnType<typeof carton>, cents: number | null, under?: number) {
  const [priced] = pricedCartons(MUG, [each], MUG_TERMS);
  if (priced === undefined) throw new RangeError(`cutOf requires a carton with room, got ${each.id}`);
  return cutDown(priced, mugRequest([each], { minuteValue: cents === null ? null : cents * CENT }), under);
}
const cube10 = carton("cube-10", [10, 10, 10], 100);

describe("cutting a carton down", () => {
  // By hand: 41.87 cents of fill and a step of 200 cents less, at 175 mm.
  it("leaves minutes out of the sum where the seller does not count them, and tells them all the same", () => {
    const cut = cutOf(cube10, null);
    expect([cut?.minutes, cut?.minutesValue]).toEqual([5, null]);
    expect((cut?.savesValue ?? 0) / CENT).toBeCloseTo(241.87, 1);
    expect(cut?.netValue).toBe(cut?.cost.totalValue);
    expect((cutOf(cube10, 10)?.netValue ?? 0) - (cut?.netValue ?? 0)).toBeCloseTo(50 * CENT, 3);
  });

  it("pays where the minutes cost a cent less than is saved, and not a cent more", () => {
    expect(cutOf(cube10, 241 / 5)).not.toBeNull();
    expect(cutOf(cube10, 242 / 5)).toBeNull();
  });

  it("is of no use where it must cost less than it does", () => {
    const value = cutOf(cube10, null)?.netValue ?? 0;
    expect(cutOf(cube10, null, value + 1)?.heightUm).toBe(175_000);
    expect(cutOf(cube10, null, value)).toBeNull();
  });

  it("has flaps of half the shorter side of the opening, trimmed by what the wall loses", () => {
    const cut = cutOf(carton("oblong", [12, 8, 10], 100), null);
    expect(cut?.flaps).toEqual({ meetsUm: 101_600, trimUm: 254_000 - 175_000 });
  });

  it("is none of a carton that may not be sent with the load", () => {
    expect(cutOf({ ...cube10, rating: { kind: "unrated" } }, null)).toBeNull();
  });
});
