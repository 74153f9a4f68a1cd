import { shopForecast } from "#lib/forecast/shop/shop-forecast";
import type { ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import { sumGrid } from "#lib/forecast/sum-grid";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { undershoot } from "#lib/replenishment/undershoot";
import { type GridDistribution, gridQuantile, gridSum } from "#lib/statistics/grid-distribution";
import { unitsOf } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { type Measurement, measurement } from "../../measurement";
import { chances } from "../forecast/chances";
import {
  DEMANDS,
  type KnownDemand,
  knownPoint,
  knownSpread,
  LEAD_TIMES,
  LEVELS,
  leadTimeUse,
  VERY_LUMPY,
} from "./known-demand";

const HISTORIES = 400;
const WEEKS = 8;
const DAYS_A_WEEK = 7;
const SEED = 8;
const PER_CENT = 100;
/** Weeks of use that an order brings as a rule: half of it is on the shelf on average. */
const USUAL_COVER_WEEKS = 8;
const FIRST_DAY = day("2026-01-05");
const TODAY = addDays(FIRST_DAY, WEEKS * DAYS_A_WEEK);

/** What reorder points do that rest on 8 weeks of records only, beside those of who knows the use. */
export function shortHistory(): Measurement[] {
  return [...DEMANDS, VERY_LUMPY].flatMap((demand) => LEVELS.flatMap((level) => fromFewWeeks(demand, level)));
}

function fromFewWeeks(demand: KnownDemand, level: number): Measurement[] {
  const used = gridSum(
    undershoot(sumGrid(knownSpread(demand), { mean: demand.mean, weeks: 1 }, 1), true),
    leadTimeUse(demand),
  );
  const chance = chances(SEED);
  const weekly = sumGrid(knownSpread(demand), { mean: demand.mean, weeks: 1 }, 1);
  let service = 0;
  let stock = 0;
  for (let history = 0; history < HISTORIES; history += 1) {
    const weeks = Array.from({ length: WEEKS }, () => gridQuantile(weekly, chance()));
    const point = pointFrom(weeks, level);
    const result = withPoint(used, point, demand);
    service += result.service / HISTORIES;
    stock += result.stock / HISTORIES;
  }
  const isAimedAt = demand !== VERY_LUMPY;
  const known = withPoint(used, knownPoint(demand, level).amount, demand);
  const of = (name: string, value: number, unit: string, target: number | null) =>
    measurement({
      area: "replenishment",
      name: `${demand.name} use from 8 weeks, goal ${PER_CENT * level} %: ${name}`,
      value,
      unit,
      target,
    });
  return [
    of("falls short of the goal by", PER_CENT * (level - service), "points", isAimedAt ? 3 : null),
    of("mean stock beside that of known use", stock / known.stock, "times", isAimedAt ? 1.5 : null),
  ];
}

/** What a point does to known use: share of cycles without a shortage, and mean stock. */
function withPoint(
  used: GridDistribution,
  point: number,
  demand: KnownDemand,
): { service: number; stock: number } {
  let service = 0;
  let left = 0;
  for (const [amount, chance] of used.chances.entries()) {
    if (amount <= point) service += chance;
    left += chance * Math.max(0, point - amount);
  }
  return { service, stock: left + (demand.mean * USUAL_COVER_WEEKS) / 2 };
}

/** The program's own way from eight weeks to a reorder point, of a shop that sells one thing and uses one of it each. */
function pointFrom(used: readonly number[], level: number): number {
  const weeks = used.map((_, week) => ({
    weekStart: addDays(FIRST_DAY, week * DAYS_A_WEEK),
    nextWeekStart: addDays(FIRST_DAY, (week + 1) * DAYS_A_WEEK),
    closed: false,
    partial: false,
  }));
  const history: ShopHistory = {
    today: TODAY,
    weekStartsOn: 1,
    calendar: [],
    weeks,
    firstDays: 0,
    itemTypes: [
      {
        id: "piece",
        parcels: used,
        pieces: used,
        firstDays: { parcels: 0, pieces: 0 },
        piecesAtOnce: 1,
        massGrams: null,
      },
    ],
    events: [],
    guessedParcels: null,
    serviceLevel: level,
  };
  const supply: SupplyUseHistory = {
    id: "supply",
    used,
    firstDaysUsed: 0,
    perPiece: new Map([["piece", 1]]),
    perUse: 1,
    whole: true,
    horizonWeeks: 2,
  };
  const coming = shopForecast(history, [supply]).supply(supply)?.coming;
  if (coming === undefined) return 0;
  const belief = {
    chances: LEAD_TIMES.map((each) => ({ daysLate: (each.weeks - 1) * DAYS_A_WEEK, chance: each.chance })),
    promiseShare: 0,
    deliveries: 50,
  };
  const plan = protectionPlan({
    forecast: coming,
    today: TODAY,
    delivery: { terms: plainTerms(DAYS_A_WEEK), belief },
    reviewDays: DAYS_A_WEEK,
    goal: { kind: "cycles", level },
    coverWeeks: 26,
    calendar: [],
  });
  return unitsOf(plan.reorderPoint);
}
