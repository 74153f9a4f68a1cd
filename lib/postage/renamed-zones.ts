import type { RateCard } from "#lib/postage/rate-card";

/**
 * The same card with other labels for its zones: names for a person, ids for the records.
 *
 * @param card any
 * @param labelOf the new label of a zone
 */
export function renamedZones(card: RateCard, labelOf: (zone: string) => string): RateCard {
  const { zones, dimensional, fees } = card;
  const renamed = (labels: readonly string[] | null): readonly string[] | null =>
    labels?.map(labelOf) ?? null;
  return {
    ...card,
    zones: zones.map(labelOf),
    dimensional: dimensional === null ? null : { ...dimensional, zones: renamed(dimensional.zones) },
    fees: fees.map((fee) => ({
      ...fee,
      groups: fee.groups.map((group) => ({ ...group, zones: renamed(group.zones) })),
    })),
  };
}
