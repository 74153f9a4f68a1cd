import { describe, expect, it } from "vitest";
import { cover } from "#lib/cartons/keeping/cover";

describe("cover", () => {
  it("counts what is on its way", () => {
    expect(cover({ onHand: 20, onOrder: 10, weeklyUse: 3 })?.weeks).toBe(10);
  });

  it("is not known where nothing was used", () => {
    expect(cover({ onHand: 20, onOrder: 0, weeklyUse: 0 })).toBeNull();
  });

  it("is nothing where stock is short", () => {
    expect(cover({ onHand: -5, onOrder: 0, weeklyUse: 3 })).toEqual({ weeks: 0, months: 0 });
  });

  it.each([{ weeklyUse: -1 }, { onOrder: -1 }, { onHand: Number.NaN }])("refuses %o", (change) => {
    expect(() => cover({ onHand: 1, onOrder: 0, weeklyUse: 1, ...change })).toThrow(RangeError);
  });
});
