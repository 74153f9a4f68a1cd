import { describe, expect, it } from "vitest";
import { arrivalBy, arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { day } from "#lib/units/day";
import { onTime } from "../on-time";

const today = day("2026-11-25");
const promise = {
  terms: plainTerms(10),
  belief: latenessBelief([], { promisedDays: 10, orderedOn: today }),
};

describe("when an order may come", () => {
  it("is the promised day or later, by how late deliveries may be", () => {
    expect(arrivalChances(today, promise, [])).toEqual([
      { day: "2026-12-05", chance: 0.65 },
      { day: "2026-12-07", chance: 0.2 },
      { day: "2026-12-09", chance: 0.1 },
      { day: "2026-12-11", chance: 0.05 },
    ]);
  });

  it("waits for the shop to open, where several days become one", () => {
    const closed = [{ fromDay: day("2026-12-05"), toDay: day("2026-12-08") }];
    expect(arrivalChances(today, promise, closed).map(({ day: on }) => on)).toEqual([
      "2026-12-09",
      "2026-12-11",
    ]);
  });

  it("is never before the order, however early deliveries come", () => {
    const early = { ...onTime(1), belief: { ...promise.belief, chances: [{ daysLate: -4, chance: 1 }] } };
    expect(arrivalChances(today, early, [])).toEqual([{ day: today, chance: 1 }]);
  });

  it("is as a rule the day by which half have come, and nearly surely a later one", () => {
    const arrivals = arrivalChances(today, promise, []);
    expect(usualArrival(arrivals)).toBe("2026-12-05");
    expect(arrivalBy(arrivals, 0.9)).toBe("2026-12-09");
    expect(arrivalBy(arrivals, 0.95)).toBe("2026-12-09");
    expect(arrivalBy(arrivals, 1)).toBe("2026-12-11");
    expect(() => usualArrival([])).toThrow(RangeError);
  });
});
