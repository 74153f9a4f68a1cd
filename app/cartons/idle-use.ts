import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { couldHaveGone, type IdleUse } from "#lib/cartons/idle/could-have-gone";
import { cutHeights } from "#lib/cartons/idle/cut-heights";
import { type LetGoWay, letGoWays } from "#lib/cartons/idle/let-go-ways";
import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import type { Measures } from "#lib/units/measures";
import { cutStep } from "./cut-step";
import { candidateOf } from "./fit/fit-answer";
import type { ShelfCarton } from "./shelf-carton";

/** What could go into a carton, and what to do with it. */
export type IdleAnswer = { readonly use: IdleUse; readonly ways: readonly LetGoWay[] };

/**
 * What of the recent parcels could have gone in a carton, and the ways to make use of it or to be rid of it.
 *
 * @param carton the carton
 * @param cartons all those of the shelf
 * @param parcels recent parcels
 * @param gapUm gap asked for round an inner carton
 * @param measures how the shop measures, for the heights to cut to
 */
export function idleAnswer(
  carton: ShelfCarton,
  cartons: readonly ShelfCarton[],
  parcels: readonly PastParcel[],
  gapUm: number,
  measures: Measures,
): IdleAnswer {
  const candidate = candidateOf(carton);
  const use = couldHaveGone({ carton: candidate, parcels, trust: USUAL_TRUST, effort: QUICK_EFFORT });
  const could = new Set(use.parcels.map(({ parcelId }) => parcelId));
  const fitting = parcels.filter(({ id, cartonId }) => could.has(id) || cartonId === carton.id);
  // One that moves is bought for its height: to cut it down is no way to use it up.
  const heights = isIdle(carton)
    ? cutHeights({
        inside: carton.inside,
        parcels: fitting,
        stepUm: cutStep(measures),
        effort: QUICK_EFFORT,
      })
    : [];
  const ways = letGoWays({
    carton: candidate,
    isDamaged: false,
    fitting: fitting.length,
    heights,
    figure: carton.idle.figure,
    others: cartons.map(({ id, inside }) => ({ id, inside })),
    gapUm,
  });
  return { use, ways };
}

function isIdle({ idle }: ShelfCarton): boolean {
  return idle.ageing === "sits" || idle.ageing === "slow";
}
