import type { Brand } from "#lib/units/brand";

/** Money: a whole number of the currency's smallest unit, such as cents. */
export type MinorUnits = Brand<number, "minor-unit">;

/** The cost of one line or movement: a whole number of 1/10,000 minor unit. */
export type CostValue = Brand<number, "cost">;

const COST_PER_MINOR = 10_000;

/**
 * Money from its stored minor units.
 *
 * @param minor - minor units; negative for money back
 * @returns the same number, as money
 * @throws RangeError if `minor` is not a safe integer
 * @example minorUnits(2600) // 26.00 in a currency with cents
 */
export function minorUnits(minor: number): MinorUnits {
  if (!Number.isSafeInteger(minor)) throw new RangeError(`minorUnits requires a safe integer, got ${minor}`);
  return (minor === 0 ? 0 : minor) as MinorUnits;
}

/**
 * A cost from its stored 1/10,000 minor units.
 *
 * @param cost - 1/10,000 minor unit
 * @returns the same number, as a cost
 * @throws RangeError if `cost` is not a safe integer
 * @example costValue(138298) // 13.8298 cents
 */
export function costValue(cost: number): CostValue {
  if (!Number.isSafeInteger(cost)) throw new RangeError(`costValue requires a safe integer, got ${cost}`);
  return (cost === 0 ? 0 : cost) as CostValue;
}

/** A named way to make a number whole; callers pass the one they mean. */
type RoundingRule = (value: number) => number;

/**
 * To the nearest whole number, a half to the even neighbour: many roundings do not drift.
 *
 * @param value - any finite number
 * @returns a whole number
 * @example roundHalfEven(2.5) // 2
 */
export function roundHalfEven(value: number): number {
  const floor = Math.floor(value);
  if (value - floor !== 0.5) return Math.round(value);
  return floor % 2 === 0 ? floor : floor + 1;
}

/**
 * To the nearest whole number, a half away from zero.
 *
 * @param value - any finite number
 * @returns a whole number
 * @example roundHalfUp(2.5) // 3
 */
export function roundHalfUp(value: number): number {
  return value < 0 ? -Math.round(-value) : Math.round(value);
}

/**
 * A cost in minor units: the one rounding of a parcel's or a line's money.
 *
 * @param cost - 1/10,000 minor unit
 * @param rule - rounding rule
 * @returns minor units
 * @example minorOfCost(costValue(25000), roundHalfEven) // 2
 */
export function minorOfCost(cost: CostValue, rule: RoundingRule): MinorUnits {
  return minorUnits(rule(cost / COST_PER_MINOR));
}

/**
 * Splits money by weights so that the parts sum to the whole: each part is rounded down, and what is left goes, one
 * minor unit each, to the largest remainders (the earlier part first where they are equal).
 *
 * @param total - minor units; negative for money back
 * @param weights - zero or more each, at least one above zero
 * @returns minor units in the order of the weights
 * @throws RangeError if the total is not a safe integer, or the weights are not as said
 * @see largest remainder method (Hamilton), common practice
 * @example splitMinor(100, [1, 1, 1]) // [34, 33, 33]
 */
export function splitMinor(total: number, weights: readonly number[]): number[] {
  if (!Number.isSafeInteger(total)) throw new RangeError(`splitMinor requires a safe integer, got ${total}`);
  const whole = wholeWeights(weights);
  const sum = whole.reduce((all, weight) => all + weight, 0n);
  const size = BigInt(Math.abs(total));
  const parts = whole.map((weight) => (size * weight) / sum);
  const remainders = whole.map((weight) => (size * weight) % sum);
  const left = Number(size - parts.reduce((all, part) => all + part, 0n));
  const order = remainders
    .map((_, index) => index)
    .sort((a, b) => compare(remainders[b], remainders[a]) || a - b);
  const lucky = new Set(order.slice(0, left));
  return parts.map((part, index) => {
    const share = Number(part) + (lucky.has(index) ? 1 : 0);
    return total < 0 && share > 0 ? -share : share;
  });
}

/** Weights with fractions are taken to 40 binary digits of the largest one; whole weights are exact. */
function wholeWeights(weights: readonly number[]): readonly bigint[] {
  const largest = Math.max(...weights);
  const usable = weights.every((weight) => Number.isFinite(weight) && weight >= 0) && largest > 0;
  if (!usable || weights.length === 0) {
    throw new RangeError(`splitMinor requires weights from zero, one above it, got [${weights.join(", ")}]`);
  }
  if (weights.every(Number.isSafeInteger)) return weights.map(BigInt);
  return weights.map((weight) => BigInt(Math.round((weight / largest) * 2 ** 40)));
}

function compare(first: bigint | undefined, second: bigint | undefined): number {
  const difference = (first ?? 0n) - (second ?? 0n);
  if (difference === 0n) return 0;
  return difference > 0n ? 1 : -1;
}

/**
 * Money in words.
 *
 * @param minor - minor units
 * @param currency - ISO 4217 code
 * @param minorDigits - digits behind the point: 2 for cents
 * @param locale - language tag that decides sign, point and grouping
 * @returns the money with its currency sign
 * @throws RangeError if the code is not three letters
 * @example formatMoney(2600, "USD", 2) // "$26.00"
 */
export function formatMoney(minor: number, currency: string, minorDigits: number, locale = "en-US"): string {
  return new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: minorDigits,
    maximumFractionDigits: minorDigits,
  }).format(minor / 10 ** minorDigits);
}

type MoneyReading =
  | { readonly kind: "money"; readonly minor: MinorUnits }
  | { readonly kind: "unreadable"; readonly text: string };

/** A lone point before three digits ("26.505") is in none of these: it may be a slip or a group of thousands. */
const PRICE_FORMS: readonly RegExp[] = [
  /^(?<whole>\d*)[.,](?<fraction>\d{1,2})$/,
  /^(?<whole>\d+)[.,]?$/,
  /^(?<whole>\d{1,3}(?:,\d{3})+)(?:\.(?<fraction>\d+))?$/,
  /^(?<whole>\d{1,3}(?:\.\d{3})+),(?<fraction>\d+)$/,
  /^(?<whole>\d{1,3}(?:\.\d{3}){2,})$/,
  /^(?<whole>\d{1,3}(?:[\s’']\d{3})+)(?:[.,](?<fraction>\d+))?$/,
  /^(?<whole>\d+)\.(?<fraction>\d{3})$/,
];

/**
 * Reads a price: "26", "26.50", "26,50", "1,234.50", with or without a currency sign or code.
 *
 * @param text - what a person typed
 * @param minorDigits - digits behind the point of the currency
 * @returns minor units without rounding, or that it cannot be read (negative, or more digits than the currency has)
 * @example parseMoney("$1,234.50", 2) // { kind: "money", minor: 123450 }
 */
export function parseMoney(text: string, minorDigits: number): MoneyReading {
  const bare = text
    .trim()
    .replace(/^(?:[A-Za-z]{0,3}\p{Sc}|[A-Za-z]{3}(?=[\s\d]))\s*|\s*(?:\p{Sc}|[A-Za-z]{3})$/gu, "");
  const match = PRICE_FORMS.map((form) => form.exec(bare)).find((found) => found !== null);
  const fraction = match?.groups?.fraction ?? "";
  const ambiguous = minorDigits === 3 && /^\d{1,3},\d{3}$/.test(bare);
  if (match === undefined || ambiguous || fraction.length > minorDigits) return { kind: "unreadable", text };
  const minor = Number(
    `${(match.groups?.whole ?? "").replace(/\D/g, "")}${fraction.padEnd(minorDigits, "0")}`,
  );
  return Number.isSafeInteger(minor)
    ? { kind: "money", minor: minorUnits(minor) }
    : { kind: "unreadable", text };
}
