import type { ZoneShare } from "#lib/postage/expected-postage";

/**
 * How many parcels go to each zone of a card.
 *
 * @param zoneIds the card's zones
 * @param counts parcels of late by zone
 * @returns the shares; all alike where no parcel went to any of them, and then `isKnown` is false
 */
export function zoneShares(
  zoneIds: readonly string[],
  counts: readonly { readonly zoneId: string; readonly parcels: number }[],
): { readonly zones: readonly ZoneShare[]; readonly isKnown: boolean } {
  const zones = zoneIds.map((zone) => ({
    zone,
    share: counts.filter(({ zoneId }) => zoneId === zone).reduce((sum, { parcels }) => sum + parcels, 0),
  }));
  const isKnown = zones.some(({ share }) => share > 0);
  return { zones: isKnown ? zones : zones.map(({ zone }) => ({ zone, share: 1 })), isKnown };
}
