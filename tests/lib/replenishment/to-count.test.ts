import { describe, expect, it } from "vitest";
import type { CheckRow } from "#lib/replenishment/check-row";
import { toCount } from "#lib/replenishment/to-count";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { checkRow } from "../../app/this-week/check-row-fixture";

const today = day("2026-11-25");
const row = (supplyId: string, changes: Partial<CheckRow>) =>
  checkRow({
    supplyId,
    countedOn: day("2026-10-23"),
    reorderPoint: amountOfUnits(100),
    packsByOffer: [{ offerId: "roll", pack: "roll", packs: 1, priceMinor: 3800 }],
    ...changes,
  });

describe("what to count", () => {
  it("is first what has no figure", () => {
    const rows = [
      row("below", { action: "count", onHand: amountOfUnits(-2), position: null, bookError: null }),
      row("never", { action: "count", onHand: null, position: null, bookError: null }),
    ];
    expect(toCount(rows, today).map(({ supplyId, reason }) => [supplyId, reason])).toEqual([
      ["below", "the book is below zero"],
      ["never", "never counted"],
    ]);
  });

  it("is where the book may be off by as much as the reorder point is away: one error is 16 in 100", () => {
    const [found] = toCount(
      [row("near", { position: amountOfUnits(110), bookError: amountOfUnits(10) })],
      today,
    );
    expect(found?.chance).toBeCloseTo(0.1587, 4);
    expect(found).toMatchObject({
      supplyId: "near",
      orderMinor: 3800,
      reason: "last counted 23 Oct; in 2 of 10 cases a count would change the order",
    });
  });

  it("is not what lies far from the point, nor what was counted just now", () => {
    const rows = [
      row("far", { position: amountOfUnits(150), bookError: amountOfUnits(10) }),
      row("fresh", { position: amountOfUnits(101), bookError: amountOfUnits(0) }),
    ];
    expect(toCount(rows, today)).toEqual([]);
  });

  it("is the costlier order first where the chances are alike", () => {
    const cheap = [{ offerId: "roll", pack: "roll", packs: 1, priceMinor: 900 }];
    const rows = [
      row("cheap", { position: amountOfUnits(99), bookError: amountOfUnits(10), packsByOffer: cheap }),
      row("dear", { position: amountOfUnits(99), bookError: amountOfUnits(10) }),
    ];
    expect(toCount(rows, today).map(({ supplyId }) => supplyId)).toEqual(["dear", "cheap"]);
  });

  it("is nothing without supplies", () => {
    expect(toCount([], today)).toEqual([]);
  });
});
