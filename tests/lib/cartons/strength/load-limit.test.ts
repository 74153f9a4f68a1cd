import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  girthInches,
  grossPounds,
  isOver,
  type LoadLimit,
  tightestFirst,
  trustedPounds,
  unitedInches,
} from "#lib/cartons/strength/load-limit";
import { ratio, ratioNumber } from "#lib/postage/ratio";
import { loadOf } from "./packed-load";

const weightLimit = (gross: string, pounds: number): LoadLimit => ({
  rule: "certificate",
  measure: "weight",
  limit: ratio(BigInt(pounds)),
  actual: grossPounds(loadOf("12 x 12 x 12 in", gross)),
});

describe("limits of a load", () => {
  it("take 20 lb as within 20 lb, and a thousandth of an ounce more as over it", () => {
    expect(isOver(weightLimit("20 lb", 20))).toBe(false);
    expect(isOver(weightLimit("20 lb 0.001 oz", 20))).toBe(true);
  });

  it("take every whole pound as within itself and over the pound below", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), (pounds) => {
        expect(isOver(weightLimit(`${pounds} lb`, pounds))).toBe(false);
        expect(isOver(weightLimit(`${pounds} lb`, pounds - 1))).toBe(true);
      }),
    );
  });

  it("measure united inches and length and girth apart, whatever the order of the sides", () => {
    for (const sizes of ["18 x 12 x 10 in", "10 x 18 x 12 in"]) {
      expect(ratioNumber(unitedInches(loadOf(sizes, "1 lb")))).toBe(40);
      expect(ratioNumber(girthInches(loadOf(sizes, "1 lb")))).toBe(62);
    }
  });

  it("add eighths of an inch exactly", () => {
    expect(unitedInches(loadOf("13 1/8 x 13 1/8 x 13 3/4 in", "1 lb"))).toMatchObject(
      ratio(40n * 64n ** 3n, 64n ** 3n),
    );
  });

  it("put what is used most in front", () => {
    const light = weightLimit("10 lb", 20);
    const heavy = weightLimit("10 lb", 11);
    expect(tightestFirst([light, heavy])).toEqual([heavy, light]);
  });

  it("count a limit down by a whole percentage only", () => {
    expect(ratioNumber(trustedPounds(65, 70))).toBe(45.5);
    for (const percent of [0, 101, 70.5, Number.NaN]) {
      expect(() => trustedPounds(65, percent)).toThrow(RangeError);
    }
  });
});
