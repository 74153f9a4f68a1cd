import type { CardSum } from "#lib/packing/card-sum";
import { formatMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/**
 * What something weighs, in words: "at least" where a part was never weighed.
 *
 * @param mass mass with what it leaves out
 * @param measures how it is shown
 * @returns "797 g", "at least 427 g", "not known yet"
 */
export function massWords({ mg, unknown }: CardSum["mass"], measures: Measures): string {
  if (mg === 0 && unknown.length > 0) return "not known yet";
  return unknown.length === 0 ? formatMass(mg, measures) : `at least ${formatMass(mg, measures)}`;
}
