import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import { usageHistory } from "#lib/forecast/usage-history";
import { weeklyUse } from "#lib/forecast/weekly-use";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const none = { kind: "none" } as const;

function historyOf(
  firstDay: string,
  use: readonly (readonly [string, number])[],
  correction: Parameters<typeof usageHistory>[0]["correction"] = none,
) {
  const first = day(firstDay);
  const useByDay = use.map(([on, parts]) => ({ day: day(on), amount: amount(parts) }));
  const calendar = closedCalendar([{ fromDay: day("2026-11-09"), toDay: day("2026-11-13") }]);
  const weeks = weeklyUse(useByDay, shopWeeks({ firstDay: first, today, weekStartsOn: 1, calendar }));
  return usageHistory({ useByDay, weeks, firstDay: first, today, correction });
}

describe("history of use", () => {
  it("starts in the week of the first use and leaves out closed weeks", () => {
    const history = historyOf("2026-10-05", [
      ["2026-10-28", 30],
      ["2026-11-10", 99],
      ["2026-11-17", 50],
    ]);
    expect(history).toEqual({ kind: "weeks", values: [30, 0, 50], recentUse: 179 });
  });

  it("applies the correction by counts to each week", () => {
    const correction = {
      kind: "corrected",
      factor: 1.5,
      differences: 2,
      differenceSum: -40,
      recordedUse: 80,
    } as const;
    expect(
      historyOf(
        "2026-10-26",
        [
          ["2026-10-28", 30],
          ["2026-11-17", 50],
        ],
        correction,
      ),
    ).toMatchObject({
      values: [45, 0, 75],
    });
  });

  it("is no-use when nothing was used in 26 weeks", () => {
    expect(historyOf("2026-01-05", [["2026-05-27", 30]])).toEqual({ kind: "no-use", recordedDays: 324 });
    expect(historyOf("2026-01-05", [["2026-05-28", 30]]).kind).toBe("weeks");
  });

  it("falls back to the first days of a shop without a full week", () => {
    expect(historyOf("2026-11-23", [["2026-11-24", 30]])).toEqual({ kind: "days", days: 3, used: 30 });
  });

  it("takes a supply first used this week over seven days in an older shop", () => {
    expect(historyOf("2026-01-05", [["2026-11-24", 30]])).toEqual({ kind: "days", days: 7, used: 30 });
  });

  it("does not take a part week for a week", () => {
    expect(historyOf("2026-11-20", [["2026-11-21", 30]])).toEqual({ kind: "days", days: 6, used: 30 });
  });

  it("without any records is no-use with no recorded days", () => {
    const question = { useByDay: [], weeks: [], firstDay: null, today, correction: none };
    expect(usageHistory(question)).toEqual({ kind: "no-use", recordedDays: 0 });
  });
});
