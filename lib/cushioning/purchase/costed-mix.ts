import type { MixChoice, SplitPart } from "#lib/cushioning/purchase/mix-choice";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { orderWeek } from "#lib/cushioning/purchase/order-week";
import { worthOfLeft } from "#lib/cushioning/purchase/worth-of-left";
import { costedPlan, type PlanOrder } from "#lib/purchasing/plan/costed-plan";

/** One order to one supplier. */
export type MixOrder = Omit<PlanOrder, "week">;

/** What becomes of a supply, use units. */
export type MixStock = {
  readonly supplyId: string;
  readonly onHand: number;
  readonly bought: number;
  readonly used: number;
  readonly left: number;
};

/** What a plan costs, part by part, minor units. Goods and delivery are whole, the rest are expectations. */
export type MixCosts = {
  readonly goodsMinor: number;
  readonly deliveryMinor: number;
  readonly postageMinor: number;
  /** minutes and breakage of the parcels */
  readonly otherMinor: number;
  /** goods + delivery + postage + other: what the gap is measured against, as the total may be near or below 0 */
  readonly grossMinor: number;
  /** worth of what is left over */
  readonly leftMinor: number;
  /** gross - worth of what is left over */
  readonly totalMinor: number;
};

/** What a plan leaves undone; no sum of money stands in for it. A plan that leaves less undone is the better one. */
export type MixLack = {
  /** parcels that are not packed, of all types */
  readonly parcels: number;
  /** units below what is to be kept, as a share of that, summed over the supplies */
  readonly share: number;
};

/** A plan with all that follows from it. */
export type CostedMix = {
  readonly orders: readonly MixOrder[];
  /** parcels by type and style, by the question's order; none of nothing */
  readonly split: readonly SplitPart[];
  readonly stock: readonly MixStock[];
  /** supplies that end below what is to be kept, and by how many use units */
  readonly shortfalls: readonly { readonly supplyId: string; readonly units: number }[];
  /** types of which parcels cannot be packed, and how many */
  readonly unpacked: readonly { readonly typeId: string; readonly parcels: number }[];
  readonly lack: MixLack;
  readonly costs: MixCosts;
  /** litres of all supplies right after delivery */
  readonly litres: number;
};

const NEARLY_NOTHING = 1e-6;
/** Share by which sums of parcels are off by rounding alone. */
const ROUNDING = 1e-10;

/**
 * What a choice of packs and of styles costs and what is left: from price steps, thresholds and recipes alone, never
 * from a solver's figures.
 *
 * @param question all of the mix
 * @param choice packs by offer, parcels by type and style
 * @returns orders, stock, what is undone, costs
 * @throws RangeError for an offer, type or style that the question does not have
 */
export function costedMix(question: MixQuestion, choice: MixChoice): CostedMix {
  const lines = choice.lines.map((line) => ({ ...line, week: 0 }));
  const { orders } = costedPlan(orderWeek(question), { lines, standIns: [] });
  const stock = stockOf(question, choice);
  const shortfalls = question.supplies.flatMap(({ id, keep }, index) => {
    const units = keep - (stock[index]?.left ?? 0);
    // A hair below nothing where nothing is to be kept is the solver's rounding.
    return keep > 0 && units > NEARLY_NOTHING * Math.max(1, keep) ? [{ supplyId: id, units }] : [];
  });
  const unpacked = question.types.flatMap(({ id, parcels }) => {
    const open = parcels - partsOf(choice, id).reduce((sum, part) => sum + part.parcels, 0);
    return open > ROUNDING * Math.max(1, parcels) ? [{ typeId: id, parcels: open }] : [];
  });
  const keeps = new Map(question.supplies.map(({ id, keep }) => [id, keep]));
  const lack = {
    parcels: unpacked.reduce((sum, { parcels }) => sum + parcels, 0),
    share: shortfalls.reduce((sum, { supplyId, units }) => sum + units / (keeps.get(supplyId) ?? 1), 0),
  };
  return {
    orders: orders.map(({ week: _, ...order }) => order),
    split: question.types.flatMap(({ id, ways }) =>
      ways.flatMap(({ style }) =>
        partsOf(choice, id).filter((part) => part.style === style && part.parcels > 0),
      ),
    ),
    stock,
    shortfalls,
    unpacked,
    lack,
    costs: costsOf(question, choice, orders, stock),
    litres: question.supplies.reduce((sum, { litresPerUnit, onHand }, index) => {
      return sum + litresPerUnit * (onHand + (stock[index]?.bought ?? 0));
    }, 0),
  };
}

const partsOf = ({ split }: MixChoice, typeId: string): SplitPart[] =>
  split.filter((part) => part.typeId === typeId);

function wayOf({ types }: MixQuestion, { typeId, style }: SplitPart) {
  const way = types.find(({ id }) => id === typeId)?.ways.find((each) => each.style === style);
  if (way === undefined) {
    throw new RangeError(`costedMix requires what the question has, got type ${typeId} in style ${style}`);
  }
  return way;
}

function stockOf(question: MixQuestion, choice: MixChoice): MixStock[] {
  const used = new Map<string, number>();
  for (const part of choice.split) {
    for (const { supplyId, units } of wayOf(question, part).takes) {
      used.set(supplyId, (used.get(supplyId) ?? 0) + units * part.parcels);
    }
  }
  const offers = new Map(question.offers.map((offer) => [offer.id, offer]));
  const bought = new Map<string, number>();
  for (const { offerId, packs } of choice.lines) {
    const offer = offers.get(offerId);
    if (offer === undefined) continue;
    bought.set(offer.supplyId, (bought.get(offer.supplyId) ?? 0) + packs * offer.unitsPerPack);
  }
  return question.supplies.map(({ id, onHand }) => {
    const of = { supplyId: id, onHand, bought: bought.get(id) ?? 0, used: used.get(id) ?? 0 };
    return { ...of, left: onHand + of.bought - of.used };
  });
}

function costsOf(
  question: MixQuestion,
  { split }: MixChoice,
  orders: readonly PlanOrder[],
  stock: readonly MixStock[],
): MixCosts {
  const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0);
  const goodsMinor = sum(orders.map((order) => order.goodsMinor));
  const deliveryMinor = sum(orders.map((order) => order.deliveryMinor));
  const postageMinor = sum(split.map((part) => part.parcels * wayOf(question, part).sendMinor));
  const otherMinor = sum(split.map((part) => part.parcels * wayOf(question, part).otherMinor));
  const leftMinor = sum(
    question.supplies.map((supply, index) => worthOfLeft(supply, stock[index]?.left ?? 0)),
  );
  const grossMinor = goodsMinor + deliveryMinor + postageMinor + otherMinor;
  const totalMinor = grossMinor - leftMinor;
  return { goodsMinor, deliveryMinor, postageMinor, otherMinor, grossMinor, leftMinor, totalMinor };
}
