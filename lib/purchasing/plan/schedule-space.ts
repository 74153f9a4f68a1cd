import type { ModelSlot, ModelSupply } from "#lib/purchasing/plan/model-columns";
import { packsMinor } from "#lib/purchasing/plan/price-tiers";

/** A slot with what its packs cost and where they lead. */
export type SpaceSlot = {
  readonly slot: ModelSlot;
  /** packs are looked at in bundles of so many, more than 1 only where the sums would be too many */
  readonly bundle: number;
  /** goods of 0.. bundles, minor units; Infinity for what is not sold */
  readonly goods: Float64Array;
  /** level that one bundle more leads to, the open one from itself again; -1 for none */
  readonly next: Int32Array;
};

/** All that the orders of one supply could add up to, and what each sum would cost in stock. */
export type ScheduleSpace = {
  readonly of: ModelSupply;
  /** use units that orders could have brought in all, rising from 0 */
  readonly levels: Float64Array;
  /** place of the last level where it stands for all higher sums too, -1 where it does not */
  readonly open: number;
  /** by week of arrival */
  readonly slots: readonly (readonly SpaceSlot[])[];
  /** by week: stock right after arrivals without orders */
  readonly after: Float64Array;
  /** by week and level: holding and shortage at its end, end value in the last; Infinity above the most stock */
  readonly costs: readonly Float64Array[];
};

const NEARLY_NOTHING = 1e-7;

/** With more sums than this, packs are looked at in bundles. */
const MOST_LEVELS = 400;

/**
 * Sets up the search for one supply's orders.
 *
 * Closed, it holds sums up to the need and the largest order: enough for good plans, but with thresholds a cheapest
 * plan may fill up orders beyond it. Open, it leaves no plan out, for bounds: sums that keep the most stock but lie
 * above need and largest order share one more level, the lowest of them. That is never dearer than they are: with the
 * need met for all weeks nothing is short at either, holding and room cost no less at a higher sum, and what it is
 * worth at the end beyond that level is taken off with the packs that bring it (`openWorth`).
 *
 * @param of the supply with its slots
 * @param weeks number of weeks
 * @param spared use units that stand-ins spare (or, below 0, cost) in each week
 * @param kind "closed" to plan with, "open" for a bound
 * @returns levels, prices and stock costs
 */
export function scheduleSpace(
  of: ModelSupply,
  weeks: number,
  spared: readonly number[],
  kind: "closed" | "open",
): ScheduleSpace {
  const { supply, reach } = of;
  const after = new Float64Array(weeks);
  const end = new Float64Array(weeks);
  let extra = 0;
  for (let week = 0; week < weeks; week++) {
    after[week] = (reach.after[week] ?? 0) + extra;
    extra += spared[week] ?? 0;
    end[week] = (reach.end[week] ?? 0) + extra;
  }
  let bundle = 1;
  let sums = sumsOf(of, after, bundle);
  while (sums.levels.length > MOST_LEVELS) {
    bundle *= 2;
    sums = sumsOf(of, after, bundle);
  }
  const isOpen = kind === "open" && sums.above < Number.POSITIVE_INFINITY;
  const levels = isOpen ? Float64Array.of(...sums.levels, sums.above) : sums.levels;
  const open = isOpen ? sums.levels.length : -1;
  const costs = Array.from({ length: weeks }, (_, week) => {
    const most = (reach.allowed[week] ?? Number.POSITIVE_INFINITY) + 1e-7;
    const value = week === weeks - 1 ? supply.endValueMinor : 0;
    return levels.map((level) => {
      if (level > 0 && (after[week] ?? 0) + level > most) return Number.POSITIVE_INFINITY;
      const stock = (end[week] ?? 0) + level;
      // What is not there does not stand in for another; a bound may leave that out.
      if (kind === "closed" && (spared[week] ?? 0) < 0 && stock < -NEARLY_NOTHING)
        return Number.POSITIVE_INFINITY;
      const missing = Math.max(0, (supply.wanted[week] ?? 0) - stock);
      return supply.holdingMinor * Math.max(0, stock) + supply.shortMinor * missing - value * stock;
    });
  });
  const slots = Array.from({ length: weeks }, (_, week) =>
    of.slots.filter(({ arrival }) => arrival === week).map((slot) => spaceSlot(slot, levels, open, bundle)),
  );
  return { of, levels, open, slots, after, costs };
}

/**
 * What packs that come to the open level are worth at the end beyond it, minor units.
 *
 * @param space an open space
 * @param level place of the level before the packs
 * @param units use units that the packs bring
 * @returns minor units; 0 where they just reach the open level
 */
export function openWorth({ of, levels, open }: ScheduleSpace, level: number, units: number): number {
  const beyond = (levels[level] ?? 0) + units - (levels[open] ?? 0);
  return of.supply.endValueMinor * Math.max(0, beyond);
}

/** Sums of packs up to what is allowed and of use, and the least sum above that is still allowed. */
function sumsOf(
  of: ModelSupply,
  after: Float64Array,
  bundle: number,
): { readonly levels: Float64Array; readonly above: number } {
  const room = after.map((units, week) => (of.reach.allowed[week] ?? Number.POSITIVE_INFINITY) - units);
  const allowed = Math.max(0, ...room) + 1e-7;
  const top = Math.min(allowed, usefulUnits(of) + 1e-7);
  const sizes = [...new Set(of.slots.map(({ offer }) => offer.unitsPerPack * bundle))];
  let above = Number.POSITIVE_INFINITY;
  const found = new Map([[key(0), 0]]);
  let rim = [0];
  while (rim.length > 0 && found.size <= MOST_LEVELS) {
    const sums = rim.flatMap((level) => sizes.map((size) => level + size));
    above = Math.min(above, ...sums.filter((sum) => sum > top && sum <= allowed));
    rim = [];
    for (const sum of sums) {
      if (sum > top || found.has(key(sum))) continue;
      found.set(key(sum), sum);
      rim.push(sum);
    }
  }
  return { levels: Float64Array.from(found.values()).sort(), above };
}

/** More than the need and one order is seldom cheaper, unless what is left is worth more than it costs. */
function usefulUnits({ slots, reach, supply }: ModelSupply): number {
  const isHoarding = slots.some(({ tiers, offer }) =>
    tiers.some(({ slopeMinor }) => slopeMinor < supply.endValueMinor * offer.unitsPerPack),
  );
  const largest = Math.max(0, ...slots.map(({ most, offer }) => most * offer.unitsPerPack));
  return isHoarding ? Number.POSITIVE_INFINITY : Math.max(0, reach.needed[0] ?? 0) + largest;
}

function spaceSlot(slot: ModelSlot, levels: Float64Array, open: number, bundle: number): SpaceSlot {
  const places = new Map([...levels].map((level, index) => [key(level), index]));
  const first = slot.tiers[0]?.fromPacks ?? 1;
  const goods = Float64Array.from({ length: Math.floor(slot.most / bundle) + 1 }, (_, count) => {
    if (count === 0) return 0;
    return count * bundle < first ? Number.POSITIVE_INFINITY : packsMinor(slot.offer, count * bundle);
  });
  const step = slot.offer.unitsPerPack * bundle;
  const next = Int32Array.from(levels, (level) => places.get(key(level + step)) ?? open);
  return { slot, bundle, goods, next };
}

const key = (units: number): number => Math.round(units * 1e6);
