import { describe, expect, it } from "vitest";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenesses, type PastDelivery } from "#lib/replenishment/lead-time/past-delivery";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const of = (orderedOn: string, receivedOn: string | null, share = 1): PastDelivery => ({
  orderedOn: day(orderedOn),
  receivedOn: receivedOn === null ? null : day(receivedOn),
  share,
});
const late = (...deliveries: PastDelivery[]) =>
  latenesses(deliveries, plainTerms(9), today).map(({ days, share, isOpen }) => [days, share, isOpen]);

describe("how late deliveries were", () => {
  it("counts from the promised day, early ones below 0, the oldest order first", () => {
    expect(late(of("2026-11-02", "2026-11-13"), of("2026-10-01", "2026-10-08"))).toEqual([
      [-2, 1, false],
      [2, 1, false],
    ]);
  });

  it("counts each part of an order by its share", () => {
    expect(late(of("2026-11-02", "2026-11-11", 0.75), of("2026-11-02", "2026-11-16", 0.25))).toEqual([
      [0, 0.75, false],
      [5, 0.25, false],
    ]);
  });

  it("counts what is overdue as a day later than today, what is not due not at all", () => {
    expect(late(of("2026-11-10", null), of("2026-11-16", null), of("2026-11-20", null))).toEqual([
      [7, 1, true],
    ]);
  });

  it("does not look past today", () => {
    expect(late(of("2026-11-10", "2026-11-28"), of("2026-11-26", "2026-11-27"))).toEqual([[7, 1, true]]);
  });
});
