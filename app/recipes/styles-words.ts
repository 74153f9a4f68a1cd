import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

type Version = { readonly style: string; readonly effectiveFrom: Day; readonly commonPractice: boolean };

/**
 * Which cushion styles an item type has cards for, and since when.
 *
 * @param versions the item type's versions, the oldest first within a style
 * @returns words for a list
 */
export function stylesWords(versions: readonly Version[]): string {
  if (versions.length === 0) return "no recipe yet";
  const latest = new Map(versions.map((version) => [version.style, version]));
  return [...latest.values()]
    .map(
      (version) =>
        `${version.style} since ${formatDay(version.effectiveFrom)}${version.commonPractice ? ", common practice" : ""}`,
    )
    .join(" · ");
}
