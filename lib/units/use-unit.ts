/** How a supply is used on the bench. */
export type UseUnit =
  | "sheet"
  | "piece"
  | "each"
  | "foot"
  | "metre"
  | "square-foot"
  | "square-metre"
  | "strip";

/** Every use unit, in the order in which a form offers them. */
export const USE_UNITS: readonly UseUnit[] = [
  "sheet",
  "piece",
  "each",
  "foot",
  "metre",
  "square-foot",
  "square-metre",
  "strip",
];

const WORDS: Readonly<Record<UseUnit, { readonly one: string; readonly many: string }>> = {
  sheet: { one: "sheet", many: "sheets" },
  piece: { one: "piece", many: "pieces" },
  each: { one: "", many: "" },
  foot: { one: "ft", many: "ft" },
  metre: { one: "m", many: "m" },
  "square-foot": { one: "sq ft", many: "sq ft" },
  "square-metre": { one: "sq m", many: "sq m" },
  strip: { one: "strip", many: "strips" },
};

/**
 * Whether a stored or sent text names a use unit.
 *
 * @param text - any text
 * @returns true for a use unit
 * @example isUseUnit("sheet") // true
 */
export function isUseUnit(text: string): text is UseUnit {
  return Object.hasOwn(WORDS, text);
}

/**
 * The word behind a number of use units; empty for what is counted by itself.
 *
 * @param unit - use unit
 * @param count - use units; half a sheet and one sheet take the singular
 * @returns "sheet" or "sheets", "ft", "sq ft", "" for each
 * @example unitWord("sheet", 2) // "sheets"
 */
export function unitWord(unit: UseUnit, count: number): string {
  const size = Math.abs(count);
  return size > 0 && size <= 1 ? WORDS[unit].one : WORDS[unit].many;
}
