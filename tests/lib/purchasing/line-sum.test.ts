import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linePackPrice, lineSum } from "#lib/purchasing/line-sum";
import { packsPrice } from "#lib/replenishment/pack-price";

const steps = {
  priceMinor: 500,
  breaks: [
    { fromPacks: 10, priceMinor: 400 },
    { fromPacks: 4, priceMinor: 450 },
  ],
};

describe("price of packs together", () => {
  it("takes the price reached for all packs, or for the packs from there on", () => {
    // By hand: 12 packs at 400; or 3 at 500, 6 at 450 and 3 at 400.
    expect(packsPrice({ ...steps, breakKind: "all-units" }, 12)).toBe(4_800);
    expect(packsPrice({ ...steps, breakKind: "incremental" }, 12)).toBe(5_400);
    expect(packsPrice({ ...steps, breakKind: "incremental" }, 3)).toBe(1_500);
    expect(packsPrice({ ...steps, breakKind: "incremental" }, 4)).toBe(1_950);
    expect(packsPrice(steps, 0)).toBe(0);
  });

  it("is not known where a price that it needs is not", () => {
    const unknown = { ...steps, priceMinor: null };
    expect(packsPrice({ ...unknown, breakKind: "incremental" }, 5)).toBeNull();
    expect(packsPrice({ ...unknown, breakKind: "all-units" }, 5)).toBe(2_250);
    expect(packsPrice({ ...unknown, breakKind: "all-units" }, 2)).toBeNull();
  });

  it("refuses packs that are not whole from 0", () => {
    expect(() => packsPrice(steps, -1)).toThrow(RangeError);
    expect(() => packsPrice(steps, 1.5)).toThrow(RangeError);
  });

  it("never falls with one pack more when the steps are for the packs from there on", () => {
    fc.assert(
      fc.property(fc.nat(200), (packs) => {
        const prices = { ...steps, breakKind: "incremental" as const };
        expect(packsPrice(prices, packs + 1) ?? 0).toBeGreaterThan(packsPrice(prices, packs) ?? 0);
      }),
    );
  });
});

describe("sum of an order line", () => {
  it("is packs times price, and the offer's own sum where the price is its rounded mean", () => {
    const prices = { ...steps, breakKind: "incremental" as const };
    const price = linePackPrice(prices, 7); // 3300 / 7 = 471.43
    expect(price).toBe(471);
    expect(lineSum({ packs: 7, priceMinor: price }, prices)).toBe(3_300);
    expect(lineSum({ packs: 7, priceMinor: price }, null)).toBe(3_297);
    expect(lineSum({ packs: 7, priceMinor: 480 }, prices)).toBe(3_360);
    expect(lineSum({ packs: 7, priceMinor: null }, prices)).toBeNull();
  });
});
