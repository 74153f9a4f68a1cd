import { describe, expect, it } from "vitest";
import { leadTimeFinding, leadTimeRows } from "#app/buying/lead-time-rows.ts";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { day } from "#lib/units/day";
import type { DeliveryRecord } from "#prisma/records/supplier-deliveries";
import type { Supplier } from "#prisma/records/suppliers";

const today = day("2026-11-25");
const supplier = { id: "marram", name: "Marram Supply" } as Supplier;
const rowsOf = (days: readonly (readonly [number, number])[]) => {
  const late = days.map(([each, share]) => ({
    orderedOn: day("2026-10-01"),
    days: each,
    share,
    isOpen: false,
  }));
  const terms = plainTerms(10);
  const belief = latenessBelief(late, { promisedDays: 10, orderedOn: today });
  const record: DeliveryRecord = { terms, belief, late };
  return leadTimeRows([supplier], new Map([["marram", record]]), today);
};

describe("how long suppliers really take", () => {
  it("is a guess from the promise before the first delivery", () => {
    const rows = rowsOf([]);
    expect(rows[0]).toMatchObject({
      promised: "10 days",
      early: 0,
      onDay: 0,
      late: 0,
      mostLate: null,
      usualDays: 10,
      surelyDays: 14,
    });
    expect(leadTimeFinding(rows)).toBe("How long suppliers really take shows with the first delivery");
  });

  it("counts orders by how they came, parts as parts, and reckons with them", () => {
    const rows = rowsOf([
      [-1, 1],
      [0, 0.5],
      [4, 0.5],
      [4, 1],
      [4, 1],
      [4, 1],
      [6, 1],
      [4, 1],
    ]);
    expect(rows[0]).toMatchObject({ early: 1, onDay: 0.5, late: 5.5, mostLate: 6 });
    expect(rows[0]?.usualDays).toBeGreaterThan(10);
    expect(leadTimeFinding(rows)).toBe("Marram Supply mostly comes later than promised");
  });

  it("says that deliveries mostly come when promised", () => {
    expect(
      leadTimeFinding(
        rowsOf([
          [0, 1],
          [0, 1],
          [2, 1],
        ]),
      ),
    ).toBe("Deliveries mostly come when they were promised");
  });
});
