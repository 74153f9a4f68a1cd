import fc from "fast-check";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { calendarText } from "#lib/purchasing/calendar";
import { day } from "#lib/units/day";
import { instant } from "#lib/units/instant";

const writtenAt = instant("2026-11-25T10:30:00.000Z");
const event = { uid: "order-by-paper@wadding", on: day("2026-12-31"), summary: "Order", description: "" };
const calendar = (changes: Partial<typeof event>) =>
  calendarText({ name: "Supplies", writtenAt, events: [{ ...event, ...changes }] });

/** What an independent reader finds. */
function read(text: string) {
  const component = new ICAL.Component(ICAL.parse(text));
  return component.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
}

describe("a calendar as text", () => {
  it("is read by another program as all-day events that keep their identity", () => {
    const [found, ...more] = read(calendar({ summary: "Order packing paper", description: "3 bundles" }));
    expect(more).toEqual([]);
    expect(found?.uid).toBe("order-by-paper@wadding");
    expect(found?.summary).toBe("Order packing paper");
    expect(found?.description).toBe("3 bundles");
    expect(found?.startDate.isDate).toBe(true);
    expect(found?.startDate.toString()).toBe("2026-12-31");
    // RFC 5545, 3.6.1: the end of an event is not part of it, so a day ends on the next one.
    expect(found?.endDate.toString()).toBe("2027-01-01");
  });

  it("has the stamp in UTC, and the properties that a calendar needs", () => {
    const text = calendar({});
    // RFC 5545, 3.8.7.2: DTSTAMP in UTC, as in 19971210T080000Z; 3.6: VERSION and PRODID stand once.
    expect(text).toContain("\r\nDTSTAMP:20261125T103000Z\r\n");
    expect(text.match(/^VERSION:2\.0\r$/gm)).toHaveLength(1);
    expect(text.match(/^PRODID:/gm)).toHaveLength(1);
    expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
  });

  it("writes a text as the standard's own example does", () => {
    // RFC 5545, 3.3.11: "Project XYZ Final Review\nConference Room - 3B\nCome Prepared." with its escapes.
    const text = calendar({ description: "Project XYZ Final Review\nConference Room - 3B\nCome Prepared." });
    expect(text.replaceAll("\r\n ", "")).toContain(
      "DESCRIPTION:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.",
    );
    // Commas, semicolons and backslashes, as 3.3.11 lists them.
    expect(calendar({ summary: "a, b; c \\ d: e" })).toContain("SUMMARY:a\\, b\\; c \\\\ d: e\r\n");
  });

  it("gives back any text to another reader, in lines of at most 75 octets", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (typed) => {
        const summary = `x${typed.replace(/\p{Cc}/gu, "")}x`;
        const text = calendar({ summary });
        const octets = text.split("\r\n").map((line) => Buffer.byteLength(line, "utf8"));
        expect(Math.max(...octets)).toBeLessThanOrEqual(75);
        expect(read(text)[0]?.summary).toBe(summary);
      }),
      { numRuns: 200 },
    );
  });

  it("without events is a calendar all the same", () => {
    expect(read(calendarText({ name: "Supplies", writtenAt, events: [] }))).toEqual([]);
  });
});
