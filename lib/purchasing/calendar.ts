import { addDays, type Day } from "#lib/units/day";
import type { Instant } from "#lib/units/instant";

/** Something that falls on a day. */
export type CalendarEvent = {
  /** the same for the same thing each time, so that a calendar replaces what it knew */
  readonly uid: string;
  readonly on: Day;
  readonly summary: string;
  readonly description: string;
};

const MOST_OCTETS = 75;
const CONTINUATION = 1;
const LINE_END = "\r\n";
const encoder = new TextEncoder();

/**
 * A calendar of all-day events as text, for any program that reads iCalendar.
 *
 * @param calendar its name, when it was written, its events
 * @returns RFC 5545 text: lines end in CR LF and are folded at 75 octets
 * @see RFC 5545: 3.1 content lines and folding, 3.3.11 TEXT and its escapes, 3.6.1 VEVENT with DTSTART of VALUE=DATE and
 *   DTEND as the day after; RFC 7986, 5.1 NAME
 * @example calendarText({ name: "Supplies", writtenAt, events: [] })
 */
export function calendarText(calendar: {
  readonly name: string;
  readonly writtenAt: Instant;
  readonly events: readonly CalendarEvent[];
}): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//wadding//supplies//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `NAME:${escaped(calendar.name)}`,
    `X-WR-CALNAME:${escaped(calendar.name)}`,
    ...calendar.events.flatMap((event) => eventLines(event, calendar.writtenAt)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}${LINE_END}`).join("");
}

function eventLines(event: CalendarEvent, writtenAt: Instant): string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${escaped(event.uid)}`,
    `DTSTAMP:${writtenAt.replace(/[-:]|\.\d{3}/g, "")}`,
    `DTSTART;VALUE=DATE:${event.on.replaceAll("-", "")}`,
    `DTEND;VALUE=DATE:${addDays(event.on, 1).replaceAll("-", "")}`,
    `SUMMARY:${escaped(event.summary)}`,
    `DESCRIPTION:${escaped(event.description)}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

/** Backslash, semicolon and comma are escaped, a line break is \n; other control characters have no place in a text. */
function escaped(text: string): string {
  return text
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\r\n|\r|\n/g, "\\n")
    .replace(/(?!\t)\p{Cc}/gu, "");
}

/** Lines of more than 75 octets go on in the next one after a space; no character is torn. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = "";
  let octets = 0;
  for (const character of line) {
    const size = encoder.encode(character).length;
    const room = parts.length === 0 ? MOST_OCTETS : MOST_OCTETS - CONTINUATION;
    if (octets + size > room) {
      parts.push(part);
      part = "";
      octets = 0;
    }
    part += character;
    octets += size;
  }
  return [...parts, part].join(`${LINE_END} `);
}
