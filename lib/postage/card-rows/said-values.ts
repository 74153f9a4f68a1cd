import type { RowReader } from "#lib/postage/card-rows/card-row";
import type { SaidPart } from "#lib/postage/card-rows/grouped-rows";
import { lengthFromText, massFromText } from "#lib/postage/measure-from-text";
import type { TypedLength, TypedMass } from "#lib/postage/typed-measure";
import { type Day, day, isDay } from "#lib/units/day";
import { numberFromText, type Ratio } from "#lib/units/number-text";

/**
 * Reads what a part of a card says about something.
 *
 * @param part rows of the part
 * @param what it is about
 * @param read null for what it can't read
 * @param expected what may stand there, for the message
 * @param reader notes what can't be read
 * @returns null where nothing was said, or it can't be read
 */
export function saidValue<T>(
  part: SaidPart,
  what: string,
  read: (text: string) => T | null,
  expected: string,
  { refuse }: Pick<RowReader, "refuse">,
): T | null {
  const row = part.said.get(what);
  if (row === undefined || row.value === "") return null;
  return read(row.value) ?? refuse(row.line, `“${row.value}” for ${what} can't be read. Write ${expected}.`);
}

/** A weight that a part says. */
export function saidMass(part: SaidPart, what: string, reader: RowReader): TypedMass | null {
  const read = (text: string) => massFromText(text.replace(/^up to\s+/i, ""), reader.measures);
  return saidValue(part, what, read, "a number with oz, lb, g or kg, such as 8 oz", reader);
}

/** A length that a part says. */
export function saidLength(part: SaidPart, what: string, reader: RowReader): TypedLength | null {
  const read = (text: string) => lengthFromText(text, reader.measures);
  return saidValue(part, what, read, "a number with in, cm or mm, such as 22 in", reader);
}

/** A day that a part says. */
export function saidDay(part: SaidPart, what: string, reader: RowReader): Day | null {
  return saidValue(part, what, (text) => (isDay(text) ? day(text) : null), "a day like 2026-11-25", reader);
}

/** A number that a part says, with the unit behind it taken off. */
export function saidNumber(part: SaidPart, what: string, unit: string, reader: RowReader): Ratio | null {
  const read = (text: string): Ratio | null => {
    const bare = text.endsWith(unit) ? text.slice(0, text.length - unit.length) : null;
    return bare === null ? null : numberFromText(bare, reader.measures);
  };
  return saidValue(part, what, read, `a number${unit === "" ? "" : ` with ${unit}`}`, reader);
}
