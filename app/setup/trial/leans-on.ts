import type { TrialResult } from "#lib/replenishment/trial/trial-steps";
import type { Shop } from "#prisma/records/shop";
import { leftOutWords } from "./left-out-words";
import type { MoneyWords } from "./money-words";

/**
 * What a trial takes for granted, guesses and leaves out.
 *
 * @param result what came of it
 * @param shop whose guesses at the cost of stock and of orders it reckons with
 * @param money words for money
 * @returns sentences
 */
export function leansOn(result: TrialResult, shop: Shop, money: MoneyWords): string[] {
  const ownGoals = result.supplies.filter(({ hasOwnGoal }) => hasOwnGoal).length;
  const { leftOut } = result;
  return [
    ...(result.span.kind === "past" ? PAST : COMING),
    "What is missing waits until it comes: nothing is bought elsewhere, and no sale is lost.",
    "What is left at the end counts at its price, and deliveries after the end are not counted: large orders look a little cheaper than they are, less so over a year.",
    "Both settings have the same use and the same luck with deliveries. They order as This week suggests, without the limits of money and room.",
    `Guesses from Setup: keeping stock costs ${shop.holdingPerMille / 10} % of its worth a year, ${orderWorkWords(shop, money)}.`,
    ...(ownGoals === 0 ? [] : [ownGoalWords(ownGoals)]),
    ...(leftOut.length === 0 ? [] : [`Left out: ${leftOut.map(leftOutWords).join("; ")}.`]),
  ];
}

const COMING = [
  "Both begin with today’s shelf: what runs out before any order could come does so on both sides.",
  "Use is drawn around today’s forecast, as far off as past forecasts were, each supply by itself. The forecast is not made anew on the way.",
  "An order takes as long as its supplier’s record makes likely; what is on order now comes on the day it is expected.",
];

const PAST = [
  "Use is as it was recorded, day by day. Each check goes by the mean of the eight weeks before it, which knows no season; today’s prices, suppliers and errors of forecast stand for those of then.",
  "Only the deliveries are left to chance here: ± says nothing of how another year would be.",
  "The stock of then is a guess: half an order above the reorder point. Deliveries are as late as a supplier’s record makes likely today.",
];

function orderWorkWords({ orderCostMinor }: Shop, money: MoneyWords): string {
  return orderCostMinor === 0
    ? "and the work of an order nothing"
    : `and the work of an order ${money(orderCostMinor)}`;
}

function ownGoalWords(count: number): string {
  return count === 1
    ? "One supply has a goal of its own and keeps it on both sides."
    : `${count} supplies have goals of their own and keep them on both sides.`;
}
