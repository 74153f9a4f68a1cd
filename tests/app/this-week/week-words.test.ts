import { expect, it } from "vitest";
import { weekWords } from "#app/this-week/week-words.ts";

it("week words say none, one and several parcels", () => {
  expect([0, 1, 17].map(weekWords)).toEqual([
    "No parcel was packed last week.",
    "One parcel was packed last week.",
    "17 parcels were packed last week.",
  ]);
});
