import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  costValue,
  formatMoney,
  minorOfCost,
  minorUnits,
  parseMoney,
  roundHalfEven,
  roundHalfUp,
  splitMinor,
} from "#lib/units/money";

describe("rounding rules", () => {
  it("take a half to the even neighbour", () => {
    expect([2.5, 3.5, -2.5, -3.5, 2.4, 2.6].map(roundHalfEven)).toEqual([2, 4, -2, -4, 2, 3]);
  });

  it("take a half away from zero", () => {
    expect([2.5, 3.5, -2.5, 2.4].map(roundHalfUp)).toEqual([3, 4, -3, 2]);
  });
});

describe("minorOfCost", () => {
  it("rounds by the rule that it is given", () => {
    expect([
      minorOfCost(costValue(25000), roundHalfEven),
      minorOfCost(costValue(25000), roundHalfUp),
    ]).toEqual([2, 3]);
  });

  it("refuses a cost that is not whole", () => {
    expect(() => costValue(0.5)).toThrow("costValue requires a safe integer, got 0.5");
  });

  it("refuses money that is not whole", () => {
    expect(() => minorUnits(0.5)).toThrow("minorUnits requires a safe integer, got 0.5");
  });
});

describe("splitMinor", () => {
  it("gives the odd cent to the first of equal parts", () => {
    expect(splitMinor(100, [1, 1, 1])).toEqual([34, 33, 33]);
  });

  it("gives what is left to the largest remainders", () => {
    expect(splitMinor(10, [5, 3, 1])).toEqual([6, 3, 1]);
  });

  it("splits money back like money out", () => {
    expect(splitMinor(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
  });

  it.each([[[]], [[0, 0]], [[-1, 2]], [[Number.NaN]], [[Number.POSITIVE_INFINITY, 1]]])(
    "refuses the weights %j",
    (refused) => {
      expect(() => splitMinor(100, refused)).toThrow(RangeError);
    },
  );

  it("refuses a total that is not whole", () => {
    expect(() => splitMinor(0.5, [1])).toThrow("splitMinor requires a safe integer, got 0.5");
  });

  const total = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
  const weight = fc.oneof(fc.nat(1_000_000), fc.double({ min: 0, max: 1e6, noNaN: true }));
  const weights = fc
    .array(weight, { minLength: 1, maxLength: 20 })
    .filter((list) => list.some((each) => each > 0));

  it("sums to the whole", () => {
    fc.assert(
      fc.property(total, weights, (whole, list) => {
        expect(splitMinor(whole, list).reduce((sum, part) => sum + part, 0)).toBe(whole);
      }),
    );
  });

  it("keeps each part within one minor unit of its share", () => {
    fc.assert(
      fc.property(
        total,
        fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 1, maxLength: 20 }),
        (whole, list) => {
          const sum = list.reduce((all, each) => all + each, 0);
          const off = splitMinor(whole, list).map((part, index) => part - (whole * (list[index] ?? 0)) / sum);
          expect(Math.max(...off.map(Math.abs))).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it("gives nothing to a weight of zero", () => {
    fc.assert(
      fc.property(total, weights, (whole, list) => {
        expect(splitMinor(whole, [...list, 0]).at(-1)).toBe(0);
      }),
    );
  });
});

describe("formatMoney", () => {
  it("shows cents with the currency's sign", () => {
    expect(formatMoney(2600, "USD", 2)).toBe("$26.00");
  });

  it("shows a currency without a smaller unit", () => {
    expect(formatMoney(2600, "JPY", 0)).toBe("¥2,600");
  });

  it("follows the locale", () => {
    expect(formatMoney(123456, "EUR", 2, "de-DE").replace(/\s/u, " ")).toBe("1.234,56 €");
  });
});

describe("parseMoney", () => {
  it("reads dollars and cents", () => {
    expect(parseMoney("$1,234.50", 2)).toEqual({ kind: "money", minor: 123450 });
  });

  it.each([
    ["26", 2600],
    ["26.5", 2650],
    ["26,50 €", 2650],
    ["1,000", 100_000],
    ["1.234,56 EUR", 123_456],
    ["1 000,50", 100_050],
    [".5", 50],
    ["CAD 12", 1200],
    ["CA$12", 1200],
    ["12.", 1200],
    ["0", 0],
  ])("reads %s", (text, minor) => {
    expect(parseMoney(text, 2)).toEqual({ kind: "money", minor });
  });

  it.each(["", "$", "free", "-3", "26.505", "1,00,000", "1.2.3", "12 34", "99999999999999999999"])(
    "does not read %j",
    (text) => {
      expect(parseMoney(text, 2)).toEqual({ kind: "unreadable", text });
    },
  );

  it("does not guess a comma before three digits where a currency has three", () => {
    expect([parseMoney("1,000", 3), parseMoney("1.000", 3)]).toMatchObject([
      { kind: "unreadable" },
      { minor: 1000 },
    ]);
  });

  it("reads back what formatMoney shows", () => {
    fc.assert(
      fc.property(
        fc.nat(1_000_000_000),
        fc.constantFrom("en-US", "de-DE", "fr-FR", "de-CH"),
        (minor, locale) => {
          expect(parseMoney(formatMoney(minor, "EUR", 2, locale), 2)).toEqual({ kind: "money", minor });
        },
      ),
    );
  });
});
