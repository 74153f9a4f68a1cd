import { bareLengthUnit, formatSizes, micrometres } from "#lib/units/length";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/**
 * What was typed, where it names its unit; a bare number would be read anew if the shop's measures changed.
 *
 * @param typed as it was typed
 * @param written as it is written now
 */
export function asTyped(typed: string | null | undefined, written: string): string {
  return typed != null && /[a-z"'″′]$/i.test(typed.trim()) ? typed : written;
}

/** A mass for a field; empty where it is not known. */
export function massText(mg: number | null | undefined, measures: Measures): string {
  return mg == null ? "" : formatMass(milligrams(mg), measures);
}

/** Sizes for a field, with their unit; empty where none is known. */
export function blockText(sides: readonly (number | null | undefined)[], measures: Measures): string {
  const sizes = sides.filter((um) => um != null).map(micrometres);
  return sizes.length === 0 ? "" : `${formatSizes(sizes, measures)} ${bareLengthUnit(measures)}`;
}
