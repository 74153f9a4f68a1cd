import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import type { CushionAnswer } from "./cushion-answer";
import type { CushionGround } from "./cushion-ground";

/** A chance that somebody would see. */
const SEEN = 0.005;

/**
 * What the comparison leaves out or takes as nothing, with the way out.
 *
 * @param answer of `cushionAnswer`
 * @param ground as the shop stands
 * @returns sentences; none where all is known
 */
export function leavesOut(answer: CushionAnswer, { itemTypes, supplies, said }: CushionGround): string[] {
  const costs = [...answer.kinds, ...answer.untold].flatMap((kind) => kind.costs);
  const names = new Map([...itemTypes, ...supplies].map(({ id, name }) => [id, name]));
  const named = (ids: readonly string[]) => [...new Set(ids)].map((id) => names.get(id) ?? id).join(", ");
  const unpriced = costs.flatMap((cost) => cost.unpriced);
  const unweighed = costs.flatMap(({ way }) => way.unweighed);
  const notTaken = answer.kinds.flatMap(({ pieces, costs: ways }) =>
    ways.some(({ postage }) => postage !== null && postage.notCarried >= SEEN) ? idsOf(pieces) : [],
  );
  const all = [...answer.kinds, ...answer.untold];
  const isHalfSaid = (kept: CushionGround["said"]["minutes"], used: CushionGround["said"]["minutes"]) =>
    CUSHION_STYLES.some((style) => kept[style] !== null && used[style] === null);
  const overfull = all.flatMap(({ pieces, costs: ways }) =>
    ways.some(({ way }) => way.isOverfull) ? idsOf(pieces) : [],
  );
  const noCarton = costs.filter(({ way }) => way.cartons.length === 0).length;
  const single = answer.single.reduce((sum, { parcels }) => sum + parcels, 0);
  return [
    ...(answer.card === null
      ? ["No rate card holds: postage counts as nothing, and paper’s weight with it. Add one under Postage."]
      : []),
    ...(answer.card !== null && !answer.hasZones
      ? ["No parcel’s zone was noted of late: each zone of the card counts alike."]
      : []),
    ...(unpriced.length === 0 ? [] : [`Without a price, so counted as nothing: ${named(unpriced)}.`]),
    ...(unweighed.length === 0
      ? []
      : [`Never weighed, so that postage can’t be told for what takes it: ${named(unweighed)}.`]),
    ...(notTaken.length === 0
      ? []
      : [
          `The rate card does not take every parcel of ${named(notTaken)}: what it does not take is in no postage.`,
        ]),
    ...(answer.untold.length === 0
      ? []
      : [
          `Left out of all sums, as the postage is known on one side alone: ${named(answer.untold.flatMap(({ pieces }) => idsOf(pieces)))}.`,
        ]),
    ...(answer.terms.hourMinor !== null && isHalfSaid(said.minutes, answer.terms.minutes)
      ? ["The minutes of packing are said for some styles alone, so they count for none: say them for each."]
      : []),
    ...(itemTypes.some(({ valueMinor }) => valueMinor !== null) &&
    isHalfSaid(said.brokenPerMille, answer.terms.brokenPerMille)
      ? ["How many parcels break is said for some styles alone, so it counts for none: say it for each."]
      : []),
    ...(overfull.length === 0
      ? []
      : [
          `Some parcels hold more than their cards’ cartons cover and are reckoned with the largest one: those with ${named(overfull)}.`,
        ]),
    ...(noCarton === 0 ? [] : ["Some cards name no carton: neither its price nor its weight is in the sum."]),
    ...(Math.round(single) === 0
      ? []
      : [
          `About ${Math.round(single)} more parcels have a card in fewer than two styles: ${named(answer.single.flatMap(({ pieces }) => idsOf(pieces)))}.`,
        ]),
    ...(Math.round(answer.unseen) === 0
      ? []
      : [`About ${Math.round(answer.unseen)} parcels of rarer kinds are left out.`]),
  ];
}

function idsOf(pieces: PackedPieces): string[] {
  return pieces.map(({ itemTypeId }) => itemTypeId);
}
