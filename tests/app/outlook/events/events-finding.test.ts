import { describe, expect, it } from "vitest";
import { eventsFinding } from "#app/outlook/events/events-finding.ts";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { day } from "#lib/units/day";

const market: PlannedEvent = {
  id: "market",
  name: "Christmas market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-14"),
  upliftPercent: 50,
  itemTypeIds: [],
};
const fair = { ...market, id: "fair", name: "Fair", fromDay: day("2027-02-01"), toDay: day("2027-02-02") };

describe("the finding of planned events", () => {
  it("says what begins next and how many more are planned", () => {
    expect(eventsFinding([market], day("2026-11-25"))).toBe("Christmas market begins on Tue 1 Dec.");
    expect(eventsFinding([market, fair], day("2026-11-25"))).toBe(
      "Christmas market begins on Tue 1 Dec; one more event is planned.",
    );
  });

  it("says what is on, from its first to its last day", () => {
    for (const today of ["2026-12-01", "2026-12-14"]) {
      expect(eventsFinding([market], day(today))).toBe("Christmas market is on until Mon 14 Dec.");
    }
  });

  it("says the year where it is another one", () => {
    expect(eventsFinding([market, fair], day("2026-12-15"))).toBe("Fair begins on Mon 1 Feb 2027.");
  });

  it("says that nothing is planned, or that all is over", () => {
    expect(eventsFinding([], day("2026-11-25"))).toMatch(/^No event is planned/);
    expect(eventsFinding([market], day("2026-12-15"))).toMatch(/^No event is ahead/);
  });
});
