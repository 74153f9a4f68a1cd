import { describe, expect, it } from "vitest";
import { CERTIFICATE_ROWS } from "#lib/cartons/strength/certificate-rows";

describe("CERTIFICATE_ROWS", () => {
  it.each(["single", "double", "triple"] as const)(
    "rise in every figure from row to row of %s wall",
    (wall) => {
      const rows = CERTIFICATE_ROWS.filter((row) => row.wall === wall);
      expect(rows.length).toBeGreaterThan(3);
      for (const [at, row] of rows.entries()) {
        const before = rows[at - 1];
        if (before === undefined) continue;
        expect(row.grossPounds).toBeGreaterThan(before.grossPounds);
        expect(row.unitedInches).toBeGreaterThan(before.unitedInches);
        expect(row.poundsPerInch).toBeGreaterThan(before.poundsPerInch);
        expect(row.facingPounds).toBeGreaterThan(before.facingPounds);
        expect(row.burstPsi ?? row.punctureUnits ?? 0).toBeGreaterThan(
          before.burstPsi ?? before.punctureUnits ?? 0,
        );
      }
    },
  );

  it("give triple wall puncture units and the others burst strength", () => {
    expect(CERTIFICATE_ROWS.filter(({ burstPsi }) => burstPsi === null).map(({ wall }) => wall)).toEqual(
      CERTIFICATE_ROWS.filter(({ punctureUnits }) => punctureUnits !== null).map(() => "triple"),
    );
  });
});
