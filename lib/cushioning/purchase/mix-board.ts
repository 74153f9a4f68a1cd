import type { RankedMix } from "#lib/cushioning/purchase/is-better-mix";
import type { MixChoice } from "#lib/cushioning/purchase/mix-choice";
import type { MixQuestion, MixWay } from "#lib/cushioning/purchase/mix-question";
import { orderWeek } from "#lib/cushioning/purchase/order-week";
import { worthOfLeft } from "#lib/cushioning/purchase/worth-of-left";
import { deliveryOf } from "#lib/purchasing/plan/costed-plan";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import { packsMinor } from "#lib/purchasing/plan/price-tiers";

/** A way to pack with supplies by their place in the question. */
export type BoardWay = {
  readonly style: MixWay["style"];
  readonly takes: readonly { readonly supply: number; readonly units: number }[];
  /** postage and other costs of a parcel */
  readonly costMinor: number;
};

/** An offer with its supply and supplier by their place. */
export type BoardOffer = {
  readonly offer: PlanOffer;
  readonly supply: number;
  readonly supplier: number;
  /** what so many packs cost, minor units; worked out once */
  readonly goodsMinor: (packs: number) => number;
};

/** A question laid out by number, for trying many purchases quickly. */
export type MixBoard = {
  readonly question: MixQuestion;
  readonly offers: readonly BoardOffer[];
  readonly suppliers: readonly PlanSupplier[];
  /** types in the order in which they take what there is: first those that lose most by another way */
  readonly types: readonly {
    readonly id: string;
    readonly parcels: number;
    readonly ways: readonly BoardWay[];
  }[];
  /** litres that may be there after delivery */
  readonly litres: number;
};

/** What a purchase comes to when parcels are packed in turn, each in the best way that there is enough for. */
export type BoardStanding = RankedMix & {
  /** shares by which cash, room and least orders are broken, summed; 0 for a purchase that may be made */
  readonly over: number;
  readonly split: MixChoice["split"];
};

/**
 * A question laid out by number.
 *
 * @param question all of the mix, checked
 * @returns the board
 */
export function mixBoard(question: MixQuestion): MixBoard {
  const week = orderWeek(question);
  const supplyAt = new Map(question.supplies.map(({ id }, index) => [id, index]));
  const supplierAt = new Map(question.suppliers.map(({ id }, index) => [id, index]));
  const types = question.types.map(({ id, parcels, ways }) => {
    const laid = ways
      .map(({ style, takes, sendMinor, otherMinor }) => ({
        style,
        takes: takes.map(({ supplyId, units }) => ({ supply: supplyAt.get(supplyId) ?? -1, units })),
        costMinor: sendMinor + otherMinor,
      }))
      .toSorted((a, b) => usedUpMinor(question, a) - usedUpMinor(question, b));
    const [best, next] = laid.map((way) => usedUpMinor(question, way));
    return { id, parcels, ways: laid, loses: (next ?? Number.POSITIVE_INFINITY) - (best ?? 0) };
  });
  return {
    question,
    offers: week.offers.map((offer) => ({
      offer,
      supply: supplyAt.get(offer.supplyId) ?? -1,
      supplier: supplierAt.get(offer.supplierId) ?? -1,
      goodsMinor: goodsOnce(offer),
    })),
    suppliers: week.suppliers,
    types: types.toSorted((a, b) => (a.loses === b.loses ? 0 : b.loses - a.loses)),
    litres: week.limits.litres ?? Number.POSITIVE_INFINITY,
  };
}

function goodsOnce(offer: PlanOffer): BoardOffer["goodsMinor"] {
  const known = new Map<number, number>();
  return (packs) => {
    const found = known.get(packs);
    if (found !== undefined) return found;
    const minor = packsMinor(offer, packs);
    known.set(packs, minor);
    return minor;
  };
}

/** What a parcel costs with the worth of what it takes. */
function usedUpMinor({ supplies }: MixQuestion, { takes, costMinor }: BoardWay): number {
  return takes.reduce(
    (sum, { supply, units }) => sum + units * (supplies[supply]?.leftMinor ?? 0),
    costMinor,
  );
}

/**
 * What a purchase comes to.
 *
 * @param board the question
 * @param packs whole packs of each offer, each at least what the offer sells
 * @returns limits broken, what is undone, total
 */
export function boardStanding(board: MixBoard, packs: readonly number[]): BoardStanding {
  const { supplies, limits } = board.question;
  const goods = board.suppliers.map(() => 0);
  const stock = supplies.map(({ onHand }) => onHand);
  const ordered = new Set<number>();
  board.offers.forEach(({ offer, supply, supplier, goodsMinor }, index) => {
    const count = packs[index] ?? 0;
    if (count === 0) return;
    ordered.add(supplier);
    goods[supplier] = (goods[supplier] ?? 0) + goodsMinor(count);
    stock[supply] = (stock[supply] ?? 0) + count * offer.unitsPerPack;
  });
  let spent = 0;
  let over = 0;
  for (const index of ordered) {
    const supplier = board.suppliers[index];
    const value = goods[index] ?? 0;
    if (supplier === undefined) continue;
    spent += value + deliveryOf(supplier, value);
    over += shareOver(supplier.leastOrderMinor ?? 0, value);
  }
  over += shareOver(spent, limits.cashMinor ?? Number.POSITIVE_INFINITY);
  const litres = supplies.reduce(
    (sum, { litresPerUnit }, index) => sum + litresPerUnit * (stock[index] ?? 0),
    0,
  );
  over += shareOver(litres, board.litres);
  const { split, open, costMinor } = packed(board, stock);
  let share = 0;
  let leftMinor = 0;
  supplies.forEach((supply, index) => {
    const left = stock[index] ?? 0;
    if (supply.keep > 0) share += Math.max(0, supply.keep - left) / supply.keep;
    leftMinor += worthOfLeft(supply, left);
  });
  return {
    over,
    split,
    lack: { parcels: open, share },
    costs: { totalMinor: spent + costMinor - leftMinor },
  };
}

/** Room for the rounding of sums of litres. */
const shareOver = (value: number, limit: number): number =>
  value <= limit * (1 + 1e-9) ? 0 : (value - limit) / Math.max(1, limit);

/** Packs each type in turn, first above what is to be kept, then into it; takes it from the stock. */
function packed({ types, question }: MixBoard, stock: number[]) {
  const parts = types.map(({ ways }) => ways.map(() => 0));
  const open = types.map(({ parcels }) => parcels);
  let costMinor = 0;
  const keeps = question.supplies.map(({ keep }) => keep);
  for (const kept of [keeps, keeps.map(() => 0)]) {
    types.forEach(({ ways }, type) => {
      ways.forEach((way, at) => {
        const can = Math.min(open[type] ?? 0, enoughFor(way, stock, kept));
        const row = parts[type];
        if (can <= 0 || row === undefined) return;
        for (const { supply, units } of way.takes) stock[supply] = (stock[supply] ?? 0) - can * units;
        open[type] = (open[type] ?? 0) - can;
        row[at] = (row[at] ?? 0) + can;
        costMinor += can * way.costMinor;
      });
    });
  }
  const split = types.flatMap(({ id, ways }, type) =>
    ways.map(({ style }, at) => ({ typeId: id, style, parcels: parts[type]?.[at] ?? 0 })),
  );
  return {
    split: split.filter(({ parcels }) => parcels > 0),
    costMinor,
    open: open.reduce((sum, each) => sum + each, 0),
  };
}

/** Parcels that there is enough for above what is kept; endless where nothing is taken. */
function enoughFor({ takes }: BoardWay, stock: readonly number[], kept: readonly number[]): number {
  return takes.reduce((least, { supply, units }) => {
    const free = Math.max(0, (stock[supply] ?? 0) - (kept[supply] ?? 0));
    return units > 0 ? Math.min(least, free / units) : least;
  }, Number.POSITIVE_INFINITY);
}
