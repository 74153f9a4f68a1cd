import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { weightDrift } from "#lib/packing/weight/weight-drift";
import { evenRandom } from "#lib/statistics/even-random";
import { gammaDraw } from "#lib/statistics/gamma-draw";
import { normalDraw, type Random } from "#lib/statistics/normal-draw";
import { addDays, day } from "#lib/units/day";
import { type Measurement, measurement, nearestRank } from "../../measurement";

const SEEDS = [1, 2, 3];
const FIRST_DAY = day("2025-01-06");
const PER_CENT = 100;
const BILL_MG = 1_000_000;
/** Groups without a change, each asked after every one of so many parcels. */
const STILL_GROUPS = 300;
const STILL_PARCELS = 150;
/** Groups that weigh more from one parcel on. */
const CHANGED_GROUPS = 30;
const CHANGED_FROM = 60;
const CHANGES = [0.04, 0.08];

/** Errors as shares of the bill, with tails that are light, skewed and heavy in turn; the middle is 0. */
const ERRORS: readonly ((random: Random) => number)[] = [
  (random) => 0.04 * normalDraw(random),
  (random) => {
    const generous = random() < 1 / 30 ? 0.12 * (1 + random()) : 0;
    return 0.1 * (gammaDraw({ shape: 8, scale: 1 / 8 }, random) - 0.958) + generous;
  },
  (random) =>
    (0.03 * normalDraw(random)) / Math.sqrt(gammaDraw({ shape: 1.5, scale: 1 / 1.5 }, random) + 0.02),
];

/** How often a change of weight is told where there is none, and how soon where there is one. */
export function weightDrifts(): Measurement[] {
  return SEEDS.flatMap((seed) => {
    const random = evenRandom(seed);
    const of = (name: string, value: number, unit: string, target: number | null) =>
      measurement({ area: "packing", name: `changes of weight, seed ${seed}: ${name}`, value, unit, target });
    const wrong = Array.from({ length: STILL_GROUPS }, (_, group) => isToldWrongly(group, random));
    return [
      of(
        `groups told to change without a cause in ${STILL_PARCELS} parcels`,
        (PER_CENT * wrong.filter(Boolean).length) / STILL_GROUPS,
        "%",
        1,
      ),
      ...CHANGES.map((change) => {
        const delays = Array.from({ length: CHANGED_GROUPS }, (_, group) => delay(group, change, random));
        return of(
          `parcels until ${PER_CENT * change} % more is told (median)`,
          nearestRank(delays, 1 / 2),
          "parcels",
          null,
        );
      }),
    ];
  });
}

function parcel(at: number, error: number): WeighedParcel {
  return {
    itemTypeId: "piece",
    cartonId: "carton",
    style: "paper",
    packedOn: addDays(FIRST_DAY, at),
    predictedMg: BILL_MG,
    scaleMg: Math.round(BILL_MG * (1 + error)),
    unusual: false,
  };
}

function errorOf(group: number, random: Random): number {
  return ERRORS[group % ERRORS.length]?.(random) ?? 0;
}

function isToldWrongly(group: number, random: Random): boolean {
  const parcels: WeighedParcel[] = [];
  for (let at = 0; at < STILL_PARCELS; at += 1) {
    parcels.push(parcel(at, errorOf(group, random)));
    if (weightDrift(parcels) !== null) return true;
  }
  return false;
}

/** Parcels from the change until it is told with about the right day; all of them if it never is. */
function delay(group: number, change: number, random: Random): number {
  const parcels = Array.from({ length: CHANGED_FROM }, (_, at) => parcel(at, errorOf(group, random)));
  for (let more = 1; more <= STILL_PARCELS; more += 1) {
    parcels.push(parcel(parcels.length, change + errorOf(group, random)));
    if (weightDrift(parcels) !== null) return more;
  }
  return STILL_PARCELS;
}
