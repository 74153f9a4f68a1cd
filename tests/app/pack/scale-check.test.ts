import { describe, expect, it } from "vitest";
import { ceilingWords, scaleCheck } from "#app/pack/scale-check.ts";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import { day } from "#lib/units/day";

/** A guess about a bill of 650 g: some 1 lb 7 oz. */
const weight = packedWeight(learnedWeights([], day("2026-03-10")).known, {
  itemTypeId: "mug",
  cartonId: "cube-8",
  style: "paper",
  predictedMg: 650_000,
});
const check = (scale: string, promised = "") => scaleCheck({ scale, promised }, weight, "imperial");

describe("the reading of the scale", () => {
  it("is asked about where it fits in another unit, with the number as it was typed", () => {
    expect(check("23 lb")).toEqual({ kind: "slip", meant: "oz", typed: "23 oz" });
    expect(check("1.4")).toEqual({ kind: "slip", meant: "lb", typed: "1.4 lb" });
    expect(check("650 kg")).toEqual({ kind: "slip", meant: "g", typed: "650 g" });
  });

  it("is not asked about where it is near, or far off in every unit", () => {
    expect(check("1 lb 6 oz").kind).toBe("nothing");
    expect(check("23 oz").kind).toBe("nothing");
    expect(check("5 lb").kind).toBe("nothing");
    expect(check("").kind).toBe("nothing");
    expect(check("heavy").kind).toBe("unreadable");
  });

  it("is held against the promise, the limit itself still within it", () => {
    expect(check("1 lb 8 oz", "1 lb 8 oz").kind).toBe("nothing");
    expect(check("1 lb 9 oz", "1 lb 8 oz")).toEqual({ kind: "over", byMg: 28_349 });
    expect(scaleCheck({ scale: "700 g", promised: "500 g" }, null, "metric")).toEqual({
      kind: "over",
      byMg: 200_000,
    });
  });

  it("asks about the unit before it speaks of a broken promise", () => {
    expect(check("23 lb", "1 lb 8 oz").kind).toBe("slip");
  });
});

describe("the ceiling of a promise", () => {
  it("is said in the shop's measures", () => {
    expect(ceilingWords("2 lb", "imperial")).toBe("stay under 2 lb");
    expect(ceilingWords("1 kg", "metric")).toBe("stay under 1 kg");
    expect(ceilingWords("", "metric")).toBeNull();
  });
});
