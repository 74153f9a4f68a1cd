import type { ModelSupply } from "#lib/purchasing/plan/model-columns";
import type { ChosenStandIn } from "#lib/purchasing/plan/plan-choice";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSubstitute } from "#lib/purchasing/plan/plan-substitute";

/**
 * What stands in for what before anything is ordered. What has no offer of its own is used up before anything is
 * bought in its place. What has one stands in where the other runs short before anything could arrive, as far as
 * it can be bought again in time itself; what is clearly cheaper stands in all the time.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param cheap the pairs that stand in all the time
 * @returns stand-ins by week
 */
export function standInsFirst(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  cheap: readonly PlanSubstitute[],
): ChosenStandIn[] {
  const ends = supplies.map(({ reach }) => [...reach.end]);
  const spared = new Map<string, number>();
  return question.substitutes.flatMap((pair) => {
    const from = supplies.find(({ supply }) => supply.id === pair.fromSupplyId);
    const to = supplies.find(({ supply }) => supply.id === pair.toSupplyId);
    if (from === undefined || to === undefined) return [];
    const left = ends[from.index] ?? [];
    const there = ends[to.index] ?? [];
    return pairStandIns(
      { pair, from, to, left, there, spared, isCheap: cheap.includes(pair) },
      question.weeks,
    );
  });
}

type PairOfSupplies = {
  readonly pair: PlanSubstitute;
  readonly from: ModelSupply;
  readonly to: ModelSupply;
  /** stock at the end of each week of the one that stands in, and of the other; changed as it stands in */
  readonly left: number[];
  readonly there: number[];
  /** what other stand-ins spare already, by supply and week */
  readonly spared: Map<string, number>;
  readonly isCheap: boolean;
};

function pairStandIns(of: PairOfSupplies, weeks: number): ChosenStandIn[] {
  const { pair, from, to, left, there, spared, isCheap } = of;
  const isAlways = isCheap || from.slots.length === 0;
  const again = firstArrival(from, weeks);
  const until = isAlways ? weeks : firstArrival(to, weeks);
  const standIns: ChosenStandIn[] = [];
  for (let week = 0; week < until; week++) {
    const free = isCheap && week >= again ? Number.POSITIVE_INFINITY : freeUntil(from, left, week, again);
    const key = `${pair.toSupplyId} ${week}`;
    const open = (to.supply.use[week] ?? 0) - (spared.get(key) ?? 0);
    const lacking = isAlways ? open : (to.supply.wanted[week] ?? 0) - (there[week] ?? 0);
    const units = Math.min(free / pair.ratio, open, lacking);
    if (units <= 0) continue;
    spared.set(key, (spared.get(key) ?? 0) + units);
    raiseFrom(left, week, -units * pair.ratio);
    raiseFrom(there, week, units);
    standIns.push({ fromSupplyId: pair.fromSupplyId, toSupplyId: pair.toSupplyId, week, units });
  }
  return standIns;
}

function raiseFrom(stock: number[], week: number, units: number): void {
  for (let later = week; later < stock.length; later++) stock[later] = (stock[later] ?? 0) + units;
}

/** What a supply does not need itself until it can be bought again. */
function freeUntil({ supply }: ModelSupply, left: readonly number[], week: number, again: number): number {
  const own = left.slice(week, Math.max(week + 1, again));
  return Math.min(...own.map((units, later) => units - (supply.wanted[week + later] ?? 0)));
}

const firstArrival = ({ slots }: ModelSupply, weeks: number): number =>
  Math.min(weeks, ...slots.map(({ arrival }) => arrival));

/** Below this share of the other's price a supply is clearly cheaper. */
const CLEARLY = 0.95;

/**
 * Whether what stands in costs clearly less than what it stands in for, each at its best price.
 *
 * @param pair the two supplies and their ratio
 * @param supplies supplies with their slots
 * @returns never true for a supply that no one sells
 */
export function isCheaper(pair: PlanSubstitute, supplies: readonly ModelSupply[]): boolean {
  const unitMinor = (id: string): number => {
    const slots = supplies.find(({ supply }) => supply.id === id)?.slots ?? [];
    const prices = slots.flatMap(({ offer, tiers }) =>
      tiers.map((tier) => tier.slopeMinor / offer.unitsPerPack),
    );
    return Math.min(...prices);
  };
  return unitMinor(pair.fromSupplyId) * pair.ratio < CLEARLY * unitMinor(pair.toSupplyId);
}

/**
 * Use units that stand-ins spare a supply in each week; below 0 what they cost it.
 *
 * @param question all of the plan
 * @param standIns what stands in for what
 * @param supplyId the supply
 * @returns use units, by week
 */
export function sparedByWeek(
  question: PlanQuestion,
  standIns: readonly ChosenStandIn[],
  supplyId: string,
): number[] {
  const spared = new Array<number>(question.weeks).fill(0);
  for (const { fromSupplyId, toSupplyId, week, units } of standIns) {
    const ratio =
      question.substitutes.find(
        (each) => each.fromSupplyId === fromSupplyId && each.toSupplyId === toSupplyId,
      )?.ratio ?? 0;
    if (toSupplyId === supplyId) spared[week] = (spared[week] ?? 0) + units;
    if (fromSupplyId === supplyId) spared[week] = (spared[week] ?? 0) - units * ratio;
  }
  return spared;
}
