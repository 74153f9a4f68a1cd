import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { receivedCost, stockValue } from "#lib/replenishment/stock-value";

describe("stock value", () => {
  it("rounds half to even", () => {
    expect(stockValue(6000n, { value: 15n, amount: 12_000n })).toBe(8n);
    expect(stockValue(6000n, { value: 17n, amount: 12_000n })).toBe(8n);
    expect(stockValue(-6000n, { value: 15n, amount: 12_000n })).toBe(-8n);
  });

  it("is unknown where no cost is known", () => {
    expect(stockValue(6000n, { value: 0n, amount: 0n })).toBeNull();
  });

  it("refuses a negative cost amount", () => {
    expect(() => stockValue(1n, { value: 1n, amount: -1n })).toThrow(RangeError);
  });

  it("is odd: what goes out at a cost comes back at the same", () => {
    fc.assert(
      fc.property(
        fc.bigInt(-(10n ** 12n), 10n ** 12n),
        fc.bigInt(1n, 10n ** 9n),
        fc.bigInt(1n, 10n ** 9n),
        (amount, value, per) => {
          expect(stockValue(-amount, { value, amount: per })).toBe(
            -(stockValue(amount, { value, amount: per }) ?? 0n),
          );
        },
      ),
    );
  });
});

describe("received cost", () => {
  it("is the weighted average of old and new", () => {
    // Moving weighted average cost, the perpetual weighted-average formula of IAS 2 paragraph 27 (from memory).
    const after = receivedCost({ amount: 10n, value: 100n, cost: { value: 10n, amount: 1n } }, 10n, 200n);
    expect(after).toEqual({ cost: { value: 300n, amount: 20n }, difference: 0n });
  });

  it("puts what was used below zero right to the new price", () => {
    const after = receivedCost({ amount: -5n, value: -50n, cost: { value: 10n, amount: 1n } }, 100n, 1200n);
    expect(after).toEqual({ cost: { value: 1200n, amount: 100n }, difference: -10n });
  });

  it("values stock counted before any price at the first price", () => {
    const after = receivedCost({ amount: 20n, value: 0n, cost: { value: 0n, amount: 0n } }, 10n, 70n);
    expect(after).toEqual({ cost: { value: 70n, amount: 10n }, difference: 140n });
  });

  it("refuses an empty receipt", () => {
    expect(() => receivedCost({ amount: 0n, value: 0n, cost: { value: 0n, amount: 0n } }, 0n, 0n)).toThrow(
      RangeError,
    );
  });
});
