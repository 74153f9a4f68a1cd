import { firstToUseUp } from "#lib/cartons/idle/first-to-use-up";
import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import type { Measures } from "#lib/units/measures";
import { type IdleAnswer, idleAnswer } from "./idle-use";
import type { ShelfCarton } from "./shelf-carton";

/** A carton that sits, is slow or is to be used up, with what could go into it. */
export type SittingCarton = { readonly carton: ShelfCarton; readonly answer: IdleAnswer };

/**
 * The cartons to look at: first those to use up, in the order in which to do so, then the others, silent longest first.
 *
 * @param cartons the sizes of the shelf
 * @param parcels recent parcels
 * @param gapUm gap asked for round an inner carton
 * @param measures of the shop, for heights to cut to
 */
export function sittingCartons(
  cartons: readonly ShelfCarton[],
  parcels: readonly PastParcel[],
  gapUm: number,
  measures: Measures,
): SittingCarton[] {
  const sitting = cartons
    .filter(({ supply, idle, onHand }) => (onHand ?? 0) > 0 && (supply.useFirst || isIdle(idle.ageing)))
    .toSorted((one, other) => other.idle.silentWeeks - one.idle.silentWeeks)
    .map((carton) => ({ carton, answer: idleAnswer(carton, cartons, parcels, gapUm, measures) }));
  const order = firstToUseUp(
    sitting.map(({ carton, answer }) => ({
      id: carton.id,
      onHand: carton.onHand,
      ageing: carton.idle.ageing,
      useFirst: carton.supply.useFirst,
      silentWeeks: carton.idle.silentWeeks,
      fitting: answer.use.all.parcels,
      moneyValue: carton.idle.money,
      roomMl: carton.idle.roomMl,
    })),
  ).map(({ cartonId }) => cartonId);
  const first = order.flatMap((id) => sitting.filter(({ carton }) => carton.id === id));
  return [...first, ...sitting.filter(({ carton }) => !order.includes(carton.id))];
}

function isIdle(ageing: ShelfCarton["idle"]["ageing"]): boolean {
  return ageing === "sits" || ageing === "slow";
}
