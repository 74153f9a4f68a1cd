import { describe, expect, it } from "vitest";
import { shopForm } from "#app/setup/shop-form.ts";

const TYPED = {
  name: "Sandpiper Pottery",
  timeZone: "Pacific/Kiritimati",
  currency: "EUR",
  weekStartsOn: "7",
  measures: "metric",
  promise: "share:980",
  coverWeeks: "8",
  reviewDays: "7",
  defaultStyle: "bubble",
};

describe("shop form", () => {
  it("reads what a shop needs, without a price", () => {
    expect(shopForm.parse(TYPED)).toMatchObject({
      weekStartsOn: 7,
      promise: { goal: "share", perMille: 980 },
      timeZone: "Pacific/Kiritimati",
    });
  });

  it("refuses a time zone that the platform does not know", () => {
    expect(shopForm.safeParse({ ...TYPED, timeZone: "Moon/Tycho" }).success).toBe(false);
  });

  it("asks for a name by its field", () => {
    const read = shopForm.safeParse({ ...TYPED, name: undefined });
    expect(read.error?.issues.map((issue) => [issue.path, issue.message])).toEqual([
      [["name"], "Give your shop a name."],
    ]);
  });

  it("takes a guess of parcels a week, or none", () => {
    expect(shopForm.parse({ ...TYPED, guessedParcels: "10" }).guessedParcels).toBe(10);
    expect(shopForm.parse(TYPED).guessedParcels).toBeNull();
  });

  it.each(["0", "2001", "ten", "1.5", "-3"])("refuses %s as a guess of parcels by its field", (typed) => {
    const read = shopForm.safeParse({ ...TYPED, guessedParcels: typed });
    expect(read.error?.issues.map((issue) => [issue.path, issue.message])).toContainEqual([
      ["guessedParcels"],
      "Write a whole number from 1 to 2,000.",
    ]);
  });
});
