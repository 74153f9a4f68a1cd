import { describe, expect, it } from "vitest";
import { unknownZoneWords, zoneNamed } from "#lib/postage/zone-named";

describe("the zone of a column", () => {
  it("is found whatever the case of its letters", () => {
    expect(zoneNamed(" far ", ["Near", "Far"])).toBe("Far");
    expect(zoneNamed("Moon", ["Near", "Far"])).toBeUndefined();
  });

  it("that is none is told with those that are", () => {
    expect(unknownZoneWords("Moon", [])).toContain(
      "The shop has no zones yet: rename the column, or add the zone.",
    );
    expect(unknownZoneWords("Moon", ["Near"])).toContain("The zones are Near");
  });
});
