import { describe, expect, it } from "vitest";
import { protectionErrors } from "#lib/forecast/protection-error";

const simple2 = { kind: "simple", window: 2 } as const;

describe("errors of the forecast of a sum", () => {
  it("a last part week counts in proportion: 10 × 1.5 − (20 + 30 / 2)", () => {
    const values = [10, 10, 20, 30];
    expect(protectionErrors({ values, method: simple2, horizonWeeks: 1.5, firstOrigin: 2 })).toEqual([-20]);
  });

  it("gives one error for each start with the whole interval behind it", () => {
    const values = [10, 10, 20, 30, 20, 10];
    const errors = protectionErrors({ values, method: simple2, horizonWeeks: 2, firstOrigin: 2 });
    expect(errors).toEqual([20 - 50, 30 - 50, 50 - 30]);
  });

  it("gives none when the history is too short", () => {
    expect(protectionErrors({ values: [1, 2, 3], method: simple2, horizonWeeks: 2, firstOrigin: 2 })).toEqual(
      [],
    );
  });

  it("works for an interval of less than a week", () => {
    const errors = protectionErrors({
      values: [7, 7, 14],
      method: simple2,
      horizonWeeks: 0.5,
      firstOrigin: 2,
    });
    expect(errors).toEqual([-3.5]);
  });

  it("refuses an empty interval and a start before the window", () => {
    expect(() =>
      protectionErrors({ values: [1, 2], method: simple2, horizonWeeks: 0, firstOrigin: 2 }),
    ).toThrow(RangeError);
    expect(() =>
      protectionErrors({ values: [1, 2], method: simple2, horizonWeeks: 1, firstOrigin: 1 }),
    ).toThrow(RangeError);
  });
});
