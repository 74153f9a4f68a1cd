import { evidenceLeft, evidenceLife } from "#lib/packing/weight/evidence-life";
import { type KnownWeights, knownWeights } from "#lib/packing/weight/known-weights";
import { mistypedParcels } from "#lib/packing/weight/mistyped-parcels";
import type { UnitSlip } from "#lib/packing/weight/unit-slip";
import {
  type PastParcel,
  type WeighedParcel,
  weighedParcels,
  weightGroupKey,
} from "#lib/packing/weight/weighed-parcel";
import { weightFit } from "#lib/packing/weight/weight-fit";
import type { Day } from "#lib/units/day";

/** What past parcels say about the next ones, and what was found on the way. */
export type LearnedWeights = {
  readonly known: KnownWeights;
  /** days after which a parcel counts half; null where nothing moves */
  readonly halfLifeDays: number | null;
  /** readings likely typed in the wrong unit, not learned from */
  readonly aside: readonly { readonly parcel: WeighedParcel; readonly slip: UnitSlip }[];
};

/** The latest parcels of a group say it all; more would only make a shop of many years slow. */
const MOST_PER_GROUP = 150;

/**
 * Learns from past parcels how much they weigh beside their bills. Unweighed and unusual ones stay out, readings in the
 * wrong unit are put aside and told, old ones fade as fast as weights move; of each group the latest 150 are taken.
 *
 * @param parcels past parcels in any order
 * @param today the day from which ages are counted
 * @returns what is known, which `packedWeight` needs, and the readings put aside
 * @example learnedWeights([], day("2026-11-25")).aside // []
 */
export function learnedWeights(parcels: readonly PastParcel[], today: Day): LearnedWeights {
  const { kept, aside } = mistypedParcels(latestOfGroups(weighedParcels(parcels)));
  const still = weightFit(
    kept,
    kept.map(() => 1),
  );
  const life = evidenceLife(kept, still);
  const isStill = life === Number.POSITIVE_INFINITY;
  const fit = isStill
    ? still
    : weightFit(
        kept,
        kept.map(({ packedOn }) => evidenceLeft(packedOn, today, life)),
      );
  return { known: knownWeights(fit, kept), halfLifeDays: isStill ? null : life, aside };
}

function latestOfGroups(parcels: readonly WeighedParcel[]): WeighedParcel[] {
  const later = new Map<string, number>();
  return parcels
    .toReversed()
    .filter((parcel) => {
      const key = weightGroupKey(parcel);
      const count = (later.get(key) ?? 0) + 1;
      later.set(key, count);
      return count <= MOST_PER_GROUP;
    })
    .reverse();
}
