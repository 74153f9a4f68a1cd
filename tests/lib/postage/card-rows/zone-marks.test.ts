import { describe, expect, it } from "vitest";
import { zoneMarks, zonesFromMarks } from "#lib/postage/card-rows/zone-marks";
import { notingReader, saidPart } from "./row-reader-fixture";

describe("marks under zones", () => {
  it("are read back, whatever their case; no row means all zones", () => {
    const { reader, noted } = notingReader();
    expect(zonesFromMarks(saidPart({ zones: "" }, zoneMarks(["Far"], reader.zones)), reader)).toEqual([
      "Far",
    ]);
    expect(zonesFromMarks(saidPart({ zones: "" }, ["YES", ""]), reader)).toEqual(["Near"]);
    expect(zonesFromMarks(saidPart({}), reader)).toBeNull();
    expect(noted).toEqual([]);
  });

  it("that are none are noted, and so is a row without any", () => {
    const { reader, noted } = notingReader();
    zonesFromMarks(saidPart({ zones: "" }, ["maybe", ""]), reader);
    zonesFromMarks(saidPart({ zones: "" }, ["", ""]), reader);
    expect(noted).toEqual([
      "1: “maybe” is no mark. Write yes under each zone where size counts.",
      "1: no zone is marked. Write yes under each zone where size counts, or take the row out.",
    ]);
  });
});
