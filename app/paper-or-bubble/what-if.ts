import { parseMoney } from "#lib/units/money";

/** Other prices and another rate card, tried out and stored nowhere. */
export type WhatIf = {
  /** 1/10,000 minor unit a use unit, by supply */
  readonly prices: ReadonlyMap<string, number>;
  /** a kept rate card; null: the one that holds */
  readonly cardId: string | null;
};

/** What an address asks to try out, and what of it can't be read, by field. */
export type AskedWhatIf = { readonly whatIf: WhatIf; readonly problems: ReadonlyMap<string, string> };

/** How a field for a price begins; the id of the supply follows. */
const PRICE = "price-";
/** Field of the rate card. */
export const CARD_FIELD = "card";
const VALUE_PER_MINOR = 10_000;
/** Digits behind the point of a price for a use unit, beyond those of the currency: a sheet costs 7.57 cents. */
export const FINER_DIGITS = 2;

/**
 * The field of a supply's price.
 *
 * @param supplyId id of the supply
 * @example priceField("large-bubble") // "price-large-bubble"
 */
export function priceField(supplyId: string): string {
  return `${PRICE}${supplyId}`;
}

/**
 * Reads what an address asks to try out.
 *
 * @param query fields of the address
 * @param known supplies whose price can be tried and rate cards, by id, and the currency's digits
 * @returns what can be read; a price as it stands now is no what-if
 */
export function askedWhatIf(
  query: Readonly<Record<string, string>>,
  known: {
    readonly supplyIds: readonly string[];
    readonly cardIds: readonly string[];
    readonly minorDigits: number;
    readonly shownNow: (supplyId: string) => string;
  },
): AskedWhatIf {
  const prices = new Map<string, number>();
  const problems = new Map<string, string>();
  for (const supplyId of known.supplyIds) {
    const field = priceField(supplyId);
    const typed = query[field];
    if (typed === undefined || typed === known.shownNow(supplyId)) continue;
    const read = finePrice(typed, known.minorDigits);
    if (read === null)
      problems.set(field, `“${typed}” is no price. Type one like ${known.shownNow(supplyId) || "0.25"}.`);
    else prices.set(supplyId, read);
  }
  const asked = query[CARD_FIELD] ?? null;
  if (asked !== null && !known.cardIds.includes(asked)) {
    problems.set(CARD_FIELD, "This rate card is not kept any more. Choose another.");
    return { whatIf: { prices, cardId: null }, problems };
  }
  return { whatIf: { prices, cardId: asked }, problems };
}

/** A price with up to two digits more than the currency has. */
function finePrice(typed: string, minorDigits: number): number | null {
  const plain = /^\s*(\d*)(?:[.,](\d+))?\s*$/.exec(typed);
  const [, whole = "", fraction = ""] = plain ?? [];
  if (plain !== null && `${whole}${fraction}` !== "" && fraction.length <= minorDigits + FINER_DIGITS) {
    const minor = Number(`${whole === "" ? "0" : whole}.${fraction}`) * 10 ** minorDigits;
    return storedPrice(minor);
  }
  const money = parseMoney(typed, minorDigits);
  return money.kind === "money" && money.minor >= 0 ? storedPrice(money.minor) : null;
}

/** Null for what is too large to be reckoned with. */
function storedPrice(minor: number): number | null {
  const value = Math.round(minor * VALUE_PER_MINOR);
  return Number.isSafeInteger(value) ? value : null;
}

/**
 * A price for a use unit as it stands in a field.
 *
 * @param value 1/10,000 minor unit
 * @param minorDigits digits of the currency
 * @returns with two digits more than the currency has, as far as they are not nought
 * @example priceText(252_000, 2) // "0.252"
 */
export function priceText(value: number, minorDigits: number): string {
  const text = (value / VALUE_PER_MINOR / 10 ** minorDigits).toFixed(minorDigits + FINER_DIGITS);
  return text.replace(/\.?0{1,2}$/, "");
}

/**
 * What is tried out as it stands in an address, to be put behind other fields.
 *
 * @param query fields of the address
 * @returns "&price-large-bubble=0.3"; empty where nothing is tried
 */
export function triedQuery(query: Readonly<Record<string, string>>): string {
  const tried = Object.entries(query).filter(([name]) => name === CARD_FIELD || name.startsWith(PRICE));
  return tried.length === 0 ? "" : `&${new URLSearchParams(tried).toString()}`;
}
