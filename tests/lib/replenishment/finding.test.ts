import { describe, expect, it } from "vitest";
import type { CheckAction } from "#lib/replenishment/check-row";
import { finding } from "#lib/replenishment/finding";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const row = (supply: string, action: CheckAction, orderBy: string | null = null, due: string[] = []) => ({
  supply,
  action,
  orderByDate: orderBy === null ? null : day(orderBy),
  arrivals: due.map((on) => ({ amount: amount(12_000), expectedOn: day(on) })),
});
const carton = row("Carton 12 × 9 × 8", "order-today", "2026-11-25");
const bubble = row("small bubble", "order-this-week", "2026-11-27");
const tape = row("Carton tape", "order-later", "2026-12-17");
const tissue = row("Tissue", "enough", "2027-02-01");

describe("finding", () => {
  it("names one for today and one by its weekday", () => {
    expect(finding([carton, bubble, tape], today)).toBe(
      "Order Carton 12 × 9 × 8 today and small bubble by Friday; the rest can wait.",
    );
  });

  it("names the only one", () => {
    expect(finding([carton], today)).toBe("Order Carton 12 × 9 × 8 today.");
    expect(finding([bubble, tissue], today)).toBe("Order small bubble by Friday; the rest can wait.");
  });

  it("counts many, all by the first of their days", () => {
    const later = row("Paper", "order-this-week", "2026-11-30");
    expect(finding([carton, carton, carton, bubble, later, tape], today)).toBe(
      "Order 3 supplies today and small bubble and Paper by Friday; the rest can wait.",
    );
  });

  it("stays within 90 characters with long names", () => {
    const long = row("Recycled packing paper, white, 24 × 36, unprinted", "order-today", "2026-11-25");
    const text = finding([long, long, bubble, bubble, bubble, tape], today);
    expect(text).toBe("Order 2 supplies today and 3 more by Friday; the rest can wait.");
    expect(text.length).toBeLessThanOrEqual(90);
  });

  it("does not say that what is not counted can wait", () => {
    const uncounted = row("Tissue", "count");
    expect(finding([carton, uncounted], today)).toBe(
      "Order Carton 12 × 9 × 8 today; count one more to be sure.",
    );
    expect(finding([uncounted, tape], today)).toBe(
      "Nothing known must be ordered this week; count one supply to be sure.",
    );
    expect(finding([uncounted, uncounted], today)).toBe("Count the shelf first: no supply has a date yet.");
  });

  it("says when nothing is to be ordered, and what comes next", () => {
    expect(finding([tape, tissue], today)).toBe(
      "Nothing to order this week; next is Carton tape by Thu 17 Dec.",
    );
    expect(finding([tissue], today)).toBe("Nothing to order this week.");
  });

  it("says what is missing for an answer", () => {
    const unused = row("Tissue", "no-use");
    expect(finding([], today)).toBe("No supplies yet: copy the recipes of what you sell, theirs come along.");
    expect(finding([unused], today)).toBe(
      "No use is recorded: the next parcels will say how long the shelf lasts.",
    );
    expect(finding([unused, row("Paper", "count")], today)).toBe(
      "Record parcels to see how long the shelf lasts, and count one more.",
    );
  });

  it("asks after what was due and has not come, not after what is due today or later", () => {
    const lateTape = row("Carton tape", "on-its-way", null, ["2026-11-20"]);
    const onTime = row("Tissue", "on-its-way", null, ["2026-11-25", "2026-12-01"]);
    const lateLong = row("Recycled packing paper, white, 24 × 36, unprinted", "on-its-way", null, [
      "2026-11-20",
    ]);
    expect(finding([lateTape, onTime, tape], today)).toBe(
      "Nothing to order this week; ask where Carton tape is, due 20 Nov.",
    );
    expect(finding([onTime, tape], today)).toBe(
      "Nothing to order this week; next is Carton tape by Thu 17 Dec.",
    );
    expect(finding([lateTape, lateTape, tissue], today)).toBe(
      "Nothing to order this week; ask after 2 late deliveries.",
    );
    expect(finding([lateLong, tissue], today)).toBe("Nothing to order this week; ask after a late delivery.");
    expect(finding([carton, lateTape], today)).toBe(
      "Order Carton 12 × 9 × 8 today; ask after a late delivery.",
    );
    expect(finding([carton, lateTape, row("Tissue", "count")], today)).toBe(
      "Order Carton 12 × 9 × 8 today; count one more and ask after a late delivery.",
    );
    expect(finding([lateTape, row("Tissue", "count")], today)).toBe(
      "Nothing known must be ordered this week; count one supply and ask after a late delivery.",
    );
  });
});
