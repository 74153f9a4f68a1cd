import { sumGrid } from "#lib/forecast/sum-grid";
import {
  type OrderUpToTerms,
  orderUpToCost,
  orderUpToLevels,
} from "#lib/replenishment/exact-policy/order-up-to-levels";
import type { ReadySupply } from "#lib/replenishment/trial/trial-setting";
import type { TrialShop, TrialSpan, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { unitsOf } from "#lib/units/amount";

const DAYS_A_WEEK = 7;
const DAYS_A_YEAR = 365;
/** Weeks that are no further from their average than this share of it are steady. */
const STEADY = 0.5;
/** Larger counts would take long to reckon, and their whole pieces matter little. */
const MOST_PER_WEEK = 60;
const MOST_CYCLE_LEVEL = 0.999;

/** What a supply's levels cost a year on average for ever, and what the best levels there are would. Minor units. */
export type LevelCost = { readonly own: number; readonly best: number };

/**
 * How far a supply's levels are from the best there are, with as many days between checks. For whole pieces used
 * steadily: as if each week had the average of the span, each day by itself, each order cost what one line of it did in
 * the runs, and pieces were sold singly. What a missing piece costs is guessed from the goal: so much that the present reorder
 * point's chance of lasting is just worth its stock.
 *
 * @param ready the supply under some terms
 * @param question these terms, the level that the present terms reach, the value of a piece, the cost of a line, the
 * shop and the span
 * @returns costs of orders, of keeping and of missing pieces; null where the supply is not of that kind or nothing is
 * to be weighed
 * @see `orderUpToLevels`; the newsvendor's ratio for the price of a missing piece (from memory)
 */
export function bestPossible(
  ready: ReadySupply,
  question: {
    readonly terms: TrialTerms;
    readonly cycleLevel: number;
    readonly unitValue: number;
    readonly lineCost: number;
    readonly shop: TrialShop;
    readonly span: TrialSpan;
  },
): LevelCost | null {
  const { terms, unitValue, lineCost: orderCost, shop, span } = question;
  const { spread, path } = ready.supply.forecastOn(span.firstDay);
  const weeks = path.perWeek.slice(0, Math.ceil(span.days / DAYS_A_WEEK));
  const perWeek = weeks.reduce((sum, week) => sum + week, 0) / Math.max(1, weeks.length);
  const isSteady = weeks.every((week) => Math.abs(week - perWeek) <= STEADY * perWeek);
  const holdingCost = (unitValue * shop.holdingShare) / DAYS_A_YEAR;
  const isPriced = orderCost > 0 && holdingCost > 0;
  if (!(spread.whole && isSteady && isPriced && perWeek > 0 && perWeek <= MOST_PER_WEEK)) return null;
  const level = Math.min(MOST_CYCLE_LEVEL, question.cycleLevel);
  const exact: OrderUpToTerms = {
    orderCost,
    holdingCost,
    shortageCost: (holdingCost * level) / (1 - level),
    use: dayUse(spread, perWeek),
    leadTimePeriods: ready.levels.leadTimeDays,
    reviewPeriods: terms.reviewDays,
  };
  const [first] = ready.levels.checks;
  const reorderPoint = Math.floor(first?.reorderPoint ?? 0);
  // Orders come in whole packs: the usual one is what the upper level stands above the lower.
  const { offer, packs } = ready.order;
  const orderUpTo = reorderPoint + Math.max(1, Math.round(packs * unitsOf(offer.packAmount)));
  return {
    own: DAYS_A_YEAR * orderUpToCost(exact, { reorderPoint, orderUpTo }),
    best: DAYS_A_YEAR * orderUpToLevels(exact).cost,
  };
}

/** A day's use, so that seven independent days have the variance of a week. */
function dayUse(
  spread: ReturnType<ReadySupply["supply"]["forecastOn"]>["spread"],
  perWeek: number,
): OrderUpToTerms["use"] {
  const day = {
    perUse: spread.perUse,
    dispersions: [DAYS_A_WEEK * (spread.dispersions[0] ?? 0)],
    whole: true,
  };
  return sumGrid(day, { mean: perWeek / DAYS_A_WEEK, weeks: 1 / DAYS_A_WEEK }, 1);
}
