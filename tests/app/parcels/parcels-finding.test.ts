import { describe, expect, it } from "vitest";
import { parcelsFinding } from "#app/parcels/parcels-finding.ts";

describe("the first line of Parcels", () => {
  it("says how many went out and what broke", () => {
    expect(parcelsFinding({ lastWeek: 17, thisWeek: 4, broken: 2 })).toBe(
      "17 parcels last week, four this week; two arrived broken.",
    );
    expect(parcelsFinding({ lastWeek: 1, thisWeek: 0, broken: 0 })).toBe(
      "One parcel last week, none this week; nothing arrived broken.",
    );
  });
});
