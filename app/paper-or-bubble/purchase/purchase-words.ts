import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixChange } from "#lib/cushioning/purchase/mix-change";
import type { AnotherPack } from "#lib/cushioning/purchase/mix-study";
import type { MixPlan } from "#lib/cushioning/purchase/solved-mix";
import type { Offer } from "#prisma/records/suppliers";
import { type MoneyAndMass, minorText } from "../why-words";

/** What words of a plan are made with. */
export type PlanNames = {
  readonly offerOf: (offerId: string) => Offer | undefined;
  readonly supplyName: (supplyId: string) => string;
  /** a kind of parcel by the id of its type */
  readonly kindName: (typeId: string) => string;
  readonly shop: MoneyAndMass;
};

const SPLIT_LEAST = 0.005;

/**
 * What a plan buys, in one line.
 *
 * @param plan its orders
 * @param names of offers and supplies
 * @returns "2 × Packing paper (25 lb bundle) and 1 × Large bubble (roll of 125 sq ft)"; "nothing"
 */
export function buysWords({ orders }: Pick<CostedMix, "orders">, names: PlanNames): string {
  const lines = orders.flatMap((order) => order.lines.map((line) => packsWords(line, names)));
  const last = lines.at(-1);
  if (last === undefined) return "nothing";
  return lines.length === 1 ? last : `${lines.slice(0, -1).join(", ")} and ${last}`;
}

/**
 * Packs of an offer in words.
 *
 * @param line offer and packs
 * @param names of offers and supplies
 * @returns "2 × Packing paper (25 lb bundle)"
 */
export function packsWords(
  { offerId, packs }: { readonly offerId: string; readonly packs: number },
  names: PlanNames,
): string {
  const offer = names.offerOf(offerId);
  return offer === undefined
    ? `${packs} × ${offerId}`
    : `${packs} × ${names.supplyName(offer.supplyId)} (${offer.pack})`;
}

/**
 * Which parcels a plan packs in which style.
 *
 * @param plan its split
 * @param names of kinds of parcel
 * @returns one line for each style, the parcels in their order; a kind in two styles stands in both with its share
 */
export function splitWords({ split }: Pick<CostedMix, "split">, names: PlanNames): string[] {
  const inStyles = [...new Set(split.map(({ style }) => style))];
  return inStyles.map((style) => {
    const own = split.filter((part) => part.style === style && part.parcels > SPLIT_LEAST);
    const parts = own.map(({ typeId, parcels }) => {
      const all = split.filter((part) => part.typeId === typeId).reduce((sum, part) => sum + part.parcels, 0);
      const share = parcels < all - SPLIT_LEAST ? `${shown(parcels)} of ${shown(all)} parcels of ` : "";
      return `${share}${names.kindName(typeId)}`;
    });
    return `${style === "mixed" ? "Mixed" : `On ${style}`}: ${parts.join(", ")}.`;
  });
}

/**
 * How good a plan is known to be.
 *
 * @param plan with its proof
 * @param shop how it writes money: a share of the postage says little of a purchase
 * @returns one sentence
 */
export function proofWords(
  { proof, from, costs }: Pick<MixPlan, "proof" | "from" | "costs">,
  shop: MoneyAndMass,
): string {
  const seconds = `${proof.seconds.toFixed(1)} s`;
  if (proof.gap === null || proof.boundMinor === null)
    return `Nothing is proven of how good it is (${seconds}).`;
  const gap = `${(proof.gap * 100).toFixed(proof.gap < 0.001 ? 2 : 1)} %`;
  const by = from === "solver" ? "" : ", found without the solver";
  return proof.gap < 0.00005
    ? `No plan is cheaper by these figures: proven in ${seconds}${by}.`
    : `At most ${minorText(costs.totalMinor - proof.boundMinor, shop)} cheaper (${gap}) is possible by these figures: proven in ${seconds}${by}.`;
}

/**
 * What one more pack is worth.
 *
 * @param another of a study
 * @param names of offers and supplies
 * @returns one sentence
 */
export function anotherPackWords({ offerId, worthMinor, change }: AnotherPack, names: PlanNames): string {
  const offer = names.offerOf(offerId);
  const pack = offer === undefined ? offerId : `${offer.pack} of ${names.supplyName(offer.supplyId)}`;
  const { shop } = names;
  const price = offer?.priceMinor == null ? "" : `; it costs ${minorText(offer.priceMinor, shop)}`;
  const otherwise = switchedWords(change, names);
  const stays =
    otherwise === "" ? " No parcel would be packed otherwise: it would be stock for later." : otherwise;
  return `Another ${pack} on the shelf would be worth ${minorText(worthMinor, shop)}${price}.${stays}`;
}

/**
 * What a change of supply does to the plan.
 *
 * @param change of a study
 * @param when "With bubble 20 % dearer"
 * @param names of kinds of parcel
 * @returns one sentence
 */
export function changeWords(change: MixChange, when: string, names: PlanNames): string {
  const { moreMinor, moreUndone } = change;
  const undone =
    moreUndone.parcels > SPLIT_LEAST
      ? `, and about ${shown(moreUndone.parcels)} parcels could not be packed`
      : "";
  const money = minorText(Math.abs(moreMinor), names.shop);
  const moved = moreMinor > 0 ? `the plan costs ${money} more` : `the plan costs ${money} less`;
  const more = Math.round(moreMinor) === 0 ? "the plan costs the same" : moved;
  return `${when} ${more}${undone}.${switchedWords(change, names)}`;
}

function switchedWords({ switched }: MixChange, names: PlanNames): string {
  const words = switched.flatMap(({ typeId, styles }) => {
    const [gains] = styles.filter(({ before, after }) => after > before + SPLIT_LEAST);
    return gains === undefined
      ? []
      : [`${shown(gains.after - gains.before)} parcels of ${names.kindName(typeId)} to ${gains.style}`];
  });
  return words.length === 0 ? "" : ` Then ${words.join(", ")}.`;
}

function shown(parcels: number): string {
  return parcels < 10 && Math.abs(parcels - Math.round(parcels)) > 0.05
    ? parcels.toFixed(1)
    : String(Math.round(parcels));
}
