import { describe, expect, it } from "vitest";
import { countCorrection } from "#lib/forecast/count-correction";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const row = (on: string, parts: number) => ({ day: day(on), amount: amount(parts) });
const use = [row("2026-09-01", 600), row("2026-10-01", 400)];

describe("correction by counts", () => {
  it("what two counts found missing was used too: (1000 + 100) / 1000", () => {
    const found = countCorrection(use, [row("2026-10-01", -60), row("2026-11-01", -40)], today);
    expect(found).toEqual({
      kind: "corrected",
      factor: 1.1,
      differences: 2,
      differenceSum: -100,
      recordedUse: 1000,
    });
  });

  it("what counts found too much was booked but not used", () => {
    const found = countCorrection(use, [row("2026-10-01", 60), row("2026-11-01", 40)], today);
    expect(found).toMatchObject({ factor: 0.9 });
  });

  it("is held between a half and twice", () => {
    expect(countCorrection(use, [row("2026-10-01", -5000), row("2026-11-01", 0)], today)).toMatchObject({
      factor: 2,
    });
    expect(countCorrection(use, [row("2026-10-01", 5000), row("2026-11-01", 0)], today)).toMatchObject({
      factor: 0.5,
    });
  });

  it("needs two differences in the last 26 weeks, none of them after today", () => {
    const differences = [row("2026-05-27", -60), row("2026-11-01", -40), row("2026-11-26", -40)];
    expect(countCorrection(use, differences, today)).toEqual({ kind: "none" });
  });

  it("needs some recorded use", () => {
    expect(countCorrection([], [row("2026-10-01", -6), row("2026-11-01", -4)], today)).toEqual({
      kind: "none",
    });
  });
});
