import type { ModelSlot, ModelSupply } from "#lib/purchasing/plan/model-columns";
import { packsMinor } from "#lib/purchasing/plan/price-tiers";

/** A slot with what its packs cost and where they lead. */
export type SpaceSlot = {
  readonly slot: ModelSlot;
  /** packs are looked at in bundles of so many, more than 1 only where the sums would be too many */
  readonly bundle: number;
  /** goods of 0.. bundles, minor units; Infinity for what is not sold */
  readonly goods: Float64Array;
  /** level that one bundle more leads to, -1 for none */
  readonly next: Int32Array;
};

/** All that the orders of one supply could add up to, and what each sum would cost in stock. */
export type ScheduleSpace = {
  readonly of: ModelSupply;
  /** use units that orders could have brought in all, rising from 0 */
  readonly levels: Float64Array;
  /** by week of arrival */
  readonly slots: readonly (readonly SpaceSlot[])[];
  /** by week: stock right after arrivals without orders */
  readonly after: Float64Array;
  /** by week and level: holding and shortage at its end, end value in the last; Infinity above the most stock */
  readonly costs: readonly Float64Array[];
};

/** With more sums than this, packs are looked at in bundles. */
const MOST_LEVELS = 400;

/**
 * Sets up the search for one supply's orders.
 *
 * @param of the supply with its slots
 * @param weeks number of weeks
 * @param spared use units that stand-ins spare (or, below 0, cost) in each week
 * @returns levels, prices and stock costs
 */
export function scheduleSpace(of: ModelSupply, weeks: number, spared: readonly number[]): ScheduleSpace {
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
  let levels = levelsOf(of, after, bundle);
  while (levels.length > MOST_LEVELS) {
    bundle *= 2;
    levels = levelsOf(of, after, bundle);
  }
  const costs = Array.from({ length: weeks }, (_, week) => {
    const most = (reach.allowed[week] ?? Number.POSITIVE_INFINITY) + 1e-7;
    const value = week === weeks - 1 ? supply.endValueMinor : 0;
    return levels.map((level) => {
      if (level > 0 && (after[week] ?? 0) + level > most) return Number.POSITIVE_INFINITY;
      const stock = (end[week] ?? 0) + level;
      const missing = Math.max(0, (supply.wanted[week] ?? 0) - stock);
      return supply.holdingMinor * Math.max(0, stock) + supply.shortMinor * missing - value * stock;
    });
  });
  const slots = Array.from({ length: weeks }, (_, week) =>
    of.slots.filter(({ arrival }) => arrival === week).map((slot) => spaceSlot(slot, levels, bundle)),
  );
  return { of, levels, slots, after, costs };
}

function levelsOf(of: ModelSupply, after: Float64Array, bundle: number): Float64Array {
  const sizes = [...new Set(of.slots.map(({ offer }) => offer.unitsPerPack * bundle))];
  const room = after.map((units, week) => (of.reach.allowed[week] ?? Number.POSITIVE_INFINITY) - units);
  const largest = Math.max(0, ...of.slots.map(({ most, offer }) => most * offer.unitsPerPack));
  // More than the need and one order is never cheaper, unless what is left is worth more than it costs.
  const isHoarding = of.slots.some(({ tiers, offer }) =>
    tiers.some(({ slopeMinor }) => slopeMinor < of.supply.endValueMinor * offer.unitsPerPack),
  );
  const useful = isHoarding ? Number.POSITIVE_INFINITY : Math.max(0, of.reach.needed[0] ?? 0) + largest;
  const top = Math.min(Math.max(0, ...room), useful) + 1e-7;
  const found = new Map([[key(0), 0]]);
  let rim = [0];
  while (rim.length > 0 && found.size <= MOST_LEVELS) {
    const grown: number[] = [];
    for (const level of rim) {
      for (const size of sizes) {
        const sum = level + size;
        if (sum > top || found.has(key(sum))) continue;
        found.set(key(sum), sum);
        grown.push(sum);
      }
    }
    rim = grown;
  }
  return Float64Array.from(found.values()).sort();
}

function spaceSlot(slot: ModelSlot, levels: Float64Array, bundle: number): SpaceSlot {
  const places = new Map([...levels].map((level, index) => [key(level), index]));
  const first = slot.tiers[0]?.fromPacks ?? 1;
  const goods = Float64Array.from({ length: Math.floor(slot.most / bundle) + 1 }, (_, count) => {
    if (count === 0) return 0;
    return count * bundle < first ? Number.POSITIVE_INFINITY : packsMinor(slot.offer, count * bundle);
  });
  const step = slot.offer.unitsPerPack * bundle;
  const next = Int32Array.from(levels, (level) => places.get(key(level + step)) ?? -1);
  return { slot, bundle, goods, next };
}

const key = (units: number): number => Math.round(units * 1e6);
