import { describe, expect, it } from "vitest";
import { leadTimeAt, leadTimesOn, usualLeadTime } from "#lib/replenishment/simulation/lead-time-at";
import type { ShopSupplier } from "#lib/replenishment/simulation/shop-setting";

const leadTimes = [
  { days: 3, chance: 0.45 },
  { days: 4, chance: 0.35 },
  { days: 9, chance: 0.2 },
];
const supplier = (given: ShopSupplier["leadTimes"]): ShopSupplier => ({
  supplierId: "s",
  leadTimes: given,
  delivery: { charge: 0, freeFrom: null },
  leastValue: null,
});

describe("lead times of a day", () => {
  it("come the shorter first", () => {
    expect(leadTimesOn(supplier(leadTimes.toReversed()), 0)).toEqual(leadTimes);
  });

  it("may depend on the day", () => {
    const friday = supplier((day) => [{ days: day === 4 ? 5 : 3, chance: 1 }]);
    expect([3, 4].map((day) => leadTimesOn(friday, day)[0]?.days)).toEqual([3, 5]);
  });

  it("are whole days with chances of 1 together", () => {
    expect(() => leadTimesOn(supplier(leadTimes.slice(1)), 0)).toThrow(/of s .* got 0.55/);
    expect(() => leadTimesOn(supplier([{ days: 1.5, chance: 1 }]), 0)).toThrow(/whole days/);
    expect(() =>
      leadTimesOn(
        supplier(() => []),
        0,
      ),
    ).toThrow(/got 0/);
  });
});

describe("a drawn lead time", () => {
  it("is the shortest at the smallest chances", () => {
    const drawn = [0, 0.44, 0.46, 0.79, 0.81, 0.999].map((chance) => leadTimeAt(leadTimes, chance));
    expect(drawn).toEqual([3, 3, 4, 4, 9, 9]);
  });

  it("is the longest where chances add up to a little less than 1", () => {
    const thirds = [1, 2, 3].map((days) => ({ days, chance: 0.333333333 }));
    expect(leadTimeAt(thirds, 0.9999999999)).toBe(3);
    expect(() => leadTimeAt([], 0.5)).toThrow(/got none/);
  });

  it("is reckoned with as the day by which half the orders have come", () => {
    expect(usualLeadTime(leadTimes)).toBe(4);
    expect(
      usualLeadTime([
        { days: 2, chance: 0.5 },
        { days: 6, chance: 0.5 },
      ]),
    ).toBe(2);
  });
});
