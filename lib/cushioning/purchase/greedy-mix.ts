import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";
import {
  type BoardStanding,
  boardStanding,
  type MixBoard,
  mixBoard,
} from "#lib/cushioning/purchase/mix-board";
import type { MixChoice } from "#lib/cushioning/purchase/mix-choice";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";

/** Pairs tried in all: a twentieth of a second. */
const MOST_PAIRS = 2_500;
/** Enough for questions of 20 types and 12 supplies, which settle in fewer. */
const MOST_ROUNDS = 30;

/**
 * A mix without a solver: each supply bought by itself for the ways that cost least at the cheapest prices, then bettered
 * by a pack more or less, by price steps, by taking one offer for another, and, where something stays undone, by two packs
 * at once, as long as that helps. Where the limits cannot be kept that way, nothing is bought.
 *
 * @param question all of the mix, checked
 * @returns a mix that keeps every limit; it may leave undone what a better purchase would not
 */
export function greedyMix(question: MixQuestion): MixChoice {
  const board = mixBoard(question);
  let packs: readonly number[] = firstPacks(board);
  let standing = boardStanding(board, packs);
  const pairs = { left: MOST_PAIRS };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = betterPacks(board, packs, standing) ?? betterPair(board, packs, standing, pairs);
    if (next === null) break;
    packs = next.packs;
    standing = next.standing;
  }
  if (standing.over > 0) {
    packs = packs.map(() => 0);
    standing = boardStanding(board, packs);
  }
  const lines = board.offers.flatMap(({ offer }, index) => {
    const count = packs[index] ?? 0;
    return count > 0 ? [{ offerId: offer.id, packs: count }] : [];
  });
  return { lines, split: standing.split };
}

type Tried = { readonly packs: readonly number[]; readonly standing: BoardStanding };

/** Takes every change that betters, one after the other; null where none does. */
function betterPacks(board: MixBoard, packs: readonly number[], standing: BoardStanding): Tried | null {
  let best: Tried = { packs, standing };
  let isBetter = false;
  for (let index = 0; index < board.offers.length; index++) {
    for (const count of otherCounts(board, best.packs, index)) {
      const changed = best.packs.with(index, count);
      const tried = { packs: changed, standing: boardStanding(board, changed) };
      if (!isBetterStanding(tried.standing, best.standing)) continue;
      best = tried;
      isBetter = true;
    }
    for (const changed of exchanged(board, best.packs, index)) {
      const tried = { packs: changed, standing: boardStanding(board, changed) };
      if (!isBetterStanding(tried.standing, best.standing)) continue;
      best = tried;
      isBetter = true;
      break;
    }
  }
  return isBetter ? best : null;
}

/**
 * Where something stays undone, a pack more of two offers at once, as a parcel takes several supplies, or a pack of one
 * for a pack of another, as they share cash and room: the first that betters; null where none does.
 */
function betterPair(
  board: MixBoard,
  packs: readonly number[],
  standing: BoardStanding,
  pairs: { left: number },
): Tried | null {
  if (standing.lack.parcels === 0 && standing.lack.share === 0) return null;
  for (const changed of pairChanges(board, packs)) {
    if (pairs.left-- <= 0) return null;
    const tried = { packs: changed, standing: boardStanding(board, changed) };
    if (isBetterStanding(tried.standing, standing)) return tried;
  }
  return null;
}

function pairChanges({ offers }: MixBoard, packs: readonly number[]): (readonly number[])[] {
  const isSoldAt = (index: number, count: number) => {
    const offer = offers[index]?.offer;
    return count >= 0 && offer !== undefined && isSold(offer, count);
  };
  const more = [...offers.keys()].filter((one) => isSoldAt(one, (packs[one] ?? 0) + 1));
  return more.flatMap((one) =>
    [...offers.keys()].flatMap((other) =>
      (other === one ? [] : [1, -1])
        .map((change) => (packs[other] ?? 0) + change)
        .filter((count) => isSoldAt(other, count))
        .map((count) => packs.with(one, (packs[one] ?? 0) + 1).with(other, count)),
    ),
  );
}

/** Less than this of a minor unit, or of a limit, is no gain. */
const NEARLY_NOTHING = 1e-6;

function isBetterStanding(one: BoardStanding, other: BoardStanding): boolean {
  if (Math.abs(one.over - other.over) > NEARLY_NOTHING) return one.over < other.over;
  const costs = { totalMinor: one.costs.totalMinor + NEARLY_NOTHING };
  return isBetterMix({ lack: one.lack, costs }, other);
}

/** Counts of an offer to try instead: none, one less, one more, and those at its next price step. */
function otherCounts({ offers }: MixBoard, packs: readonly number[], index: number): number[] {
  const offer = offers[index]?.offer;
  const count = packs[index] ?? 0;
  if (offer === undefined) return [];
  const next = (offer.steps ?? []).find(({ fromPacks }) => fromPacks > count)?.fromPacks ?? count;
  const counts = [count - 1, 0, count + 1, next].filter((each) => each !== count && isSold(offer, each));
  return [...new Set(counts)];
}

/** All packs of an offer taken as packs of another one of the same supply. */
function exchanged({ offers }: MixBoard, packs: readonly number[], index: number): (readonly number[])[] {
  const from = offers[index];
  const count = packs[index] ?? 0;
  if (from === undefined || count === 0) return [];
  return offers.flatMap(({ offer, supply }, other) => {
    if (other === index || supply !== from.supply) return [];
    const more = Math.ceil((count * from.offer.unitsPerPack) / offer.unitsPerPack - NEARLY_NOTHING);
    const taken = soldFrom(offer, (packs[other] ?? 0) + more);
    return taken === null ? [] : [packs.with(index, 0).with(other, taken)];
  });
}

function isSold({ steps, mostPacks }: PlanOffer, count: number): boolean {
  if (count === 0) return true;
  const least = steps?.[0]?.fromPacks ?? Number.POSITIVE_INFINITY;
  return count >= least && count <= (mostPacks ?? Number.POSITIVE_INFINITY);
}

/** The fewest packs from so many on that the offer sells; null where it sells none. */
function soldFrom(offer: PlanOffer, count: number): number | null {
  const sold = Math.max(count, offer.steps?.[0]?.fromPacks ?? Number.POSITIVE_INFINITY);
  return isSold(offer, sold) ? sold : null;
}

/** For each supply the offer that covers its need at least cost, or as much of it as there is. */
function firstPacks(board: MixBoard): number[] {
  const { supplies } = board.question;
  const prices = supplies.map((supply, index) => cheapestUnitMinor(board, index) ?? supply.leftMinor);
  const needs = supplies.map(({ onHand, keep }) => keep - onHand);
  for (const { parcels, ways } of board.types) {
    const dear = (way: (typeof ways)[number]) =>
      way.takes.reduce((sum, { supply, units }) => sum + units * (prices[supply] ?? 0), way.costMinor);
    const [best] = ways.toSorted((a, b) => dear(a) - dear(b));
    for (const { supply, units } of best?.takes ?? []) needs[supply] = (needs[supply] ?? 0) + parcels * units;
  }
  const packs = board.offers.map(() => 0);
  needs.forEach((need, supply) => {
    const [cheapest] = board.offers
      .flatMap(({ offer, supply: of, goodsMinor }, index) => {
        const most = Math.min(
          offer.mostPacks ?? Number.POSITIVE_INFINITY,
          Math.ceil(need / offer.unitsPerPack),
        );
        const count = of === supply && need > 0 ? soldFrom(offer, most) : null;
        if (count === null || count === 0) return [];
        const units = Math.min(need, count * offer.unitsPerPack);
        return [{ index, count, unitMinor: goodsMinor(count) / units }];
      })
      .toSorted((a, b) => a.unitMinor - b.unitMinor);
    if (cheapest !== undefined) packs[cheapest.index] = cheapest.count;
  });
  return packs;
}

function cheapestUnitMinor({ offers }: MixBoard, supply: number): number | null {
  const prices = offers.flatMap(({ offer, supply: of }) => {
    if (of !== supply || offer.mostPacks === 0) return [];
    return (offer.steps ?? []).map(({ priceMinor }) => priceMinor / offer.unitsPerPack);
  });
  return prices.length === 0 ? null : Math.min(...prices);
}
