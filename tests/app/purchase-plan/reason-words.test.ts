import { describe, expect, it } from "vitest";
import { reasonWords } from "#app/purchase-plan/reason-words.ts";
import type { PlanReason } from "#lib/purchasing/plan/plan-reasons";
import { day } from "#lib/units/day";

const frame = {
  today: day("2026-11-25"),
  row: { action: "order-this-week", orderByDate: day("2026-11-27") },
  inMoney: (minor: number) => `$${(minor / 100).toFixed(2)}`,
  nameOf: (id: string) => (id === "large" ? "Large bubble" : id),
} as const;
const needed: PlanReason = { kind: "needed", belowWantedWeek: 0, belowNothingWeek: 2 };

describe("why a line is in the plan", () => {
  it("says by when what is needed must be ordered", () => {
    expect(reasonWords([needed], frame)).toBe("needed: order by Fri 27 Nov");
    const today = { action: "order-today", orderByDate: day("2026-11-25") } as const;
    expect(reasonWords([needed], { ...frame, row: today })).toBe("needed: order today");
    expect(reasonWords([needed], { ...frame, row: undefined })).toBe(
      "needed before the next check can order it",
    );
  });

  it("says what rides along, what for and when it would be due", () => {
    expect(
      reasonWords(
        [
          { kind: "free-delivery", fromMinor: 9000, savesMinor: 895 },
          { kind: "shares-delivery", neededWeek: 3 },
        ],
        frame,
      ),
    ).toBe("rides along for free delivery, which saves $8.95; due by itself in the week from 16 Dec");
    expect(reasonWords([{ kind: "shares-delivery", neededWeek: 1 }], frame)).toBe(
      "rides along; due by itself in the week from 2 Dec",
    );
  });

  it("says why there is more of what is needed", () => {
    expect(reasonWords([needed, { kind: "price-step", fromPacks: 3, priceMinor: 2450 }], frame)).toBe(
      "needed: order by Fri 27 Nov; more of it for the price from 3 packs on, $24.50 a pack",
    );
  });

  it("has words for every reason", () => {
    const reasons: PlanReason[] = [
      { kind: "least-order", leastMinor: 5000 },
      { kind: "substitute", forSupplyId: "large" },
      { kind: "worth-keeping" },
    ];
    expect(reasons.map((reason) => reasonWords([reason], frame))).toEqual([
      "rides along for the $50.00 that the supplier asks for at least",
      "rides along to stand in for Large bubble",
      "rides along as it is cheap now and used later",
    ]);
  });
});
