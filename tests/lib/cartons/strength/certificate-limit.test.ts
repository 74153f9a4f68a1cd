import { describe, expect, it } from "vitest";
import { certificateLimit } from "#lib/cartons/strength/certificate-limit";

const gross = (rating: Parameters<typeof certificateLimit>[0]) => {
  const limit = certificateLimit(rating);
  return limit.kind === "limit" ? limit.row.grossPounds : limit.reason;
};

describe("certificateLimit", () => {
  it("gives a rating between two rows the lower one", () => {
    expect(gross({ kind: "edgeCrush", wall: "single", poundsPerInch: 31.9 })).toBe(50);
    expect(gross({ kind: "edgeCrush", wall: "single", poundsPerInch: 39 })).toBe(65);
    expect(gross({ kind: "burst", wall: "double", psi: 349 })).toBe(100);
  });

  it("tells the wall: 51 lb/in is 120 lb in double wall and 95 lb in single wall", () => {
    expect(gross({ kind: "edgeCrush", wall: "double", poundsPerInch: 51 })).toBe(120);
    expect(gross({ kind: "edgeCrush", wall: "single", poundsPerInch: 51 })).toBe(95);
  });

  it("says why there is no row", () => {
    expect(gross({ kind: "unrated" })).toBe("unrated");
    expect(gross({ kind: "paperboard" })).toBe("paperboard");
    expect(gross({ kind: "burst", wall: "single", psi: 100 })).toBe("belowLowest");
  });

  it("says which pairings come from memory", () => {
    const of = (poundsPerInch: number) =>
      certificateLimit({ kind: "edgeCrush", wall: "single", poundsPerInch });
    expect(of(32)).toMatchObject({ from: "read" });
    expect(of(40)).toMatchObject({ from: "memory" });
    expect(certificateLimit({ kind: "burst", wall: "single", psi: 250 })).toMatchObject({ from: "read" });
  });

  it.each([0, -32, Number.NaN, Number.POSITIVE_INFINITY])("refuses a rating of %s", (value) => {
    expect(() => certificateLimit({ kind: "burst", wall: "single", psi: value })).toThrow(RangeError);
    expect(() => certificateLimit({ kind: "puncture", units: value })).toThrow(RangeError);
  });
});
