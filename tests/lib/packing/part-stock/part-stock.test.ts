import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { misread, sumOfParts } from "#lib/packing/part-stock/part-stock";
import { amount } from "#lib/units/amount";

describe("misread", () => {
  const twice = (reading: number) => amount(2 * reading);

  it("gives the amounts at both ends of the error", () => {
    const part = misread({ reading: 100, error: 5, least: 0, most: 200 }, twice);
    expect(part).toEqual({ amount: 200, low: 190, high: 210 });
  });

  it("stays within what can be read", () => {
    const part = misread({ reading: 100, error: 50, least: 80, most: 120 }, twice);
    expect(part).toEqual({ amount: 200, low: 160, high: 240 });
  });

  it("refuses an error below zero", () => {
    expect(() => misread({ reading: 1, error: -1, least: 0, most: 2 }, twice)).toThrow(RangeError);
  });
});

describe("sumOfParts", () => {
  it("adds amounts and both ends, and is nothing for no parts", () => {
    const part = fc.tuple(fc.nat(1e6), fc.nat(1e6), fc.nat(1e6));
    fc.assert(
      fc.property(fc.array(part, { maxLength: 6 }), (list) => {
        const parts = list.map(([low, up, more]) => ({
          low: amount(low),
          amount: amount(low + up),
          high: amount(low + up + more),
        }));
        const sum = sumOfParts(parts);
        expect(sum.amount).toBe(list.reduce((total, [low, up]) => total + low + up, 0));
        expect(sum.low <= sum.amount && sum.amount <= sum.high).toBe(true);
      }),
    );
  });
});
