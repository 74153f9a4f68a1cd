import { describe, expect, it } from "vitest";
import { checkAction } from "#lib/replenishment/check-action";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const actionFor = (orderBy: string | null, without: string | null = orderBy) =>
  checkAction({
    today,
    reviewDays: 7,
    orderByDate: orderBy === null ? null : day(orderBy),
    orderByWithoutArrivals: without === null ? null : day(without),
  });

describe("action", () => {
  it.each([
    ["2026-11-25", "order-today"],
    ["2026-11-26", "order-this-week"],
    ["2026-12-01", "order-this-week"],
    ["2026-12-02", "order-later"],
    ["2026-12-30", "order-later"],
    ["2026-12-31", "enough"],
    [null, "enough"],
  ])("an order due by %s is %s", (orderBy, action) => {
    expect(actionFor(orderBy)).toBe(action);
  });

  it("is on-its-way where only what is on order puts the order off", () => {
    expect(actionFor("2026-12-30", "2026-12-01")).toBe("on-its-way");
    expect(actionFor("2027-05-30", "2026-11-25")).toBe("on-its-way");
    expect(actionFor("2026-11-27", "2026-11-25")).toBe("order-this-week");
  });
});
