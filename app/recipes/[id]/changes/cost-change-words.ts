import type { CostCause, CostChange } from "#lib/packing/cost-change/cost-change";
import { roundedParts } from "#lib/packing/cost-change/rounded-parts";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";

const COST_PER_MINOR = 10_000;
/** Keeps a sign on the line of its number. */
const WORD_JOINER = "\u2060";
/** Reasons named in a sentence. */
const MOST_SAID = 3;

type Currency = Pick<Shop, "currency" | "minorDigits">;
type NameOf = (supplyId: string) => string;

/** What a cause adds to the mean cost of a parcel, in words and whole minor units. */
export type ChangeReason = { readonly words: string; readonly minor: number };

/** A change in whole minor units: the reasons add up to the difference as it is shown. */
export type ToldChange = {
  readonly beforeMinor: number;
  readonly nowMinor: number;
  readonly reasons: readonly ChangeReason[];
};

const MORE: Readonly<Record<Exclude<CostCause, "price">, readonly [more: string, less: string]>> = {
  card: ["the card takes more", "the card takes less"],
  carton: ["dearer cartons chosen", "cheaper cartons chosen"],
  style: ["packed in dearer styles more often", "packed in cheaper styles more often"],
  pieces: ["more pieces in a parcel", "fewer pieces in a parcel"],
  rest: ["used more than the card says", "used less over the card"],
};

/**
 * A change of cost as it is told: prices by supply, the other causes as a whole, the largest first.
 *
 * @param change what changed the mean cost of a parcel
 * @param nameOf the name of a supply
 * @returns whole minor units; what rounds to nothing is not among the reasons
 */
export function toldChange(change: CostChange, nameOf: NameOf): ToldChange {
  const sums = new Map<string, { cause: CostCause; supplyId: string; cost: number }>();
  for (const { cause, supplyId, cost } of change.parts) {
    const key = cause === "price" ? `price ${supplyId}` : cause;
    sums.set(key, { cause, supplyId, cost: (sums.get(key)?.cost ?? 0) + cost });
  }
  const reasons = [...sums.values()];
  const beforeMinor = Math.round(change.before / COST_PER_MINOR);
  const nowMinor = Math.round(change.now / COST_PER_MINOR);
  // Both means were rounded: what that moves is shared with the rest, so that the shown figures add up.
  const slack = (nowMinor - beforeMinor) * COST_PER_MINOR - (change.now - change.before);
  const parts = reasons.map(({ cost }) => (cost + slack / reasons.length) / COST_PER_MINOR);
  const minors = roundedParts(parts);
  return {
    beforeMinor,
    nowMinor,
    reasons: reasons
      .map(({ cause, supplyId }, index) => reason(cause, nameOf(supplyId), minors[index] ?? 0))
      .filter(({ minor }) => minor !== 0)
      .toSorted((a, b) => Math.abs(b.minor) - Math.abs(a.minor)),
  };
}

/**
 * Money with its sign, as a change is told.
 *
 * @example signedMoney(-7, shop) // "−$0.07"
 */
export function signedMoney(minor: number, { currency, minorDigits }: Currency): string {
  const money = formatMoney(Math.abs(minor), currency, minorDigits);
  if (minor === 0) return money;
  return `${minor < 0 ? "−" : "+"}${WORD_JOINER}${money}`;
}

/**
 * The largest reasons in words, the others as a sum, so that what is said adds up.
 *
 * @param reasons the largest first
 * @param shop its currency
 * @returns "Packing paper dearer +$0.09, the card takes more +$0.07, the rest +$0.02"; empty without reasons
 */
export function reasonsWords(reasons: readonly ChangeReason[], shop: Currency): string {
  const said = reasons.length <= MOST_SAID + 1 ? reasons : reasons.slice(0, MOST_SAID);
  const rest = reasons.slice(said.length).reduce((sum, { minor }) => sum + minor, 0);
  const words = said.map((each) => `${each.words} ${signedMoney(each.minor, shop)}`);
  return [...words, ...(rest === 0 ? [] : [`the rest ${signedMoney(rest, shop)}`])].join(", ");
}

/**
 * A change as one sentence.
 *
 * @param name the item type
 * @param than what it is held against: "in the four weeks to 28 May"
 * @param told the change
 * @param shop its currency
 * @returns "A parcel of mug pair costs $0.18 more than in …: Packing paper dearer +$0.09, …"
 */
export function changeSentence(name: string, than: string, told: ToldChange, shop: Currency): string {
  const more = told.nowMinor - told.beforeMinor;
  const reasons = reasonsWords(told.reasons, shop);
  const because = reasons === "" ? "." : `: ${reasons}.`;
  if (more === 0) return `A parcel of ${name} costs as much as ${than}${because}`;
  const money = formatMoney(Math.abs(more), shop.currency, shop.minorDigits);
  return `A parcel of ${name} costs ${money} ${more < 0 ? "less" : "more"} than ${than}${because}`;
}

function reason(cause: CostCause, supply: string, minor: number): ChangeReason {
  if (cause === "price") return { words: `${supply} ${minor < 0 ? "cheaper" : "dearer"}`, minor };
  const [more, less] = MORE[cause];
  return { words: minor < 0 ? less : more, minor };
}
