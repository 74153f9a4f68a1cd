import type { IdleUse } from "#lib/cartons/idle/could-have-gone";
import type { LetGoWay } from "#lib/cartons/idle/let-go-ways";
import type { KeepFigure } from "#lib/cartons/keeping/keep-figure";
import { formatLength, micrometres } from "#lib/units/length";
import { type ShopWords, valueText } from "./choice-words";

/** Names of what is spoken of. */
export type IdleNames = {
  readonly typeOf: (itemTypeId: string) => string;
  readonly cartonOf: (cartonId: string) => string;
};

const MOST_TYPES = 3;

/**
 * What could have gone in a carton.
 *
 * @param use as found out
 * @param asked parcels looked at and the days they are of
 * @param names of item types
 * @param shop how it writes money
 * @returns sentences
 */
export function couldWords(
  use: IdleUse,
  asked: { readonly parcels: number; readonly days: number },
  names: IdleNames,
  shop: ShopWords,
): string[] {
  const { all, withinStock, itemTypes } = use;
  const of = `${asked.parcels} parcels of the last ${asked.days} days`;
  if (all.parcels === 0) return [`None of the ${of} would have fitted with its cushion.`];
  const types = itemTypes
    .slice(0, MOST_TYPES)
    .map(({ itemTypeId, fitting, parcels }) => `${names.typeOf(itemTypeId)} (${fitting} of ${parcels})`);
  const first = `${all.parcels} of the ${of} could have gone in it: ${types.join(", ")}${itemTypes.length > MOST_TYPES ? " and others" : ""}.`;
  const each = [all.savesAsSpentValue, all.savesValue].map((value) => perParcel(value / all.parcels, shop));
  const second = `On average each would have cost ${each[0]} if this carton's price counts as spent, ${each[1]} if not; carton, fill, tape and postage at today's prices.`;
  if (withinStock === null) return [first, second, "Count it to see how far it reaches."];
  const best =
    withinStock.parcels === 0
      ? "Taken as spent, it would have saved nothing on any of them: its size costs more fill and postage than it is worth."
      : `Worth it for ${bestTypes(use, withinStock.parcels, names)}: ${valueText(withinStock.savesAsSpentValue, shop)} saved on these ${withinStock.parcels}, its price taken as spent.`;
  return [first, second, best];
}

/** The item types among the parcels where it saves most. */
function bestTypes({ parcels }: IdleUse, count: number, { typeOf }: IdleNames): string {
  const types = new Map<string, number>();
  for (const { itemTypeId } of parcels.slice(0, count))
    types.set(itemTypeId, (types.get(itemTypeId) ?? 0) + 1);
  return [...types]
    .toSorted(([, one], [, other]) => other - one)
    .slice(0, MOST_TYPES)
    .map(([itemTypeId, parcelsOfIt]) => `${typeOf(itemTypeId)} (${parcelsOfIt})`)
    .join(", ");
}

function perParcel(value: number, shop: ShopWords): string {
  return value >= 0 ? `${valueText(value, shop)} less` : `${valueText(-value, shop)} more`;
}

/**
 * How many it pays to keep.
 *
 * @param figure by the rule of retention
 * @returns one sentence
 */
export function keepWords(figure: KeepFigure): string {
  if (figure.kind === "none") {
    const why = {
      countFirst: "Count it first: then it can be said how many it pays to keep.",
      nothingHeld: "None is there, so none is to be let go.",
      watchedTooShort: "Under 13 weeks of records say too little of how many to keep.",
      priceUnknown: "Without a price it can't be said how many it pays to keep.",
    } as const;
    return why[figure.reason];
  }
  if (figure.reason === "notUsed") {
    return `Not used in a year: by its money alone none of the ${figure.letGo} is worth keeping. Room and a likely use decide as well.`;
  }
  if (figure.kind === "keep") {
    return figure.reason === "costsNothing"
      ? "Keeping it costs no money, only room."
      : `By the cost of holding it pays to keep all ${figure.keep}: they are used before keeping them costs more than buying again.`;
  }
  return `By the cost of holding it pays to keep ${figure.keep} and to let ${figure.letGo} go; room and a likely use decide as well.`;
}

/**
 * A way to make use of a carton that sits, or to be rid of it.
 *
 * @param way as found
 * @param names of item types and cartons
 * @param shop how it writes sizes
 * @returns one sentence
 */
export function wayWords(way: LetGoWay, names: IdleNames, shop: ShopWords): string {
  switch (way.kind) {
    case "cutDown": {
      const heights = way.heights
        .slice(0, MOST_TYPES)
        .map(
          ({ heightUm, itemTypeIds, parcels }) =>
            `${formatLength(micrometres(heightUm), shop.measures)} inside for ${itemTypeIds.map(names.typeOf).join(", ")} (${parcels} parcels)`,
        );
      return `Cut it down: to ${heights.join("; to ")}. Slit the corners, score, fold, trim the flaps: blade away from you.`;
    }
    case "innerBox":
      return `Use it as an inner box, in ${way.outerIds.map(names.cartonOf).join(" or ")}${way.reason === "damaged" ? "" : ": it has no rating to send in"}.`;
    case "pads":
      return `Cut it into pads${way.cartons === null ? "" : `: ${way.cartons} of them`}${way.reason === "damaged" ? ", as it is damaged" : ""}.`;
    case "giveAway":
      return `Give ${way.cartons === 1 ? "it" : `${way.cartons} of them`} away: nothing that you pack fits in it.`;
    case "stopBuying":
      return way.reason === "sits" ? "Stop buying it." : "Stop buying it until it is run down.";
    default:
      return way satisfies never;
  }
}
