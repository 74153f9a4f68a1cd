import type { MovedWeight } from "#lib/packing/weight/moved-weights";
import { formatDay } from "#lib/units/day-text";

const PER_CENT = 100;

/**
 * Since when parcels weigh otherwise than the card says.
 *
 * @param moved a group of parcels
 * @param nameOf names of item types and cartons
 * @returns a sentence
 */
export function weightWords(
  { cartonId, style, drift, itemTypeId }: MovedWeight,
  nameOf: (id: string) => string,
): string {
  const group = `${nameOf(itemTypeId)} on ${style}${cartonId === null ? "" : ` in ${nameOf(cartonId)}`}`;
  const since = formatDay(drift.since, { year: true });
  const before = drift.before === null ? "" : `, before that ${shareWords(drift.before)}`;
  return `${group}: since ${since} ${shareWords(drift.share)}, by ${drift.parcels} parcels${before}.`;
}

function shareWords(share: number): string {
  const percent = Math.round(Math.abs(share) * PER_CENT);
  if (percent === 0) return "as the bill says";
  return `${percent} % ${share > 0 ? "more" : "less"} than the bill`;
}
