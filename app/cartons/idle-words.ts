import type { IdleUse } from "#lib/cartons/idle/could-have-gone";
import type { LetGoWay } from "#lib/cartons/idle/let-go-ways";
import type { KeepFigure } from "#lib/cartons/keeping/keep-figure";
import { formatLength, micrometres } from "#lib/units/length";
import { type ShopWords, valueText } from "./choice-words";
import type { IdleAnswer } from "./idle-use";

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
  if (asked.parcels === 0) return [`No other parcel of the last ${asked.days} days can be looked at.`];
  const of = `${asked.parcels} ${asked.parcels === 1 ? "parcel" : "parcels"} of the last ${asked.days} days`;
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
      : `Worth it for ${bestTypes(use, withinStock.parcels, names)}: ${valueText(withinStock.savesAsSpentValue, shop)} saved on ${withinStock.parcels === 1 ? "this one" : `these ${withinStock.parcels}`}, its price taken as spent.`;
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
    return `Not used in a year: if that goes on, none of the ${figure.letGo} is worth keeping by its money alone. Room and a likely use decide as well.`;
  }
  if (figure.kind === "keep") {
    return figure.reason === "costsNothing"
      ? "Keeping it costs no money, only room."
      : `By the cost of holding it pays to keep all ${figure.keep}: they are used before keeping them costs more than buying again.`;
  }
  return `By the cost of holding it pays to keep ${figure.keep} and to let ${figure.letGo} go; room and a likely use decide as well.`;
}

/**
 * What to do with a carton: used up where that saves, before it is thought of keeping or letting go.
 *
 * @param answer what could have gone in it, and the ways
 * @param figure by the rule of retention
 * @param names of item types and cartons
 * @param shop how it writes sizes
 * @returns a sentence first, then the ways
 */
export function idleAdvice(
  { use, ways }: IdleAnswer,
  figure: KeepFigure,
  names: IdleNames,
  shop: ShopWords,
): { readonly first: string; readonly ways: readonly string[] } {
  const isWorthIt = use.withinStock !== null && use.withinStock.parcels > 0;
  const isLeft = figure.kind === "letGo" && figure.reason === "notUsed";
  if (!(isWorthIt && isLeft)) {
    return { first: keepWords(figure), ways: ways.map((way) => wayWords(way, names, shop)) };
  }
  const others = ways.filter(({ kind }) => kind !== "stopBuying" && kind !== "giveAway");
  return {
    first: "It was not used in a year: use it up on those first, and buy no more until it is gone.",
    ways: others.map((way) => wayWords(way, names, shop)),
  };
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
            `${formatLength(micrometres(heightUm), shop.measures)} inside for ${itemTypeIds.map(names.typeOf).join(", ")} (${parcels === 1 ? "one parcel" : `${parcels} parcels`})`,
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
