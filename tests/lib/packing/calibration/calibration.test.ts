import { describe, expect, it } from "vitest";
import { calibration } from "#lib/packing/calibration/calibration";

const span = { least: 0.4, most: 2.5 };

describe("calibration", () => {
  it("takes over what is likely, and says what it replaces", () => {
    expect(calibration(1800, 1500, span)).toEqual({
      kind: "plausible",
      value: 1800,
      replaces: 1500,
      ratio: 1.2,
      span,
    });
  });

  it("doubts six times the usual, and a tenth of it, and gives the ratio", () => {
    expect(calibration(9000, 1500, span)).toMatchObject({ kind: "doubtful", ratio: 6 });
    expect(calibration(150, 1500, span)).toMatchObject({ kind: "doubtful", ratio: 0.1 });
  });

  it("takes the ends of the span as likely", () => {
    expect([calibration(4, 10, span).kind, calibration(25, 10, span).kind]).toEqual([
      "plausible",
      "plausible",
    ]);
  });

  it("refuses nothing, and a span without 1", () => {
    expect(() => calibration(0, 1, span)).toThrow(RangeError);
    expect(() => calibration(1, 1, { least: 2, most: 3 })).toThrow(RangeError);
  });
});
