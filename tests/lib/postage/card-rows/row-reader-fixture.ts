import type { RowReader } from "#lib/postage/card-rows/card-row";
import type { SaidPart } from "#lib/postage/card-rows/grouped-rows";

/** A reader of two zones that notes what it refuses. */
export function notingReader(): { readonly reader: RowReader; readonly noted: string[] } {
  const noted: string[] = [];
  const refuse = (line: number, words: string): null => {
    noted.push(`${line}: ${words}`);
    return null;
  };
  return { reader: { measures: "imperial", minorDigits: 2, zones: ["Near", "Far"], refuse }, noted };
}

/** A part in which each thing stands in a row of its own, the first in row 1. */
export function saidPart(values: Readonly<Record<string, string>>, cells: readonly string[] = []): SaidPart {
  const rows = Object.entries(values).map(
    ([what, value], at) => [what, { line: at + 1, value, cells }] as const,
  );
  return { line: 1, said: new Map(rows) };
}
