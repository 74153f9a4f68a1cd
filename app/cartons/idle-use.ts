import { USUAL_CUT } from "#lib/cartons/choice/cut-terms";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { couldHaveGone, type IdleUse } from "#lib/cartons/idle/could-have-gone";
import { cutHeights } from "#lib/cartons/idle/cut-heights";
import { type LetGoWay, letGoWays } from "#lib/cartons/idle/let-go-ways";
import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
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
 */
export function idleAnswer(
  carton: ShelfCarton,
  cartons: readonly ShelfCarton[],
  parcels: readonly PastParcel[],
  gapUm: number,
): IdleAnswer {
  const candidate = candidateOf(carton);
  const use = couldHaveGone({ carton: candidate, parcels, trust: USUAL_TRUST, effort: QUICK_EFFORT });
  const could = new Set(use.parcels.map(({ parcelId }) => parcelId));
  const fitting = parcels.filter(({ id, cartonId }) => could.has(id) || cartonId === carton.id);
  const heights = cutHeights({
    inside: carton.inside,
    parcels: fitting,
    stepUm: USUAL_CUT.stepUm,
    effort: QUICK_EFFORT,
  });
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
