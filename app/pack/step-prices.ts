import { countsSize } from "#lib/postage/counts-size";
import type { ZoneShare } from "#lib/postage/expected-postage";
import type { ParcelSize } from "#lib/postage/parcel-size";
import { priceLadders } from "#lib/postage/price-ladder";
import type { RateCard } from "#lib/postage/rate-card";
import { stepWords } from "#lib/postage/step-words";
import type { Day } from "#lib/units/day";

/** What a parcel pays over the step before and up to this one. */
export type StepPrice = {
  /** milligrams; infinite for the last */
  readonly upToMg: number;
  /** fees and all, minor units; null: not carried */
  readonly minor: number | null;
  /** "up to 3 lb" */
  readonly label: string;
};

/** Prices by weight in each zone, as plain values that the bench can reckon with on its own. */
export type StepPrices = {
  readonly zones: readonly ZoneShare[];
  /** each list once: many cartons pay alike */
  readonly lists: readonly (readonly StepPrice[])[];
  /** for each carton, and "" for one whose size is not known, the place of the list of each zone */
  readonly listAt: Readonly<Record<string, readonly number[]>>;
};

/** What is not known of a carton's size is left out of its price. */
const ANY_CARTON = "";

/**
 * What parcels pay by weight: for each zone, and for each carton where its size matters.
 *
 * @param card the rate card that holds; null: nothing is known
 * @param zones how many parcels go where
 * @param sizes outside sizes by carton
 * @param question ship day, and the milligrams beyond which the bench need not look
 * @returns null without a card or zones
 */
export function stepPrices(
  card: RateCard | null,
  zones: readonly ZoneShare[],
  sizes: ReadonlyMap<string, ParcelSize>,
  { shipDay, untilMg }: { readonly shipDay: Day; readonly untilMg: number },
): StepPrices | null {
  if (card === null || zones.length === 0) return null;
  const places = new Map<string, number>();
  const lists: StepPrice[][] = [];
  const listsFor = (size: ParcelSize | null): number[] =>
    priceLadders(
      { card, size, shipDay },
      zones.map(({ zone }) => zone),
      untilMg,
    ).map((ladder) => {
      const list = ladder
        .filter((_, at) => (ladder[at - 1]?.upToMg ?? 0) < untilMg)
        .map(({ upToMg, rating }): StepPrice => {
          if (rating.kind !== "priced") return { upToMg, minor: null, label: "not carried" };
          return { upToMg, minor: rating.minor, label: stepWords(rating.step) };
        });
      const key = JSON.stringify(list.map((step) => Object.values(step).map(String)));
      const known = places.get(key);
      if (known !== undefined) return known;
      places.set(key, lists.length);
      return lists.push(list) - 1;
    });
  const cartons = countsSize(card) ? [...sizes] : [];
  const listAt: Record<string, readonly number[]> = { [ANY_CARTON]: listsFor(null) };
  for (const [cartonId, size] of cartons) listAt[cartonId] = listsFor(size);
  return { zones, lists, listAt };
}

/**
 * The prices of a carton to one zone, or to each with its share.
 *
 * @param prices of `stepPrices`
 * @param cartonId the outer carton; null where it is in no list
 * @param zoneId the zone; null where it is not known yet
 * @returns lists with shares that add up to 1; empty for a zone that the card does not have
 */
export function listsTo(
  { zones, lists, listAt }: StepPrices,
  cartonId: string | null,
  zoneId: string | null,
): readonly { readonly share: number; readonly steps: readonly StepPrice[] }[] {
  const places = listAt[cartonId ?? ANY_CARTON] ?? listAt[ANY_CARTON] ?? [];
  const all = zones.map(({ zone, share }, at) => ({ zone, share, steps: lists[places[at] ?? -1] ?? [] }));
  const own = zoneId === null ? all : all.filter(({ zone }) => zone === zoneId);
  if (zoneId !== null) return own.map(({ steps }) => ({ share: 1, steps }));
  const sum = own.reduce((whole, { share }) => whole + share, 0);
  return own.map(({ steps, share }) => ({ share: share / sum, steps }));
}
