import { learnedWeights } from "#lib/packing/weight/learned-weights";
import {
  type PackedWeight,
  packedWeight,
  packedWeightQuantile,
  packedWeightUpTo,
} from "#lib/packing/weight/packed-weight";
import { addDays, daysBetween } from "#lib/units/day";
import { type Measurement, measurement } from "../../measurement";
import { FIRST_DAY, type PlayedParcel, packedParcels } from "./packed-parcels";

const SEEDS = [1, 2, 3];
const SHOPS_PER_SEED = 5;
/** Days from which on parcels are predicted, and after which what was learned is learned anew. */
const WARM_DAYS = 60;
const RELEARN_DAYS = 20;
const PER_CENT = 100;
const TENTHS = 10;
/** Steps of a fine postage table in milligrams, moved so that no parcel sits on one for long. */
const STEP_MG = 20_000;

type Predicted = { readonly weight: PackedWeight; readonly played: PlayedParcel };

/** How close the predicted packed weight comes, and whether its odds are true: each parcel told from those before it. */
export function weightAccuracy(): Measurement[] {
  return SEEDS.flatMap((seed) => {
    const all = Array.from({ length: SHOPS_PER_SEED }, (_, shop) =>
      foretold(packedParcels(SHOPS_PER_SEED * seed + shop)),
    ).flat();
    const learned = all.filter(({ weight }) => !weight.guess);
    const of = (name: string, value: number, unit: string, target: number | null) =>
      measurement({ area: "packing", name: `weights, seed ${seed}: ${name}`, value, unit, target });
    return [
      of("mean error beside that of who knows all", relativeError(learned), "times", 1.15),
      of("mean error of the bill alone beside it", relativeError(learned, billAlone), "times", null),
      of("0.90 quantile covers", PER_CENT * covered(learned), "%", null),
      of("0.90 quantile off by", PER_CENT * Math.abs(covered(learned) - 0.9), "points", 2),
      of("odds off in the worst tenth by", PER_CENT * worstTenth(learned), "points", 3),
      of(
        "0.90 quantile of guesses covers",
        PER_CENT * covered(all.filter(({ weight }) => weight.guess)),
        "%",
        null,
      ),
      of("parcels foretold", learned.length, "parcels", null),
    ];
  });
}

/** Each parcel foretold from those of the days before, learned anew every twenty days. */
function foretold(parcels: readonly PlayedParcel[]): Predicted[] {
  const predicted: Predicted[] = [];
  const last = parcels.at(-1)?.parcel.packedOn ?? FIRST_DAY;
  for (let at = WARM_DAYS; at <= daysBetween(FIRST_DAY, last); at += RELEARN_DAYS) {
    const today = addDays(FIRST_DAY, at);
    const until = addDays(today, RELEARN_DAYS);
    const learned = learnedWeights(
      parcels.filter(({ parcel }) => parcel.packedOn < today).map(({ parcel }) => parcel),
      today,
    );
    for (const played of parcels) {
      const { packedOn } = played.parcel;
      if (packedOn >= today && packedOn < until) {
        predicted.push({ weight: packedWeight(learned.known, played.parcel), played });
      }
    }
  }
  return predicted;
}

function likely({ weight }: Predicted): number {
  return weight.likelyMg;
}

function billAlone({ weight }: Predicted): number {
  return weight.predictedMg;
}

function relativeError(all: readonly Predicted[], point = likely): number {
  const error = all.reduce((sum, each) => sum + Math.abs(point(each) - each.played.trueMg), 0);
  const oracle = all.reduce((sum, { played }) => sum + Math.abs(played.oracleMg - played.trueMg), 0);
  return error / oracle;
}

function covered(all: readonly Predicted[]): number {
  return (
    all.filter(({ weight, played }) => played.trueMg <= packedWeightQuantile(weight, 0.9)).length / all.length
  );
}

/** Steps around each parcel, their odds by tenths: the farthest that mean odds and the share that held are apart. */
function worstTenth(all: readonly Predicted[]): number {
  const tenths = Array.from({ length: TENTHS }, () => ({ count: 0, odds: 0, held: 0 }));
  for (const [index, { weight, played }] of all.entries()) {
    const shift = ((index * 61) % 100) / 100;
    for (let step = 1; step * STEP_MG < 3 * weight.predictedMg; step += 1) {
      const limit = (step + shift) * STEP_MG;
      const odds = packedWeightUpTo(weight, limit);
      const tenth = tenths[Math.min(TENTHS - 1, Math.floor(odds * TENTHS))];
      if (tenth === undefined || odds < 0.0001 || odds > 0.9999) continue;
      tenth.count += 1;
      tenth.odds += odds;
      tenth.held += played.trueMg <= limit ? 1 : 0;
    }
  }
  return Math.max(...tenths.map(({ count, odds, held }) => Math.abs(odds - held) / Math.max(1, count)));
}
