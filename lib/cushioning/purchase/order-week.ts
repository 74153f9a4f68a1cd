import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";

/**
 * The purchase of a mix as a purchase plan of one week, so that orders, price steps, cash and room are written, costed
 * and checked as they are there. Its use is the most that parcels could take, whichever way they are packed: no packs
 * beyond that are of use.
 *
 * @param question all of the mix
 * @returns the same supplies, suppliers, offers and limits for one week
 */
export function orderWeek(question: MixQuestion): PlanQuestion {
  const { cashMinor, litres } = question.limits;
  const there = question.supplies.reduce((sum, { onHand, litresPerUnit }) => sum + onHand * litresPerUnit, 0);
  return {
    weeks: 1,
    supplies: question.supplies.map(({ id, onHand, keep, leftMinor, litresPerUnit }) => ({
      id,
      stock: onHand,
      arrivals: [0],
      use: [mostUse(question, id)],
      wanted: [keep],
      most: [Number.POSITIVE_INFINITY],
      endValueMinor: leftMinor,
      shortMinor: 0,
      holdingMinor: 0,
      litres: litresPerUnit,
    })),
    suppliers: question.suppliers.map((supplier) => ({ ...supplier, orderWeeks: [true], handlingMinor: 0 })),
    offers: question.offers.map((offer) => ({ ...offer, leadWeeks: 0 })),
    substitutes: [],
    limits: {
      cash: cashMinor === null ? [] : [{ throughWeek: 0, minor: cashMinor }],
      litres: litres === null ? null : Math.max(litres, there),
    },
    aim: { kind: "cheapest" },
  };
}

/**
 * The most of a supply that the parcels could take: each type packed in the way that takes most of it.
 *
 * @param question item types with their ways
 * @param supplyId a supply
 * @returns use units
 */
export function mostUse({ types }: Pick<MixQuestion, "types">, supplyId: string): number {
  return types.reduce((sum, { parcels, ways }) => {
    const most = Math.max(
      0,
      ...ways.map(({ takes }) => takes.find((of) => of.supplyId === supplyId)?.units ?? 0),
    );
    return sum + parcels * most;
  }, 0);
}
