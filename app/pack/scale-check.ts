import { likelyUnitSlip } from "#lib/packing/weight/likely-unit-slip";
import type { PackedWeight } from "#lib/packing/weight/packed-weight";
import type { MassUnit } from "#lib/packing/weight/unit-slip";
import { formatMass, type Milligrams, milligrams, parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/** What is to be said about the reading of the scale. */
export type ScaleCheck =
  | { readonly kind: "nothing" }
  | { readonly kind: "unreadable" }
  /** it would fit in another unit; `typed` is how to write it then */
  | { readonly kind: "slip"; readonly meant: MassUnit; readonly typed: string }
  | { readonly kind: "over"; readonly byMg: Milligrams };

const BARE: Readonly<Record<Measures, MassUnit>> = { imperial: "oz", metric: "g" };

/**
 * Looks at what the scale says beside what was promised and what is likely.
 *
 * @param texts the reading and the promise as typed
 * @param weight what the parcel may weigh; null where that is not known
 * @param measures how a bare number is read
 * @returns what to say, the wrong unit before a broken promise
 */
export function scaleCheck(
  { scale, promised }: { readonly scale: string; readonly promised: string },
  weight: PackedWeight | null,
  measures: Measures,
): ScaleCheck {
  if (scale.trim() === "") return { kind: "nothing" };
  const read = parseMass(scale, measures);
  if (read.kind === "unreadable") return { kind: "unreadable" };
  const slip =
    weight === null || read.mg === 0
      ? null
      : likelyUnitSlip({ mg: read.mg, unit: typedUnit(scale, measures) }, weight);
  if (slip !== null) return { kind: "slip", meant: slip.meant, typed: slipText(scale, slip.meant) };
  const limit = promised.trim() === "" ? null : parseMass(promised, measures);
  if (limit?.kind !== "mass" || read.mg <= limit.mg) return { kind: "nothing" };
  return { kind: "over", byMg: milligrams(read.mg - limit.mg) };
}

/** The unit of a reading with a single one; of "2 lb 3 oz" none was mistaken for another. */
function typedUnit(text: string, measures: Measures): MassUnit | null {
  const units = text.toLowerCase().match(/kg|lbs?|oz|g/g) ?? [];
  if (units.length > 1) return null;
  const [unit] = units;
  if (unit === undefined) return BARE[measures];
  return unit === "lbs" ? "lb" : (unit as MassUnit);
}

/** The number as typed with the unit that was meant. */
function slipText(scale: string, meant: MassUnit): string {
  const [number] = /[\d.,/½⅓⅔¼¾⅛⅜⅝⅞\s]+/.exec(scale.trim()) ?? [scale.trim()];
  return `${number.trim()} ${meant}`;
}

/**
 * The ceiling of a promise, for the bar under the thumb.
 *
 * @param promised as typed
 * @param measures how a bare number is read
 * @returns "under 2 lb", or null where nothing readable was promised
 */
export function ceilingWords(promised: string, measures: Measures): string | null {
  const read = promised.trim() === "" ? null : parseMass(promised, measures);
  return read?.kind === "mass" ? `stay under ${formatMass(read.mg, measures)}` : null;
}
