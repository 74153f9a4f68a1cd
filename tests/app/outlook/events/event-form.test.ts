import { describe, expect, it } from "vitest";
import { problemsOf } from "#app/_parts/form-state.ts";
import { eventForm } from "#app/outlook/events/event-form.ts";

const TYPED = {
  name: "Christmas market",
  fromDay: "2026-12-01",
  toDay: "2026-12-14",
  upliftPercent: "50",
};
const form = eventForm(new Set(["mug", "vase"]));

function problems(changes: Record<string, string | undefined>): Record<string, string> {
  const read = form.safeParse({ ...TYPED, ...changes });
  return read.success ? {} : problemsOf(read.error);
}

describe("event form", () => {
  it("reads an event for all item types, and one for those ticked", () => {
    expect(form.parse(TYPED)).toEqual({
      name: "Christmas market",
      fromDay: "2026-12-01",
      toDay: "2026-12-14",
      upliftPercent: 50,
      itemTypeIds: [],
    });
    expect(form.parse({ ...TYPED, itemTypeIds: "mug\nvase\nmug" }).itemTypeIds).toEqual(["mug", "vase"]);
  });

  it.each([
    ["+35 %", 35],
    ["900", 900],
    ["-100", -100],
    ["−20%", -20],
    ["– 5", -5],
    ["-0", 0],
  ])("reads %s as %i percent", (typed, percent) => {
    expect(form.parse({ ...TYPED, upliftPercent: typed }).upliftPercent).toBe(percent);
  });

  it.each(["", "half", "12.5", "901", "-101", "1e2", "5 5"])("refuses “%s” percent by its field", (typed) => {
    expect(problems({ upliftPercent: typed })["upliftPercent"]).toMatch(
      /whole number of percent from −100 to 900/,
    );
  });

  it("asks for a name, at most 60 letters long", () => {
    expect(problems({ name: undefined })["name"]).toMatch(/^Give the event a name/);
    expect(problems({ name: "m".repeat(60) })).toEqual({});
    expect(problems({ name: "m".repeat(61) })).toEqual({ name: "At most 60 letters." });
    expect(problems({ name: "m".repeat(300) })).toEqual({ name: "At most 60 letters." });
  });

  it("says which last day can be chosen", () => {
    expect(problems({ toDay: "2026-11-30" })).toEqual({
      toDay: "The last day lies before the first. Choose 1 Dec 2026 or a later day.",
    });
    expect(problems({ toDay: "2026-12-01" })).toEqual({});
    expect(problems({ toDay: "2027-03-30" })).toEqual({});
    expect(problems({ toDay: "2027-03-31" })).toEqual({
      toDay: "An event lasts at most 120 days. Choose 30 Mar 2027 or an earlier day.",
    });
  });

  it("asks to check a year that cannot be meant, and for a day that exists", () => {
    expect(problems({ fromDay: "0202-12-01" })).toEqual({ fromDay: "Check the year." });
    expect(problems({ toDay: "2206-12-14" })).toEqual({ toDay: "Check the year." });
    expect(problems({ fromDay: "2026-02-30" })["fromDay"]).toMatch(/^Write a day/);
    expect(problems({ toDay: undefined })).toEqual({ toDay: "Choose a day." });
  });

  it("refuses an item type that the shop does not know", () => {
    expect(problems({ itemTypeIds: "mug\njug" })["itemTypeIds"]).toMatch(/not in the shop/);
  });
});
