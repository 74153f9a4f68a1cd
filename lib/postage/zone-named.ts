/**
 * The zone that a column means, whatever the case of its letters.
 *
 * @param name as it stands over the column
 * @param zones names of the shop's zones
 * @returns the shop's own name of it; undefined if there is none
 */
export function zoneNamed(name: string, zones: readonly string[]): string | undefined {
  const wanted = name.trim().toLowerCase();
  return zones.find((zone) => zone.trim().toLowerCase() === wanted);
}

/**
 * What to do about a column that is no zone of the shop.
 *
 * @param name as it stands over the column
 * @param zones names of the shop's zones
 */
export function unknownZoneWords(name: string, zones: readonly string[]): string {
  const known = zones.length === 0 ? "The shop has no zones yet" : `The zones are ${zones.join(", ")}`;
  return `“${name}” is no zone of yours. ${known}: rename the column, or add the zone.`;
}
