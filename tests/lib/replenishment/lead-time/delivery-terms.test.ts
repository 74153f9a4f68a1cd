import { describe, expect, it } from "vitest";
import { type DeliveryTerms, plainTerms, promisedDay } from "#lib/replenishment/lead-time/delivery-terms";
import { day } from "#lib/units/day";

const wednesday = day("2026-11-25");
const promised = (changes: Partial<DeliveryTerms>, orderedOn = wednesday) =>
  promisedDay(orderedOn, { ...plainTerms(3), ...changes });
const closed = [{ fromDay: day("2026-12-24"), toDay: day("2027-01-03") }];

describe("the promised day", () => {
  it("is so many days after the order", () => {
    expect(promised({ promisedDays: 9 })).toBe("2026-12-04");
    expect(promised({ promisedDays: 0 })).toBe(wednesday);
  });

  it("counts working days from Monday to Friday: Thursday, Friday, Monday", () => {
    expect(promised({ inWorkingDays: true })).toBe("2026-11-30");
    // From a Saturday the first is Monday.
    expect(promised({ inWorkingDays: true, promisedDays: 1 }, day("2026-11-28"))).toBe("2026-11-30");
  });

  it("begins on the next day on which the supplier takes orders", () => {
    expect(promised({ orderDays: [2] })).toBe("2026-12-04");
    expect(promised({ orderDays: [2] }, day("2026-12-01"))).toBe("2026-12-04");
    expect(() => promised({ orderDays: [] })).toThrow(RangeError);
  });

  it("waits for the supplier to open, and counts no working day while it is closed", () => {
    expect(promised({ closed }, day("2026-12-26"))).toBe("2027-01-07");
    // Wed 23 Dec + 3 working days: Mon 4, Tue 5, Wed 6 Jan.
    expect(promised({ closed, inWorkingDays: true }, day("2026-12-23"))).toBe("2027-01-06");
    // A delivery that left before goes on.
    expect(promised({ closed }, day("2026-12-23"))).toBe("2026-12-26");
  });

  it("takes longer in the peak, over the year's end too", () => {
    const peak = { from: "10-15", to: "12-20", extraDays: 5 };
    expect(promised({ peak })).toBe("2026-12-03");
    expect(promised({ peak }, day("2026-12-21"))).toBe("2026-12-24");
    const winter = { from: "11-20", to: "01-10", extraDays: 2 };
    expect(promised({ peak: winter }, day("2027-01-10"))).toBe("2027-01-15");
    expect(promised({ peak: winter }, day("2027-01-11"))).toBe("2027-01-14");
  });
});
