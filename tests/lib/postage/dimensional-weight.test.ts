import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DimensionalRule, dimensionalLines, dimensionalWeight } from "#lib/postage/dimensional-weight";
import { parcelSize } from "#lib/postage/parcel-size";
import { ratio, ratioNumber } from "#lib/postage/ratio";
import { micrometres } from "#lib/units/length";
import { exact, sized } from "./rate-card-fixture";

const rule: DimensionalRule = {
  divisor: exact("139"),
  lengthUnit: "in",
  massUnit: "lb",
  floor: exact("1728"),
  sides: { kind: "up", to: ratio(1n) },
  result: { kind: "up", to: ratio(1n) },
  shapeFactor: exact("0.785"),
  atMost: null,
  zones: null,
};
const pounds = (sizes: string, change: Partial<DimensionalRule> = {}) => {
  const { weight } = dimensionalWeight(sized(sizes), { ...rule, ...change });
  return weight === null ? null : ratioNumber(weight);
};

describe("dimensional weight", () => {
  it("does not count at the floor, and counts just over it", () => {
    expect(pounds("12 x 12 x 12 in")).toBeNull();
    expect(pounds("12.001 x 12 x 12 in")).toBe(14);
    expect(pounds("12 x 12 x 12 in", { floor: null })).toBe(13);
  });

  it("does not go up from a whole quotient", () => {
    expect(pounds("139 x 10 x 10 in")).toBe(100);
  });

  it("stops at the most that a service bills by size", () => {
    expect(pounds("139 x 10 x 10 in", { atMost: exact("70") })).toBe(70);
    expect(pounds("12 x 12 x 20 in", { atMost: exact("70") })).toBe(21);
  });

  it("takes only what is no box by its factor, and only where there is one", () => {
    const tube = sized("20 x 14 x 14 in", "other");
    expect(ratioNumber(dimensionalWeight(tube, rule).volume)).toBe(3077.2);
    expect(ratioNumber(dimensionalWeight(tube, { ...rule, shapeFactor: null }).volume)).toBe(3920);
  });

  it("is the product over the divisor where nothing is rounded", () => {
    const side = fc.integer({ min: 10_000, max: 2_000_000 });
    fc.assert(
      fc.property(side, side, side, (a, b, c) => {
        const size = parcelSize([a, b, c].map(micrometres), null, "box");
        const plain = {
          ...rule,
          lengthUnit: "cm",
          massUnit: "kg",
          divisor: exact("5000"),
          floor: null,
        } as const;
        const { weight } = dimensionalWeight(size, {
          ...plain,
          sides: { kind: "none" },
          result: { kind: "none" },
        });
        const kilograms = (a * b * c) / 1e12 / 5000;
        expect(ratioNumber(weight ?? ratio(0n))).toBeCloseTo(kilograms, 9);
      }),
    );
  });

  it("never falls when a side grows", () => {
    const side = fc.integer({ min: 10_000, max: 2_000_000 });
    fc.assert(
      fc.property(side, side, side, side, (a, b, c, more) => {
        const weightOf = (um: number[]) =>
          ratioNumber(
            dimensionalWeight(parcelSize(um.map(micrometres), null, "box"), rule).weight ?? ratio(0n),
          );
        expect(weightOf([a + more, b, c])).toBeGreaterThanOrEqual(weightOf([a, b, c]));
      }),
    );
  });
});

describe("the steps to a dimensional weight", () => {
  it("go from the sizes as typed to the weight", () => {
    expect(dimensionalLines(sized("12.2 x 12 x 12 in"), rule)).toEqual([
      { label: "Outside sizes", value: "12.2 x 12 x 12 in", note: "At the widest." },
      { label: "Rounded", value: "13 × 12 × 12 in", note: "Each side up to a whole in." },
      { label: "Volume", value: "1,872 in³", note: null },
      { label: "Size counts", value: "yes", note: "It takes more than 1,728 in³." },
      {
        label: "Dimensional weight",
        value: "14 lb",
        note: "Volume ÷ 139 in³ for each lb = about 13.468, up to a whole lb.",
      },
    ]);
  });

  it("end at the floor where it is not passed, and tell the factor of what is no box", () => {
    const lines = dimensionalLines(sized("14 x 13 x 12 in", "other"), rule);
    expect(lines.slice(2)).toEqual([
      { label: "Volume", value: "1,714.44 in³", note: "The box round it × 0.785, as it is no box." },
      { label: "Size counts", value: "no", note: "It does not take more than 1,728 in³." },
    ]);
  });

  it("show stored sizes in the rule's unit, and the most that is billed", () => {
    const size = parcelSize([304_800, 304_800, 5_080_000].map(micrometres), null, "box");
    const lines = dimensionalLines(size, { ...rule, floor: null, atMost: exact("70") });
    expect(lines[0]?.value).toBe("12 × 12 × 200 in");
    expect(lines.at(-1)).toEqual({
      label: "Dimensional weight",
      value: "70 lb",
      note: "Volume ÷ 139 in³ for each lb = about 207.194, up to a whole lb, at most 70 lb.",
    });
  });
});
