import { describe, expect, it } from "vitest";
import { checkAction } from "#lib/replenishment/check-action";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const actionFor = (isDue: boolean, orderBy: string | null, isDueWithoutArrivals = isDue) =>
  checkAction({
    today,
    isDue,
    isDueWithoutArrivals,
    orderByDate: orderBy === null ? null : day(orderBy),
  });

describe("action", () => {
  it.each([
    [true, "2026-11-25", "order-today"],
    [true, "2026-11-26", "order-this-week"],
    [true, null, "order-today"],
    [false, "2026-12-02", "order-later"],
    [false, "2026-12-30", "order-later"],
    [false, "2026-12-31", "enough"],
    [false, null, "enough"],
  ])("due %s by %s is %s", (isDue, orderBy, action) => {
    expect(actionFor(isDue, orderBy)).toBe(action);
  });

  it("is on-its-way where only what is on order puts the order off", () => {
    expect(actionFor(false, "2026-12-30", true)).toBe("on-its-way");
    expect(actionFor(false, null, true)).toBe("on-its-way");
    expect(actionFor(true, "2026-11-27", true)).toBe("order-this-week");
  });
});
