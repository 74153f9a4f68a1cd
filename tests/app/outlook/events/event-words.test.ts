import { describe, expect, it } from "vitest";
import { eventWords } from "#app/outlook/events/event-words.ts";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { day } from "#lib/units/day";

const names = new Map([
  ["mug", "Mug"],
  ["vase", "Vase"],
]);
const market: PlannedEvent = {
  id: "market",
  name: "Market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-14"),
  upliftPercent: 50,
  itemTypeIds: [],
};

describe("an event in words", () => {
  it("says its days, how much more, and that it holds for all item types", () => {
    expect(eventWords(market, names)).toBe("1 Dec to 14 Dec 2026: half as much again, all item types");
  });

  it("names a single day once, and the item types that it holds for", () => {
    const oneDay = { ...market, toDay: market.fromDay, upliftPercent: 35, itemTypeIds: ["mug", "vase"] };
    expect(eventWords(oneDay, names)).toBe("1 Dec 2026: +35 %, only Mug, Vase");
  });

  it("says both years where they differ", () => {
    expect(eventWords({ ...market, toDay: day("2027-01-02") }, names)).toMatch(/^1 Dec 2026 to 2 Jan 2027:/);
  });
});
