import { describe, expect, it } from "vitest";
import { weighedUnit } from "#lib/packing/calibration/weighed-unit";

describe("weighedUnit", () => {
  it("is a tenth of ten pieces without the tray", () => {
    const weighed = weighedUnit({ grossMg: 62_000, trayMg: 12_000, units: 10 }, 4645);
    expect(weighed).toMatchObject({ kind: "plausible", value: 5000, replaces: 4645 });
  });

  it("doubts ten pieces weighed as one", () => {
    const weighed = weighedUnit({ grossMg: 46_450, trayMg: 0, units: 1 }, 4645);
    expect(weighed).toMatchObject({ kind: "doubtful", ratio: 10 });
  });

  it("refuses a scale that shows only the tray", () => {
    expect(() => weighedUnit({ grossMg: 12_000, trayMg: 12_000, units: 10 }, 4645)).toThrow(RangeError);
  });
});
